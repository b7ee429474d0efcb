import type { Section } from '../../../grammar/lexicon/entry.ts';
import { entryOf } from '../../../grammar/lexicon/index.ts';
import { formOf } from '../../../grammar/reader/forms.ts';
import { subjectText } from '../../../grammar/reader/read-subjects.ts';
import type { FindingNode, LineSyntax, SubjectNode } from '../../../grammar/syntax.ts';

/** Words to be put into a line at an offset. */
export interface Insertion {
  readonly at: number;
  readonly text: string;
}

/**
 * `tender second toe plantar paper holds`: the one subject that a line names, for the findings after it that have none. Nothing where the line
 * names two, or a subject that could not be read, or where another place could be meant.
 */
export function subjectsFor(line: LineSyntax): Insertion[] {
  const found = line.statements.flatMap(({ findings }) => findings);
  const named = new Map(found.flatMap(({ subject }) => (subject ? [[subjectText(subject), subject] as const] : [])));
  const only = [...named.values()][0];
  const heard = new Set(line.roles.filter(({ kind }) => kind === 'subject').map(({ canonical }) => canonical));
  if (!only || named.size > 1 || heard.size > 1 || only.at === 'others') return [];
  if (line.problems.some(({ code }) => code === 'ambiguous-web')) return [];
  const text = subjectText(only);
  return found.flatMap((finding) => (wants(finding, only) ? [{ at: finding.start, text: `; ${text} ` }] : []));
}

/** A finding of rays or webs alone, that the subject precedes and that has none. */
function wants({ id, subject, start, section }: FindingNode, only: SubjectNode): boolean {
  if (subject || id === 'panel' || only.start >= start || section !== 'exam') return false;
  const kinds = entryOf(id).subjects;
  const kind = only.at === 'webs' ? 'web' : 'ray';
  return kinds.includes(kind) && kinds.every((each) => each === 'ray' || each === 'web');
}

/**
 * The image, or the plan for a review, in which alone a word belongs that has no place in the exam; `undefined` where it fits in several.
 * A treatment is planned, tried or done by its section or verb alone, so that no section is proposed for one.
 */
export function onlySectionOf(text: string): Section | undefined {
  const found = formOf(text)?.findings ?? [];
  const [only, more] = new Set(found.flatMap(({ id }) => entryOf(id).sections));
  const proposed = found.every(({ id }) => id === 'review') || IMAGES.includes(only as Section);
  return only && !more && proposed ? only : undefined;
}
const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];
