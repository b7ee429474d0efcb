import type { Entry, Slot, SubjectKind } from '../../grammar/lexicon/entry.ts';
import { entryOf, type FindingId } from '../../grammar/lexicon/index.ts';
import { listed } from '../clinical/argument/phrases.ts';
import { cite } from './cite.ts';
import { paragraphs } from './describe.ts';

const KINDS: Readonly<Record<Entry['kind'], string>> = {
  sign: 'sign',
  measure: 'test',
  treatment: 'treatment',
  procedure: 'procedure',
  event: 'event',
};
const OF: Readonly<Record<SubjectKind, string>> = {
  ray: 'a ray',
  web: 'a web space',
  foot: 'the foot',
  patient: 'the patient',
};
/** A finding of the lexicon for a reader: meaning, technique, values, source. Markdown. */
export function describeFinding(id: FindingId): string {
  const entry = entryOf(id);
  const { word, kind, subjects, meaning, technique, slots, source, mark } = entry;
  const values = Object.entries(slots).map(([name, slot]) => `- ${name}: ${describeSlot(slot)}`);
  return paragraphs(
    `**${word}** (${KINDS[kind]}, said of ${listed(
      subjects.map((subject) => OF[subject]),
      'or',
    )})`,
    meaning,
    `*Technique.* ${technique}`,
    values.length > 0 ? `*Values*\n\n${values.join('\n')}` : '',
    cite(source, mark),
  );
}

function describeSlot(slot: Slot): string {
  switch (slot.kind) {
    case 'words':
      return Object.keys(slot.values)
        .map((value) => `\`${value}\``)
        .join(', ');
    case 'number':
      return `${slot.min} to ${slot.max}${slot.unit ? ` ${slot.unit}` : ''}`;
    case 'grade':
      return `grade ${slot.min} to ${slot.max}`;
    case 'fraction':
      return 'so many of so many, `9/10`';
    case 'duration':
      return 'a time, `8 weeks`';
    case 'date':
      return 'a date, `2026-03-09` or `2026-03`, or `3 weeks ago`';
    case 'clock':
      return 'a time of day, `14:30`';
    case 'pair':
      return 'two neighbouring rays, `2-3`';
  }
}
