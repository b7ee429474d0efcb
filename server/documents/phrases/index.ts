import type { FindingId } from '../../../grammar/lexicon/index.ts';
import { HISTORY_PHRASES } from './history.ts';
import { IMAGING_PHRASES } from './imaging.ts';
import { INSPECTION_PHRASES } from './inspection.ts';
import { OPERATION_PHRASES } from './operation.ts';
import type { Phrase } from './phrase.ts';
import { RAY_PHRASES } from './ray.ts';
import { TREATMENT_PHRASES } from './treatment.ts';
import { WEB_AND_FOOT_PHRASES } from './webs-and-foot.ts';

/** How each finding is written. A finding of the lexicon without its phrase doesn't compile. */
export const PHRASES: { readonly [F in FindingId]: Phrase<F> } = {
  ...HISTORY_PHRASES,
  ...TREATMENT_PHRASES,
  ...OPERATION_PHRASES,
  ...INSPECTION_PHRASES,
  ...RAY_PHRASES,
  ...WEB_AND_FOOT_PHRASES,
  ...IMAGING_PHRASES,
};
