import { entryOf } from '../../grammar/lexicon/index.ts';
import { PREFIX_WORDS } from '../../grammar/lexicon/lifecycle-words.ts';
import { type Form, formOf, type WordClass } from '../../grammar/reader/forms.ts';
import { WEIGHS } from '../../grammar/reader/openings.ts';
import type { Cause, FindingNode, LineSyntax, Role } from '../../grammar/syntax.ts';
import type { Span } from '../../grammar/values.ts';
import type { Place, VisitFacts } from './facts.ts';
import { speltLike } from './spelling.ts';

/** Causes that are gone once the word that gave them is a remark. */
const OF_WORDS: ReadonlySet<Cause['why']> = new Set(['unknown word', 'word out of place']);
/** What they are said of is in the words beside them (`cartilage ok`). */
const SAID_OF_ANYTHING: ReadonlySet<FindingNode['id']> = new Set(['unremarkable', 'panel']);
/** Words that turn, date or place what stands beside them: never parted from it. */
const TURNING: readonly WordClass[] = [
  'no',
  'not',
  'absent',
  'not done',
  'unable',
  'equivocal',
  'positive',
  'present',
  'avoid',
  'distancing',
  'list end',
  'others',
  'foreign part',
];
const TURNS =
  /n['’]?t$|^(?:cannot|non|w\/o|without|neither|lacks?|den(?:y|ied|ies)|free|ex|old|past|prev|pre|post|since|til|till|last|next|same|as|from|by|his|her|mum|dad|off|out|away|down|up|stop|start|less|too|better|worse|improving|improved|normal|ok|fine|intact)$/i;

/**
 * The words of a run that may become remarks beside the findings that they make unclear; `undefined` where a finding of the
 * run is unclear for another reason, where a word among them turns the finding, or where the run holds no finding.
 */
export function remarksOf(line: LineSyntax, run: Place, visit: VisitFacts): Span[] | undefined {
  const findings = line.statements.flatMap((each) => each.findings).filter((each) => within(each, run));
  if (findings.length === 0 || !findings.every((each) => !SAID_OF_ANYTHING.has(each.id) && isOfWords(each)))
    return undefined;
  const here = visit.unclear.filter(({ place, word }) => place.line === run.line && within(word, run));
  if (!here.every(({ why }) => OF_WORDS.has(why as Cause['why']))) return undefined;
  const roles = line.roles.filter((role) => within(role, run));
  const unread = roles.filter(({ kind }) => kind === 'reported');
  if (unread.length === 0 || !unread.every((role) => isPlain(line.text.slice(role.start, role.end)))) return undefined;
  return joined(roles);
}

const within = (inner: Span, outer: Span): boolean => outer.start <= inner.start && inner.end <= outer.end;
const isOfWords = ({ causes, slots }: FindingNode): boolean =>
  [causes, ...Object.values(slots).map((slot) => slot.causes)].flat().every(({ why }) => OF_WORDS.has(why));

/** A word of letters that neither denies nor doubts, names no side, and does not say whose or which day's the line is (`propsed`). */
function isPlain(text: string): boolean {
  if (!/\p{L}/u.test(text) || /\d/.test(text)) return false;
  const form = formOf(text);
  if (speltLike(text, PREFIX_WORDS).length > 0 || PREFIX_WORDS.some((word) => word === text.toLowerCase()))
    return false;
  return (
    !TURNS.test(text) &&
    !WEIGHS.test(text) &&
    !form?.side &&
    !locates(form) &&
    !TURNING.some((name) => form?.classes.has(name))
  );
}

/** A place (`shaft tender`) is part of what is said. */
const locates = (form: Form | undefined): boolean =>
  [...(form?.values ?? [])].some(([id, claims]) => claims.some(({ slot }) => entryOf(id).slots[slot]?.locating));

/** Unread words side by side are one remark, with the small words between them. */
function joined(roles: readonly Role[]): Span[] {
  const spans: { start: number; end: number }[] = [];
  let open: { start: number; end: number } | undefined;
  for (const { kind, start, end } of roles) {
    if (kind === 'reported') {
      if (open) open.end = end;
      else {
        open = { start, end };
        spans.push(open);
      }
    } else if (kind !== 'filler') open = undefined;
  }
  return spans;
}
