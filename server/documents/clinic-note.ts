import type { Side } from '../../grammar/values.ts';
import type { AdvisedVisit } from '../clinical/analysis.ts';
import type { HeaderFacts, VisitFacts } from '../clinical/facts.ts';
import { computedSentences, urgentSentences } from './computed.ts';
import { type FiledSection, filedSections } from './filed-sections.ts';
import { sentence } from './sentence.ts';
import { dateWords } from './values.ts';

export { type RenderOptions, renderHtml, renderText } from './render.ts';
export type { Origin, Run, Says, Sentence } from './sentence.ts';

export interface ClinicNote {
  readonly title: string;
  readonly sections: readonly FiledSection[];
}

export const URGENT_TITLE = 'Red flags and urgent advice (computed)';
export const COMPUTED_TITLE = 'Computed, not part of the filed note';

const KINDS: Readonly<Record<NonNullable<VisitFacts['kind']>, string>> = {
  first: 'first visit',
  review: 'review',
  preop: 'pre-operative visit',
  operation: 'operation',
  postop: 'post-operative visit',
  phone: 'telephone contact',
  emergency: 'emergency visit',
};
const sideWords = (side: Side | 'both'): string => (side === 'both' ? 'both feet' : `${side} foot`);

/**
 * The clinic note of one visit: what the clinician stated as prose, and, apart from it, what was computed. A section
 * without a sentence is left out; nothing is written of what nobody said.
 */
export function clinicNote(visit: AdvisedVisit, header: HeaderFacts): ClinicNote {
  const filed = filedSections(visit.facts).map((section) =>
    section.title === 'Examination' ? withSide(section, visit.facts) : section,
  );
  const sections = [
    { title: URGENT_TITLE, sentences: urgentSentences(visit) },
    ...filed,
    { title: COMPUTED_TITLE, sentences: computedSentences(visit) },
  ];
  return { title: titleOf(visit.facts, header), sections: sections.filter(({ sentences }) => sentences.length > 0) };
}

function titleOf({ date, kind, side }: VisitFacts, header: HeaderFacts): string {
  const when = date ? dateWords(date) : 'date not stated';
  const what = [kind && KINDS[kind], side && sideWords(side)].filter((part) => part !== undefined);
  return [header.patient?.name ?? 'patient not named', when, ...what].join(', ');
}

/** The visit's one side is said once, where the examination starts. */
function withSide(section: FiledSection, { side }: VisitFacts): FiledSection {
  if (!side || side === 'both' || section.sentences.length === 0) return section;
  const [first] = section.sentences;
  const said = sentence('stated', first?.paragraph ?? '', sideWords(side));
  return { ...section, sentences: [said, ...section.sentences] };
}
