import type { AdvisedVisit, Context, VisitAnalysis } from './analysis.ts';
import { decidingFindings } from './deciding.ts';
import { isStatedPainless } from './gates.ts';
import { withLocalWindows } from './local-windows.ts';
import { nextStep } from './next-step.ts';
import { once } from './once.ts';
import { NO_SETTINGS } from './settings.ts';
import { wholeVisit } from './whole-visit.ts';

/**
 * Adds the next step to every ray of a visit. Each is worked out when it is asked for; the checks need none, so that the
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
    const next = once(() => {
      const painless = isStatedPainless(visit, side, ray);
      const view = { visit, before, header, side, ray, settings, whole: whole(), painless, rays: () => analysis.rays };
      const { drawer } = decidingFindings(visit, before.known, side, ray);
      return withLocalWindows(nextStep(view, stage, drawer.steps), settings);
    });
    return withNext(stage, next);
  });
  return { ...analysis, rays };
}

/** The ray itself, with `next` beside what it has: its argument stays unasked. */
function withNext<R extends object, N>(ray: R, next: () => N): R & { readonly next: N } {
  const described = { ...Object.getOwnPropertyDescriptors(ray), next: { get: next, enumerable: true } };
  return Object.defineProperties({}, described) as R & { readonly next: N };
}
