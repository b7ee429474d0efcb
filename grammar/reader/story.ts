import { STORY_FROM } from '../lexicon/closed-words.ts';
import type { Section } from '../lexicon/entry.ts';
import type { ReadingCode, RoleKind } from '../syntax.ts';
import type { Span } from '../values.ts';
import type { Binder } from './binder.ts';
import type { Element } from './draft.ts';

const UNREAD: ReadonlySet<RoleKind> = new Set(['reported']);
const WORDS: ReadonlySet<RoleKind> = new Set(['reported', 'modifier', 'filler', 'value']);
const TOLD_CODES: ReadonlySet<ReadingCode> = new Set(['unknown-word', 'word-out-of-place', 'number-without-place']);
/** Words of no list make a story; in an impression anything does that is no diagnosis. */
const tells = (element: Element, section: Section): boolean =>
  element.is === 'unread' && (section === 'impression' || element.cause.why === 'unknown word');
const isComma = (element: Element): boolean => element.is === 'break' && element.by === 'punctuation';

/** A story is kept as typed on purpose: its words are verbatim and not reported one by one. */
export function tell(binder: Binder): void {
  const from = STORY_FROM[binder.section];
  const start = binder.segmentStart;
  binder.segmentStart = binder.roles.at(-1)?.end ?? start;
  if (from === undefined) return;
  const { elements } = binder.statement;
  const segment = elements.slice(elements.findLastIndex((each) => isComma(each)) + 1);
  if (segment.filter((each) => tells(each, binder.section)).length < from) return;
  const told = segment.some(({ is }) => is === 'finding' || is === 'subject') ? UNREAD : WORDS;
  let whole: Span | undefined;
  for (let i = binder.roles.length - 1; i >= 0; i--) {
    const role = binder.roles[i];
    if (!role || role.start < start) break;
    if (!told.has(role.kind)) continue;
    binder.roles[i] = { kind: 'verbatim', start: role.start, end: role.end };
    whole = { start: role.start, end: whole?.end ?? role.end };
  }
  if (whole && told === WORDS) binder.keep(whole, false);
  for (let i = binder.problems.length - 1; i >= 0 && (binder.problems[i]?.start ?? -1) >= start; i--)
    if (TOLD_CODES.has(binder.problems[i]?.code ?? 'bad-header')) binder.problems.splice(i, 1);
}
