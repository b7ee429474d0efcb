import {
  HEADER_WORDS,
  SEX_BY_FORM,
  VISIT_KIND_BY_FORM,
  VISIT_SIDE_BY_FORM,
} from '../../grammar/lexicon/header-words.ts';
import { LIFECYCLE_WORDS, PREFIX_WORDS, SIGNER_ROLES } from '../../grammar/lexicon/lifecycle-words.ts';
import { readLine } from '../../grammar/read-line.ts';
import { WEIGHS } from '../../grammar/reader/openings.ts';
import { HEARD_AS } from '../../grammar/spoken/spoken-words.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { DRAWER_SCALES } from '../../grammar/values.ts';
import type { Fix, Report, SyntaxEdit } from './analysis.ts';
import { dayOf } from './dates.ts';
import type { Place, VisitFacts } from './facts.ts';
import { READING_MESSAGES } from './reading-reports.ts';
import { replace } from './rules/define-rule.ts';
import { RULES } from './rules/index.ts';
import { speltLike } from './spelling.ts';

/** What a report is of: its words, their line, and the visit, if it stands in one. */
interface Reported {
  readonly words: string;
  readonly place: Place;
  readonly line: LineSyntax;
  readonly visit: VisitFacts | undefined;
  readonly lines: readonly LineSyntax[];
}
type Cure = (reported: Reported) => readonly Fix[];

const fix = (title: string, edits: readonly SyntaxEdit[]): Fix => ({ title, safety: 'needs review', edits });
const write = (place: Place, text: string, why = ''): Fix =>
  fix(`Write ${/^\d/.test(text) ? text : `"${text}"`}${why}`, [replace(place, text)]);
const inPlaceOf = (words: string, place: Place, text: string): Fix =>
  fix(`Replace "${words}" with "${text}"`, [replace(place, text)]);

/** `web 2-3`: the space between the second and the third ray, or two spaces. */
const oneWebOrTwo: Cure = ({ words, place }) => {
  const [first, last] = [...words.matchAll(/\d/g)].map(([digit]) => Number(digit));
  if (first === undefined || last === undefined || last <= first) return [];
  return [...(last === first + 1 ? [write(place, `web ${first}`)] : []), write(place, `webs ${first}-${last}`)];
};

/** At the end of the line, with the mark that fits the one that opened it. */
const closeQuote: Cure = ({ place, line: { text } }) => {
  const end = text.trimEnd().length;
  const mark = text.charAt(place.start - 1) === '“' || text.charAt(place.start) === '“' ? '”' : '"';
  return [fix('Close the quote at the end of the line', [replace({ ...place, start: end, end }, mark)])];
};

/** Both days that a date of two small numbers may be; of a day that does not exist, none. */
const bothDates: Cure = ({ words, place }) => {
  const [, first, second, years] = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4}|\d{2})$/.exec(words) ?? [];
  if (!first || !second || !years) return [];
  const year = years.length === 2 ? `20${years}` : years;
  const iso = (month: string, day: string): string => `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  const dates = [
    { date: iso(second, first), how: first === second ? '' : ' (day first)' },
    { date: iso(first, second), how: ' (month first)' },
  ].slice(0, first === second ? 1 : 2);
  return dates.filter(({ date }) => dayOf(date) !== undefined).map(({ date, how }) => write(place, date, how));
};

const removeLine: Cure = ({ place, line }) =>
  line.roles.some(({ kind }) => kind === 'comment')
    ? []
    : [fix('Remove this line, which hides nothing', [{ edit: 'remove line', line: place.line }])];

const codeLike: Cure = ({ words, place }) =>
  speltLike(words, [...RULES.map(({ code }) => code), ...Object.keys(READING_MESSAGES)]).map((code) =>
    inPlaceOf(words, place, code),
  );

const HEADER_FORMS: Readonly<Record<string, readonly string[]>> = {
  visit: [...VISIT_KIND_BY_FORM.keys(), ...VISIT_SIDE_BY_FORM.keys()],
  patient: ['born', ...SEX_BY_FORM.keys()],
  scales: ['drawer'],
};
/** A word that its header line takes in place of a misspelt one. */
const headerWordLike: Cure = ({ words, place, line }) => {
  if (!/\p{L}{2}/u.test(words)) return [];
  const opener = /^\s*(\p{L}+)/u.exec(line.text)?.[1]?.toLowerCase() ?? '';
  return mending(line, place, speltLike(words, HEADER_FORMS[opener] ?? []));
};
/** The opener of a header line in place of the misspelt first word of a line. */
const openerLike: Cure = ({ place, line }) => openersFor(line, place);
export function openersFor(line: LineSyntax, place: Place): Fix[] {
  const [first = ''] = line.text.slice(place.start, place.end).split(/\s/);
  if (line.text.slice(0, place.start).trim() !== '') return [];
  return mending(line, { ...place, end: place.start + first.length }, speltLike(first, OPENERS)).filter(
    ({ edits: [edit] }) => edit?.edit === 'replace' && isOpened(line, edit),
  );
}
/** What opens a line of the header or of the life of a visit. */
const OPENERS: readonly string[] = [...HEADER_WORDS, ...LIFECYCLE_WORDS, ...PREFIX_WORDS];
/** `2026-4-5` with its zeros. */
const padDate: Cure = ({ place, line: { text } }) => {
  for (const match of text.matchAll(/(?<!\d)(\d{4})-(\d{1,2})-(\d{1,2})(?!\d)/g)) {
    const [typed, year = '', month = '', day = ''] = match;
    const at = { line: place.line, start: match.index, end: match.index + typed.length };
    const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
    const near = at.start <= place.end && place.start <= at.end;
    if (near && date !== typed && dayOf(date) !== undefined) return [write(at, date)];
  }
  return [];
};
function mending(line: LineSyntax, place: Place, words: readonly string[]): Fix[] {
  const left = (text: string): number => readLine(text, line.under).problems.length;
  return words
    .filter((each) => left(withWord(line.text, place, each)) < line.problems.length)
    .map((each) => inPlaceOf(line.text.slice(place.start, place.end), place, each));
}
const withWord = (text: string, { start, end }: Place, by: string): string =>
  text.slice(0, start) + by + text.slice(end);
const isOpened = ({ text }: LineSyntax, { place, text: by }: { place: Place; text: string }): boolean => {
  const read = readLine(withWord(text, place, by));
  return read.kind === 'header' || read.carried !== undefined || read.examiner !== undefined;
};

/** `signed 2026-03-09 surgoen`, `examiner nurs: 2nd drawer 1`: the role that was meant. */
const signerLike: Cure = ({ line, place }) => {
  const [typed, before = '', name = ''] =
    /^(\s*(?:examiner|(?:signed|addendum)\b.*)\s)(\p{Ll}+):?/u.exec(line.text) ?? [];
  const at = { ...place, start: before.length, end: before.length + name.length };
  return typed && place.start <= at.end ? mending(line, at, speltLike(name, SIGNER_ROLES)) : [];
};
/** `scales drawer 04`. */
const scaleLike: Cure = ({ words, place, line }) => {
  const digits = words.replaceAll(/\D/g, '');
  const found = digits === words ? DRAWER_SCALES.find((scale) => scale.replace('-', '') === digits) : undefined;
  return found ? mending(line, place, [found]) : [];
};
/** `web 3/4`: as `web 3-4`, and `webs 2/3` can only be two spaces. */
const slashedWebs: Cure = (reported) => {
  const { line, place } = reported;
  for (const { 0: words, index, 1: several } of line.text.matchAll(/\b(?:web|space)(s?)\s+\d\/\d(?![\d/])/gi)) {
    const at = { line: place.line, start: index, end: index + words.length };
    if (place.start > at.end || place.end < at.start) continue;
    const fixes = oneWebOrTwo({ ...reported, words, place: at });
    return several ? fixes.slice(-1) : fixes;
  }
  return [];
};

/** A visit without side: its misspelt side, else its line takes one at its end. */
const sideOfVisit: Cure = ({ visit, lines: [first] }) => {
  const last = first?.roles.findLast(({ kind }) => kind !== 'comment');
  if (!visit || visit.side !== undefined || !first?.header || !last) return [];
  const spelt = first.problems.flatMap(({ start, end }) =>
    mending(first, { line: 0, start, end }, speltLike(first.text.slice(start, end), VISIT_SIDE_BY_FORM.keys())),
  );
  const place = { line: 0, start: last.end, end: last.end };
  const added = (side: string): Fix => fix(`Write "${side}" on the visit line`, [replace(place, ` ${side}`)]);
  return spelt.length > 0 ? spelt : ['right', 'left'].map(added);
};

/** The side of the heading above, before each part of a plan that took it from there; only where the line then says just that. */
const sideOfHeading: Cure = ({ place, line, visit }) => {
  const facts = (visit?.facts ?? []).filter(
    ({ section, clarity, origin }) =>
      clarity === 'clear' && section === 'plan' && origin.sideFrom === 'heading' && origin.place.line === place.line,
  );
  const side = facts[0]?.side;
  const starts = [...new Set(facts.map(({ origin }) => origin.place.start))].sort((a, b) => b - a);
  if (!side || facts.some((fact) => fact.side !== side)) return [];
  const text = starts.reduce((so, start) => `${so.slice(0, start)}${side} ${so.slice(start)}`, line.text);
  const after = readLine(text, line.under);
  const findings = after.statements.flatMap((each) => each.findings);
  const sided = findings.filter((each) => each.side === side).length;
  if (sided !== starts.length || after.problems.length > line.problems.length) return [];
  const edits = starts.map((start) => replace({ line: place.line, start, end: start }, `${side} `));
  return [fix(`Write "${side}" with what is planned here`, edits)];
};

/** Does a word, misspelt or alone, say whose or which day's the line is? Quoted, it would leave the rest to count as today's. */
function opensItsLine(line: LineSyntax, place: Place): boolean {
  const [first = ''] = line.text.trim().split(/[\s:]/);
  if (line.text.slice(0, place.start).trim() !== '' || place.end >= line.text.trimEnd().length) return false;
  return PREFIX_WORDS.some((word) => word === first.toLowerCase()) || openersFor(line, place).length > 0;
}
/** May the words of a report become a remark? Not where they open their line, weigh what follows, or stand behind a `no` that would then deny it. */
export const mayBeRemark = (line: LineSyntax, place: Place): boolean =>
  !opensItsLine(line, place) &&
  !WEIGHS.test(line.text.slice(place.start, place.end)) &&
  !/(?:^|[^\p{L}])(?:no|not|nor|without|denies)\s+$/iu.test(line.text.slice(0, place.start));
const keepAsRemark: Cure = ({ words, place, line }) =>
  mayBeRemark(line, place) ? [fix(`Keep "${words}" as a quoted remark`, [replace(place, `"${words}"`)])] : [];
const writeDigit: Cure = ({ words, place }) => {
  const digit = HEARD_AS[words.toLowerCase()];
  return digit === undefined ? [] : [fix(`Write ${digit} for "${words}"`, [replace(place, String(digit))])];
};

const all =
  (...cures: readonly Cure[]): Cure =>
  (reported) =>
    cures.flatMap((cure) => cure(reported));
/** For each report whose message names the cure. Words of the header are looked for by their spelling. */
const CURES: Readonly<Record<string, Cure>> = {
  'ambiguous-web': oneWebOrTwo,
  'open-quote': closeQuote,
  'ambiguous-date': bothDates,
  'unused-allow': removeLine,
  'unknown-code': codeLike,
  'bad-header': all(headerWordLike, padDate, scaleLike),
  'bad-signer': all(signerLike, padDate),
  'unknown-word': all(openerLike, padDate, signerLike, slashedWebs, keepAsRemark),
  'word-out-of-place': all(openerLike, padDate, slashedWebs),
  'unclear-finding': all(openerLike, padDate, signerLike, slashedWebs),
  'number-without-place': padDate,
  'heard-number': writeDigit,
  'side-from-heading': sideOfHeading,
  'wrong-side': sideOfVisit,
};

/** The fixes that do what the message of a report says, made when somebody asks; every one needs review. */
export function namedCures(
  lines: readonly LineSyntax[],
  visit: VisitFacts | undefined,
): (report: Report) => readonly Fix[] {
  return ({ code, place }) => {
    const line = lines[place.line];
    if (!line) return [];
    // A word that costs a finding is reported there, and not by its own code.
    const problem = line.problems.find((each) => each.start === place.start && each.code.startsWith('ambiguous'));
    const cure = CURES[code === 'unclear-finding' ? (problem?.code ?? code) : code];
    return cure?.({ words: line.text.slice(place.start, place.end), place, line, visit, lines }) ?? [];
  };
}
