import type { Ray, Side } from '../../../grammar/values.ts';
import type { RayAnalysis } from '../analysis.ts';
import { clearFacts, dislocatedFilms, isStated, present } from '../answers.ts';
import { circulationStated } from '../circulation.ts';
import { isOldJoint } from '../deciding.ts';
import { isoDayOf, plateImages, rayKey } from '../episode.ts';
import { type AnyFact, subjectKey } from '../facts.ts';
import { defineRule, type RuleView, replace } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** Unstable as far as the findings tell: at least stage 1, a positive drawer, an overlap or a dislocation. */
export function isUnstable({ visit }: Pick<RuleView, 'visit'>, { outcome, side, ray }: RayAnalysis): boolean {
  if (outcome.is === 'staged') return outcome.stage >= 1;
  if (outcome.is === 'span') return outcome.low >= 1;
  const about = { side, ray };
  const positive = clearFacts(visit.facts, 'drawer', about).some(
    ({ status, values }) =>
      status === 'present' && ((values.grade?.low ?? 0) >= 1 || values.result?.words.includes('positive')),
  );
  return (
    positive ||
    isStated(visit.facts, 'dislocated', 'present', about) ||
    isStated(visit.facts, 'overlap', 'present', about)
  );
}

/** The rays whose joint a statement reaches: its own ray, both rays beside its web, or every ray of its foot. */
function reaches(fact: AnyFact, { side, ray }: RayAnalysis): boolean {
  if (fact.side && fact.side !== side) return false;
  if (fact.subject.at === 'ray') return fact.subject.ray === ray;
  if (fact.subject.at === 'web') return fact.subject.web === ray || fact.subject.web === ray - 1;
  return true;
}

export const steroidUnstable = defineRule({
  source: 'REIS89',
  mark: 'from memory, to be verified',
  code: 'steroid-unstable',
  name: 'Steroid at an unstable joint',
  severity: 'danger',
  scope: 'ray',
  reads: ['steroid', 'drawer', 'overlap', 'dislocated'],
  needs: ['steroid'],
  what: 'A steroid injection is planned, or was given, at an unstable joint or in the web beside it; or is planned at a joint that was unstable when it was last examined.',
  why: 'Steroid weakens the plate further; dislocation after repeated local steroid has been reported.',
  instead: 'Protect the joint; use an anaesthetic block alone to tell joint from web. Write "no steroid" to say so.',
  examples: {
    invalid: '2nd tender plantar, drawer 2\nplan steroid web 2',
    valid: '2nd tender plantar, drawer 2\nplan no steroid',
    nearMiss: '2nd drawer 0, tender none\n5th drawer 2, tender plantar\nplan steroid web 2',
  },
  *check(view) {
    const told = new Set<RayAnalysis>();
    for (const fact of clearFacts(view.visit.facts, 'steroid')) {
      if (fact.status !== 'present') continue;
      const planned = fact.section === 'plan';
      const joint = view.rays.find((each) => reaches(fact, each) && isUnstable(view, each));
      const earlier = planned && !joint ? unstableBefore(view, fact) : undefined;
      if (earlier)
        yield {
          place: fact.origin.place,
          message: `Steroid is planned where an earlier visit found the ${earlier} unstable, and this one does not examine it: it may rupture or dislocate. Examine it, and protect the joint instead.`,
        };
      if (!joint) continue;
      // Of several earlier injections at one joint the first says it.
      if (!planned && told.has(joint)) continue;
      if (!planned) told.add(joint);
      const fix = {
        title: 'Write "no steroid"',
        safety: 'needs review',
        edits: [replace(fact.origin.word, 'no steroid')],
      } as const;
      const message = planned
        ? `Steroid is planned where the ${joint.side} ray ${joint.ray} is unstable: it may rupture or dislocate. Protect the joint instead.`
        : `Steroid was given where the ${joint.side} ray ${joint.ray} is now unstable: no further one; look for drift since.`;
      yield {
        place: fact.origin.place,
        severity: planned ? 'danger' : 'contradiction',
        message,
        related: joint.evidence
          .filter(({ role }) => role === 'decides')
          .map(({ place, why }) => ({ place, message: why })),
        fixes: planned ? [fix] : [],
      };
    }
  },
});

/** A ray that the injection reaches, that this visit doesn't examine, and that was at least stage 1 when it last was. */
function unstableBefore({ rays, before }: RuleView, { subject, side }: AnyFact): string | undefined {
  if (!side || (subject.at !== 'ray' && subject.at !== 'web')) return undefined;
  const near = subject.at === 'ray' ? [subject.ray] : [subject.web, subject.web + 1];
  const ray = near.find(
    (each) =>
      !rays.some((now) => now.side === side && now.ray === each) &&
      (before.stage[rayKey(side, each as Ray)]?.[0] ?? 0) >= 1,
  );
  return ray === undefined ? undefined : `${side} ray ${ray}`;
}

export const invasiveUnconfirmed = defineRule({
  source: 'GREGG06',
  mark: 'read',
  code: 'invasive-unconfirmed',
  name: 'Invasive plan without concordant imaging',
  severity: 'contradiction',
  scope: 'ray',
  reads: ['operation', 'tear', 'film-joint', 'web-lesion', 'drawer'],
  needs: ['operation'],
  what: 'An operation is planned, and no reported image agrees with the exam of that ray or web; or a web operation beside an unstable joint.',
  why: 'Exam and image confirm each other: nearly half of plates without symptoms look torn on ultrasound.',
  instead:
    'Record the image that agrees, or plan it first. A block, an aspiration, a reduction need none; a film is enough for a chronic dislocation.',
  examples: {
    invalid: '2nd tender plantar, drawer 2\npulses palpable\nplan operation 2nd plate repair',
    valid: '2nd tender plantar, drawer 2\npulses palpable\nmri 2nd tear full\nplan operation 2nd plate repair',
    nearMiss: '2nd tender plantar, drawer 2\nplan mri 2nd; no operation',
  },
  *check(view) {
    const { visit } = view;
    for (const fact of clearFacts(visit.facts, 'operation')) {
      if (fact.status !== 'present') continue;
      const web = fact.subject.at === 'web';
      const joint = web && view.rays.find((each) => reaches(fact, each) && isUnstable(view, each));
      if (!joint && (web ? hasWebLesion(view, fact) : isFilmEnough(view, fact) || isConfirmed(view, fact))) continue;
      const message = joint
        ? `A web operation is planned beside the unstable ${joint.side} ray ${joint.ray}, where a web change is no proof of a neuroma (UMANS14). Settle the joint first.`
        : 'An operation is planned and no image here agrees with the exam. Record the image, or plan it first.';
      yield { place: fact.origin.place, message };
    }
  },
});

/** In this visit or an earlier one. */
const hasWebLesion = ({ visit, before }: RuleView, fact: AnyFact): boolean =>
  before.watch[`lesion ${subjectKey(fact.subject, fact.side)}`] !== undefined ||
  clearFacts(visit.facts, 'web-lesion').some(
    (lesion) =>
      lesion.status === 'present' &&
      lesion.subject.at === 'web' &&
      fact.subject.at === 'web' &&
      lesion.subject.web === fact.subject.web &&
      lesion.side === fact.side,
  );

/** What corrects the toe or drains leaves the plate alone: a film is enough, and for what is urgent nothing is needed. */
const OF_THE_TOE: readonly string[] = [
  'pip fusion',
  'pip resection',
  'flexor tenotomy',
  'hallux valgus correction',
  'amputation',
];
function isFilmEnough(
  { visit, before }: RuleView,
  { side, values }: Extract<AnyFact, { finding: 'operation' }>,
): boolean {
  const procedures = values.procedure?.words ?? [];
  if (procedures.length === 0) return false;
  if (procedures.every((each) => each === 'debridement')) return true;
  if (!procedures.every((each) => OF_THE_TOE.includes(each) || each === 'debridement')) return false;
  const here = [...visit.facts, ...visit.verbatim].some(
    (each) => each.section === 'xray' && (!each.side || each.side === side),
  );
  return here || before.watch[`film ${side ?? 'patient'}`] !== undefined;
}

/** Some ray that the operation reaches has an image of a torn plate and an unstable joint, or a dislocation on exam or film. */
function isConfirmed(view: RuleView, fact: AnyFact): boolean {
  const images = plateImages(view.visit, isoDayOf(view.visit));
  if (wasConfirmed(view, fact)) return true;
  return view.rays.some((each) => {
    if (!reaches(fact, each)) return false;
    const key = rayKey(each.side, each.ray);
    const image = images[key] ?? view.before.plate[key];
    const film = dislocatedFilms(view.visit.facts, each).length > 0;
    return film || (image?.tear === 'present' && isUnstable(view, each));
  });
}

/** A ray that this visit does not examine, with a torn plate and at least stage 1 in an earlier visit. */
function wasConfirmed({ rays, before }: RuleView, { subject, side }: AnyFact): boolean {
  if (subject.at !== 'ray' || !side) return false;
  if (rays.some((each) => each.side === side && each.ray === subject.ray)) return false;
  const key = rayKey(side, subject.ray);
  return before.plate[key]?.tear === 'present' && (before.stage[key]?.[0] ?? 0) >= 1;
}

export const acuteDislocationIncomplete = defineRule({
  ...practice,
  code: 'acute-dislocation-incomplete',
  name: 'Acute dislocation without time or circulation',
  severity: 'danger',
  scope: 'ray',
  reads: ['dislocated', 'film-joint', 'dp', 'pt', 'pulses', 'capillary-refill', 'perfusion'],
  needs: ['dislocated', 'film-joint'],
  what: 'A dislocation, on exam or film, is not stated as old, and its time or the circulation of the toe is not stated.',
  why: 'Acute and chronic dislocation use the same word with opposite urgency; time and circulation decide what to do first.',
  instead: 'State since when (14:30, 2 hours, old) and the circulation: pulses, refill or colour.',
  examples: {
    invalid: '2nd dislocated, drawer not done\ndp 2, pt 2',
    valid: '2nd dislocated old, toe-colour pink',
    nearMiss: '2nd dislocated for 9 months',
  },
  *check(view) {
    for (const { side, ray } of view.rays) {
      const found = acuteDislocationLacks(view, { side, ray });
      if (!found || found.lacks.length === 0) continue;
      yield {
        place: found.fact.origin.word,
        message: `Acute until shown otherwise: state ${found.lacks.join(' and ')}.`,
      };
    }
  },
});

/** What is not stated of a dislocation that isn't old; nothing where a ray has none. */
export function acuteDislocationLacks(
  { visit, before }: Pick<RuleView, 'visit' | 'before'>,
  about: { readonly side: Side; readonly ray: Ray },
): { readonly fact: AnyFact; readonly lacks: readonly string[] } | undefined {
  const dislocated = present(clearFacts(visit.facts, 'dislocated', about));
  if (isOldJoint(dislocated, visit, before.known, about)) return undefined;
  const [fact] = [...dislocated, ...dislocatedFilms(visit.facts, about)] as AnyFact[];
  if (!fact) return undefined;
  const timed = dislocated.some(({ values }) => values.for || values.at || values.on);
  const lacks = timed ? [] : ['since when'];
  return {
    fact,
    lacks: circulationStated(visit, about.side, about.ray) ? lacks : [...lacks, 'the circulation of the toe'],
  };
}
