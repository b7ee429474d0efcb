import { readDrawer } from '../drawer.ts';
import {
  absent,
  argues,
  type Condition,
  OUTDATED,
  present,
  provesNothing,
  says,
  speaksAgainst,
  stated,
} from './condition.ts';
import { isOutdated } from './image-age.ts';
import { type FactOf, isOperated, type View } from './view.ts';

const steps = (fact: FactOf<'drawer'>, { visit }: View) => readDrawer({ is: 'stated', fact }, visit.drawerScale).steps;
const isUnstable = (fact: FactOf<'drawer'>, view: View): boolean =>
  steps(fact, view).every((step) => step !== 'not done' && step >= 1);
const isStable = (fact: FactOf<'drawer'>, view: View): boolean => steps(fact, view).every((step) => step === 0);

const ofPlate = ({ values }: FactOf<'tenderness'>): boolean => says(values.place, 'plate');
const plantar = ({ values }: FactOf<'tenderness' | 'pain'>): boolean => says(values.place, 'plantar', 'head', 'joint');
const isSecond = ({ subject }: FactOf<'tenderness' | 'pain' | 'swelling'>): boolean =>
  subject.at === 'ray' && subject.ray === 2;
const ofRay = ({ subject }: FactOf<'pain'>): boolean => subject.at === 'ray';
const operated = ({ subject }: { subject: FactOf<'lifted'>['subject'] }, view: View): boolean =>
  subject.at === 'ray' && isOperated(view, subject.ray);
const beside = ({ values }: FactOf<'gap'>, { webs }: View): boolean =>
  values.between !== undefined && webs.includes(values.between.web);

const AFTER_OPERATION = 'after an operation on this ray it is no sign of a torn plate';
const KLEIN = { source: 'KLEIN13E', mark: 'read' } as const;
const NERY = { source: 'NERY15', mark: 'read' } as const;

/** The drawer and what goes with it. Figures of KLEIN13E contradict each other and are not used; that the sign was frequent is. */
export const PLATE: Condition = {
  id: 'plantar plate tear',
  at: ['ray', 'web'],
  criteria: [
    {
      finding: 'drawer',
      ask: 'do the drawer test and give its grade and scale',
      claims: [
        argues(present('drawer', isUnstable), {
          ...NERY,
          why: 'the joint is unstable, the most reliable single sign of a torn plate',
        }),
        speaksAgainst(stated('drawer', isStable), {
          source: 'NERY-RF',
          mark: 'read',
          why: 'the joint is stable; of 35 joints with a worn or slightly torn plate none was',
        }),
      ],
    },
    {
      finding: 'tenderness',
      ask: 'press the plate at the base of the proximal phalanx, then the head, the shaft and the space, each apart',
      claims: [
        argues(present('tenderness', ofPlate), 'tenderness at the plate itself points to the joint'),
        argues(
          present('tenderness', (fact) => says(fact.values.place, 'head') && isSecond(fact)),
          { ...KLEIN, why: 'pain at the second metatarsal head was frequent in torn plates' },
        ),
        argues(present('tenderness', plantar), 'plantar tenderness at the head fits the plate'),
        speaksAgainst(
          absent(
            'tenderness',
            (fact) => fact.subject.at === 'ray' && (!fact.values.place || ofPlate(fact) || plantar(fact)),
          ),
          'tenderness of the joint is stated absent',
        ),
      ],
    },
    {
      finding: 'pain',
      claims: [
        argues(
          present('pain', (fact) => says(fact.values.place, 'head') && isSecond(fact)),
          { ...KLEIN, why: 'pain at the second metatarsal head was frequent in torn plates' },
        ),
        argues(
          present('pain', (fact) => ofRay(fact) && (plantar(fact) || says(fact.values.character, 'push-off'))),
          'pain under the head or on push-off fits the plate',
        ),
      ],
    },
    {
      finding: 'swelling',
      ask: 'look and feel for swelling around the joint',
      claims: [
        argues(present('swelling', isSecond), {
          ...KLEIN,
          why: 'swelling at the second metatarsal head was frequent in torn plates',
        }),
        argues(present('swelling'), 'a swollen joint fits a fresh tear'),
        provesNothing(absent('swelling'), 'swelling tends to fall as the stage rises'),
      ],
    },
    {
      finding: 'paper',
      ask: 'do the paper test',
      claims: [
        provesNothing(stated('paper', operated), AFTER_OPERATION),
        argues(
          present('paper', ({ values }) => says(values.result, 'weak', 'pulls-out')),
          { ...NERY, why: 'reduced purchase goes with the grade of the tear' },
        ),
        speaksAgainst(
          present('paper', ({ values }) => says(values.result, 'holds')),
          'purchase is normal',
        ),
      ],
    },
    {
      finding: 'lifted',
      ask: 'see whether the toe touches the ground, standing',
      claims: [
        provesNothing(stated('lifted', operated), AFTER_OPERATION),
        argues(present('lifted'), { ...NERY, why: 'loss of ground touch goes with the grade of the tear' }),
        speaksAgainst(absent('lifted'), 'the toe touches the ground'),
      ],
    },
    {
      finding: 'gap',
      claims: [argues(present('gap', beside), { ...NERY, why: 'a widening space goes with the grade of the tear' })],
    },
    {
      finding: 'overlap',
      claims: [argues(present('overlap'), { ...NERY, why: 'an overlapping toe goes with the grade of the tear' })],
    },
    {
      finding: 'rotation',
      claims: [
        argues(
          present('rotation', ({ values }) => says(values.direction, 'supinated')),
          { ...NERY, why: 'supination of the toe goes with the grade of the tear' },
        ),
        provesNothing(
          present('rotation', ({ values }) => says(values.direction, 'pronated')),
          { ...NERY, why: 'pronation did not go with the grade of a tear' },
        ),
      ],
    },
    {
      finding: 'deviation',
      claims: [
        argues(present('deviation'), 'a toe that drifts fits an unstable joint'),
        provesNothing(absent('deviation'), 'early tears leave the toe straight'),
      ],
    },
    {
      finding: 'extension',
      claims: [
        provesNothing(stated('extension', operated), AFTER_OPERATION),
        argues(present('extension'), 'a toe extended at the MTP joint fits an unstable joint'),
      ],
    },
    {
      finding: 'subluxed',
      claims: [argues(present('subluxed'), 'a joint that lies out of place has lost its hold')],
    },
    {
      finding: 'dislocated',
      claims: [argues(present('dislocated'), 'a dislocated joint has lost its plate or its hold')],
    },
    {
      finding: 'bruising',
      claims: [
        argues(
          present('bruising', ({ values }) => says(values.place, 'plantar')),
          'plantar bruising after an injury fits a fresh tear',
        ),
      ],
    },
    {
      finding: 'mtp-plantarflexion',
      claims: [
        argues(
          present('mtp-plantarflexion', ({ values }) => says(values.pain, 'painful')),
          'pain at the end of plantarflexion fits the plate',
        ),
      ],
    },
    {
      finding: 'tear',
      claims: [
        provesNothing(stated('tear', isOutdated), OUTDATED),
        argues(present('tear'), {
          source: 'GREGG06',
          mark: 'read',
          why: 'imaging reports a tear; an image alone does not diagnose, since 75 of 160 plates without symptoms looked torn on ultrasound',
        }),
        speaksAgainst(absent('tear'), 'imaging reports an intact plate, which does not clear a painful, drifting toe'),
      ],
    },
    {
      finding: 'protrusion',
      claims: [
        provesNothing(
          present('protrusion', ({ values }) => says(values.than, 'longer')),
          { source: 'PROT', mark: 'read', why: 'studies disagree whether length matters: PROT for, KAZ07 against' },
        ),
      ],
    },
    {
      finding: 'onset',
      claims: [
        provesNothing(stated('onset'), {
          ...KLEIN,
          why: 'studies disagree: gradual in most tears (KLEIN13E), while acute pain goes with their grade (NERY15)',
        }),
      ],
    },
    {
      finding: 'laxity',
      claims: [provesNothing(present('laxity'), 'general laxity lowers the certainty of a drawer: compare both feet')],
    },
    {
      finding: 'steroid',
      claims: [
        argues(
          present('steroid', ({ section, subject }) => section === 'tried' && subject.at !== 'patient'),
          {
            source: 'REIS89',
            mark: 'from memory, to be verified',
            why: 'dislocation after repeated steroid was reported',
          },
        ),
      ],
    },
    {
      finding: 'block',
      claims: [
        argues(
          present('block', ({ subject, values }) => subject.at === 'ray' && says(values.response, 'complete')),
          { source: 'HEALIO15', mark: 'secondary', why: 'a block of the joint took the pain: it comes from the joint' },
        ),
        speaksAgainst(
          present('block', ({ subject, values }) => subject.at === 'ray' && says(values.response, 'no relief')),
          { source: 'HEALIO15', mark: 'secondary', why: 'a block of the joint left the pain' },
        ),
        provesNothing(
          present('block', ({ subject, values }) => subject.at === 'ray' && says(values.response, 'partial')),
          'partial relief does not tell the joint from the space',
        ),
      ],
    },
    {
      finding: 'callus',
      claims: [
        provesNothing(
          present('callus', ({ values }) => says(values.place, 'head', 'plantar')),
          'callus under the head shows overload; over a torn plate it is usually absent',
        ),
      ],
    },
  ],
  separate: {
    source: 'HEALIO15',
    mark: 'secondary',
    ask: 'drawer test with its grade and scale and the paper test; then anaesthetic blocks of joint and web, apart',
  },
};
