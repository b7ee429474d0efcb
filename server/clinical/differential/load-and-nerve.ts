import { absent, argues, type Condition, practice, present, provesNothing, says, speaksAgainst } from './condition.ts';
import { clear, type FactOf, type View } from './view.ts';

const underHead = ({ values }: FactOf<'callus' | 'corn'>): boolean => says(values.place, 'plantar', 'head');
const elsewhere = (fact: FactOf<'callus'>): boolean => fact.values.place !== undefined && !underHead(fact);

const CALLUS: Condition = {
  id: 'painful callus',
  at: ['ray', 'great toe', 'foot'],
  criteria: [
    {
      finding: 'callus',
      ask: 'look at the sole for callus, ray by ray',
      claims: [
        provesNothing(
          present('callus', elsewhere),
          'callus away from the sole of the head does not explain pain there',
        ),
        provesNothing(
          present('callus', ({ values }) => says(values.pain, 'painless')),
          'a callus that does not hurt shows where load goes',
        ),
        argues(present('callus'), 'callus under the head shows overload there'),
        speaksAgainst(absent('callus'), 'callus is stated absent'),
      ],
    },
    {
      finding: 'corn',
      claims: [argues(present('corn', underHead), 'a corn on the sole hurts under load')],
    },
  ],
  separate: {
    ...practice,
    ask: 'where feeling and circulation are sound, pare it and press again: what goes with the callus came from it',
  },
};

const FAT_PAD: Condition = {
  id: 'fat pad atrophy',
  at: ['ray', 'foot'],
  criteria: [
    {
      finding: 'fat-pad',
      ask: 'pinch the pad under the heads',
      claims: [
        argues(
          present('fat-pad', ({ values }) => says(values.state, 'thin', 'displaced')),
          'a pad that is thin or has moved away leaves the head bare',
        ),
        speaksAgainst(
          present('fat-pad', ({ values }) => says(values.state, 'full')),
          'the pad under the heads is full',
        ),
        provesNothing(
          present('fat-pad', ({ values }) => values.thickness !== undefined),
          { why: 'thickness alone had no relation to pain in 100 feet', source: 'WALD01', mark: 'read' },
        ),
      ],
    },
    {
      finding: 'pain',
      ask: 'ask about walking barefoot on a hard floor',
      claims: [
        argues(
          present('pain', ({ values }) => says(values.character, 'barefoot')),
          'pain barefoot on hard ground fits a thin pad; it fits an unstable joint as well',
        ),
      ],
    },
    {
      finding: 'trigger',
      claims: [
        argues(
          present('trigger', ({ values }) => says(values.what, 'barefoot')),
          'pain barefoot on hard ground fits a thin pad; it fits an unstable joint as well',
        ),
      ],
    },
    {
      finding: 'steroid',
      claims: [
        argues(
          present('steroid', ({ section }) => section === 'tried'),
          'steroid given in the forefoot can thin the pad',
        ),
      ],
    },
  ],
  separate: {
    source: 'WALD01',
    mark: 'read',
    ask: 'feel the pad under the heads and try a cushion; its thickness alone had no relation to pain in 100 feet',
  },
};

const numbWebs = (view: View) => {
  const numb = present('numbness', ({ subject }) => subject.at === 'web')(view);
  const webs = new Set(numb.map(({ subject }) => (subject.at === 'web' ? subject.web : 0)));
  return webs.size >= 2 ? numb : [];
};
const poorFeeling = (view: View) =>
  clear(view, 'sensation').filter(
    ({ subject, values, status }) =>
      subject.at === 'foot' && (status === 'absent' || says(values.state, 'reduced', 'lost')),
  );
const ofFoot = (fact: FactOf<'pain'>): boolean => fact.subject.at === 'foot';

const TARSAL_TUNNEL: Condition = {
  id: 'tarsal tunnel syndrome',
  at: ['web', 'foot'],
  criteria: [
    {
      finding: 'tinel',
      ask: 'tap behind the medial malleolus',
      claims: [
        argues(
          present('tinel', ({ values }) => says(values.result, 'positive')),
          'tingling on tapping behind the malleolus points to the nerve there',
        ),
        speaksAgainst(absent('tinel'), 'tapping behind the malleolus does nothing'),
      ],
    },
    {
      finding: 'numbness',
      claims: [argues(numbWebs, 'numbness in more than one space is not one interdigital nerve')],
    },
    {
      finding: 'nerve-symptom',
      claims: [
        argues(
          present('nerve-symptom', ({ subject }) => subject.at === 'foot'),
          'tingling or shocks over the whole foot point above the forefoot',
        ),
      ],
    },
    {
      finding: 'sensation',
      claims: [
        argues(poorFeeling, 'poor feeling of the whole foot is not one interdigital nerve; think of neuropathy too'),
      ],
    },
    {
      finding: 'pain',
      claims: [
        argues(
          present('pain', (fact) => ofFoot(fact) && says(fact.values.character, 'burning')),
          'burning over the whole sole points above the forefoot',
        ),
      ],
    },
  ],
  separate: {
    ...practice,
    ask: 'tap behind the medial malleolus, test feeling over the whole sole and the heel; nerve conduction where it matters',
  },
};

export const LOAD_AND_NERVE: readonly Condition[] = [CALLUS, FAT_PAD, TARSAL_TUNNEL];
