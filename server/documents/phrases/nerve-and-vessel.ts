import type { Section } from '../../../grammar/lexicon/entry.ts';
import { commas, type OwnPhrase, type Predicate, type Said, spaced, was } from './phrase.ts';

const RESULT = { positive: 'positive' } as const;

const percussion: OwnPhrase<'percussion'> = {
  shape: 'own',
  name: 'percussion',
  preposition: 'of',
  by: 'done',
  topic: 'web tests',
  wording: { result: RESULT, from: { plantar: 'plantar', dorsal: 'dorsal' } },
  present: ({ result, from }) => was(result ?? 'given as written', spaced(from, 'percussion')),
  absent: ({ result, from }) =>
    was(commas('negative', result && `and recorded as ${result}`), spaced(from, 'percussion')),
};
const stretch: OwnPhrase<'nerve-stretch'> = {
  shape: 'own',
  name: 'the nerve stretch test',
  preposition: 'of',
  by: 'done',
  topic: 'web tests',
  wording: { result: RESULT },
  present: ({ result }) => was(result ?? 'given as written'),
  absent: ({ result }) => was(commas('negative', result && `and recorded as ${result}`)),
};
const tinel: OwnPhrase<'tinel'> = {
  shape: 'own',
  name: 'the Tinel sign',
  by: 'tested',
  topic: 'feeling',
  wording: { result: RESULT, place: { 'behind malleolus': 'behind the medial malleolus' } },
  present: ({ result, place }) => was(result ?? 'given as written', spaced('the Tinel sign', place)),
  absent: ({ result, place }) =>
    was(commas('negative', result && `and recorded as ${result}`), spaced('the Tinel sign', place)),
};

const abi: OwnPhrase<'abi'> = {
  shape: 'own',
  name: 'the ankle-brachial index',
  by: 'measured',
  topic: 'pulses',
  wording: {},
  present: ({ index, on }) => was(commas(index ?? 'recorded', on)),
  absent: ({ index, on }) => was(commas('recorded as absent', index, on)),
};
const toePressure: OwnPhrase<'toe-pressure'> = {
  shape: 'own',
  name: 'the toe pressure',
  noun: 'toe',
  by: 'measured',
  topic: 'pulses',
  wording: {},
  present: ({ pressure, on }) => was(commas(pressure ?? 'recorded', on)),
  absent: ({ pressure, on }) => was(commas('recorded as absent', pressure, on)),
};
const doppler: OwnPhrase<'doppler'> = {
  shape: 'own',
  name: 'the Doppler signal',
  by: 'examined',
  topic: 'pulses',
  wording: {
    artery: { dp: 'over the dorsalis pedis', pt: 'over the posterior tibial artery' },
    wave: { triphasic: 'triphasic', biphasic: 'biphasic', monophasic: 'monophasic' },
  },
  present: ({ artery, wave }) => was(wave ?? 'given as written', spaced('the Doppler signal', artery)),
  absent: ({ artery, wave }) => was(commas('absent', wave), spaced('the Doppler signal', artery)),
};

const blockText = ({ agent, volume, relief, response, on }: Said<'block'>): string =>
  commas(
    spaced(volume, agent && (volume ? `of ${agent}` : `with ${agent}`)),
    on,
    relief && `with ${relief} relief`,
    response,
  );
const given = (said: Said<'block'>, section: Section): Predicate => {
  const rest = commas(section === 'plan' ? 'planned' : 'given', blockText(said));
  return section === 'plan' ? { verb: 'is', rest } : was(rest);
};
const block: OwnPhrase<'block'> = {
  shape: 'own',
  name: 'a diagnostic anaesthetic block',
  preposition: { ray: 'of', web: 'in', foot: 'in' },
  noun: 'MTP joint',
  by: 'carried out',
  wording: {
    agent: { lidocaine: 'lidocaine', bupivacaine: 'bupivacaine', ropivacaine: 'ropivacaine' },
    response: { complete: 'with complete relief', partial: 'with partial relief', 'no relief': 'without relief' },
  },
  present: given,
  absent: (said, section) => {
    const { verb, rest } = given(said, section);
    return { verb, rest: `not ${rest}` };
  },
};

export const NERVE_AND_VESSEL_PHRASES = {
  percussion,
  'nerve-stretch': stretch,
  tinel,
  abi,
  'toe-pressure': toePressure,
  doppler,
  block,
};
