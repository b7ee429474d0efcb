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
  wording: {
    kind: {
      'bulky dressing': 'bulky dressing',
      bandage: 'bandage',
      'forefoot bandage': 'forefoot bandage',
      'forefoot dressing': 'forefoot dressing',
    },
  },
  present: ({ kind = 'dressing' }) => `a ${kind}`,
  absent: ({ kind = 'dressing' }) => kind,
};

const closure: OwnPhrase<'closure'> = {
  shape: 'own',
  name: 'the closure',
  by: 'recorded',
  wording: {
    layer: { 'to skin': 'skin', subcutaneous: 'subcutaneous layer', deep: 'deep layer' },
    size: { '2-0': '2-0', '3-0': '3-0', '4-0': '4-0', '5-0': '5-0' },
    material: {
      nylon: 'nylon',
      polypropylene: 'polypropylene',
      silk: 'silk',
      absorbable: 'absorbable suture',
      staples: 'staples',
      strips: 'strips',
    },
  },
  present: ({ layer, size, material }) => {
    const suture = spaced(size, material);
    return was(commas(layer, suture && `with ${suture}`) || 'given as written');
  },
  absent: ({ layer, size, material }) => was(commas('recorded as none', layer, spaced(size, material))),
};

export const THEATRE_PHRASES = { tourniquet, 'blood-loss': bloodLoss, dressing, closure };
