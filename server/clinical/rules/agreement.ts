import { entryOf } from '../../../grammar/lexicon/index.ts';
import type { RayAnalysis } from '../analysis.ts';
import { ask, clearFacts, dislocatedFilms, sameMeaning, straightToe } from '../answers.ts';
import { byFinding, clearFactsOf } from '../fact-index.ts';
import { type AnyFact, subjectKey, subjectNumber } from '../facts.ts';
import { defineRule, type Finding, replace } from './define-rule.ts';
import { gradeWrittenAsStage } from './mixed-up.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const memory = { source: 'COUGH11', mark: 'from memory, to be verified' } as const;

/** Two examiners may differ without contradiction, and so may pain at two moments (`6/10 walking, 2/10 at rest`). */
const keyOf = (fact: AnyFact): string =>
  `${fact.section} ${subjectKey(fact.subject, fact.side)} ${('examiner' in fact.values && fact.values.examiner?.words) || ''} ${(fact.finding === 'pain' && fact.values.character?.words) || ''}`;

export const statedTwice = defineRule({
  ...practice,
  code: 'stated-twice',
  name: 'Stated twice',
  severity: 'contradiction',
  scope: 'visit',
  reads: [],
  what: 'One finding of one subject is stated twice in a visit, alike or differently.',
  why: 'Of two different statements one is wrong, and neither is computed with alone; of two equal ones one is noise.',
  instead: 'Keep one statement. Where two people examined, start each line with "examiner AB".',
  examples: {
    invalid: '2nd drawer 2\n2nd drawer 3',
    valid: '2nd drawer 2\n3rd drawer 3',
    nearMiss: '2nd tender plantar\n2nd tender dorsal',
  },
  *check({ visit }) {
    for (const facts of byFinding(visit.facts))
      if (hasTwin(facts)) {
        yield* repeated(facts);
        yield* againstNormal(facts);
      }
    yield* againstWhole(visit.facts, 'earlier-treatment', 'tried');
    yield* againstWhole(visit.facts, 'standing-exam', 'stand');
  },
});
/** Are two of the facts of one finding about the same subject? Seldom, and only then are they compared. */
function hasTwin(facts: readonly AnyFact[]): boolean {
  if (facts.length < 2) return false;
  const seen = new Set<number>();
  for (const fact of facts) seen.add(subjectNumber(fact));
  return seen.size < facts.length;
}
/** `tried none` beside what was tried, `stand not done` beside what was seen standing. */
function* againstWhole(
  facts: readonly AnyFact[],
  whole: 'earlier-treatment' | 'standing-exam',
  section: AnyFact['section'],
): Iterable<Finding> {
  const denied = clearFactsOf(facts, whole).find(({ status }) => status !== 'present');
  const told =
    denied &&
    facts.find(
      ({ finding, clarity, status, side, ...fact }) =>
        fact.section === section &&
        finding !== whole &&
        clarity === 'clear' &&
        status === 'present' &&
        (!side || !denied.side || side === denied.side),
    );
  if (!denied || !told) return;
  yield {
    place: denied.origin.place,
    severity: 'contradiction',
    message: `"${section} ${denied.status === 'absent' ? 'none' : denied.status}" and "${entryOf(told.finding).word}" contradict each other. Keep the one that is right.`,
    related: [{ place: told.origin.place, message: entryOf(told.finding).word }],
  };
}
/** `2nd normal, tender`: found, and denied by what `normal` stands for. */
function* againstNormal(facts: readonly AnyFact[]): Iterable<Finding> {
  const panels = facts.filter(({ origin, clarity }) => origin.kind === 'panel' && clarity === 'clear');
  for (const fact of panels.length > 0 ? facts : []) {
    if (fact.clarity !== 'clear' || fact.origin.kind !== 'stated' || fact.status !== 'present') continue;
    const normal = panels.find((each) => keyOf(each) === keyOf(fact) && !sameMeaning(each, fact));
    if (!normal || (normal.examiner && fact.examiner && normal.examiner !== fact.examiner)) continue;
    yield {
      place: fact.origin.place,
      severity: 'contradiction',
      message: `"${entryOf(fact.finding).word}" of ${subjectKey(fact.subject, fact.side)} and "normal" beside it contradict each other. Keep the one that is right.`,
      related: [{ place: normal.origin.place, message: 'normal' }],
    };
  }
}
/** What is stated again among the facts of one finding. */
function* repeated(facts: readonly AnyFact[]): Iterable<Finding> {
  const first = new Map<string, AnyFact>();
  for (const fact of facts) {
    if (fact.clarity !== 'clear' || fact.origin.kind !== 'stated') continue;
    const key = keyOf(fact);
    const other = first.get(key);
    const examiners = fact.examiner && other?.examiner && fact.examiner !== other.examiner;
    if (!other || other.statement === fact.statement || examiners) {
      first.set(key, other ?? fact);
      continue;
    }
    const { many } = entryOf(fact.finding);
    const same = sameMeaning(fact, other);
    const denies = many && (fact.status === 'absent') !== (other.status === 'absent') && isDenied(fact, other);
    if (!same && many && !denies) continue;
    const of = fact.subject.at === 'patient' ? '' : ` of ${subjectKey(fact.subject, fact.side)}`;
    yield {
      place: fact.origin.place,
      severity: same ? 'style' : 'contradiction',
      message: `"${entryOf(fact.finding).word}"${of} is stated twice, ${same ? 'alike. Keep one' : 'differently. Keep the one that is right'}.`,
      related: [{ place: other.origin.place, message: 'the other statement' }],
    };
  }
}
/** A denial contradicts the same place or kind (`no injury` an injury); one that names none contradicts them all. */
const isDenied = (a: AnyFact, b: AnyFact): boolean => {
  const [denied, said] = a.status === 'absent' ? [namedIn(a), namedIn(b)] : [namedIn(b), namedIn(a)];
  return denied.length === 0 || denied.some((word) => said.includes(word));
};
const namedIn = ({ values }: AnyFact): readonly string[] => [
  ...('place' in values && values.place ? values.place.words : []),
  ...('what' in values && values.what ? values.what.words : []),
];

export const dislocatedLowDrawer = defineRule({
  ...memory,
  code: 'dislocated-low-drawer',
  name: 'Dislocated with a lower drawer',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['dislocated', 'film-joint', 'drawer'],
  needs: ['dislocated', 'film-joint'],
  what: 'A joint is dislocated at rest and its drawer grade is lower.',
  why: 'A joint that lies dislocated is no longer translated by degrees; one of the two is wrong. The stage stays by the dislocation.',
  instead: 'Leave the drawer out, or correct the dislocation.',
  examples: {
    invalid: '2nd dislocated old irreducible, drawer 1\ndp 2, pt 2',
    valid: '2nd dislocated old irreducible\ndp 2, pt 2',
    nearMiss: '2nd drawer 3',
  },
  *check({ visit, rays }) {
    for (const { side, ray } of rays) {
      const about = { side, ray };
      const exam = clearFacts(visit.facts, 'dislocated', about).filter(({ status }) => status === 'present');
      const film = dislocatedFilms(visit.facts, about);
      const [shown] = [...exam, ...film] as AnyFact[];
      const drawer = ask(visit.facts, 'drawer', about);
      if (!shown || drawer.is !== 'stated') continue;
      const { grade } = drawer.fact.values;
      const top = grade?.scale === '0-3' ? 3 : 4;
      if (drawer.fact.status !== 'absent' && (!grade || grade.low >= top)) continue;
      yield {
        place: drawer.fact.origin.place,
        message:
          'A lower drawer contradicts a joint that is dislocated at rest. Correct one; the dislocation decides the stage.',
        related: [{ place: shown.origin.place, message: 'dislocated here' }],
      };
    }
  },
});

export const overlapStraight = defineRule({
  ...practice,
  code: 'overlap-straight',
  name: 'Overlap with a straight toe',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['overlap', 'deviation'],
  needs: ['overlap'],
  what: 'A toe overlaps its neighbour at rest and is called straight.',
  why: 'A toe cannot be both at the same time; the overlap would set stage 3.',
  instead: 'Correct one of them, or say that the overlap is there sometimes.',
  examples: {
    invalid: '2nd straight, overlap hallux',
    valid: '2nd medial, overlap hallux',
    nearMiss: '2nd straight, overlap hallux sometimes',
  },
  *check({ visit, rays }) {
    for (const { side, ray } of rays) {
      const overlap = ask(visit.facts, 'overlap', { side, ray });
      if (overlap.is !== 'stated' || overlap.fact.status !== 'present') continue;
      const [straight] = straightToe(visit.facts, { side, ray });
      if (!straight || overlap.fact.values.when?.words.includes('sometimes')) continue;
      yield {
        place: overlap.fact.origin.place,
        message: 'This toe overlaps and is called straight. Correct one, or write "sometimes".',
        related: [{ place: straight.origin.place, message: 'straight here' }],
      };
    }
  },
});

export const stageUnsupported = defineRule({
  ...memory,
  code: 'stage-unsupported',
  name: 'Stated stage not supported',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['stage', 'drawer', 'overlap', 'dislocated', 'deviation', 'anatomical-grade', 'plate-found'],
  needs: ['stage'],
  what: 'The stated clinical stage lies outside what the recorded findings allow.',
  why: 'Stage, drawer grade and anatomical grade are three different numbers that are easily mixed up.',
  instead: 'Correct the stage or the finding that decides it; the stated stage is kept until you do.',
  examples: {
    invalid: '2nd tender plantar, drawer 1, straight\nstage 2nd 3',
    valid: '2nd tender plantar, drawer 1, straight\nstage 2nd 1',
    nearMiss: '2nd tender plantar, drawer 1, marked medial\nstage 2nd 2',
  },
  *check({ visit, rays }) {
    for (const analysis of rays) {
      const { stated } = analysis;
      if (gradeWrittenAsStage({ visit }, analysis)) continue;
      const allowed = computedRange(analysis);
      const barred = stated && barring(analysis.outcome, stated.high);
      if (stated && barred)
        yield {
          place: stated.place,
          message: `A stage is stated, but no stage applies (${barred}). Describe the joint, or correct what says so.`,
        };
      if (!stated || !allowed || (stated.high >= allowed.low && stated.low <= allowed.high)) continue;
      const text = allowed.low === allowed.high ? `${allowed.low}` : `${allowed.low} to ${allowed.high}`;
      const fix = { title: `Write stage ${text}`, safety: 'needs review' } as const;
      const single = allowed.low === allowed.high ? [{ ...fix, edits: [replace(numberPlace(stated), text)] }] : [];
      yield {
        place: stated.place,
        message: `The findings support stage ${text}, not the stated one. Correct the stage or the finding that decides it.`,
        related: analysis.evidence
          .filter(({ role }) => role === 'decides')
          .map(({ place, why }) => ({ place, message: why })),
        fixes: stated.valuePlace ? single : [],
      };
    }
  },
});
/** Why no stage is used for the joint at all, whatever its findings. */
function barring(outcome: RayAnalysis['outcome'], high: number): string | undefined {
  if (outcome.is !== 'not applicable') return undefined;
  const { by, why } = outcome;
  return by === 'operated' || (by === 'no instability' && high > 0) ? why : undefined;
}
const numberPlace = (stated: NonNullable<RayAnalysis['stated']>) => stated.valuePlace ?? stated.place;
function computedRange({ outcome }: RayAnalysis): { low: number; high: number } | undefined {
  if (outcome.is === 'staged') return { low: outcome.stage, high: outcome.stage };
  return outcome.is === 'span' ? outcome : undefined;
}

export const drawerScale = defineRule({
  source: 'THOMP87',
  mark: 'from memory, to be verified',
  code: 'drawer-scale',
  name: 'Drawer scale not stated',
  severity: 'missing',
  scope: 'episode',
  reads: ['drawer'],
  needs: ['drawer'],
  what: 'A drawer grade stands without its scale.',
  why: 'Three scales exist: drawer 2 is over half on the 0-4 scale and dislocatable on the 0-3 scale. Read as 0-4 meanwhile.',
  instead: 'Write a line such as "scales drawer 0-4" at the top of the file, once.',
  examples: {
    invalid: 'forefoot 1\n\nvisit 2026-03-09 first right\n2nd drawer 2\n3rd drawer 1',
    valid: 'forefoot 1\nscales drawer 0-4\n\nvisit 2026-03-09 first right\n2nd drawer 2',
    nearMiss: 'forefoot 1\n\nvisit 2026-03-09 first right\n2nd drawer 2 scale 0-4',
  },
  *check({ visit, before }) {
    if (before.scaleAsked) return;
    const [fact] = clearFacts(visit.facts, 'drawer').filter(({ values }) => values.grade && !values.grade.scale);
    if (!fact) return;
    const fixes = (['0-4', '0-3', '1-3'] as const).map((scale) => ({
      title: `Write "scales drawer ${scale}" at the top`,
      safety: 'needs review' as const,
      edits: [{ edit: 'insert header' as const, text: `scales drawer ${scale}` }],
    }));
    const message =
      'This drawer grade has no scale and is read as 0-4. Write "scales drawer 0-4" at the top, or the scale that is meant.';
    yield { place: fact.origin.place, message, fixes };
  },
});
