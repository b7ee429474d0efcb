import { SECTION_WORD, SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../../grammar/lexicon/entry.ts';
import { entryOf } from '../../../../grammar/lexicon/index.ts';
import { subjectText } from '../../../../grammar/reader/read-subjects.ts';
import type { FindingNode, LineSyntax, SubjectNode } from '../../../../grammar/syntax.ts';
import type { Context } from './context.ts';

/** A clause as a line of its own, read whole and with certainty. */
export interface Reading {
  readonly text: string;
  readonly section: Section;
  readonly findings: readonly FindingNode[];
  /** The words of the clause open it with a section, a subject or a side of their own. */
  readonly opens: boolean;
}
/** Read, or the offset in the words of the clause at which reading failed first. */
export type Tried =
  | Reading
  | { readonly failedAt: number /** At a word that no section knows. */; readonly unknown?: boolean };

const findingsOf = (line: LineSyntax): FindingNode[] => line.statements.flatMap(({ findings }) => findings);

/** Reports that stand beside what makes a word unread, or leave it read. */
const BESIDE: readonly string[] = ['heard-number', 'unread-red-flag'];

/** Where a line is not read with certainty, first; nothing where all of it is. */
function doubtIn(line: LineSyntax): number | undefined {
  if (line.kind !== 'statements' || line.heading || line.carried || line.examiner) return 0;
  const doubts = [
    ...line.roles.filter(({ kind }) => kind === 'reported').map(({ start }) => start),
    ...line.problems.filter(({ code }) => !BESIDE.includes(code)).map(({ start }) => start),
    ...line.statements.flatMap(({ verbatim }) => verbatim.map(({ start }) => start)),
  ];
  for (const { causes, slots, word } of findingsOf(line)) {
    doubts.push(...causes.map(({ start }) => start));
    if (causes.length > 0 && doubts.length === 0) doubts.push(word.start);
    for (const slot of Object.values(slots)) doubts.push(...slot.causes.map(() => slot.start));
  }
  if (doubts.length > 0) return Math.min(...doubts);
  return findingsOf(line).length === 0 ? 0 : undefined;
}

/** Sections whose findings are told without the section being said; what is treated is planned, tried or done by its word alone. */
const UNSAID: readonly Section[] = ['exam', 'history', 'lab'];
const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];

/** What an image shows as well as the exam: after an image it is not taken for examined. */
const SEEN: readonly string[] = [
  'subluxed',
  'dislocated',
  'swelling',
  'foot-swelling',
  'callus',
  'extension',
  'deviation',
  'overlap',
];

/** Reads the words of a clause where they were said: in their own section, the section in force, or one that needs no word. */
export function readClause(words: string, context: Context): Tried {
  const own = context.read(words);
  const first = own.statements[0]?.section;
  const opened = first === 'exam' && own.roles[0]?.kind !== 'keyword' ? undefined : first;
  const sections = opened ? [opened] : [...new Set([context.section, ...UNSAID, 'xray' as const])];
  let failedAt = 0;
  for (const section of sections) {
    const prefix = opened || section === 'exam' ? '' : `${SECTION_WORD[section]} `;
    const line = prefix === '' ? own : context.read(prefix + words);
    const doubt = doubtIn(line);
    if (doubt !== undefined) {
      failedAt = Math.max(failedAt, doubt - prefix.length);
      // No section knows a word that the language does not have.
      if (line.problems.some(({ code, start }) => code === 'unknown-word' && start === doubt))
        return { failedAt, unknown: true };
      continue;
    }
    // A drug that is named after what was tried is taken, unless it says what it did.
    const taken = findingsOf(line).find(
      ({ id, slots }, i) => id === 'medicine' && !slots.response && (i > 0 || !opened),
    );
    if (section === 'tried' && taken) {
      failedAt = Math.max(failedAt, taken.word.start - prefix.length);
      continue;
    }
    // In the note of an operation they are orders, not what was found.
    if (
      context.base === 'operation' &&
      section === 'exam' &&
      findingsOf(line).some(({ id }) => id === 'sutures' || id === 'pin-out')
    )
      break;
    // One image is not another.
    if (section !== context.section && section === 'xray' && IMAGES.includes(context.section)) break;
    if (section === 'exam' && IMAGES.includes(context.section) && findingsOf(line).some(({ id }) => SEEN.includes(id)))
      break;
    const whole = findingsOf(line).find(isOfWhole);
    if (whole) {
      failedAt = Math.max(failedAt, whole.word.start - prefix.length);
      continue;
    }
    if (!mayBeUnsaid(line, section, opened !== undefined || section === context.section, prefix.length)) continue;
    return (
      placed(line, section, prefix.length, context) ?? {
        failedAt: Math.max(failedAt, unplacedAt(line) - prefix.length),
      }
    );
  }
  return { failedAt };
}

/** An image that was not said is only that of a finding of that image alone. */
function mayBeUnsaid(line: LineSyntax, section: Section, said: boolean, prefix: number): boolean {
  if (findingsOf(line).some((each) => each.section !== section)) return false;
  // `pain` is a section and a finding: put before the words, it would be said by nobody.
  if (findingsOf(line).some(({ word }) => word.start < prefix)) return false;
  if (!said && findingsOf(line).some(({ id }) => id !== 'panel' && entryOf(id).kind === 'treatment')) return false;
  // `tape rash on the second toe` is seen on the toe.
  if (!said && findingsOf(line).some(isRashFromTape)) return false;
  if (said || !IMAGES.includes(section)) return true;
  // A view is that of a film where nobody says that it was a CT.
  return findingsOf(line).every(({ id }) => id === 'view' || (id !== 'panel' && entryOf(id).sections.length === 1));
}

const isRashFromTape = ({ id, slots, word }: FindingNode): boolean =>
  id === 'allergy' && slots.reaction !== undefined && slots.reaction.start === word.start;

/** `lateral` alone may be the place of anything, and a number after it may count something else (`lateral two thirds`). */
const isOnlyDirection = ({ id, slots, word }: FindingNode, { text }: LineSyntax): boolean =>
  id === 'deviation' &&
  slots.direction?.start === word.start &&
  !slots.degree &&
  (!slots.angle || /\d$/.test(text.slice(slots.angle.start, slots.angle.end)));

/** `painful` alone is of what was said before it. */
const isOnlyPainful = ({ id, word }: FindingNode, { text }: LineSyntax): boolean =>
  id === 'pain' && /^(?:painful|sore)$/i.test(text.slice(word.start, word.end));

/**
 * `fourth and fifth normal` among images is no examination, `second toe ok` may go on (`ok, drawer ...`), and a pain that is denied without its
 * place may be of what was said before it.
 */
function isOnlyWord(
  { id, status, subject, slots, word }: FindingNode,
  { text, statements: [first] }: LineSyntax,
  { imaged: named, section }: Context,
): boolean {
  const examined = first?.section === 'exam';
  // Web spaces that are fine right after the exam are no image.
  const imaged = named && !(subject?.at === 'webs' && section === 'exam');
  if (id === 'panel') return imaged && examined;
  if (id === 'unremarkable') return (imaged && examined) || /^ok(?:ay)?$/i.test(text.slice(word.start, word.end));
  const bare = !subject && Object.keys(slots).length === 0;
  return bare && id === 'pain' && status === 'absent' && examined && first.findings.length === 1;
}

/** A section that was said, or a subject or side before the first finding; `pain` is a section and a finding, and opens nothing. */
const opensIts = ({ roles, text }: LineSyntax, prefix: number, [first]: readonly FindingNode[]): boolean => {
  const [role] = roles;
  const section =
    prefix === 0 && role?.kind === 'keyword' && SECTION_WORDS[text.slice(role.start, role.end).toLowerCase()];
  return (
    Boolean(section) ||
    (first?.subject?.start ?? first?.word.start ?? 0) < (first?.word.start ?? 0) ||
    first?.side !== undefined
  );
};

/** The first finding without a subject. */
const unplacedAt = (line: LineSyntax): number => findingsOf(line).find(({ subject }) => !subject)?.start ?? 0;

/** What is seen of a wound or a pin is of the foot, unless a toe is named with it. */
const UNCARRIED: readonly string[] = [
  'pin-out',
  'pin-in-place',
  'sutures',
  'dressing',
  'wound',
  'pin-site',
  'bruising',
];
/** Said of the foot, unless a toe is named with it. */
const OF_THE_WHOLE: readonly string[] = ['sensation', 'neurovascular'];
/** `second toe drawer two sensation normal`: a ray that another finding was said of first is not that of the foot's feeling. */
const isOfWhole = ({ id, subject, word }: FindingNode, i: number, found: readonly FindingNode[]): boolean => {
  const before = found[i - 1];
  return (
    OF_THE_WHOLE.includes(id) &&
    subject !== undefined &&
    before !== undefined &&
    subject.start < before.word.start &&
    before.word.start < word.start
  );
};
/** Findings of the whole foot, though a toe may have them too. */
const OF_THE_FOOT: readonly string[] = ['sensation', 'skin', 'neurovascular', 'capillary-refill', 'callus', 'fat-pad'];

/** `no rest pain` is said of the foot. */
const isRestPain = ({ id, slots }: FindingNode): boolean =>
  id === 'pain' &&
  slots.character?.value.is === 'word' &&
  slots.character.value.words.every((word) => word === 'rest' || word === 'night');

/** The line with the side and the subject that it stands under; nothing where either is not certain. */
function placed(line: LineSyntax, section: Section, prefix: number, context: Context): Reading | undefined {
  const found = findingsOf(line);
  if (found.some((each) => isOnlyWord(each, line, context))) return undefined;
  if (found.some((each) => isOnlyDirection(each, line) || isOnlyPainful(each, line))) return undefined;
  const imaged = prefix === 0 && IMAGES.includes(section);
  const toes = found.every(({ id, word }) => id === 'perfusion' && /^toes /.test(line.text.slice(word.start)));
  const crossed =
    context.home !== undefined &&
    found.some(({ side }) => side !== undefined && context.side !== undefined && side !== context.side);
  const here = crossed ? { ...context, subject: undefined, named: true } : context;
  const subject = toes ? undefined : subjectFor(found, section, here, imaged);
  if (subject === null) return undefined;
  const side = sideFor(found, context);
  if (side === null) return undefined;
  const opens = opensIts(line, prefix, found);
  const added = [side, subject].filter((each) => each !== undefined).join(' ');
  if (added === '') return { text: line.text, section, findings: found, opens };
  const head = section === 'exam' && line.roles[0]?.kind !== 'keyword' ? 0 : (line.roles[0]?.end ?? 0);
  const rest = line.text.slice(head).trim();
  const [own = ''] = /^(?:right|left) /.exec(rest) ?? [];
  const text = `${line.text.slice(0, head)} ${own}${added} ${rest.slice(own.length)}`.trim();
  const whole = context.read(text);
  const again = findingsOf(whole);
  const kept = doubtIn(whole) === undefined && again.length === found.length;
  const under = again.every(
    (each) =>
      (!side || isOfPatient(each) || each.side === side || each.subject?.side === side) &&
      (!subject || each.subject !== undefined || !takes(each, 'ray')),
  );
  return kept && under ? { text, section, findings: again, opens } : undefined;
}

const kindsOf = ({ id }: FindingNode): readonly string[] => (id === 'panel' ? ['ray', 'web'] : entryOf(id).subjects);
const takes = (finding: FindingNode, kind: string): boolean => kindsOf(finding).includes(kind);
const isOfPatient = (finding: FindingNode): boolean => kindsOf(finding).every((kind) => kind === 'patient');
const ELSEWHERE: readonly Section[] = ['history', 'pain', 'tried', 'plan', 'operation', 'impression', 'lab'];

/** An operation has one skin, one dressing and one tourniquet, on however many rays it was. */
const OF_ALL: readonly string[] = ['closure', 'dressing', 'tourniquet'];

/** The subject to be added, `undefined` for none, `null` where it is not certain whether or which. */
function subjectFor(
  found: readonly FindingNode[],
  section: Section,
  context: Context,
  imaged: boolean,
): string | undefined | null {
  const open = found.filter(({ subject }) => subject === undefined);
  if (open.length === 0) return undefined;
  const { subject, sentence, named } = context;
  // A film that is normal is that of the foot.
  if (imaged && found.length === 1 && found[0]?.id === 'unremarkable') return undefined;
  // `normal` and `fine` say nothing of a place that was named before them.
  if (open.some(({ id }) => id === 'panel' || id === 'unremarkable')) return null;
  const needs = open.some((each) => kindsOf(each).every((kind) => kind === 'ray' || kind === 'web'));
  const fits = subject !== undefined && open.every((each) => takes(each, subject.kind));
  // A swelling may be of the whole foot where its ray was named a sentence ago.
  if (open.some(({ id }) => id === 'swelling') && subject?.sentence !== sentence) return null;
  // Which toe is seen after an operation on several is not certain.
  if (needs && section === 'exam' && context.base === 'operation' && context.only === undefined) return null;
  if (needs) return fits && open.length === found.length ? subject.text : null;
  const told = open.every(({ id }) => id !== 'panel' && !['sign', 'measure'].includes(entryOf(id).kind));
  if (section === 'operation' && open.every((each) => !takes(each, 'ray') || OF_ALL.includes(each.id)))
    return undefined;
  // What is done goes on at the ray of its sentence, or at the only one of the note.
  if (told && section === 'operation' && named)
    return fits && (subject.sentence === sentence || subject.text.startsWith(context.only ?? '-'))
      ? subject.text
      : null;
  if (imaged && !needs) return undefined;
  // What an image denies it denies of the foot.
  if (IMAGES.includes(section) && !needs && open.every(({ status }) => status === 'absent')) return undefined;
  if (told || ELSEWHERE.includes(section) || open.every((each) => !takes(each, 'ray') && !takes(each, 'web')))
    return undefined;
  if (open.every(({ id, status }) => UNCARRIED.includes(id) && status === 'present')) return undefined;
  // An operation has complications, and not one toe.
  if (open.every(({ id }) => id === 'complication')) return undefined;
  // `no redness` after a toe was named may be of the toe, or of the foot.
  if (
    open.some(({ id }) => OF_THE_WHOLE.includes(id)) &&
    open.every(({ id }) => OF_THE_WHOLE.includes(id) || id === 'capillary-refill' || id === 'skin')
  )
    return undefined;
  if (fits && subject.weak)
    return open.some((each) => takes(each, 'foot')) || open.some(({ id }) => id === 'swelling')
      ? undefined
      : subject.text;
  if (fits && subject.sentence === sentence && open.length === found.length) return subject.text;
  return (!named && open.length === found.length) ||
    open.every((each) => OF_THE_FOOT.includes(each.id) || isRestPain(each))
    ? undefined
    : null;
}

/** The side to be added, `undefined` where the visit or the words say it, `null` where it is not certain. */
function sideFor(found: readonly FindingNode[], { side, home }: Context): string | undefined | null {
  const ofFoot = found.filter((each) => !isOfPatient(each));
  const open = ofFoot.filter((each) => each.side === undefined && each.subject?.side === undefined);
  if (open.length === 0) return undefined;
  // In a visit of both feet what has no side may be said of the patient.
  if (home === undefined && open.every((each) => takes(each, 'patient'))) return undefined;
  if (open.length < ofFoot.length || side === undefined) return null;
  return side === home ? undefined : side;
}

/** The subject that a clause names first or last, in the words of the language. */
export function subjectOf(findings: readonly FindingNode[]): { text: string; kind: 'ray' | 'web' } | undefined {
  const subject = findings.findLast((each) => each.subject)?.subject;
  if (!subject || subject.at === 'others') return undefined;
  // Neither a side nor the bone goes on to what is said after it.
  const part = 'part' in subject && subject.part !== 'metatarsal' ? subject.part : undefined;
  const bare = { ...subject, side: undefined, part };
  return {
    text: subjectText(bare as SubjectNode),
    kind: subject.at === 'webs' ? 'web' : 'ray',
  };
}
