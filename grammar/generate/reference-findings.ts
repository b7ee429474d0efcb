import type { Entry, GradeSlot, Lead, Mark, Section, Slot, SubjectKind } from '../lexicon/entry.ts';
import type { FindingId } from '../lexicon/index.ts';
import type { SourceKey } from '../sources.ts';
import { ENTRIES, entriesIn, SECTIONS } from './contexts.ts';
import { code, codes, list, paragraphs, sentence } from './markdown.ts';
import { keyOf } from './phrases.ts';
import { NEEDS, type Need } from './reference-needs.ts';

/** The findings of each section by exam order. A finding of several sections is described in its first. */
export function findingsReference(): string {
  return paragraphs(...SECTIONS.map(sectionReference));
}

const homeOf = ({ sections }: Entry): Section | undefined => sections[0];
const byOrder = (entries: readonly Entry[]): Entry[] => [...entries].sort((a, b) => a.order - b.order);

function sectionReference(section: Section): string {
  const own = byOrder(ENTRIES.filter((entry) => homeOf(entry) === section));
  const guests = byOrder(entriesIn(section).filter((entry) => homeOf(entry) !== section));
  const also = guests.map(({ word }) => `[${word}](#${word})`).join(', ');
  return paragraphs(
    `## Findings: ${section}`,
    also === '' ? '' : `Read in this section too: ${also}.`,
    ...own.map(findingReference),
  );
}

const SAID_OF: Readonly<Record<SubjectKind, string>> = {
  ray: 'a ray',
  web: 'a web space',
  foot: 'the foot',
  patient: 'the patient',
};

function findingReference(entry: Entry): string {
  const { word, forms, leads, subjects, slots, bare, many, technique, meaning } = entry;
  const others = unlike(word, forms);
  const facts = [
    ...(others.length > 0 ? [`Also written: ${codes(others)}`] : []),
    ...(Object.keys(leads).length > 0 ? [`Opened by a value: ${Object.entries(leads).map(leadText).join(', ')}`] : []),
    `Said of: ${subjects.map((kind) => SAID_OF[kind]).join(', ')}${many ? '; may stand several times in a visit' : ''}`,
    `The bare word: ${bare === 'present' ? 'means present' : 'says nothing, its result is missing'}`,
    ...Object.entries(slots).map(([name, slot]) => `*${name}*: ${slotText(slot)}`),
    ...needText(NEEDS[entry.id as FindingId]),
    `How: ${sentence(technique)}`,
    `Meaning: ${sentence(meaning)}`,
    `Source: ${sourceText(entry.source, entry.mark)}`,
  ];
  return paragraphs(`### ${word}`, list(facts));
}

const needText = (need: Need | undefined): string[] =>
  need ? [`Read only with ${need.says}: ${codes(need.words)}. ${sentence(`So: ${code(need.example)}`)}`] : [];

/** Forms that differ from the word by more than a hyphen. */
const unlike = (word: string, forms: readonly string[]): string[] =>
  forms.filter((form) => keyOf(form) !== keyOf(word));

function leadText([word, lead]: [string, Lead]): string {
  const gives = Object.values(lead.gives ?? {});
  if (lead.absent) return `${code(word)} (absent)`;
  return gives.length === 0 || gives.includes(word) ? code(word) : `${code(word)} (${gives.join(', ')})`;
}

/** `NERY15`, with how it is known. */
export function sourceText(source: SourceKey, mark: Mark): string {
  if (source === mark || source === 'from memory') return mark;
  return `[${source}](#sources), ${MARKS[mark]}`;
}
const MARKS: Readonly<Record<Mark, string>> = {
  read: 'read there',
  secondary: 'as another page reports it',
  'common practice': 'as common practice',
  'from memory, to be verified': 'from memory, to be verified',
};

const GRADES: Readonly<Record<GradeSlot['of'], string>> = {
  drawer: 'a drawer grade',
  stage: 'a clinical stage',
  anatomical: 'an anatomical grade',
  pulse: 'a pulse grade',
};

function slotText(slot: Slot): string {
  const labels =
    slot.labels && slot.labels.length > 0 ? `, after ${codes(slot.labels)}${slot.labelled ? '' : ' or by itself'}` : '';
  const place = slot.locating ? '; says where, so it may stand with an absent finding' : '';
  const before = slot.before || slot.locating ? '; may stand before the finding' : '';
  return `${valuesText(slot)}${labels}${place}${before}`;
}

function valuesText(slot: Slot): string {
  switch (slot.kind) {
    case 'words': {
      const values = Object.entries(slot.values).map(([value, all]) => {
        const others = unlike(value, all);
        return others.length === 0 ? code(value) : `${code(value)} (${codes(others)})`;
      });
      return values.join(', ') + (slot.many ? '; several may stand together' : '');
    }
    case 'number':
      if (slot.unit === '') return `a number, ${slot.min} to ${slot.max}`;
      if (slot.unit === '/10') return 'a number of ten, `6/10` or `6`';
      return `${slot.min} to ${slot.max} ${slot.unit}${slot.bare ? ', the unit may be left out' : ''}`;
    case 'grade':
      return `${GRADES[slot.of]}, ${slot.min} to ${slot.max}, or two neighbours (${code('1-2')})`;
    case 'fraction':
      return `so many of so many, ${code('9/10')}`;
    case 'duration':
      return `a length of time${slot.least ? ' of days or more' : ''}, ${code('8 weeks')}`;
    case 'date':
      return `a date, ${code('2026-03-09')}, or a time before the visit, ${code('3 weeks ago')}`;
    case 'clock':
      return `a time of day, ${code('14:30')}`;
    case 'pair':
      return `two neighbouring rays, ${code('2-3')}`;
  }
}
