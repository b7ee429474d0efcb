import { dayFrom, isoOf, range } from '../dates.ts';
import type { AnyFact, Carried, Place, VisitEvent, VisitFacts } from '../facts.ts';
import { eventsBefore, isAfterSignature, isSigned } from '../lifecycle.ts';
import { defineRule } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** Everything of a visit that says something, by its place. */
function statedPlaces({ facts, verbatim, lifecycle }: VisitFacts): Place[] {
  const { passed = [], carried = [], events = [] } = lifecycle ?? {};
  return [
    ...[...facts, ...passed].map(({ origin }) => origin.place),
    ...[...verbatim, ...carried, ...events].map(({ place }) => place),
  ].sort((a, b) => a.line - b.line || a.start - b.start);
}

export const afterSignature = defineRule({
  ...practice,
  code: 'after-signature',
  name: 'Written after the signature',
  severity: 'contradiction',
  scope: 'visit',
  reads: [],
  needs: ['lifecycle'],
  what: 'A statement stands below the signature of its visit and in no addendum.',
  why: 'A signature closes the visit: what is added later must show that it was, when, and by whom.',
  instead: 'Open an addendum above it: addendum 2026-03-10 AB, on a line of its own.',
  examples: {
    invalid: '2nd drawer 2\nsigned 2026-03-09 AB\n3rd drawer 1',
    valid: '2nd drawer 2\nsigned 2026-03-09 AB\naddendum 2026-03-10 AB\n3rd drawer 1',
    nearMiss: '2nd drawer 2\nsigned 2026-03-09 AB // 3rd drawer 1',
  },
  *check({ visit, context }) {
    for (const { signature, from } of visit.lifecycle?.parts ?? []) {
      if (!signature) continue;
      const until = visit.lifecycle?.parts.find((other) => other.from > from)?.from ?? Number.POSITIVE_INFINITY;
      const late = statedPlaces(visit).find(({ line }) => line < until && line > from && isAfterSignature(visit, line));
      if (!late) continue;
      const text = `addendum ${context.today}`;
      yield {
        place: late,
        message:
          'This was written after the visit was signed. Open an addendum above it, with its date and who adds it.',
        related: [{ place: signature.place, message: 'signed here' }],
        fixes: [
          {
            title: 'Open an addendum here (add who writes it)',
            safety: 'needs review',
            edits: [{ edit: 'insert line', afterLine: late.line - 1, text }],
          },
        ],
      };
    }
  },
});

export const signedBeforeVisit = defineRule({
  ...practice,
  code: 'signed-before-visit',
  name: 'Signed or added to before the visit',
  severity: 'contradiction',
  scope: 'visit',
  reads: [],
  needs: ['lifecycle'],
  what: 'A signature or an addendum carries a day that is earlier than its visit.',
  why: 'Nobody signs what has not happened yet: one of the two days is wrong, and all that counts from it.',
  instead: 'Correct the day of the signature or addendum, or that of the visit.',
  examples: {
    invalid: '2nd drawer 2\nsigned 2026-03-01 AB',
    valid: '2nd drawer 2\nsigned 2026-03-09 AB',
    nearMiss: '2nd drawer 2\nsigned 2026-03 AB',
  },
  *check({ visit: { date, lifecycle } }) {
    if (!date || !lifecycle) return;
    const visited = isoOf(dayFrom(date));
    for (const { addendum, signature } of lifecycle.parts)
      for (const [name, signing] of [
        ['addendum', addendum],
        ['signature', signature],
      ] as const) {
        if (!signing?.date || isoOf(range(signing.date).last) >= visited) continue;
        yield {
          place: signing.place,
          message: `The day of this ${name} is before its visit of ${visited}. Correct one of the two days.`,
        };
      }
  },
});

export const signedWordsChanged = defineRule({
  ...practice,
  code: 'signed-words-changed',
  name: 'Signed words changed',
  severity: 'contradiction',
  scope: 'visit',
  reads: [],
  needs: ['lifecycle'],
  what: 'The words above a signature are not those that were sealed with it.',
  why: 'Nobody signed the words that stand there now. No allowance hides this.',
  instead: 'Undo the change and write it in an addendum, or remove the signature and sign again what is meant.',
  examples: {
    invalid: '2nd drawer 2\nsigned 2026-03-09 AB seal 0000-00',
    valid: '2nd drawer 2\nsigned 2026-03-09 AB',
    nearMiss: '2nd drawer 2  // seen standing\nsigned 2026-03-09 AB seal yzps-yt',
  },
  *check({ visit }) {
    for (const { signature } of visit.lifecycle?.parts ?? []) {
      const { seal } = signature ?? {};
      if (!seal || seal.holds) continue;
      yield {
        place: seal.place,
        message: `The words above are not those sealed with ${seal.text}. Undo the change and write it in an addendum, or sign again.`,
      };
    }
  },
});

export const carriedUnconfirmed = defineRule({
  ...practice,
  code: 'carried-unconfirmed',
  name: 'Carried, not confirmed',
  severity: 'missing',
  scope: 'statement',
  reads: [],
  needs: ['lifecycle'],
  what: 'A finding was copied from an earlier visit and nobody has confirmed it.',
  why: 'A copied finding taken as of today is a finding that nobody made. Until it is confirmed it counts for nothing.',
  instead: 'Examine, then confirm what was found again and drop the rest.',
  examples: {
    invalid: 'carried 2026-01-05 2nd drawer 2',
    valid: '2nd drawer 2',
    nearMiss: '2nd drawer 2 "carried the bag"',
  },
  *check({ visit }) {
    for (const each of visit.lifecycle?.carried ?? []) {
      if (each.proposed) continue;
      const signed = isSigned(visit, each.place.line);
      const title = signed ? ' The visit was signed with it.' : '';
      yield {
        place: each.place,
        severity: signed ? 'contradiction' : 'missing',
        message: `Carried from ${sourceOf(each)} and not confirmed, so it counts for nothing today.${title} Confirm it or drop it.`,
      };
    }
  },
});
const sourceOf = ({ date }: Carried): string =>
  date?.month && date.day
    ? `the visit of ${isoOf(dayFrom({ year: date.year, month: date.month, day: date.day }))}`
    : 'an earlier visit';

export const proposedUnconfirmed = defineRule({
  ...practice,
  code: 'proposed-unconfirmed',
  name: 'Proposed, not confirmed',
  severity: 'missing',
  scope: 'statement',
  reads: [],
  needs: ['lifecycle'],
  what: 'A conversion of dictation has proposed how words may be read, and nobody has confirmed it.',
  why: 'A proposal is a guess at what was meant. Until somebody who was there confirms it, it counts for nothing, and the note tells the words that were said.',
  instead: 'Compare it with the words behind `//`, then confirm it, or bring back what was said.',
  examples: {
    invalid: 'proposed 2nd drawer 2 painful  // drawer two and it reproduces her pain',
    valid: '2nd drawer 2 painful  // drawer two and it reproduces her pain',
    nearMiss: '2nd drawer 2 "proposed the boot"',
  },
  *check({ visit }) {
    for (const { place, proposed } of visit.lifecycle?.carried ?? []) {
      if (!proposed) continue;
      const signed = isSigned(visit, place.line);
      const title = signed ? ' The visit was signed with it.' : '';
      yield {
        place,
        severity: signed ? 'contradiction' : 'missing',
        message: `Proposed for what was dictated and not confirmed, so it counts for nothing.${title} Confirm it, or bring back what was said.`,
      };
    }
  },
});

const CIRCULATION: readonly string[] = ['dp', 'pt', 'pulses', 'capillary-refill', 'perfusion'];
const isDislocated = (fact: AnyFact): boolean =>
  fact.clarity === 'clear' &&
  fact.status === 'present' &&
  (fact.finding === 'dislocated' ||
    (fact.finding === 'film-joint' && (fact.values.state?.words.includes('dislocated') ?? false)));

/** What of circulation and feeling was not stated around a reduction, for one toe. */
function unstated(before: readonly AnyFact[], after: readonly AnyFact[], toe: AnyFact | undefined): string[] {
  const near = ({ side, subject }: AnyFact): boolean =>
    (!toe?.side || !side || side === toe.side) &&
    (subject.at !== 'ray' || toe?.subject.at !== 'ray' || subject.ray === toe.subject.ray);
  const said = (facts: readonly AnyFact[], is: (finding: string) => boolean) =>
    facts.some((fact) => fact.clarity === 'clear' && is(fact.finding) && near(fact));
  const flows = (finding: string) => CIRCULATION.includes(finding);
  const feels = (finding: string) => finding === 'sensation';
  return [
    ...(said(before, flows) ? [] : ['circulation before']),
    ...(said(before, feels) ? [] : ['feeling before']),
    ...(said(after, flows) ? [] : ['circulation after']),
    ...(said(after, feels) ? [] : ['feeling after']),
  ];
}

/** The dislocated toes that an event reduced, those that it names if it names any. */
function reducedToes(before: readonly AnyFact[], { rays, side }: VisitEvent): AnyFact[] {
  const toes = before.filter(
    (fact) => isDislocated(fact) && fact.subject.at === 'ray' && (rays.length === 0 || rays.includes(fact.subject.ray)),
  );
  return side ? toes.filter((fact) => fact.side === side) : toes;
}

export const reductionIncomplete = defineRule({
  ...practice,
  code: 'reduction-incomplete',
  name: 'Reduction without circulation and feeling around it',
  severity: 'danger',
  scope: 'visit',
  reads: ['dislocated', 'film-joint', 'dp', 'pt', 'pulses', 'capillary-refill', 'perfusion', 'sensation'],
  needs: ['lifecycle'],
  what: 'A joint was reduced, and circulation or feeling of the toe is not stated before or after it.',
  why: 'A toe that was pink before and is not after needs action at once; feeling is tested before any block.',
  instead: 'State both on either side of the event line, or that they could not be tested.',
  examples: {
    invalid:
      '2nd dislocated acute 2 hours, toe-colour pink\nevent reduction 14:30\n2nd no dislocation, toe-colour pink, sensation normal',
    valid:
      '2nd dislocated acute 2 hours, toe-colour pink, sensation normal\nevent reduction 14:30\n2nd no dislocation, toe-colour pink, sensation normal',
    nearMiss: '2nd wound clean\nevent pin-out 14:30\n2nd wound dry',
  },
  *check({ visit }) {
    const events = visit.lifecycle?.events ?? [];
    const all = [...visit.facts, ...(visit.lifecycle?.passed ?? [])];
    for (const [index, event] of events.entries()) {
      if (event.event !== 'reduction') continue;
      const before = all.filter(({ origin }) => eventsBefore(visit, origin.place.line) <= index);
      const after = all.filter(({ origin }) => eventsBefore(visit, origin.place.line) > index);
      const toes = reducedToes(before, event);
      const lacks = new Set((toes.length > 0 ? toes : [undefined]).flatMap((toe) => unstated(before, after, toe)));
      if (lacks.size === 0) continue;
      yield {
        place: event.place,
        message: `Around a reduction state circulation and feeling of the toe, before and after. Missing: ${[...lacks].join(', ')}.`,
      };
    }
  },
});
