import { date, entry, number, words } from './entry.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const web = { ...practice, kind: 'sign', bare: 'incomplete', sections: ['exam'], subjects: ['web'] } as const;
const vessel = { ...practice, kind: 'measure', bare: 'incomplete', sections: ['exam'] } as const;
const result = words({ positive: ['pos', '+ve', 'painful'] });

/** Further tests of nerve and vessel, and the diagnostic block. */
export const NERVE_AND_VESSEL = [
  entry({
    ...web,
    id: 'percussion',
    word: 'percussion',
    forms: ['web percussion'],
    slots: { result, from: words({ plantar: [], dorsal: [] }, { locating: true, before: true }) },
    order: 84,
    technique: 'Tap the space from the sole, then from the dorsum.',
    meaning: 'Weak beside the squeeze: 37 % of neuromas from the sole in one series (MAHA15).',
    source: 'MAHA15',
    mark: 'read',
  }),
  entry({
    ...web,
    id: 'nerve-stretch',
    word: 'nerve-stretch',
    forms: ['web stretch', 'digital nerve stretch', 'nerve stretch test', 'stretch test'],
    slots: { result },
    order: 85,
    technique: 'Both toes of the space fully extended, ankle dorsiflexed.',
    meaning: 'Pain in the space points to the interdigital nerve.',
  }),
  entry({
    ...practice,
    id: 'tinel',
    kind: 'sign',
    bare: 'incomplete',
    sections: ['exam'],
    subjects: ['foot'],
    word: 'tinel',
    forms: ['tinels', "tinel's"],
    slots: {
      result: words({ positive: ['pos', '+ve'] }),
      place: words(
        {
          'behind malleolus': ['behind the malleolus', 'behind medial malleolus', 'medial malleolus', 'tarsal tunnel'],
        },
        { locating: true },
      ),
    },
    order: 86,
    technique: 'Tap behind the medial malleolus.',
    meaning: 'Positive: the tarsal tunnel may be the source of plantar tingling.',
  }),
  entry({
    ...vessel,
    id: 'abi',
    subjects: ['foot'],
    word: 'abi',
    forms: ['abpi', 'ankle brachial index', 'ankle brachial pressure index'],
    slots: { index: number('', 0, 3, true), on: date(['from']) },
    order: 95,
    technique: 'Ankle pressure by the higher arm pressure, each side.',
    meaning: 'Unreliable in stiff arteries: then toe pressure. No cut is computed here.',
  }),
  entry({
    ...vessel,
    id: 'toe-pressure',
    source: 'IWGDF23',
    mark: 'secondary',
    subjects: ['foot', 'ray'],
    word: 'toe-pressure',
    forms: ['toe pressure'],
    slots: { pressure: number('mmHg', 0, 300, true), on: date(['from']) },
    order: 96,
    technique: 'Cuff on the toe, mmHg.',
    meaning:
      'Under 30 mmHg healing is doubtful (IWGDF23 and other guidelines, as another page reports them); the local protocol decides.',
  }),
  entry({
    ...vessel,
    id: 'doppler',
    subjects: ['foot'],
    word: 'doppler',
    forms: ['doppler signal', 'waveform'],
    slots: {
      artery: words({ dp: ['dorsalis pedis'], pt: ['posterior tibial'] }),
      wave: words({ triphasic: [], biphasic: [], monophasic: [] }),
    },
    many: true,
    order: 97,
    technique: 'Hand-held, over both arteries; name the artery.',
    meaning: 'A monophasic signal asks for a vascular opinion.',
  }),
  entry({
    ...practice,
    id: 'block',
    kind: 'treatment',
    bare: 'present',
    sections: ['exam', 'tried', 'plan'],
    subjects: ['ray', 'web', 'foot'],
    word: 'block',
    forms: [
      'diagnostic block',
      'anaesthetic block',
      'local anaesthetic block',
      'diagnostic injection',
      'diagnostic anaesthetic',
      'la block',
    ],
    slots: {
      agent: words({ lidocaine: ['lignocaine'], bupivacaine: [], ropivacaine: [] }),
      volume: number('ml', 0, 20, false),
      relief: number('%', 0, 100, false, { labels: ['relief'] }),
      response: words({
        complete: ['complete relief', 'full relief'],
        partial: ['some relief', 'partial relief'],
        'no relief': ['no effect'],
      }),
      on: date(['from']),
    },
    many: true,
    order: 98,
    technique: 'Small volume, joint and web on different days or in order; relief in percent of the usual pain.',
    meaning: 'Joint or web: relief from the one and not from the other tells them apart. Anaesthetic only, no steroid.',
  }),
] as const;
