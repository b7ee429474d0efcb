import { readDrawer } from '../drawer.ts';
import {
  absent,
  argues,
  type Condition,
  type Criterion,
  OUTDATED,
  practice,
  present,
  provesNothing,
  says,
  speaksAgainst,
  stated,
} from './condition.ts';
import { isOutdated } from './image-age.ts';
import { clear, type FactOf, type View, viewOf } from './view.ts';

/** The drawers of the two rays beside a web: all stable, any unstable, or neither known. */
function jointsBeside({ subject }: FactOf<'web-lesion'>, view: View): 'unstable' | 'stable' | 'not known' {
  if (subject.at !== 'web') return 'not known';
  const near = viewOf(view.visit, view.before, view.side, { at: 'web', web: subject.web });
  const steps = clear(near, 'drawer').map((fact) => readDrawer({ is: 'stated', fact }, view.visit.drawerScale).steps);
  if (steps.some((each) => each.every((step) => step !== 'not done' && step >= 1))) return 'unstable';
  const displaced = (['overlap', 'dislocated'] as const).some((finding) => present(finding)(near).length > 0);
  if (displaced) return 'unstable';
  return steps.length >= near.rays.length && steps.every((each) => each.every((step) => step === 0))
    ? 'stable'
    : 'not known';
}

const named =
  (...what: readonly string[]) =>
  ({ values }: FactOf<'web-lesion'>): boolean =>
    says(values.what, ...what);
const isNeuroma = named('neuroma');
const isThickened = named('thickening', 'fibrosis');
const isBursitis = named('bursitis');
const beside = ({ values }: FactOf<'gap'>, { webs }: View): boolean =>
  values.between !== undefined && webs.includes(values.between.web);
const inWeb = ({ subject }: FactOf<'pain' | 'tenderness' | 'block' | 'numbness'>): boolean => subject.at === 'web';
const isPositive = (fact: FactOf<'percussion' | 'nerve-stretch'>): boolean => says(fact.values.result, 'positive');
const smallerThan =
  (mm: number) =>
  ({ values }: FactOf<'web-lesion'>): boolean =>
    values.size !== undefined && values.size.high < mm;

const MAHA = { source: 'MAHA15', mark: 'read' } as const;
const UMANS = { source: 'UMANS14', mark: 'read' } as const;
const ZAN = { source: 'ZAN97', mark: 'read' } as const;
const INJECTED = { source: 'HEALIO15', mark: 'secondary' } as const;

/** An image of the web proves nothing beside an unstable joint, and little while nobody has tested the joint. */
const NEUROMA_IMAGE: Criterion = {
  finding: 'web-lesion',
  claims: [
    provesNothing(stated('web-lesion', isOutdated), OUTDATED),
    provesNothing(
      present('web-lesion', (fact, view) => !isBursitis(fact) && jointsBeside(fact, view) === 'unstable'),
      {
        ...UMANS,
        why: 'beside an unstable joint a change in the web is not proof of a neuroma: none of 36 second-MTP tears had a definite one, and 35 had a change in the space',
      },
    ),
    provesNothing(
      present('web-lesion', (fact) => isNeuroma(fact) && smallerThan(5)(fact)),
      { ...ZAN, why: 'under 5 mm: 30 % of people without symptoms had one, of 3 to 7 mm' },
    ),
    argues(present('web-lesion', isNeuroma), { source: 'XU15', mark: 'read', why: 'imaging reports a neuroma' }),
    provesNothing(
      present('web-lesion', isThickened),
      'thickening alone is no neuroma, and scar beside a torn plate looks alike',
    ),
    speaksAgainst(
      absent('web-lesion', (fact) => !fact.values.what || isNeuroma(fact)),
      'imaging reports none',
    ),
  ],
};

const NEUROMA: Condition = {
  id: 'interdigital neuroma',
  at: ['ray', 'web'],
  criteria: [
    {
      finding: 'squeeze',
      ask: 'squeeze the space between thumb and index',
      claims: [
        argues(present('squeeze'), {
          ...MAHA,
          why: 'the most sensitive test of a neuroma in one series, which cannot say how specific it is',
        }),
        speaksAgainst(absent('squeeze'), {
          ...MAHA,
          why: 'the squeeze was positive in 96 % of neuromas in one series',
        }),
      ],
    },
    {
      finding: 'click',
      ask: 'look for a click of the space',
      claims: [
        argues(present('click'), { ...MAHA, why: 'a click was found in 61 % of neuromas in one series' }),
        provesNothing(absent('click'), { ...MAHA, why: 'without a click: 39 % of neuromas in one series had none' }),
      ],
    },
    {
      finding: 'tenderness',
      ask: 'press the space, apart from the joints beside it',
      claims: [
        argues(present('tenderness', inWeb), {
          source: 'PAST12',
          mark: 'read',
          why: 'the space was tender in all of 43 neuromas of one series',
        }),
        speaksAgainst(absent('tenderness', inWeb), {
          source: 'PAST12',
          mark: 'read',
          why: 'the space is not tender, as it was in all of 43 neuromas of one series',
        }),
      ],
    },
    {
      finding: 'numbness',
      ask: 'test light touch of the facing sides of the toes',
      claims: [
        argues(present('numbness', inWeb), { ...MAHA, why: 'numb facing sides point to the interdigital nerve' }),
        provesNothing(absent('numbness', inWeb), {
          ...MAHA,
          why: 'light touch was reduced in only 26 % of neuromas in one series',
        }),
      ],
    },
    {
      finding: 'pain',
      claims: [
        argues(
          present(
            'pain',
            (fact) => inWeb(fact) || (fact.subject.at === 'ray' && says(fact.values.character, 'burning')),
          ),
          'burning pain, or pain in the space, points to the nerve',
        ),
      ],
    },
    {
      finding: 'nerve-symptom',
      claims: [
        argues(
          present('nerve-symptom', ({ subject }) => subject.at !== 'foot'),
          'burning, shocks or tingling into the toes point to the nerve of the space',
        ),
      ],
    },
    {
      finding: 'percussion',
      claims: [
        argues(present('percussion', isPositive), {
          ...MAHA,
          why: 'a weak sign: positive in about a third of neuromas',
        }),
        provesNothing(absent('percussion'), { ...MAHA, why: 'positive in only about a third of neuromas' }),
      ],
    },
    {
      finding: 'nerve-stretch',
      claims: [
        argues(present('nerve-stretch', isPositive), {
          source: 'from memory',
          mark: 'from memory, to be verified',
          why: 'pain on stretch of the digital nerve points to it',
        }),
      ],
    },
    NEUROMA_IMAGE,
    {
      finding: 'block',
      claims: [
        argues(
          present('block', (fact) => inWeb(fact) && says(fact.values.response, 'complete')),
          { ...INJECTED, why: 'a block of the space took the pain: it comes from the space' },
        ),
        speaksAgainst(
          present('block', (fact) => inWeb(fact) && says(fact.values.response, 'no relief')),
          { ...INJECTED, why: 'a block of the space left the pain' },
        ),
        provesNothing(
          present('block', (fact) => inWeb(fact) && says(fact.values.response, 'partial')),
          'partial relief does not tell the joint from the space',
        ),
      ],
    },
  ],
  separate: {
    ...INJECTED,
    ask: 'drawer test of both joints beside the space; then anaesthetic blocks of web and joint, apart, without steroid',
  },
};

const BURSITIS: Condition = {
  id: 'intermetatarsal bursitis',
  at: ['ray', 'web'],
  criteria: [
    {
      finding: 'web-lesion',
      claims: [
        provesNothing(stated('web-lesion', isOutdated), OUTDATED),
        provesNothing(
          present(
            'web-lesion',
            (fact) => isBursitis(fact) && fact.values.size !== undefined && fact.values.size.high <= 3,
          ),
          { ...ZAN, why: 'fluid of up to 3 mm in the bursa is found without symptoms' },
        ),
        argues(present('web-lesion', isBursitis), 'imaging reports a bursitis'),
        speaksAgainst(
          absent('web-lesion', (fact) => !fact.values.what || isBursitis(fact)),
          'imaging reports none',
        ),
      ],
    },
    {
      finding: 'squeeze',
      claims: [
        argues(present('squeeze'), {
          source: 'LARS25',
          mark: 'read',
          why: 'a sore space fits a bursa as well as a nerve: the symptoms hardly tell them apart',
        }),
        speaksAgainst(absent('squeeze'), 'the squeeze of the space is painless'),
      ],
    },
    {
      finding: 'compression',
      claims: [
        argues(
          present('compression', ({ values }) => says(values.pain, 'sore')),
          {
            source: 'VANDIJK',
            mark: 'read',
            why: 'in early arthritis most feet sore on compression had synovitis or bursitis between the metatarsals',
          },
        ),
      ],
    },
    {
      finding: 'gap',
      ask: 'compare the spaces between the toes, standing',
      claims: [
        argues(present('gap', beside), 'toes that spread may be held apart by a bursa'),
        speaksAgainst(
          stated('gap', (fact, view) => fact.status === 'absent' && beside(fact, view)),
          'the space is not widened',
        ),
      ],
    },
  ],
  separate: { ...practice, ask: 'ultrasound of the space; with it, ask about morning stiffness and examine both feet' },
};

export const WEB: readonly Condition[] = [NEUROMA, BURSITIS];
