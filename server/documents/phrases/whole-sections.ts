import { type OwnPhrase, type TherePhrase, was } from './phrase.ts';

const treatment: TherePhrase<'earlier-treatment'> = {
  shape: 'there',
  name: 'treatment',
  preposition: 'of',
  by: 'carried out',
  wording: {},
  present: () => 'earlier treatment',
  absent: () => 'earlier treatment',
};

const standing: OwnPhrase<'standing-exam'> = {
  shape: 'own',
  name: 'the examination',
  preposition: 'of',
  by: 'carried out',
  wording: {},
  present: () => was('given as written'),
  absent: () => was('recorded as none'),
};

export const WHOLE_SECTION_PHRASES = { 'earlier-treatment': treatment, 'standing-exam': standing };
