import { commas, type OwnPhrase, spaced, type TherePhrase, was } from './phrase.ts';

const calf: OwnPhrase<'calf'> = {
  shape: 'own',
  name: 'the calf',
  by: 'examined',
  wording: {
    state: {
      swollen: 'swollen',
      tender: 'tender',
      painful: 'painful',
      hot: 'hot',
      warm: 'warm',
      red: 'red',
      soft: 'soft',
      'not tender': 'without tenderness',
      'not painful': 'without pain',
      'not swollen': 'without swelling',
    },
  },
  present: ({ state }) => was(state ?? 'given as written'),
  absent: ({ state }) => was(state ? `not ${state}` : 'recorded as negative'),
};
const chest: TherePhrase<'chest'> = {
  shape: 'there',
  name: 'a chest sign',
  by: 'asked about',
  wording: {
    what: { 'chest pain': 'chest pain', breathlessness: 'breathlessness', 'coughing blood': 'coughing of blood' },
  },
  present: ({ what }) => what ?? 'a chest sign',
  absent: ({ what }) => what ?? 'chest sign',
};
const massText = ({ size, growth, feel, for: time }: { [S in 'size' | 'growth' | 'feel' | 'for']?: string }): string =>
  spaced(commas(growth, feel), 'mass', commas(size && `of ${size}`, time && `for ${time}`));
const mass: TherePhrase<'mass'> = {
  shape: 'there',
  name: 'a mass',
  by: 'looked for',
  wording: {
    growth: { growing: 'growing', 'not growing': 'not growing' },
    feel: { soft: 'soft', firm: 'firm', hard: 'hard' },
  },
  present: (said) => `a ${massText(said)}`,
  absent: massText,
};
const disproportionate: TherePhrase<'disproportionate-pain'> = {
  shape: 'there',
  name: 'pain out of proportion',
  by: 'asked about',
  wording: {},
  present: () => 'pain out of proportion',
  absent: () => 'pain out of proportion',
};

export const RED_FLAG_SIGN_PHRASES = { calf, chest, mass, 'disproportionate-pain': disproportionate };
