import { AMOUNT, commas, type OwnPhrase, type Said, spaced, type TherePhrase, was } from './phrase.ts';

type Range = 'mtp-dorsiflexion' | 'mtp-plantarflexion' | 'pip-motion';
const RANGE = {
  extent: { full: 'full', limited: 'limited' },
  pain: { painful: 'painful', painless: 'painless' },
  moved: { passive: 'passive', active: 'active' },
} as const;
const range = <F extends Range>(name: string): Omit<OwnPhrase<F>, 'wording'> & { readonly wording: typeof RANGE } => ({
  shape: 'own',
  name,
  noun: 'toe',
  preposition: 'of',
  by: 'measured',
  topic: 'motion',
  wording: RANGE,
  present: ({ angle, extent, pain, moved }: Said<Range>) =>
    was(commas(spaced(angle, moved), extent, pain) || 'given as written'),
  absent: ({ angle, extent, pain, moved }: Said<Range>) => was(commas('absent', spaced(angle, moved), extent, pain)),
});

const contracture: OwnPhrase<'pip-contracture'> = {
  shape: 'own',
  name: 'the fixed flexion of the PIP joint',
  noun: 'toe',
  preposition: 'of',
  by: 'measured',
  topic: 'motion',
  wording: {},
  present: ({ angle }) => was(angle ?? 'given as written'),
  absent: ({ angle }) => was(commas('absent', angle)),
};

const strength: OwnPhrase<'toe-strength'> = {
  shape: 'own',
  name: 'strength',
  noun: 'toe',
  preposition: 'of',
  by: 'tested',
  wording: {
    state: { full: 'full', weak: 'weak' },
    muscle: { flexors: 'of the flexors', fdl: 'of the FDL', extensors: 'of the extensors', edl: 'of the EDL' },
  },
  present: ({ grade, state, muscle }) => was(commas(grade, state) || 'given as written', spaced('strength', muscle)),
  absent: ({ grade, state, muscle }) => was(commas('absent', grade, state), spaced('strength', muscle)),
};

const tightness: TherePhrase<'calf-tightness'> = {
  shape: 'there',
  name: 'calf tightness',
  by: 'tested for',
  wording: {
    of: {
      gastrocnemius: 'of the gastrocnemius',
      'whole calf': 'of the whole calf',
      achilles: 'of the Achilles tendon',
    },
    degree: AMOUNT,
  },
  present: ({ of, degree }) => spaced(degree, 'calf tightness', of),
  absent: ({ of, degree }) => spaced(degree, 'calf tightness', of),
};

const silfverskiold: OwnPhrase<'silfverskiold'> = {
  shape: 'own',
  name: 'the Silfverskiöld test',
  by: 'done',
  wording: { result: { positive: 'positive' } },
  present: ({ result }) => was(result ?? 'given as written'),
  absent: ({ result }) => was(commas('negative', result && `and recorded as ${result}`)),
};

const mobility: OwnPhrase<'ray-mobility'> = {
  shape: 'own',
  name: 'mobility',
  noun: 'ray',
  preposition: 'of',
  by: 'tested',
  wording: { amount: { normal: 'normal', hypermobile: 'hypermobile', stiff: 'stiff' } },
  present: ({ amount, by }) => was(commas(amount && `recorded as ${amount}`, by) || 'given as written'),
  absent: ({ amount, by }) => was(commas('recorded as absent', amount && `not ${amount}`, by)),
};

const laxity: TherePhrase<'laxity'> = {
  shape: 'there',
  name: 'general laxity',
  by: 'tested for',
  wording: {
    kind: {
      hypermobility: 'hypermobility',
      'generalised hypermobility': 'generalised hypermobility',
      'ligamentous laxity': 'ligamentous laxity',
    },
  },
  present: ({ kind }) => kind ?? 'general laxity',
  absent: ({ kind }) => kind ?? 'general laxity',
};
const ankle: OwnPhrase<'ankle-dorsiflexion'> = {
  shape: 'own',
  name: 'dorsiflexion of the ankle',
  by: 'measured',
  topic: 'motion',
  wording: { knee: { extended: 'with the knee straight', flexed: 'with the knee bent' } },
  present: ({ angle, knee }) => was(spaced(angle, knee) || 'given as written'),
  absent: ({ angle, knee }) => was(commas('absent', spaced(angle, knee))),
};

const beighton: OwnPhrase<'beighton'> = {
  shape: 'own',
  name: 'the Beighton score',
  by: 'taken',
  wording: {},
  present: ({ points }) => was(points ?? 'given as written'),
  absent: ({ points }) => was(commas('recorded as absent', points)),
};

export const MOTION_PHRASES = {
  'mtp-dorsiflexion': range<'mtp-dorsiflexion'>('dorsiflexion at the MTP joint'),
  'mtp-plantarflexion': range<'mtp-plantarflexion'>('plantarflexion at the MTP joint'),
  'pip-motion': range<'pip-motion'>('motion at the PIP joint'),
  'pip-contracture': contracture,
  'toe-strength': strength,
  'calf-tightness': tightness,
  silfverskiold,
  'ray-mobility': mobility,
  laxity,
  'ankle-dorsiflexion': ankle,
  beighton,
};
