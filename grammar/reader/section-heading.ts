import { HEADING_WORDS } from '../lexicon/closed-words.ts';
import type { LineSyntax, SectionHeading, StatementNode } from '../syntax.ts';
import type { Binder } from './binder.ts';
import { causeOf, type Draft } from './draft.ts';
import { matchesAt } from './forms.ts';
import type { Item } from './items.ts';

/**
 * `plan:` alone on its line opens its section for the lines below it. A section word without the colon does so only under
 * another heading, where it would else be taken for that one's.
 */
export function readSectionHeading(binder: Binder, under: SectionHeading | undefined): SectionHeading | undefined {
  const { items, line } = binder;
  const comment = items.at(-1)?.is === 'comment' ? items.at(-1) : undefined;
  const end = comment ? items.length - 1 : items.length;
  const colon = isColon(items[end - 1], line) ? items[end - 1] : undefined;
  const next = colon ? end - 1 : end;
  if (next < 1 || !(colon || under)) return undefined;
  const form = matchesAt(items, 0).find((match) => match.form.section && match.next === next)?.form;
  // `mri` below `plan:` is planned.
  const section = colon || !form || !binder.findingIn(form) ? form?.section?.section : undefined;
  const at = binder.span(0, next);
  const opens =
    section ??
    (colon &&
      HEADING_WORDS[
        line
          .slice(at.start, at.end)
          .toLowerCase()
          .replace(/[\s-]+/g, ' ')
      ]);
  if (!opens) return undefined;
  if (opens === 'images') binder.role('keyword', at);
  else binder.openSection(opens, at);
  const done = opens === 'operation' && !binder.unsaid;
  if (colon) binder.role('punctuation', colon);
  if (comment) binder.role('comment', comment);
  return done ? 'operation done' : opens;
}
const isColon = (item: Item | undefined, line: string): boolean => item?.is === 'keeper' && line[item.start] === ':';

const CAPITALS = /^\p{Lu}[\p{Lu} ]{3,}$/u;

/** `Closure:`, `DISCUSSION`: a heading of its writer's own, of which nothing is read. What stands below it is not of the section above. */
export function isOtherHeading(line: string, statements: readonly StatementNode[]): boolean {
  const text = line.replace(/\/\/.*/, '').trim();
  const looks = text.endsWith(':') || (CAPITALS.test(text) && text.length < LONGEST);
  return looks && statements.every(({ findings }) => findings.every(({ causes }) => causes.length > 0));
}
/** Letters of a heading in capitals; a longer line is a sentence. */
const LONGEST = 40;

/** The section heading that reaches the line below: a blank line, a header line or another heading ends it. */
export function reachesBelow(line: LineSyntax | undefined): SectionHeading | undefined {
  if (line?.opens) return line.opens === 'none' ? undefined : line.opens;
  return line?.kind === 'statements' || line?.kind === 'comment' ? line.under : undefined;
}

/** Lines one after the other, each under the section heading that reaches it from above. */
export function readBelow(
  texts: readonly string[],
  read: (text: string, under?: SectionHeading) => LineSyntax,
  above?: LineSyntax,
): LineSyntax[] {
  let before = above;
  return texts.map((text) => {
    before = read(text, reachesBelow(before));
    return before;
  });
}

/** `- tape`, `2. review`: the mark of a list under a heading says nothing. The item after it. */
export function pastListMark({ items, line }: Binder): number {
  const [first, second, third] = items as readonly (Item | undefined)[];
  if (!first || !second) return 0;
  const isSpaced = (mark: Item) => /\s/.test(line[mark.end] ?? '');
  if (first.is === 'other' && MARKS.test(first.text) && isSpaced(first)) return 1;
  const counts = first.is === 'number' && !first.unit && !first.range && Number.isInteger(first.low) && first.low > 0;
  const closed = second.start === first.end && /[.)]/.test(line[second.start] ?? '') && isSpaced(second);
  return counts && closed && third ? 2 : 0;
}
const MARKS = /^[-*•·–+]$/;

/** Under `imaging:` the words of a line without its own image are of one that nobody has named. */
export function ofNoImage(drafts: readonly Draft[], line: string): void {
  for (const draft of drafts) if (draft.section === 'exam') draft.causes.push(causeOf('no image', draft.word, line));
}
