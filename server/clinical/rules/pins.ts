import { clearFacts } from '../answers.ts';
import { after, dayFrom, dayOf, daysBetween, isoOf, range } from '../dates.ts';
import { type AnyFact, type Place, subjectKey, type VisitFacts } from '../facts.ts';
import { foldWatch, pinKeys, pinsOf, type Watch, type WatchKey } from '../watch.ts';
import { OVERDUE_AFTER_DAYS } from '../windows.ts';
import { defineRule } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
/** A visit is reported at its first word where the words that are missing can't be marked. */
const VISIT: Place = { line: 0, start: 0, end: 'visit'.length };

const HEADER = 'forefoot 1\nscales drawer 0-4\n\nvisit 2026-01-12 operation right\n';

/** The pins of earlier visits that this one does not say to be out. */
function pinsIn(visit: VisitFacts, before: Watch): readonly WatchKey[] {
  const pins = pinsOf(before);
  if (pins.length === 0) return pins;
  const after = foldWatch(before, visit);
  return pins.filter((key) => after[key] !== undefined);
}
const pinName = (key: WatchKey): string => key.slice('pin '.length);

/** More than a week past its day: then whether it is out at all is what is asked. */
function isLate({ date }: VisitFacts, by: string | undefined): boolean {
  const due = dayOf(by ?? '');
  return due !== undefined && date !== undefined && daysBetween(due, dayFrom(date)) > OVERDUE_AFTER_DAYS;
}

export const pinOverdue = defineRule({
  ...practice,
  code: 'pin-overdue',
  name: 'Pin past its stated date',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['procedure', 'pin-out', 'pin-site'],
  what: 'The day by which a pin was to be out lies more than a week back, and nothing says that it is out.',
  why: 'A forgotten pin migrates, breaks or infects; the order of the operation note wins over any protocol.',
  instead: 'Write pin-out, or the new day in the plan.',
  examples: {
    invalid: `${HEADER}operation 2nd plate repair, pin 4 weeks\n\nvisit 2026-03-09 postop right\n2nd pin-site clean`,
    valid: `${HEADER}operation 2nd plate repair, pin 4 weeks\n\nvisit 2026-03-09 postop right\n2nd pin-out`,
    nearMiss: `${HEADER}operation 2nd plate repair, pin 4 weeks\n\nvisit 2026-02-09 postop right\n2nd pin-site clean`,
  },
  *check({ visit, before }) {
    const { side } = visit;
    const keys = pinsIn(visit, before.watch).filter((key) => !side || side === 'both' || key.startsWith(`pin ${side}`));
    const late = keys.filter((key) => isLate(visit, before.watch[key]));
    const ordered = clearFacts(visit.facts, 'pin-out').some(({ section }) => section === 'plan');
    const [first] = late;
    if (!first || ordered) return;
    const site = clearFacts(visit.facts, 'pin-site')[0];
    const message = `The pin of the ${pinName(first)} was to be out by ${before.watch[first]}, and nothing says that it is. Write pin-out, or the new day.`;
    yield { place: site?.origin.place ?? VISIT, message };
  },
});

export const pinAndShoe = defineRule({
  ...practice,
  code: 'pin-and-shoe',
  name: 'Ordinary shoe over a pin',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['ordinary-shoes', 'procedure', 'pin-out'],
  needs: ['ordinary-shoes'],
  what: 'Ordinary shoes are worn or ordered while a pin is in, or before the day on which it is to be out.',
  why: 'The pin leaves before the shoe returns: a shoe bends or drives it.',
  instead: 'Order the pin out first, or write pin-out if it is.',
  examples: {
    invalid: `${HEADER}operation 2nd plate repair, pin 6 weeks, ordinary-shoes from 4 weeks`,
    valid: `${HEADER}operation 2nd plate repair, pin 4 weeks, ordinary-shoes from 6 weeks`,
    nearMiss: `${HEADER}operation 2nd plate repair, pin 4 weeks\n\nvisit 2026-03-02 postop right\n2nd pin-out\nordinary-shoes`,
  },
  *check({ visit, before }) {
    const shoes = clearFacts(visit.facts, 'ordinary-shoes').filter(({ status }) => status === 'present');
    if (shoes.length === 0) return;
    const pins = foldWatch(before.watch, visit);
    for (const fact of shoes) {
      const day = shoeDay(fact, visit);
      const [pin] = pinKeys(pins, fact).filter((key) => {
        const due = pins[key];
        if (isLate(visit, due)) return false;
        return fact.section === 'exam' || !due || due === 'undated' || !day || day < due;
      });
      if (!pin) continue;
      yield {
        place: fact.origin.place,
        message: `Ordinary shoes while the pin of the ${pinName(pin)} is in: the pin leaves first. Write pin-out, or a later day.`,
      };
    }
  },
});
type Shoes = Extract<AnyFact, { finding: 'ordinary-shoes' }>;
function shoeDay({ values: { from, on } }: Shoes, visit: VisitFacts): string | undefined {
  if (on?.is === 'date') return isoOf(range(on.date).first);
  if (!visit.date) return undefined;
  return isoOf(from ? after(dayFrom(visit.date), from) : dayFrom(visit.date));
}
export const pinAndMotion = defineRule({
  ...practice,
  code: 'pin-and-motion',
  name: 'Motion through a pin',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['mtp-dorsiflexion', 'mtp-plantarflexion', 'drawer', 'procedure', 'pin-out'],
  what: 'Motion or a drawer of a joint is stated, or passive motion planned, while a pin holds that joint.',
  why: 'No passive motion is done through a pin: it breaks the pin or the repair.',
  instead: 'Write pin-out if the pin is out; else leave the joint at rest.',
  examples: {
    invalid: `${HEADER}operation 2nd plate repair, pin 6 weeks\n\nvisit 2026-02-09 postop right\n2nd mtp-plantarflexion 10°`,
    valid: `${HEADER}operation 2nd plate repair, pin 6 weeks\n\nvisit 2026-02-09 postop right\n2nd pin-out, mtp-plantarflexion 10°`,
    nearMiss: `${HEADER}operation 2nd plate repair, pin 6 weeks\n\nvisit 2026-02-09 postop right\n3rd mtp-plantarflexion 10°`,
  },
  *check({ visit, before }) {
    const keys = pinsIn(visit, before.watch).filter((key) => !isLate(visit, before.watch[key]));
    const [pin] = keys;
    if (!pin) return;
    const held = (fact: AnyFact) => keys.includes(`pin ${subjectKey(fact.subject, fact.side)}`);
    const moved = (['mtp-dorsiflexion', 'mtp-plantarflexion', 'drawer'] as const)
      .flatMap((finding) => clearFacts(visit.facts, finding) as AnyFact[])
      .find((fact) => fact.status === 'present' && held(fact));
    const message = `The pin of the ${pinName(pin)} is in, as far as the file says: no motion and no drawer through a pin. Write pin-out if it is out.`;
    if (moved) yield { place: moved.origin.place, message };
    const passive = visit.verbatim.find(
      ({ section, text }) => section === 'plan' && /passive|mobilis|manipulat/i.test(text),
    );
    if (!moved && passive) yield { place: passive.place, message };
  },
});
