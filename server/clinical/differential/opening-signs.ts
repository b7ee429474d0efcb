import type { FindingId } from '../../../grammar/lexicon/index.ts';
import { readDrawer } from '../drawer.ts';
import type { AnyFact, Subject } from '../facts.ts';
import { present, says } from './condition.ts';
import { clear, type Site, type View } from './view.ts';

type At = Subject['at'];
/** What makes a site a question, by what it is said of. */
const SIGNS: Readonly<Record<Exclude<At, 'patient'> | 'great toe', readonly FindingId[]>> = {
  ray: [
    'pain',
    'tenderness',
    'swelling',
    'hot',
    'redness',
    'mass',
    'deviation',
    'extension',
    'overlap',
    'dislocated',
    'subluxed',
    'infection-sign',
    'lifted',
    'callus',
    'corn',
    'freiberg',
    'transfer-pain',
    'disproportionate-pain',
  ],
  'great toe': [
    'pain',
    'tenderness',
    'swelling',
    'hot',
    'redness',
    'mass',
    'dislocated',
    'infection-sign',
    'callus',
    'disproportionate-pain',
  ],
  web: ['pain', 'tenderness', 'click', 'squeeze', 'numbness', 'mass', 'infection-sign'],
  foot: ['pain', 'hot', 'redness', 'mass', 'infection-sign', 'disproportionate-pain'],
};
/** Of a joint that is stated to be without symptoms these are no complaint. */
const QUIET: ReadonlySet<FindingId> = new Set(['deviation', 'extension', 'lifted', 'callus']);

/** The complaints and signs that are said of a site itself; a neighbour's open the neighbour. */
export function openingSigns(view: View, painless: boolean): AnyFact[] {
  const { site } = view;
  const own = SIGNS[site.at]
    .filter((finding) => !(painless && QUIET.has(finding)))
    .flatMap((finding) => present(finding)(view))
    .filter((fact) => isAt(fact.subject, site));
  const tested = painless ? [] : results(view).filter((fact) => isAt(fact.subject, site));
  return [...own, ...tested.filter(({ finding }) => site.at !== 'great toe' || !LESSER_TESTS.has(finding))];
}
/** Tests of the lesser joints say nothing of the great toe. */
const LESSER_TESTS: ReadonlySet<FindingId> = new Set(['drawer', 'paper', 'compression']);

/** Tests open a site by their result, not by having been done. */
function results(view: View): AnyFact[] {
  const { drawerScale } = view.visit;
  const loose = clear(view, 'drawer').filter((fact) =>
    readDrawer({ is: 'stated', fact }, drawerScale).steps.every((step) => step !== 'not done' && step >= 1),
  );
  const weak = present('paper', ({ values }) => says(values.result, 'weak', 'pulls-out'))(view);
  const sore = present('compression', ({ values }) => says(values.pain, 'sore'))(view);
  const tapped = present('tinel', ({ values }) => says(values.result, 'positive'))(view);
  const infected = [
    ...present('wound', ({ values }) => says(values.state, 'pus', 'spreading', 'open'))(view),
    ...present('pin-site', ({ values }) => says(values.state, 'pus', 'spreading', 'discharging', 'red'))(view),
    ...present('complication', ({ values }) => says(values.what, 'infection'))(view),
  ];
  return [...loose, ...weak, ...sore, ...tapped, ...infected];
}

function isAt(subject: Subject, site: Site): boolean {
  if (site.at === 'ray') return subject.at === 'ray' && subject.ray === site.ray;
  if (site.at === 'great toe') return subject.at === 'ray' && subject.ray === 1;
  if (site.at === 'web') return subject.at === 'web' && subject.web === site.web;
  return subject.at === 'foot';
}
