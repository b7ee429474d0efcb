import type { Ray, Side } from '../../../grammar/values.ts';
import type { Fix } from '../analysis.ts';
import { clearFacts } from '../answers.ts';
import { factsOf } from '../fact-index.ts';
import { type AnyFact, subjectKey, type VisitFacts } from '../facts.ts';
import { defineRule, type RuleView, replace } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** The anatomical grade of a ray that an operation or an image of this visit states. */
function anatomicalGrade({ facts }: VisitFacts, side: Side, ray: Ray): AnyFact | undefined {
  return (['anatomical-grade', 'plate-found'] as const)
    .flatMap((finding) => clearFacts(facts, finding, { side, ray }) as AnyFact[])
    .find((fact) => 'grade' in fact.values);
}
const gradeOf = (fact: AnyFact | undefined): number | undefined => {
  const grade = fact && 'grade' in fact.values ? fact.values.grade : undefined;
  return grade?.is === 'anatomical grade' ? grade.low : undefined;
};

/** The stated stage of a ray that is the anatomical grade of its plate, and that the exam does not support. */
export function gradeWrittenAsStage(
  { visit }: Pick<RuleView, 'visit'>,
  analysis: RuleView['rays'][number],
): AnyFact | undefined {
  const { stated, outcome, side, ray } = analysis;
  if (!stated || stated.low !== stated.high) return undefined;
  const fits =
    (outcome.is === 'staged' && outcome.stage === stated.low) ||
    (outcome.is === 'span' && outcome.low <= stated.low && stated.low <= outcome.high);
  const grade = fits ? undefined : anatomicalGrade(visit, side, ray);
  return gradeOf(grade) === stated.low ? grade : undefined;
}

function fromTheExam({ stated, outcome }: RuleView['rays'][number]): Fix[] {
  if (outcome.is !== 'staged' || !stated?.valuePlace) return [];
  const { stage } = outcome;
  return [{ title: `Write stage ${stage}`, safety: 'needs review', edits: [replace(stated.valuePlace, `${stage}`)] }];
}

export const gradeAsStage = defineRule({
  source: 'COUGH11',
  mark: 'read',
  code: 'grade-as-stage',
  name: 'Anatomical grade written as the stage',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['stage', 'anatomical-grade', 'plate-found'],
  needs: ['anatomical-grade', 'plate-found'],
  what: 'The stated stage is the anatomical grade of the plate, from operation or image, and the exam does not support it.',
  why: 'The stage is of the clinical exam and the grade of the torn plate; both run from 0 to 4 and say different things.',
  instead: 'Write the grade as anatomical-grade with its operation or image, and the stage from the exam.',
  examples: {
    invalid: '2nd tender plate, drawer 1, straight\nmri 2nd tear, anatomical-grade 3\nstage 2nd 3',
    valid: '2nd tender plate, drawer 1, straight\nmri 2nd tear, anatomical-grade 3\nstage 2nd 1',
    nearMiss: '2nd tender plate, drawer 3, medial\nmri 2nd tear, anatomical-grade 3\nstage 2nd 3',
  },
  *check(view) {
    for (const analysis of view.rays) {
      const grade = gradeWrittenAsStage(view, analysis);
      if (!grade || !analysis.stated) continue;
      yield {
        place: analysis.stated.place,
        message: `Stage ${analysis.stated.low} is the anatomical grade of the plate, not what the exam supports. Write the stage from the exam.`,
        related: [{ place: grade.origin.place, message: 'the anatomical grade' }],
        fixes: fromTheExam(analysis),
      };
    }
  },
});

export const stageElsewhere = defineRule({
  ...practice,
  code: 'stage-elsewhere',
  name: 'Stage of the hallux or the fifth toe',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['stage'],
  needs: ['stage'],
  what: 'A stage is stated for the first or the fifth ray.',
  why: 'The stages describe the second to fourth joints; an overlapping fifth toe is congenital, and the hallux has scales of its own.',
  instead: 'Describe the deformity and the drawer of that ray.',
  examples: {
    invalid: 'stage 5th 1',
    valid: '5th overlap, drawer 1',
    nearMiss: '2nd tender plate, drawer 1\nstage 2nd 1',
  },
  *check({ visit }) {
    for (const fact of clearFacts(visit.facts, 'stage')) {
      const { subject } = fact;
      if (fact.status !== 'present' || subject.at !== 'ray' || (subject.ray !== 1 && subject.ray !== 5)) continue;
      const message =
        'The stages are not used for the first and the fifth ray. Describe the deformity and the drawer instead.';
      yield { place: fact.origin.place, message };
    }
  },
});

export const squeezeOrCompression = defineRule({
  source: 'BOSCH15',
  mark: 'read',
  code: 'squeeze-or-compression',
  name: 'Squeeze of a web and compression of the joints mixed up',
  severity: 'contradiction',
  scope: 'statement',
  reads: ['squeeze', 'compression'],
  needs: ['compression'],
  what: 'Compression is written of a web, or beside findings of a web.',
  why: 'Compression of the row of joints points to arthritis, the thumb-index squeeze of one space to its nerve.',
  instead: 'Write "web 2 squeeze sore" for one space, "compression sore" on a line of its own for the row.',
  examples: {
    invalid: 'webs 2-3 click none, compression sore',
    valid: 'webs 2-3 click none, squeeze painful',
    nearMiss: 'webs 2-3 click none\ncompression sore',
  },
  *check({ visit }) {
    for (const fact of factsOf(visit.facts, 'compression')) {
      const ofWeb =
        fact.causes.some(({ why }) => why === 'wrong subject') || (fact.clarity === 'clear' && besideWeb(visit, fact));
      if (!ofWeb) continue;
      yield {
        place: fact.origin.word,
        message:
          'Compression is of the whole row of joints, and stands here among findings of a web. Write squeeze, or a line of its own.',
        fixes: [{ title: 'Write "squeeze"', safety: 'needs review', edits: [replace(fact.origin.word, 'squeeze')] }],
      };
      return;
    }
  },
});
/** The line names a web for its other findings, and none is the squeeze. */
function besideWeb({ facts }: VisitFacts, { origin }: AnyFact): boolean {
  let web = false;
  for (const other of facts) {
    if (other.origin.place.line !== origin.place.line) continue;
    if (other.finding === 'squeeze') return false;
    if (other.subject.at === 'web') web = true;
  }
  return web;
}

const AT = ['operation', 'steroid', 'tape'] as const;

/** Names under which a visit may have described what a treatment reaches: its ray, or its web and the rays beside it. */
function namesOf({ subject, side }: AnyFact): string[] {
  if (subject.at === 'ray') return [subjectKey(subject, side)];
  if (subject.at !== 'web') return [];
  const { web } = subject;
  return [
    subjectKey(subject, side),
    subjectKey({ at: 'ray', ray: web }, side),
    subjectKey({ at: 'ray', ray: (web + 1) as Ray }, side),
  ];
}

export const wrongRay = defineRule({
  ...practice,
  code: 'wrong-ray',
  name: 'Treatment of a ray that nobody examined',
  severity: 'contradiction',
  scope: 'episode',
  reads: [...AT],
  needs: [...AT],
  what: 'A treatment is planned at a ray or web of which no visit says anything, while others of that foot are described.',
  why: 'The wrong ray is one slip of a key, and reaches the theatre list.',
  instead: 'Correct the ray or the web, or write what was found there.',
  examples: {
    invalid: '2nd tender plate, drawer 1\nplan tape 4th 8 weeks',
    valid: '2nd tender plate, drawer 1\nplan tape 2nd 8 weeks',
    nearMiss: '2nd tender plate, drawer 1\nplan tape 2nd-3rd 8 weeks',
  },
  *check({ visit, before }) {
    const planned = AT.flatMap((finding) => clearFacts(visit.facts, finding) as AnyFact[]).filter(
      ({ section, status }) => section === 'plan' && status === 'present',
    );
    if (planned.length === 0) return;
    const open = planned.filter((fact) => !namesOf(fact).some((name) => before.watch[`named ${name}`] !== undefined));
    if (open.length === 0) return;
    const named = new Set<string>();
    for (const { section, subject, side } of visit.facts)
      if (section !== 'plan' && (subject.at === 'ray' || subject.at === 'web')) named.add(subjectKey(subject, side));
    const known = (name: string) => named.has(name) || before.watch[`named ${name}`] !== undefined;
    const unread = visit.verbatim.some(({ section, quote }) => !quote && section !== 'plan' && section !== 'history');
    const seen = new Set<number>();
    for (const fact of open) {
      const same = planned.filter(({ origin }) => origin.place === fact.origin.place);
      const names = same.flatMap(namesOf);
      const others = [...named].some((name) => fact.side !== undefined && name.startsWith(fact.side));
      const skip = fact.subject.at === 'ray' && fact.subject.ray === 1;
      if (names.length === 0 || skip || unread || !others || names.some(known) || seen.has(fact.origin.place.start))
        continue;
      seen.add(fact.origin.place.start);
      yield {
        place: fact.origin.place,
        severity: fact.finding === 'operation' ? 'danger' : 'contradiction',
        message: `Nothing is said anywhere of the ${subjectKey(fact.subject, fact.side)}, where this is planned. Correct the ray or the web, or write what was found.`,
      };
    }
  },
});
