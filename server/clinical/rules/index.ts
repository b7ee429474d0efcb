import {
  feverAfterOperation,
  floatingToe,
  fusedPip,
  impactBeforeWindow,
  refillUnjudged,
  shoeBeforeWindow,
  transferTenderness,
} from './after-operation.ts';
import { dislocatedLowDrawer, drawerScale, overlapStraight, stageUnsupported, statedTwice } from './agreement.ts';
import { drugAllergy } from './allergies.ts';
import { incompleteVisit } from './completeness.ts';
import type { Rule } from './define-rule.ts';
import { acuteDislocationIncomplete, invasiveUnconfirmed, steroidUnstable } from './hazards.ts';
import { identifier } from './identifiers.ts';
import { imageOlder, webChangeUnstable } from './images.ts';
import { driftAfterSteroid, steroidRepeated } from './injections.ts';
import {
  afterSignature,
  carriedUnconfirmed,
  proposedUnconfirmed,
  reductionIncomplete,
  signedBeforeVisit,
  signedWordsChanged,
} from './lifecycle.ts';
import { gradeAsStage, squeezeOrCompression, stageElsewhere, wrongRay } from './mixed-up.ts';
import {
  antiInflammatoryUnasked,
  bootUnasked,
  feverUnasked,
  neuropathicSwelling,
  otherCausesUnasked,
} from './not-asked.ts';
import {
  courseUnreported,
  decisionIgnored,
  operationUnsafe,
  operationUnsettled,
  steroidBeforeOperation,
} from './operation-safety.ts';
import { pinAndMotion, pinAndShoe, pinOverdue } from './pins.ts';
import { antiInflammatoryRisk, tapeRisk } from './plan-risks.ts';
import { redFlagFirst } from './red-flags.ts';
import { scoreUnreachable } from './scores.ts';
import { severalUnstableRays } from './several-rays.ts';
import { sideFromHeading, wrongSide } from './sides.ts';
import { unclearFinding, valueOutOfRange, wrongUnit } from './values.ts';
import { ageAgainstBirthYear, reviewOverdue } from './words.ts';

/** Every rule, one row each, by severity of harm. */
export const RULES: readonly Rule[] = [
  redFlagFirst,
  acuteDislocationIncomplete,
  feverUnasked,
  neuropathicSwelling,
  operationUnsafe,
  reductionIncomplete,
  steroidUnstable,
  antiInflammatoryRisk,
  tapeRisk,
  drugAllergy,
  wrongSide,
  wrongRay,
  sideFromHeading,
  operationUnsettled,
  invasiveUnconfirmed,
  decisionIgnored,
  courseUnreported,
  steroidBeforeOperation,
  steroidRepeated,
  driftAfterSteroid,
  pinOverdue,
  pinAndMotion,
  pinAndShoe,
  shoeBeforeWindow,
  impactBeforeWindow,
  imageOlder,
  webChangeUnstable,
  floatingToe,
  refillUnjudged,
  feverAfterOperation,
  fusedPip,
  dislocatedLowDrawer,
  overlapStraight,
  gradeAsStage,
  stageElsewhere,
  stageUnsupported,
  squeezeOrCompression,
  statedTwice,
  signedWordsChanged,
  signedBeforeVisit,
  afterSignature,
  valueOutOfRange,
  wrongUnit,
  scoreUnreachable,
  ageAgainstBirthYear,
  identifier,
  drawerScale,
  bootUnasked,
  antiInflammatoryUnasked,
  severalUnstableRays,
  transferTenderness,
  otherCausesUnasked,
  reviewOverdue,
  incompleteVisit,
  carriedUnconfirmed,
  proposedUnconfirmed,
  unclearFinding,
];
