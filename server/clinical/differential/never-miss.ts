import { absent, argues, type Condition, practice, present, provesNothing, says, speaksAgainst } from './condition.ts';
import type { FactOf } from './view.ts';

const isRaised = (fact: FactOf<'crp' | 'white-cells'>): boolean => says(fact.values.level, 'raised');
const isNormal = (fact: FactOf<'crp' | 'white-cells'>): boolean => says(fact.values.level, 'normal');
const ofBone = ({ values }: FactOf<'image-other'>): boolean =>
  says(values.what, 'fracture', 'stress fracture', 'stress reaction');
const unplaced = ({ values }: FactOf<'tenderness'>): boolean => !values.place;
const ofBoneItself = ({ subject }: FactOf<'tenderness'>): boolean =>
  subject.at === 'ray' && subject.part === 'metatarsal';

/** What must not be missed, in the order in which it is thought of. Common practice throughout. */
export const NEVER_MISS: readonly Condition[] = [
  {
    id: 'infection',
    at: ['ray', 'great toe', 'web', 'foot'],
    neverMiss: true,
    criteria: [
      {
        finding: 'hot',
        ask: 'feel for heat against the other foot',
        claims: [
          argues(present('hot'), 'heat may be infection'),
          speaksAgainst(absent('hot'), 'heat is stated absent'),
        ],
      },
      {
        finding: 'redness',
        ask: 'look for redness',
        claims: [
          argues(present('redness'), 'redness may be infection'),
          speaksAgainst(absent('redness'), 'redness is stated absent'),
        ],
      },
      {
        finding: 'fever',
        ask: 'ask about fever and take the temperature',
        claims: [
          argues(present('fever'), 'fever with a painful foot is infection until shown otherwise'),
          provesNothing(absent('fever'), 'no fever does not exclude an infected joint'),
        ],
      },
      {
        finding: 'wound',
        claims: [
          argues(
            present('wound', ({ values }) => says(values.state, 'pus', 'spreading')),
            'pus or spreading redness is infection',
          ),
          argues(
            present('wound', ({ values }) => says(values.state, 'open')),
            'an open wound lets infection in',
          ),
        ],
      },
      {
        finding: 'infection-sign',
        claims: [
          argues(present('infection-sign'), 'a sign of infection is stated'),
          speaksAgainst(
            absent('infection-sign', ({ values }) => !values.what),
            'signs of infection are stated absent',
          ),
        ],
      },
      {
        finding: 'pin-site',
        claims: [
          argues(
            present('pin-site', ({ values }) => says(values.state, 'pus', 'spreading', 'discharging', 'red')),
            'the pin site is inflamed',
          ),
        ],
      },
      {
        finding: 'complication',
        claims: [
          argues(
            present('complication', ({ values }) => says(values.what, 'infection')),
            'the clinician states an infection',
          ),
        ],
      },
      {
        finding: 'malaise',
        claims: [argues(present('malaise'), 'the patient feels ill')],
      },
      {
        finding: 'crp',
        claims: [
          argues(present('crp', isRaised), 'raised in infection and in inflammation'),
          provesNothing(present('crp', isNormal), 'a normal value excludes neither infection nor inflammation'),
        ],
      },
      {
        finding: 'white-cells',
        claims: [
          argues(present('white-cells', isRaised), 'raised white cells fit infection'),
          provesNothing(present('white-cells', isNormal), 'a normal count does not exclude an infected joint'),
        ],
      },
    ],
    separate: {
      ...practice,
      ask: 'aspirate the joint before antibiotics if the patient is stable; blood count and CRP the same day',
    },
  },
  {
    id: 'fracture or stress fracture',
    at: ['ray', 'great toe'],
    neverMiss: true,
    criteria: [
      {
        finding: 'tenderness',
        ask: 'press the shaft of the metatarsal, apart from the head and the plate',
        claims: [
          argues(
            present('tenderness', (fact) => says(fact.values.place, 'shaft') || ofBoneItself(fact)),
            'tenderness of the bone itself points to a stress injury',
          ),
          speaksAgainst(
            absent('tenderness', (fact) => unplaced(fact) || says(fact.values.place, 'shaft')),
            'tenderness of the shaft is stated absent',
          ),
        ],
      },
      {
        finding: 'bruising',
        claims: [argues(present('bruising'), 'bruising fits an injury of bone')],
      },
      {
        finding: 'illness',
        claims: [
          argues(
            present('illness', ({ values }) => says(values.what, 'osteoporosis', 'osteopenia')),
            'weak bone breaks under ordinary load',
          ),
        ],
      },
      {
        finding: 'trigger',
        ask: 'ask about a recent rise in load, or an injury',
        claims: [
          argues(
            present('trigger', ({ values }) => says(values.what, 'load-rise')),
            'a recent rise in load overloads bone',
          ),
          argues(
            present('trigger', ({ values }) => says(values.what, 'injury')),
            'an injury can break bone',
          ),
          speaksAgainst(
            absent('trigger', ({ values }) => says(values.what, 'injury', 'load-rise')),
            'it is stated absent',
          ),
        ],
      },
      {
        finding: 'tuning-fork',
        claims: [
          argues(
            present('tuning-fork', ({ values }) => says(values.result, 'positive')),
            'pain under the fork fits a stress injury; alone it decides nothing',
          ),
          provesNothing(absent('tuning-fork'), 'a fork that does not hurt excludes no stress injury'),
        ],
      },
      {
        finding: 'image-other',
        claims: [
          argues(present('image-other', ofBone), 'imaging reports it'),
          speaksAgainst(
            absent('image-other', (fact) => ofBone(fact) && fact.section === 'mri'),
            'MRI reports none',
          ),
          provesNothing(
            absent('image-other', ofBone),
            'an early film or an ultrasound without a fracture does not exclude a stress injury',
          ),
        ],
      },
      {
        finding: 'vitamin-d',
        claims: [
          argues(
            present('vitamin-d', ({ values }) => says(values.level, 'low')),
            'low vitamin D weakens bone',
          ),
        ],
      },
    ],
    separate: { ...practice, ask: 'film now; MRI, or the film again in two to three weeks; off-load meanwhile' },
  },
  {
    id: 'tumour',
    at: ['ray', 'great toe', 'web', 'foot'],
    neverMiss: true,
    criteria: [
      {
        finding: 'mass',
        ask: 'feel for a mass',
        claims: [
          argues(present('mass'), 'a mass is a tumour until shown otherwise'),
          speaksAgainst(absent('mass'), 'a mass is stated absent'),
        ],
      },
      {
        finding: 'pain',
        ask: 'ask about pain at night',
        claims: [
          argues(
            present('pain', ({ values }) => says(values.character, 'night')),
            'pain at night is not explained by load',
          ),
          speaksAgainst(
            absent('pain', ({ values }) => says(values.character, 'night')),
            'pain at night is stated absent',
          ),
        ],
      },
      {
        finding: 'cancer-history',
        told: 'an earlier cancer is a reason to look beyond load and wear',
        claims: [
          argues(present('cancer-history'), 'an earlier cancer is a reason to look beyond load and wear'),
          provesNothing(absent('cancer-history'), 'a tumour needs no earlier cancer'),
        ],
      },
      {
        finding: 'weight-loss',
        claims: [argues(present('weight-loss'), 'weight lost without trying asks for a search beyond the foot')],
      },
    ],
    separate: { ...practice, ask: 'MRI before any injection or excision, and the tumour route' },
  },
];
