import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { Ray, Side, ValueOf } from '../../../grammar/values.ts';
import { clearFacts, present } from '../answers.ts';
import type { AnyFact, Place, StatementId, VisitFacts } from '../facts.ts';

/** A grade of the torn plate as seen, never a stage and never a drawer grade. */
type AnatomicalGrade = 0 | 1 | 2 | 3 | 4;

export const PLATE_SOURCE = { source: 'COUGH11', mark: 'from memory, to be verified' } as const;
/** What each anatomical grade means, as far as it is known. */
export const ANATOMICAL_GRADES: Readonly<Record<AnatomicalGrade, Sourced & { readonly says: string }>> = {
  0: { ...PLATE_SOURCE, says: 'plate or capsule attenuated or discoloured, no tear' },
  1: { ...PLATE_SOURCE, says: 'transverse distal or midsubstance tear of under half of the width' },
  2: { ...PLATE_SOURCE, says: 'transverse distal or midsubstance tear of over half of the width' },
  3: { ...PLATE_SOURCE, says: 'extensive transverse or lengthwise tear, or both; may involve the collaterals' },
  4: { ...PLATE_SOURCE, says: 'extensive tear with a buttonhole, little or no plate left' },
};

/** Said wherever grades of the plate are explained or a tear of half of the width is stated. */
export const HALF_OF_THE_PLATE =
  'exactly 50 % of the width is assigned to no grade by any source that could be read, so no grade is computed from it';

/** A grade or a tear of half of the width that an operation or an image states for one ray. */
export interface PlateSeen {
  readonly by: 'operation' | 'ultrasound' | 'MRI';
  /** As stated; never computed from the extent of a tear. */
  readonly grade?: ValueOf<'anatomical grade'>;
  /** The share of the width that a tear takes, where it touches half. */
  readonly half?: ValueOf<'number'>;
  readonly statement: StatementId;
  readonly place: Place;
}
const BY: Readonly<Record<string, PlateSeen['by']>> = { operation: 'operation', us: 'ultrasound', mri: 'MRI' };

/** What an operation or an image of the visit states of one plate on the anatomical scale. Empty where nothing is stated. */
export function platesSeen({ facts }: VisitFacts, side: Side, ray: Ray): PlateSeen[] {
  const about = { side, ray };
  const graded = [...clearFacts(facts, 'anatomical-grade', about), ...clearFacts(facts, 'plate-found', about)];
  const torn = [...clearFacts(facts, 'plate-found', about), ...clearFacts(facts, 'tear', about)];
  const halves = torn.filter(({ status, values: { share } }) => status === 'present' && isHalf(share));
  const grades = graded.filter(({ status, values }) => status === 'present' && values.grade);
  return present<(typeof graded)[number] | (typeof torn)[number]>([...new Set([...grades, ...halves])]).flatMap(
    (fact) => {
      const by = BY[fact.section];
      const grade = 'grade' in fact.values ? fact.values.grade : undefined;
      const half = halves.find((each: AnyFact) => each === fact)?.values.share;
      return by
        ? [
            {
              by,
              ...(grade ? { grade } : {}),
              ...(half ? { half } : {}),
              statement: fact.statement,
              place: fact.origin.place,
            },
          ]
        : [];
    },
  );
}

/** A bound or a range that only touches half is more or less than half as far as anyone knows. */
const isHalf = (share: ValueOf<'number'> | undefined): boolean =>
  share !== undefined && share.low <= 50 && share.high >= 50 && share.bound !== 'under' && share.bound !== 'over';

/** `anatomical grade 2, tear of over half of the width (operation)`. */
export function plateSeenText({ by, grade, half }: PlateSeen): string {
  const said = grade ? gradeText(grade) : `a tear of ${half ? shareText(half) : ''} of the width`;
  return `${said} (${by})${half ? `: ${HALF_OF_THE_PLATE}` : ''}`;
}

const shareText = ({ low, high, bound }: ValueOf<'number'>): string =>
  `${bound === 'about' ? 'about ' : ''}${low === high ? low : `${low}-${high}`} %`;

function gradeText({ low, high }: ValueOf<'anatomical grade'>): string {
  const all = GRADES.filter((grade) => low <= grade && grade <= high);
  const name = low === high ? `${low}` : `${low}-${high}`;
  return `anatomical grade ${name}, ${all.map((grade) => ANATOMICAL_GRADES[grade].says).join(', or ')}`;
}
const GRADES: readonly AnatomicalGrade[] = [0, 1, 2, 3, 4];
