import type { Ray, Side } from '../../grammar/values.ts';
import { ask, clearFacts, isStated } from './answers.ts';
import type { VisitFacts } from './facts.ts';

/** Circulation of the toe or foot as stated in the visit: pulses, refill or colour. */
export function circulationStated(visit: VisitFacts, side: Side, ray: Ray): boolean {
  const whole = ['dp', 'pt', 'pulses', 'capillary-refill'] as const;
  return (
    whole.some((finding) => ask(visit.facts, finding, { side, whole: true }).is === 'stated') ||
    ask(visit.facts, 'capillary-refill', { side, ray }).is === 'stated' ||
    clearFacts(visit.facts, 'perfusion', { side, ray }).length > 0
  );
}

/** Both pulses stated as felt; one that is absent or not examined leaves the circulation open. */
export function pulsesFelt(visit: VisitFacts, side: Side): 'felt' | 'absent' | 'not examined' {
  const read = (finding: 'dp' | 'pt' | 'pulses') => {
    const answer = ask(visit.facts, finding, { side, whole: true });
    if (answer.is !== 'stated') return undefined;
    const { status, values } = answer.fact;
    if (status === 'absent' || values.grade?.low === 0) return 'absent' as const;
    return status === 'present' && (values.grade || values.felt) ? ('felt' as const) : undefined;
  };
  const dp = read('dp');
  const pt = read('pt');
  const both = read('pulses');
  if (dp === 'absent' || pt === 'absent' || both === 'absent') return 'absent';
  return both === 'felt' || (dp === 'felt' && pt === 'felt') ? 'felt' : 'not examined';
}

/** A web sign in a space beside the ray: click, squeeze, numbness, pain or tenderness. */
export function webSigns(visit: VisitFacts, side: Side, ray: Ray): boolean {
  return ([ray - 1, ray] as const).some((web) => {
    if (web < 1 || web > 4) return false;
    const about = { side, web: web as 1 | 2 | 3 | 4 };
    return (['click', 'squeeze', 'numbness', 'pain', 'tenderness'] as const).some((finding) =>
      isStated(visit.facts, finding, 'present', about),
    );
  });
}
