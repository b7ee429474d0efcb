import { AMOUNT, commas, type OwnPhrase, type Said, spaced, type TherePhrase, was, withArticle } from './phrase.ts';

const PAIN = { painful: 'painful', painless: 'painless' } as const;

const click: TherePhrase<'click'> = {
  shape: 'there',
  name: 'a click',
  by: 'tested for',
  wording: { pain: { ...PAIN, 'reproduces pain': 'pain-reproducing' } },
  present: ({ pain }) => withArticle(spaced(pain, 'click')),
  absent: ({ pain }) => spaced(pain, 'click'),
};

const squeeze: TherePhrase<'squeeze'> = {
  shape: 'there',
  name: 'the squeeze test',
  by: 'done',
  wording: { pain: PAIN },
  present: ({ pain }) => withArticle(spaced(pain, 'squeeze sign')),
  absent: ({ pain }) => spaced(pain, 'squeeze sign'),
};

const numbness: TherePhrase<'numbness'> = {
  shape: 'there',
  name: 'numbness',
  wording: {
    degree: AMOUNT,
    place: {
      dorsal: 'on the dorsum',
      plantar: 'on the sole',
      tip: 'at the tip',
      'facing sides': 'on the facing sides',
    },
  },
  present: ({ degree, place }) => spaced(degree, 'numbness', place),
  absent: ({ degree, place }) => spaced(degree, 'numbness', place),
};

const compression: OwnPhrase<'compression'> = {
  shape: 'own',
  name: 'compression of the MTP joints',
  by: 'done',
  wording: { pain: { sore: 'sore', painless: 'painless' } },
  present: ({ pain }) => was(pain ?? 'given as written'),
  absent: ({ pain }) => was(commas('negative', pain)),
};

const sensation: OwnPhrase<'sensation'> = {
  shape: 'own',
  name: 'sensation',
  noun: 'toe',
  preposition: { ray: 'at', web: 'in', foot: 'in' },
  placeLast: true,
  by: 'tested',
  topic: 'feeling',
  wording: { state: { normal: 'normal', reduced: 'reduced', lost: 'lost' } },
  present: ({ state, monofilament }) => {
    const felt = monofilament && `${monofilament} sites felt`;
    if (state) return was(commas(state, felt && `with ${felt} with the monofilament`));
    return felt ? was(`felt at ${monofilament} sites`, 'the monofilament') : was('given as written');
  },
  absent: ({ state, monofilament }) => was(commas('absent', state, monofilament && `with ${monofilament} sites felt`)),
};

type Pulse = 'dp' | 'pt' | 'pulses';
const PALPATION = { felt: { palpable: 'palpable', weak: 'weak' } } as const;
const pulse = <F extends Pulse>(
  name: string,
  plural?: true,
): Omit<OwnPhrase<F>, 'wording'> & { readonly wording: typeof PALPATION } => ({
  shape: 'own',
  name,
  ...(plural ? { plural } : {}),
  by: 'examined',
  topic: 'pulses',
  wording: PALPATION,
  present: ({ grade, felt }: Said<Pulse>) => was(commas(felt, grade) || 'given as written'),
  absent: ({ grade, felt }: Said<Pulse>) => was(commas('absent', felt, grade)),
});

const refill: OwnPhrase<'capillary-refill'> = {
  shape: 'own',
  name: 'capillary refill',
  noun: 'toe',
  by: 'tested',
  topic: 'perfusion',
  wording: { state: { normal: 'normal', delayed: 'delayed' } },
  present: ({ time, state }) => was(commas(state, time) || 'given as written'),
  absent: ({ time, state }) => was(commas('absent', state, time)),
};

export const WEB_AND_FOOT_PHRASES = {
  click,
  squeeze,
  numbness,
  compression,
  sensation,
  dp: pulse<'dp'>('the dorsalis pedis pulse'),
  pt: pulse<'pt'>('the posterior tibial pulse'),
  pulses: pulse<'pulses'>('the pedal pulses', true),
  'capillary-refill': refill,
};
