import { RAYS, type Ray, type Side } from '../../grammar/values.ts';
import { ask, clearFacts, dislocatedFilms, isStated } from './answers.ts';
import { isOldDislocation } from './deciding.ts';
import type { AnyFact, StatementId, VisitFacts } from './facts.ts';
import { footSensation } from './gates.ts';
import { clot, tumour } from './red-flags-beyond-the-foot.ts';

export type RedFlag = 'infection' | 'ischaemia' | 'clot' | 'acute dislocation' | 'neuropathic hot foot' | 'tumour';
export interface Flagged {
  readonly flag: RedFlag;
  readonly statements: readonly StatementId[];
  /** Says which signs made the pair, or which word. */
  readonly why: string;
  /** It stops staging; a dislocation of unknown age is described by its own row. */
  readonly closes: boolean;
}

interface FlagView {
  readonly visit: VisitFacts;
  readonly side: Side;
  readonly ray: Ray;
}
type Finder = (view: FlagView) => Omit<Flagged, 'flag'> | undefined;

/** Red flags from a pair of signs or the clinician's word, never from one weak word (common practice). First in order, first in every output. */
const FINDERS: readonly (readonly [RedFlag, Finder])[] = [
  ['infection', infection],
  ['ischaemia', ischaemia],
  ['clot', ({ visit }) => clot(visit)],
  ['acute dislocation', acuteDislocation],
  ['neuropathic hot foot', neuropathicHotFoot],
  ['tumour', ({ visit, ...about }) => tumour(visit, about)],
];

/** Every red flag of a visit, once each, of the great toe and of feet without an examined ray too. */
export function redFlagsOf(visit: VisitFacts): Flagged[] {
  const found = new Map<string, Flagged>();
  for (const side of ['right', 'left'] as const)
    for (const ray of RAYS)
      for (const [flag, find] of FINDERS) {
        const flagged = find({ visit, side, ray });
        if (flagged) found.set(`${flag} ${flagged.statements.join()}`, { flag, ...flagged });
      }
  return [...found.values()];
}

/** The first red flag that concerns a ray; signs of the whole foot and of the patient concern each of its rays. */
export function redFlagOf(view: FlagView): Flagged | undefined {
  for (const [flag, find] of FINDERS) {
    const found = find(view);
    if (found) return { flag, ...found };
  }
  return undefined;
}

const present = (facts: readonly AnyFact[]): AnyFact[] => facts.filter(({ status }) => status === 'present');
/** Facts of the ray itself, of its foot or of the patient. */
const nearby = ({ side, ray }: FlagView, fact: AnyFact): boolean =>
  (fact.side === undefined || fact.side === side) && (fact.subject.at !== 'ray' || fact.subject.ray === ray);

function infection(view: FlagView): ReturnType<Finder> {
  const { facts } = view.visit;
  const near = <T extends AnyFact>(list: readonly T[]) => list.filter((fact) => nearby(view, fact));
  const wounds = near(clearFacts(facts, 'wound')).filter(({ values }) =>
    values.state?.words.some((word) => word === 'pus' || word === 'spreading'),
  );
  if (wounds.length > 0)
    return { statements: ids(wounds), why: 'the wound shows pus or spreading redness', closes: true };
  const pins = near(clearFacts(facts, 'pin-site')).filter(
    ({ status, values }) =>
      status === 'present' && values.state?.words.some((word) => word === 'pus' || word === 'spreading'),
  );
  if (pins.length > 0)
    return { statements: ids(pins), why: 'the pin site shows pus or spreading redness', closes: true };
  const said = near(clearFacts(facts, 'complication')).filter(
    ({ status, values }) => status === 'present' && values.what?.words.includes('infection'),
  );
  if (said.length > 0) return { statements: ids(said), why: 'the clinician states an infection', closes: true };
  const heat = present(near([...clearFacts(facts, 'hot'), ...clearFacts(facts, 'redness')] as AnyFact[]));
  const fever = present(clearFacts(facts, 'fever'));
  if (heat.length === 0 || fever.length === 0) return undefined;
  return { statements: ids([...heat, ...fever]), why: 'a hot or red joint with fever', closes: true };
}

function ischaemia(view: FlagView): ReturnType<Finder> {
  const pale = clearFacts(view.visit.facts, 'perfusion', view).filter(
    (fact) => fact.status === 'present' && fact.values.state?.words.some((word) => word !== 'pink'),
  );
  if (pale.length > 0) return { statements: ids(pale), why: 'the toe is cold, pale, white or blue', closes: true };
  const beyond = present(clearFacts(view.visit.facts, 'disproportionate-pain') as AnyFact[]).filter((fact) =>
    nearby(view, fact),
  );
  return beyond.length > 0 ? { statements: ids(beyond), why: 'pain out of proportion', closes: true } : undefined;
}

/** Acute by the clinician's word, by its age, or because nobody says that it is old. */
function acuteDislocation(view: FlagView): ReturnType<Finder> {
  const { facts } = view.visit;
  const exam = present(clearFacts(facts, 'dislocated', view)) as Extract<AnyFact, { finding: 'dislocated' }>[];
  const film = dislocatedFilms(facts, view);
  const top = clearFacts(facts, 'drawer', view).filter(({ values }) => isTopGrade(values.grade));
  const old = exam.some((fact) => isOldDislocation(fact, view.visit));
  const all: AnyFact[] = [...exam, ...film, ...top];
  if (all.length === 0 || old) return undefined;
  const said = exam.some(({ values }) => values.age || values.for || values.at || values.on);
  const why = said ? 'the dislocation is acute' : 'dislocated, and nobody says since when: acute until shown otherwise';
  return { statements: ids(all), why, closes: said };
}
/** Grade 4 of the 0-4 scale and grade 3 of the 0-3 scale are a joint that lies dislocated (from memory). */
const isTopGrade = (grade: { low: number; scale?: string } | undefined): boolean =>
  grade !== undefined && (grade.scale === '0-3' ? grade.low === 3 : grade.scale !== '1-3' && grade.low === 4);

function neuropathicHotFoot(view: FlagView): ReturnType<Finder> {
  const feeling = footSensation(view.visit, view.side);
  if (feeling !== 'lost' && feeling !== 'reduced') return undefined;
  const of = (finding: 'hot' | 'swelling') =>
    present(clearFacts(view.visit.facts, finding, { side: view.side }) as AnyFact[]);
  const wounds = clearFacts(view.visit.facts, 'wound', { side: view.side }).filter((fact) => isOpenWound(fact));
  if (wounds.length > 0) return { statements: ids(wounds), why: 'a wound in a foot with poor feeling', closes: true };
  const [hot, swollen] = [of('hot'), of('swelling')];
  if (hot.length === 0 || swollen.length === 0) return undefined;
  return { statements: ids([...hot, ...swollen]), why: 'a hot, swollen foot with poor feeling', closes: true };
}

const QUIET_WOUND: readonly string[] = ['healed', 'clean', 'dry', 'clean and dry'];

/** Present and not said to be clean, dry or healed; a fresh incision without that word counts. */
export const isOpenWound = ({ status, values }: Extract<AnyFact, { finding: 'wound' }>): boolean =>
  status === 'present' && !values.state?.words.some((word) => QUIET_WOUND.includes(word));

const ids = (facts: readonly AnyFact[]): string[] => [...new Set(facts.map(({ statement }) => statement))];

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
  const [dp, pt, both] = [read('dp'), read('pt'), read('pulses')];
  if ([dp, pt, both].includes('absent')) return 'absent';
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
