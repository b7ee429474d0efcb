import type { Section } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { AnyFact, Verbatim, VisitFacts } from '../clinical/facts.ts';
import { type Group, groupFacts } from './groups.ts';
import { nounOf, placeOf, type Site } from './places.ts';
import { groupSentence } from './prose.ts';
import { type Origin, originOf, type Sentence, sentence } from './sentence.ts';

export type NoteSection =
  | 'History'
  | 'Pain'
  | 'Treatment so far'
  | 'Examination'
  | 'Imaging'
  | 'Laboratory'
  | 'Scores'
  | 'Operation'
  | 'Assessment'
  | 'Plan';
/** The order of the filed note. */
export const NOTE_SECTIONS: readonly NoteSection[] = [
  'History',
  'Pain',
  'Treatment so far',
  'Examination',
  'Imaging',
  'Laboratory',
  'Scores',
  'Operation',
  'Assessment',
  'Plan',
];

const SECTION_OF: Readonly<Record<Section, NoteSection>> = {
  history: 'History',
  pain: 'Pain',
  tried: 'Treatment so far',
  stand: 'Examination',
  exam: 'Examination',
  xray: 'Imaging',
  us: 'Imaging',
  mri: 'Imaging',
  ct: 'Imaging',
  lab: 'Laboratory',
  operation: 'Operation',
  impression: 'Assessment',
  plan: 'Plan',
};
const IMAGING: readonly Section[] = ['xray', 'us', 'mri', 'ct'];

/** Findings that have a place of their own, wherever they were written. */
const OF_FINDING: ReadonlyMap<FindingId, NoteSection> = new Map([
  ['stage', 'Assessment'],
  ['diagnosis', 'Assessment'],
  ['vas', 'Scores'],
  ['aofas', 'Scores'],
  ['faam', 'Scores'],
  ['moxfq', 'Scores'],
  ['ffi', 'Scores'],
  ['decision', 'Plan'],
]);
const sectionOf = (fact: AnyFact): NoteSection => OF_FINDING.get(fact.finding) ?? SECTION_OF[fact.section];

/** A sentence with its place in the note: the paragraph first, then the rank inside it. */
interface Placed {
  readonly rank: readonly number[];
  readonly make: (paragraph: string) => Sentence;
}

/** Which lines of a visit are told together. */
export type Lines = (line: number) => boolean;

/** The facts of some lines, with what an event has changed since, in the order of the note. */
function statedOn({ facts, lifecycle }: VisitFacts, lines: Lines): AnyFact[] {
  const { passed = [] } = lifecycle ?? {};
  const all = passed.length === 0 ? facts : [...facts, ...passed].sort((a, b) => compare(placed(a), placed(b)));
  return all.filter(({ origin }) => lines(origin.place.line));
}
const placed = ({ origin: { place } }: AnyFact): number[] => [place.line, place.start];

/** The filed sentences of one section for some lines: clear facts as prose, everything else as it was written, in place. */
export function sectionSentences(visit: VisitFacts, section: NoteSection, lines: Lines = () => true): Sentence[] {
  const facts = statedOn(visit, lines).filter((fact) => fact.clarity === 'clear' && sectionOf(fact) === section);
  const all = [
    ...groupFacts(facts, visit.side).map((group): Placed => {
      return { rank: rankOf(group, section), make: (paragraph) => groupSentence(group, visit.side, paragraph) };
    }),
    ...wholes(visit.verbatim)
      .filter(([{ place, section: of }]) => lines(place.line) && SECTION_OF[of] === section)
      .map((each): Placed => {
        return { rank: verbatimRank(each[0], section), make: (paragraph) => verbatimSentence(each, visit, paragraph) };
      }),
  ];
  all.sort((a, b) => compare(a.rank, b.rank));
  return all.map(({ rank, make }) => make(`${section} ${rank.slice(0, 3).join(' ')}`));
}

/** Texts that are quoted in one stretch, with the words around them. */
type Whole = readonly [Verbatim, ...Verbatim[]];
function wholes(texts: readonly Verbatim[]): Whole[] {
  const list: [Verbatim, ...Verbatim[]][] = [];
  for (const each of texts) {
    const last = list.at(-1);
    const { line, start } = each.whole.place;
    if (last?.[0].whole.place.line === line && last[0].whole.place.start === start) last.push(each);
    else list.push([each]);
  }
  return list;
}

const stated = ({ line, start }: Verbatim['place']): number[] => [line, start];

function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((each, index) => each !== b[index]);
  return at < 0 ? 0 : (a[at] ?? 0) - (b[at] ?? 0);
}

const KINDS = ['ray', 'web', 'foot', 'patient'] as const;
const sideRank = (site: Site, shared: boolean): number => (shared || !site.side ? 2 : site.side === 'right' ? 0 : 1);
const numberRank = ({ subject }: Site): number => (subject.at === 'ray' ? subject.ray : 0);

/**
 * Paragraphs of the examination: standing, then each ray, the webs, the foot; elsewhere one paragraph a section, or one
 * an imaging method, in the order of the note.
 */
function rankOf(group: Group, section: NoteSection): number[] {
  const [piece] = group.said;
  const [site] = group.sites;
  if (!piece || !site) return [];
  const fact = piece.piece.fact;
  if (section === 'Imaging') return [IMAGING.indexOf(fact.section), 0, 0, numberRank(site), ...stated(group.place)];
  if (section !== 'Examination') return [0, 0, 0, ...stated(group.place)];
  const shared = group.sites.some(({ side }) => side !== site.side);
  const rank = examRank(fact.section, site, shared);
  return [...rank, numberOrder(site), shapeRank(group), piece.piece.order, ...stated(group.place)];
}

function examRank(section: Section, site: Site, shared: boolean): number[] {
  if (section === 'stand') return [0, 0, 0];
  return [1 + sideRank(site, shared), KINDS.indexOf(site.subject.at), numberRank(site)];
}
const numberOrder = ({ subject }: Site): number =>
  subject.at === 'ray' ? subject.ray : subject.at === 'web' ? subject.web : 9;

/** What is felt comes before the joint, the joint before the toe, what was not done after what was. */
function shapeRank({ is, noun }: Group): number {
  if (is === 'panel') return 6;
  if (is === 'status') return 5;
  if (is === 'there') return 0;
  if (is === 'own') return 3;
  return noun === 'MTP joint' ? 1 : noun === 'toe' ? 2 : 4;
}

/** Without a subject it stands at the end of the examination; elsewhere where it was written. */
function verbatimRank({ section, subject, side, place }: Verbatim, into: NoteSection): number[] {
  if (into === 'Imaging') return [IMAGING.indexOf(section), 0, 0, 9, ...stated(place)];
  if (into !== 'Examination') return [0, 0, 0, ...stated(place)];
  if (section === 'stand') return [0, 0, 0, 9, 9, ...stated(place)];
  const site = { subject: subject ?? ({ at: 'foot' } as const), ...(side ? { side } : {}) };
  return [...examRank(section, site, false), numberOrder(site), 9, ...stated(place)];
}

/** Names text that no fact came from; unique in its visit. */
const verbatimId = ({ place }: Verbatim): string => `${place.line}:text:${place.start}`;

function originsOf(texts: Whole, facts: readonly AnyFact[]): Origin[] {
  const { line, start, end } = texts[0].whole.place;
  const inside = facts.filter(
    ({ clarity, unclear, origin: { place } }) =>
      (clarity === 'unclear' || unclear.length > 0) && place.line === line && place.start < end && place.end > start,
  );
  const origins = new Map(inside.map((fact) => [fact.statement, originOf(fact)]));
  return [...texts.map((each) => ({ statement: verbatimId(each), place: each.place })), ...origins.values()];
}

/** Text that the reader could not take as fact, word for word; where it stood is told if its own words don't. */
function verbatimSentence(texts: Whole, visit: VisitFacts, paragraph: string): Sentence {
  const [first] = texts;
  const { whole } = first;
  const from = originsOf(
    texts,
    statedOn(visit, (line) => line === whole.place.line),
  );
  const text = { ...first, text: whole.text };
  const under = underOf(text, visit);
  const bare = text.text.trim().replace(/\s+/g, ' ');
  const words = /^".*"$/.test(bare) ? bare : bare.includes('"') ? `“${bare}”` : `"${bare}"`;
  const lead = text.quote ? `in the words recorded${under}: ` : `as written${under}, not interpreted: `;
  return sentence('verbatim', paragraph, lead, { text: words, from });
}

/** A side in the text's own words needs no other beside it. */
const SAYS_SIDE = /\b(right|left|both|bilateral|[rl]t?|[rl]\d)\b/i;

/** Does the text itself name the ray or the web, `2nd` or `ray 2`? A bare `2` is a value. */
const namesNumber = (text: string, number: number): boolean =>
  new RegExp(`\\b(${number}(st|nd|rd|th)|(rays?|toes?|mtps?|mtpjs?|mts?|webs?|spaces?) ${number})\\b`, 'i').test(text);

function underOf({ text, subject, side }: Verbatim, visit: VisitFacts): string {
  if (SAYS_SIDE.test(text)) return '';
  const site: Site = { subject: subject ?? { at: 'foot' }, ...(side ? { side } : {}) };
  const { text: place } = placeOf([site], nounOf(site), visit.side);
  const number = subject?.at === 'ray' ? subject.ray : subject?.at === 'web' ? subject.web : undefined;
  const says = number !== undefined && namesNumber(text, number) && side === visit.side;
  return place && !says && site.side ? ` under ${place}` : '';
}
