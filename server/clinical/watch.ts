import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Duration, Ray, Side } from '../../grammar/values.ts';
import { clearFacts, deniesOneKind } from './answers.ts';
import { pulsesFelt } from './circulation.ts';
import { PROTECTING } from './course.ts';
import { after, type Day, dayFrom, daysBefore, daysOf, isoOf, range } from './dates.ts';
import { factsOf } from './fact-index.ts';
import { type AnyFact, subjectKey, subjectNumber, type VisitFacts } from './facts.ts';
import { hba1cPercent } from './hba1c.ts';
import { partAt, writtenOn } from './lifecycle.ts';
import { mentions } from './remarks.ts';

/** What makes an anti-inflammatory dangerous, as stated. */
export const ANTI_INFLAMMATORY_RISKS = [
  'ulcer-or-bleed',
  'kidney-disease',
  'heart-failure',
  'heart-disease',
  'anticoagulant',
  'pregnancy',
] as const satisfies readonly FindingId[];
/** What speaks against a drug, a tape, a boot or an operation, and is seldom written again at the next visit. */
export const RISKS = [...ANTI_INFLAMMATORY_RISKS, 'diabetes', 'smoking'] as const satisfies readonly FindingId[];
export type Risk = (typeof RISKS)[number];

type Foot = Side | 'patient';
/**
 * What is kept for the hazards that reach over visits. By key, to a word, an ISO day (`undated` where the visit has none) or
 * a list of days: `risk` to the day on which it was last stated, or `absent`; `injection` to the first days that each may mean;
 * `pin` to the day by which it is to be out; `shoes` to the first day of ordinary shoes; `review` to the last day of the one planned.
 */
export type WatchKey =
  | `risk ${Risk | `allergy ${string}` | 'hba1c' | 'falls'}`
  | `${'pulses' | 'injection' | 'shoes' | 'told' | 'film'} ${Foot}`
  | `${'aligned' | 'tender' | 'fused' | 'named' | 'pin' | 'lesion'} ${string}`
  | 'decision'
  | 'review';
export type Watch = Readonly<Partial<Record<WatchKey, string>>>;

type Keep = (key: WatchKey, value: string | undefined) => void;
interface Seen {
  readonly visit: VisitFacts;
  readonly before: Watch;
  readonly on: string;
}

/** What is kept after a visit; the same object where the visit adds nothing. Pure. */
export function foldWatch(before: Watch, visit: VisitFacts): Watch {
  const day = visit.date ? dayFrom(visit.date) : undefined;
  const seen: Seen = { visit, before, on: day ? isoOf(day) : 'undated' };
  let after: Partial<Record<WatchKey, string>> | undefined;
  const keep: Keep = (key, value) => {
    if ((after ?? before)[key] === value) return;
    after ??= { ...before };
    if (value === undefined) delete after[key];
    else after[key] = value;
  };
  for (const part of PARTS) part(seen, keep);
  return after ?? before;
}

const PARTS: readonly ((seen: Seen, keep: Keep) => void)[] = [
  risks,
  feet,
  rays,
  images,
  injections,
  pins,
  orders,
  operations,
  told,
];

const present = ({ status }: AnyFact): boolean => status === 'present';
const footOf = ({ side }: AnyFact): Foot => side ?? 'patient';

function risks({ visit, before, on }: Seen, keep: Keep): void {
  for (const risk of RISKS)
    for (const fact of clearFacts(visit.facts, risk) as AnyFact[]) {
      const now = fact.finding === 'smoking' ? isSmoker(fact) : present(fact);
      if (now || !deniesOneKind(fact) || before[`risk ${risk}`] === undefined)
        keep(`risk ${risk}`, now ? on : 'absent');
    }
  for (const fact of clearFacts(visit.facts, 'allergy')) {
    const to = fact.values.to?.words ?? [];
    if (present(fact)) for (const each of to) keep(`risk allergy ${each}`, on);
    else if (to.length === 0)
      for (const key of Object.keys(before) as WatchKey[]) if (key.startsWith('risk allergy ')) keep(key, 'absent');
  }
  for (const { values } of clearFacts(visit.facts, 'hba1c')) {
    const percent = hba1cPercent(values);
    if (percent !== undefined) keep('risk hba1c', `${percent}`);
  }
  if (saysFalls(visit)) keep('risk falls', on);
}

/** Falls are stated, whichever way, or written of in words of the clinician's own. */
export const saysFalls = (visit: VisitFacts): boolean =>
  factsOf(visit.facts, 'falls').length > 0 || mentions(visit, /\bfall|balance|unstead/i);

function feet({ visit }: Seen, keep: Keep): void {
  for (const side of ['right', 'left'] as const) {
    const pulses = pulsesFelt(visit, side);
    if (pulses !== 'not examined') keep(`pulses ${side}`, pulses);
  }
}

/** Rays and webs that were described, toes that were straight, heads that were tender. */
function rays({ visit, on }: Seen, keep: Keep): void {
  const seen = new Set<number>();
  for (const fact of visit.facts) {
    const { subject, side, section } = fact;
    if (section === 'plan' || (subject.at !== 'ray' && subject.at !== 'web')) continue;
    const one = subjectNumber(fact);
    if (seen.has(one)) continue;
    seen.add(one);
    keep(`named ${subjectKey(subject, side)}`, 'yes');
  }
  for (const fact of clearFacts(visit.facts, 'deviation'))
    if (!fact.values.direction || present(fact))
      keep(`aligned ${subjectKey(fact.subject, fact.side)}`, present(fact) ? 'deviated' : 'straight');
  for (const fact of clearFacts(visit.facts, 'tenderness'))
    if (present(fact)) keep(`tender ${subjectKey(fact.subject, fact.side)}`, on);
}

/** A change in a web that an image reported, and that a film of the foot was seen. */
function images({ visit, on }: Seen, keep: Keep): void {
  for (const fact of clearFacts(visit.facts, 'web-lesion'))
    if (present(fact)) keep(`lesion ${subjectKey(fact.subject, fact.side)}`, on);
  for (const said of [visit.facts, visit.verbatim])
    for (const { section, side } of said) if (section === 'xray') keep(`film ${side ?? 'patient'}`, on);
}

/** The days of injections that were given, as early as each may have been. */
function injections({ visit, before }: Seen, keep: Keep): void {
  for (const fact of clearFacts(visit.facts, 'steroid')) {
    const first = givenSteroid(fact) ? firstDayOf(fact.values.on, writtenOn(visit, fact)) : undefined;
    if (!first) continue;
    const key = `injection ${footOf(fact)}` as const;
    const days = new Set(before[key]?.split(' '));
    for (const each of injectionDays(visit, footOf(fact))) days.add(each);
    keep(key, [...days].sort().join(' '));
  }
}
export const givenSteroid = ({ section, status }: AnyFact): boolean => section === 'tried' && status === 'present';

type When = Extract<AnyFact, { finding: 'steroid' }>['values']['on'];
function firstDayOf(on: When, day: Day | undefined): string | undefined {
  if (on?.is === 'date') return isoOf(range(on.date).first);
  return on?.is === 'ago' && day ? isoOf(daysBefore(day, Math.ceil(daysOf(on.ago).most))) : undefined;
}
/** The days of this visit's injections of a foot, once each. */
export function injectionDays(visit: VisitFacts, foot: Foot): string[] {
  const given = clearFacts(visit.facts, 'steroid').filter((fact) => givenSteroid(fact) && footOf(fact) === foot);
  return [...new Set(given.flatMap((fact) => firstDayOf(fact.values.on, writtenOn(visit, fact)) ?? []))];
}

const latest = (day: Day, duration: Duration): string => isoOf(after(day, { ...duration, low: duration.high }));

const PIN_OUT =
  /\b(?:pin|wire)s?\s+(?:is\s+|was\s+|were\s+)?(?:out|removed|pulled)|\b(?:removed|pulled)\s+(?:the\s+)?(?:pin|wire|k-wire)/i;

function pins({ visit, before }: Seen, keep: Keep): void {
  for (const fact of clearFacts(visit.facts, 'procedure'))
    if (present(fact) && fact.values.what?.words.includes('pin')) {
      const day = writtenOn(visit, fact);
      const key = `pin ${subjectKey(fact.subject, fact.side)}` as const;
      keep(key, day && fact.values.for ? latest(day, fact.values.for) : (before[key] ?? 'undated'));
    }
  // Whatever is written of a removed pin, read or not, ends the watch: nobody is told that a pin is in which may be out.
  if (pinsOf(before).length > 0 && mentions(visit, PIN_OUT))
    for (const key of pinKeys(before, { subject: { at: 'foot' } })) keep(key, undefined);
  for (const key of pinsPulled(visit, before)) keep(key, undefined);
  for (const fact of factsOf(visit.facts, 'pin-out')) {
    if (fact.section === 'exam') {
      for (const key of pinKeys(before, fact)) keep(key, undefined);
      continue;
    }
    if (fact.clarity !== 'clear') continue;
    const { at, on } = fact.values;
    const day = writtenOn(visit, fact);
    const due = at && day ? latest(day, at) : on?.is === 'date' ? isoOf(range(on.date).last) : undefined;
    if (!due || !present(fact)) continue;
    const known = pinKeys(before, fact);
    for (const key of known.length > 0 ? known : [`pin ${subjectKey(fact.subject, fact.side)}` as const])
      keep(key, due);
  }
}

/** The pins of the rays that an event of the visit says to be out; of the whole foot where it names none. */
function pinsPulled({ lifecycle, side: visitSide }: VisitFacts, before: Watch): WatchKey[] {
  const pulled = lifecycle?.events.filter(({ event }) => event === 'pin-out') ?? [];
  return pulled.flatMap(({ rays, side = visitSide }) => {
    const foot = side && side !== 'both' ? { side } : {};
    const subjects = rays.length > 0 ? rays.map((ray) => ({ at: 'ray', ray }) as const) : [{ at: 'foot' } as const];
    return subjects.flatMap((subject) => pinKeys(before, { subject, ...foot }));
  });
}

const known = new WeakMap<Watch, readonly WatchKey[]>();
/** The pins that are in, as far as the file says. Each visit asks several times, and the watch seldom changes. */
export function pinsOf(watch: Watch): readonly WatchKey[] {
  const before = known.get(watch);
  if (before) return before;
  const keys = Object.keys(watch).filter((key) => key.startsWith('pin ')) as WatchKey[];
  known.set(watch, keys);
  return keys;
}

/** The pins of a foot that are still in, as far as the file says: those of the ray, or of every ray where none is named. */
export function pinKeys(watch: Watch, { subject, side }: Pick<AnyFact, 'subject' | 'side'>): WatchKey[] {
  const foot = side ? `pin ${side}` : 'pin ';
  const keys = pinsOf(watch).filter((key) => key.startsWith(foot));
  return subject.at === 'ray' ? keys.filter((key) => key.endsWith('foot') || key.endsWith(`ray ${subject.ray}`)) : keys;
}

function orders({ visit }: Seen, keep: Keep): void {
  for (const fact of clearFacts(visit.facts, 'ordinary-shoes')) {
    if (fact.section === 'exam' || !present(fact)) continue;
    const { from, on } = fact.values;
    const day = writtenOn(visit, fact);
    const first = from && day ? isoOf(after(day, from)) : on?.is === 'date' ? isoOf(range(on.date).first) : undefined;
    if (first) keep(`shoes ${footOf(fact)}`, first);
  }
  if (!visit.date) return;
  const reviews = clearFacts(visit.facts, 'review').filter(present);
  // What an addendum plans has overtaken what the visit planned.
  const review = reviews.findLast(({ origin }) => partAt(visit, origin.place.line)?.addendum) ?? reviews[0];
  const day = review && writtenOn(visit, review);
  const due =
    day && review.values.in
      ? latest(day, review.values.in)
      : review?.values.on?.is === 'date'
        ? isoOf(range(review.values.on.date).last)
        : undefined;
  keep('review', due);
}

const FUSION = 'pip fusion';
function operations({ visit, on }: Seen, keep: Keep): void {
  for (const finding of ['procedure', 'earlier-surgery'] as const)
    for (const fact of clearFacts(visit.facts, finding) as AnyFact[])
      if (
        present(fact) &&
        'what' in fact.values &&
        (fact.values.what?.words as readonly string[] | undefined)?.includes(FUSION)
      )
        keep(`fused ${subjectKey(fact.subject, fact.side)}`, on);
  for (const { status, values } of clearFacts(visit.facts, 'decision'))
    if (status === 'present' && values.what) keep('decision', `${values.what.words[0]}|${on}`);
  for (const fact of clearFacts(visit.facts, 'procedure')) {
    if (!present(fact)) continue;
    keep('decision', undefined);
    keep(`told ${footOf(fact)}`, undefined);
  }
}

/** How a course went was stated, read or not: asking again for what is written helps nobody. */
function told({ visit, on }: Seen, keep: Keep): void {
  for (const finding of PROTECTING)
    for (const fact of factsOf(visit.facts, finding) as AnyFact[])
      if (fact.section === 'tried') keep(`told ${footOf(fact)}`, on);
}

/** Stated in this visit, or in an earlier one and not denied in this. */
export function holds(visit: VisitFacts, watch: Watch, risk: Risk): boolean {
  const now = (clearFacts(visit.facts, risk) as AnyFact[]).filter((fact) => !deniesOneKind(fact));
  if (now.length === 0) return isRisk(watch, risk);
  return now.some((fact) => (fact.finding === 'smoking' ? isSmoker(fact) : present(fact)));
}
const isSmoker = ({ values }: Extract<AnyFact, { finding: 'smoking' }>): boolean =>
  values.status?.words.includes('current') ?? false;

export const isRisk = (watch: Watch, risk: Risk | `allergy ${string}`): boolean =>
  (watch[`risk ${risk}`] ?? 'absent') !== 'absent';
export const rayName = (side: Side, ray: Ray): string => `${side} ray ${ray}`;
