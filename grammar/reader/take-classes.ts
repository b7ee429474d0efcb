import { entryOf } from '../lexicon/index.ts';
import { findingPast } from './adjectives.ts';
import type { Binder } from './binder.ts';
import { causeOf, isBare } from './draft.ts';
import type { Match } from './forms.ts';
import { endsSegment } from './items.ts';

/** Takes the phrase at an index, or leaves it to the next taker. */
export type Taker = (binder: Binder, match: Match, index: number) => boolean;

/** `normal` alone for a ray or web is its panel. */
export const takePanel: Taker = (binder, { form, next }, index) => {
  if (!form.classes.has('panel')) return false;
  const last = binder.last();
  const item = binder.items[next];
  const ends = endsSegment(item) || item?.is === 'quote';
  const starts = last === undefined || last.is === 'subject' || last.is === 'break';
  if (!starts || !ends || binder.no || binder.not || binder.side || binder.before.length > 0) return false;
  const at = binder.span(index, next);
  if (binder.section === 'exam' || binder.section === 'stand') {
    const draft = binder.draft('panel', undefined, at);
    if (draft.subject?.side) draft.side = draft.subject.side;
    binder.push({ is: 'finding', draft });
    binder.role('value', at);
  } else if (binder.canHold('unremarkable')) binder.startFinding({ id: 'unremarkable' }, at);
  else return false;
  return true;
};

/** Words of a class that belong to no finding: they distance, name another part, or only join. */
export const takeClass: Taker = (binder, { form, next }, index) => {
  const at = binder.span(index, next);
  const { classes } = form;
  if (classes.has('distancing')) {
    binder.flush();
    binder.push({ is: 'distancing', cause: causeOf('distancing word', at, binder.line) });
    binder.keep(at, false);
    binder.role('modifier', at);
    return true;
  }
  if (classes.has('foreign part')) {
    binder.unread(at, 'foreign part', 'word-out-of-place');
    return true;
  }
  if (classes.has('list end') && inDenial(binder)) {
    binder.push({ is: 'list end' });
    binder.role('filler', at);
    return true;
  }
  if (UNTIL_LATER.includes(form.parts.join(' ')) && isLeftOut(binder)) {
    binder.unread(at, 'word out of place', 'word-out-of-place');
    return true;
  }
  // What is planned for today is not planned for some day.
  if (binder.section === 'plan' && binder.current && form.parts.join(' ') === 'today') {
    binder.current.quotes.push({ text: binder.line.slice(at.start, at.end), ...at });
    binder.current.end = at.end;
    binder.role('verbatim', at);
    return true;
  }
  if (classes.has('harmless') && isAlone(binder, next)) {
    binder.keep(at, false);
    binder.role('verbatim', at);
    return true;
  }
  if (classes.has('harmless') || classes.has('filler') || namesItsToe(binder, form, next)) {
    binder.role('filler', at);
    return true;
  }
  return false;
};
/** `plan no steroid yet`: not for now is not never. */
const UNTIL_LATER: readonly string[] = ['yet', 'today'];
function isLeftOut({ section, current }: Binder): boolean {
  return section === 'plan' && current !== undefined && (current.status === 'avoid' || current.deniesPart === true);
}
/** `plan continue; review 6 weeks`: beside nothing else it is what was said. */
function isAlone(binder: Binder, next: number): boolean {
  const last = binder.last();
  return (last === undefined || last.is === 'break') && endsSegment(binder.items[next]);
}
/** `2nd straight, toe pink`: the toe of the ray in force. */
function namesItsToe(binder: Binder, { parts }: Match['form'], next: number): boolean {
  const { subject } = binder;
  const one = subject?.at === 'rays' && subject.rays.length === 1 && (subject.part ?? 'toe') === 'toe';
  const found = one && parts.join(' ') === 'toe' && binder.atSegmentStart() ? findingPast(binder, next) : undefined;
  return found !== undefined && entryOf(found.id).subjects.includes('ray');
}
/** Is the statement still within reach of a `no`? */
function inDenial(binder: Binder): boolean {
  const { elements } = binder.statement;
  const subject = elements.findLastIndex((each) => each.is === 'subject');
  const rest = elements.slice(subject + 1);
  const denier = rest.findLastIndex((each) => each.is === 'finding' && each.draft.denied);
  return (
    denier >= 0 &&
    rest.slice(denier + 1).every((each) => each.is !== 'finding' || each.draft.denied || isBare(each.draft))
  );
}
