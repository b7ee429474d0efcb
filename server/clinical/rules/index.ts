import { dislocatedLowDrawer, drawerScale, overlapStraight, stageUnsupported, statedTwice } from './agreement.ts';
import { incompleteVisit } from './completeness.ts';
import type { Rule } from './define-rule.ts';
import { acuteDislocationIncomplete, invasiveUnconfirmed, steroidUnstable } from './hazards.ts';
import { antiInflammatoryRisk, tapeRisk } from './plan-risks.ts';
import { redFlagFirst } from './red-flags.ts';
import { scoreUnreachable } from './scores.ts';
import { severalUnstableRays } from './several-rays.ts';
import { sideFromHeading, wrongSide } from './sides.ts';
import { unclearFinding, valueOutOfRange, wrongUnit } from './values.ts';

/** Every rule, one row each, by severity of harm. */
export const RULES: readonly Rule[] = [
  redFlagFirst,
  acuteDislocationIncomplete,
  steroidUnstable,
  antiInflammatoryRisk,
  tapeRisk,
  wrongSide,
  sideFromHeading,
  invasiveUnconfirmed,
  dislocatedLowDrawer,
  overlapStraight,
  stageUnsupported,
  statedTwice,
  valueOutOfRange,
  wrongUnit,
  scoreUnreachable,
  drawerScale,
  severalUnstableRays,
  incompleteVisit,
  unclearFinding,
];
