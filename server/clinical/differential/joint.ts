import { inflamedJoints } from '../systemic.ts';
import {
  absent,
  argues,
  type Condition,
  practice,
  present,
  provesNothing,
  says,
  speaksAgainst,
  stated,
} from './condition.ts';
import { clear, type FactOf, type View } from './view.ts';

const isSore = ({ values }: FactOf<'compression'>): boolean => says(values.pain, 'sore');
const bothSore = (_: unknown, { visit }: View): boolean =>
  (['right', 'left'] as const).every((side) =>
    visit.facts.some(
      (fact) =>
        fact.finding === 'compression' &&
        fact.clarity === 'clear' &&
        fact.side === side &&
        isPresent(fact) &&
        isSore(fact),
    ),
  );
const isPresent = ({ status }: { status: string }): boolean => status === 'present';
const soreInBoth = (view: View) => present('compression', (fact) => isSore(fact) && bothSore(fact, view))(view);
const comfortable = (view: View) =>
  clear(view, 'compression').filter(({ status, values }) => status === 'absent' || says(values.pain, 'painless'));
/** The tenderness of a visit with three or more inflamed joints; where it only tells of swelling, that. */
const severalJoints = (view: View) => {
  if (inflamedJoints(view.visit).size < 3) return [];
  const tender = present('tenderness', ({ subject }) => subject.at === 'ray')(view);
  return tender.length > 0 ? tender : present('swelling')(view);
};
const inflamed = ({ values }: FactOf<'image-other'>): boolean => says(values.what, 'synovitis', 'effusion', 'erosion');
const isRaised = (fact: FactOf<'crp' | 'esr' | 'urate'>): boolean => says(fact.values.level, 'raised');
const isPositive = (fact: FactOf<'anti-ccp' | 'rheumatoid-factor'>): boolean => says(fact.values.result, 'positive');
const BOSCH = { source: 'BOSCH15', mark: 'read' } as const;

const SYNOVITIS: Condition = {
  id: 'synovitis or inflammatory arthritis',
  at: ['ray', 'great toe', 'web', 'foot'],
  criteria: [
    {
      finding: 'swelling',
      ask: 'look and feel for swelling of each MTP joint',
      claims: [
        argues(present('swelling'), 'a swollen joint may be inflamed'),
        speaksAgainst(absent('swelling'), 'swelling is stated absent'),
      ],
    },
    {
      finding: 'illness',
      claims: [
        argues(
          present('illness', ({ values }) => says(values.what, 'psoriasis', 'uveitis')),
          'psoriasis or uveitis goes with inflammatory arthritis',
        ),
      ],
    },
    {
      finding: 'tenderness',
      claims: [argues(severalJoints, 'three or more MTP joints are tender or swollen: inflammatory first')],
    },
    { finding: 'hot', claims: [argues(present('hot'), 'a warm, full joint fits synovitis')] },
    {
      finding: 'compression',
      ask: 'compress the row of MTP joints, both feet',
      claims: [
        argues(soreInBoth, { ...BOSCH, why: 'compression sore in both feet points to inflammatory arthritis' }),
        argues(present('compression', isSore), {
          source: 'VANDIJK',
          mark: 'read',
          why: 'in early arthritis most feet sore on compression had synovitis or bursitis between the metatarsals',
        }),
        speaksAgainst(comfortable, {
          ...BOSCH,
          why: 'compression is painless, which argues weakly against swollen joints',
        }),
      ],
    },
    {
      finding: 'morning-stiffness',
      ask: 'ask about morning stiffness, and for how long',
      claims: [
        argues(present('morning-stiffness'), 'morning stiffness points to inflammatory arthritis'),
        speaksAgainst(absent('morning-stiffness'), 'morning stiffness is stated absent'),
      ],
    },
    {
      finding: 'inflammatory-arthritis',
      told: 'inflammatory arthritis is known',
      claims: [argues(present('inflammatory-arthritis'), 'inflammatory arthritis is known')],
    },
    {
      finding: 'rheumatoid-factor',
      claims: [
        argues(present('rheumatoid-factor', isPositive), 'it fits rheumatoid arthritis'),
        provesNothing(absent('rheumatoid-factor'), 'a negative test does not exclude inflammatory arthritis'),
      ],
    },
    {
      finding: 'anti-ccp',
      claims: [
        argues(present('anti-ccp', isPositive), 'it fits rheumatoid arthritis'),
        provesNothing(absent('anti-ccp'), 'a negative test does not exclude inflammatory arthritis'),
      ],
    },
    { finding: 'crp', claims: [argues(present('crp', isRaised), 'raised in inflammation and in infection')] },
    { finding: 'esr', claims: [argues(present('esr', isRaised), 'raised in inflammation and in infection')] },
    {
      finding: 'image-other',
      claims: [
        argues(
          present('image-other', inflamed),
          'imaging reports inflammation of the joint; it also stands beside a torn plate',
        ),
        speaksAgainst(absent('image-other', inflamed), 'imaging reports none'),
      ],
    },
  ],
  separate: {
    ...practice,
    ask: 'count the tender and swollen joints of both feet, ask about morning stiffness; bloods and rheumatology; aspirate a single hot joint',
  },
};

const injured = present('trigger', ({ values }) => says(values.what, 'injury'));

const GOUT: Condition = {
  id: 'gout',
  at: ['ray', 'great toe', 'foot'],
  criteria: [
    {
      finding: 'gout',
      ask: 'ask about earlier attacks',
      told: 'gout is known',
      claims: [argues(present('gout'), 'gout is known')],
    },
    {
      finding: 'hot',
      claims: [
        argues(present('hot'), 'a hot joint may be gout once infection is excluded'),
        speaksAgainst(absent('hot'), 'heat is stated absent'),
      ],
    },
    {
      finding: 'redness',
      claims: [
        argues(present('redness'), 'a red joint may be gout once infection is excluded'),
        speaksAgainst(absent('redness'), 'redness is stated absent'),
      ],
    },
    {
      finding: 'onset',
      ask: 'ask whether it came overnight',
      claims: [
        provesNothing(
          stated('onset', ({ values }, view) => says(values.manner, 'sudden') && injured(view).length > 0),
          'an injury explains a sudden onset',
        ),
        argues(
          stated('onset', ({ values }) => says(values.manner, 'sudden')),
          'an attack comes suddenly',
        ),
        speaksAgainst(
          stated('onset', ({ values }) => says(values.manner, 'gradual')),
          'an attack of gout does not come gradually',
        ),
      ],
    },
    {
      finding: 'urate',
      claims: [
        argues(present('urate', isRaised), 'raised urate supports gout and does not prove it'),
        provesNothing(
          present('urate', ({ values }) => says(values.level, 'normal', 'low')),
          'urate may be normal in an attack',
        ),
      ],
    },
  ],
  separate: { ...practice, ask: 'aspirate the joint: culture first, then crystals' },
};

const ofFreiberg = (view: View) => absent('freiberg', ({ section }) => section === 'mri')(view);

const FREIBERG: Condition = {
  id: 'Freiberg disease',
  at: ['ray'],
  criteria: [
    {
      finding: 'freiberg',
      claims: [
        argues(present('freiberg'), 'imaging reports it'),
        speaksAgainst(ofFreiberg, 'MRI reports none'),
        speaksAgainst(absent('freiberg'), 'the film reports none, though the first stage shows on MRI only'),
      ],
    },
    {
      finding: 'film-joint',
      claims: [
        argues(
          present('film-joint', ({ values }) => says(values.state, 'narrowed')),
          'a narrowed joint fits its late stages',
        ),
      ],
    },
    {
      finding: 'mtp-dorsiflexion',
      ask: 'measure dorsiflexion of the MTP joint, and say whether it is limited or painful',
      claims: [
        argues(
          present('mtp-dorsiflexion', ({ values }) => says(values.extent, 'limited') || says(values.pain, 'painful')),
          'a stiff or painful joint tells arthritis of the head from instability',
        ),
        speaksAgainst(
          present('mtp-dorsiflexion', ({ values }) => says(values.extent, 'full')),
          'dorsiflexion is full',
        ),
      ],
    },
    {
      finding: 'tenderness',
      claims: [
        argues(
          present('tenderness', ({ values }) => says(values.place, 'dorsal')),
          'dorsal tenderness fits the head and the joint margin',
        ),
      ],
    },
    {
      finding: 'mtp-motion',
      claims: [
        argues(
          present('mtp-motion', ({ values }) => says(values.extent, 'limited')),
          'a stiff joint tells arthritis of the head from instability',
        ),
        speaksAgainst(
          present('mtp-motion', ({ values }) => says(values.extent, 'full')),
          'motion is full',
        ),
      ],
    },
    {
      finding: 'stiffness',
      claims: [argues(present('stiffness'), 'a stiff joint tells arthritis of the head from instability')],
    },
  ],
  separate: { ...practice, ask: 'weight-bearing film of the metatarsal head; MRI where the film is normal' },
};

export const JOINT: readonly Condition[] = [SYNOVITIS, GOUT, FREIBERG];
