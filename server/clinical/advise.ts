import type { AdvisedRay, AdvisedVisit, Context, ExamStep, NextStep, RayAnalysis, VisitAnalysis } from './analysis.ts';
import { type Change, changeOf, seenOf } from './change.ts';
import { decidingFindings } from './deciding.ts';
import { isoDayOf, rayKey } from './episode.ts';
import { isStatedPainless } from './gates.ts';
import { withLocalWindows } from './local-windows.ts';
import { missingSteps } from './missing-steps.ts';
import { nextStep } from './next-step.ts';
import { once } from './once.ts';
import { NO_SETTINGS } from './settings.ts';
import { wholeVisit } from './whole-visit.ts';

/**
 * Adds to every ray of a visit its next step, what is missing, and what became of it since its last visit. Each is worked out when it is asked for; the checks need none, so that the
 * server loads all this with the first question about a ray.
 */
export function advised(
  analysis: VisitAnalysis,
  { header, settings = NO_SETTINGS }: Pick<Context, 'header' | 'settings'>,
): AdvisedVisit {
  const { facts: visit, before } = analysis;
  const whole = once(() => wholeVisit(visit, before, header));
  const rays = analysis.rays.map((stage) => {
    const { side, ray } = stage;
    const deciding = once(() => decidingFindings(visit, before.known, side, ray));
    const next = once(() => {
      const painless = isStatedPainless(visit, side, ray);
      const view = { visit, before, header, side, ray, settings, whole: whole(), painless, rays: () => analysis.rays };
      return withLocalWindows(nextStep(view, stage, deciding().drawer.steps), settings);
    });
    const { is } = stage.outcome;
    const open = is === 'span' || is === 'cannot stage';
    const missing = once(() => (open ? missingSteps(deciding().possible) : []));
    const change = once(() => {
      const now = seenOf(stage.outcome, deciding(), isoDayOf(visit));
      return changeOf(before.seen[rayKey(side, ray)], now);
    });
    return withAdvice(stage, { next, missing, change });
  });
  return { ...analysis, rays };
}

interface Advice {
  readonly next: () => NextStep;
  readonly missing: () => readonly ExamStep[];
  readonly change: () => Change | undefined;
}
/** The ray itself, with the advice beside what it has: nothing is worked out before it is asked for. */
function withAdvice(ray: RayAnalysis, { next, missing, change }: Advice): AdvisedRay {
  const asked = (get: () => unknown) => ({ get, enumerable: true });
  return Object.defineProperties({ ...ray } as AdvisedRay, {
    labels: asked(() => ray.labels),
    evidence: asked(() => ray.evidence),
    assumptions: asked(() => ray.assumptions),
    statements: asked(() => ray.statements),
    next: asked(next),
    missing: asked(missing),
    change: asked(change),
  });
}
