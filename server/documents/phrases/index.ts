import type { FindingId } from '../../../grammar/lexicon/index.ts';
import { ADVICE_PHRASES } from './advice.ts';
import { BACKGROUND_PHRASES } from './background.ts';
import { BEFORE_OPERATION_PHRASES } from './before-operation.ts';
import { BONE_HEALING_PHRASES } from './bone-healing.ts';
import { DECISION_PHRASES } from './decisions.ts';
import { DRUG_AND_RISK_PHRASES } from './drugs-and-risks.ts';
import { GAIT_AND_SKIN_PHRASES } from './gait-and-skin.ts';
import { HISTORY_PHRASES } from './history.ts';
import { IMAGE_DETAIL_PHRASES } from './images-in-detail.ts';
import { IMAGING_PHRASES } from './imaging.ts';
import { INSPECTION_PHRASES } from './inspection.ts';
import { LABORATORY_PHRASES } from './laboratory.ts';
import { MEDICINE_PHRASES } from './medicines.ts';
import { MOTION_PHRASES } from './motion.ts';
import { NERVE_AND_VESSEL_PHRASES } from './nerve-and-vessel.ts';
import { OPERATION_PHRASES } from './operation.ts';
import { OPERATION_BESIDE_PHRASES } from './operation-beside.ts';
import type { Phrase } from './phrase.ts';
import { RAY_PHRASES } from './ray.ts';
import { RECOVERY_PHRASES } from './recovery.ts';
import { RED_FLAG_SIGN_PHRASES } from './red-flag-signs.ts';
import { SCORE_PHRASES } from './scores.ts';
import { SURFACE_SIGN_PHRASES } from './surface-signs.ts';
import { THEATRE_PHRASES } from './theatre.ts';
import { TREATMENT_PHRASES } from './treatment.ts';
import { WEB_AND_FOOT_PHRASES } from './webs-and-foot.ts';
import { WHAT_CHANGES_IT_PHRASES } from './what-changes-it.ts';
import { WHOLE_SECTION_PHRASES } from './whole-sections.ts';

/** How each finding is written. A finding of the lexicon without its phrase doesn't compile. */
export const PHRASES: { readonly [F in FindingId]: Phrase<F> } = {
  ...ADVICE_PHRASES,
  ...BEFORE_OPERATION_PHRASES,
  ...BONE_HEALING_PHRASES,
  ...HISTORY_PHRASES,
  ...THEATRE_PHRASES,
  ...WHAT_CHANGES_IT_PHRASES,
  ...MEDICINE_PHRASES,
  ...OPERATION_BESIDE_PHRASES,
  ...SURFACE_SIGN_PHRASES,
  ...TREATMENT_PHRASES,
  ...OPERATION_PHRASES,
  ...RECOVERY_PHRASES,
  ...SCORE_PHRASES,
  ...DECISION_PHRASES,
  ...INSPECTION_PHRASES,
  ...RAY_PHRASES,
  ...WEB_AND_FOOT_PHRASES,
  ...WHOLE_SECTION_PHRASES,
  ...IMAGING_PHRASES,
  ...BACKGROUND_PHRASES,
  ...DRUG_AND_RISK_PHRASES,
  ...GAIT_AND_SKIN_PHRASES,
  ...IMAGE_DETAIL_PHRASES,
  ...LABORATORY_PHRASES,
  ...MOTION_PHRASES,
  ...NERVE_AND_VESSEL_PHRASES,
  ...RED_FLAG_SIGN_PHRASES,
};
