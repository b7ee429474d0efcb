import { commas, type OwnPhrase, spaced, type TherePhrase, was } from './phrase.ts';

const tourniquet: OwnPhrase<'tourniquet'> = {
  shape: 'own',
  name: 'a tourniquet',
  by: 'used',
  wording: { site: { 'at thigh': 'at the thigh', 'at calf': 'at the calf', 'at ankle': 'at the ankle' } },
  present: ({ site, pressure, for: time }) =>
    was(commas(spaced('used', site), pressure && `at ${pressure}`, time && `for ${time}`)),
  absent: ({ site, pressure, for: time }) => was(commas(spaced('recorded as not used', site), pressure, time)),
};

const bloodLoss: OwnPhrase<'blood-loss'> = {
  shape: 'own',
  name: 'blood loss',
  by: 'estimated',
  wording: { amount: { minimal: 'minimal' } },
  present: ({ volume, amount }) => was(commas(amount, volume) || 'given as written'),
  absent: ({ volume, amount }) => was(commas('recorded as none', amount, volume)),
};

const dressing: TherePhrase<'dressing'> = {
  shape: 'there',
  name: 'a dressing',
  wording: {},
  present: () => 'a dressing',
  absent: () => 'dressing',
};

export const THEATRE_PHRASES = { tourniquet, 'blood-loss': bloodLoss, dressing };
