import { commas, type OwnPhrase, spaced, type TherePhrase, was } from './phrase.ts';

const reader: OwnPhrase<'image-reader'> = {
  shape: 'own',
  name: 'the reader of the image',
  by: 'recorded',
  wording: { by: { surgeon: 'the surgeon', radiologist: 'the radiologist' } },
  present: ({ by }) => was(by ? `read by ${by}` : 'read as written', 'the image'),
  absent: ({ by }) => was(by ? `not read by ${by}` : 'not read', 'the image'),
};
const taken: OwnPhrase<'image-date'> = {
  shape: 'own',
  name: 'the date of the image',
  by: 'recorded',
  wording: {},
  present: ({ on }) => was(spaced('taken', on), 'the image'),
  absent: ({ on }) => was(spaced('not taken', on), 'the image'),
};
const method: OwnPhrase<'ultrasound-method'> = {
  shape: 'own',
  name: 'the ultrasound method',
  by: 'recorded',
  wording: { how: { dynamic: 'dynamic', static: 'static', 'static and dynamic': 'static and dynamic' } },
  present: ({ how }) => was(how ?? 'given as written'),
  absent: ({ how }) => was(how ? `not ${how}` : 'recorded as absent'),
};

type Freiberg = { readonly [S in 'scheme' | 'stage']?: string };
const freibergText = ({ scheme, stage }: Freiberg): string => {
  const named = scheme ? `${scheme} scheme` : 'scheme not stated';
  return spaced('Freiberg disease', stage ? `stage ${stage} (${named})` : scheme && `(${named})`);
};
const freiberg: TherePhrase<'freiberg'> = {
  shape: 'there',
  name: 'Freiberg disease',
  wording: { scheme: { smillie: 'Smillie', gauthier: 'Gauthier' } },
  present: freibergText,
  absent: freibergText,
};

const angle: OwnPhrase<'mtp-angle'> = {
  shape: 'own',
  name: 'the MTP angle',
  preposition: 'of',
  by: 'measured',
  topic: 'angles',
  wording: { direction: { medial: 'medial', lateral: 'lateral', dorsal: 'dorsal' } },
  present: ({ angle: degrees, direction }) => was(commas(spaced(degrees, direction)) || 'given as written'),
  absent: ({ angle: degrees, direction }) => was(commas('recorded as absent', spaced(degrees, direction))),
};
const formula: OwnPhrase<'metatarsal-formula'> = {
  shape: 'own',
  name: 'the metatarsal formula',
  by: 'judged',
  wording: {
    formula: {
      'index plus': 'index plus',
      'index plus minus': 'index plus-minus',
      'index minus': 'index minus',
      harmonious: 'harmonious',
    },
  },
  present: ({ formula: kind }) => was(kind ?? 'given as written'),
  absent: ({ formula: kind }) => was(kind ? `not ${kind}` : 'recorded as absent'),
};

const growthPlate: OwnPhrase<'growth-plate'> = {
  shape: 'own',
  name: 'the growth plate',
  preposition: 'of',
  by: 'judged',
  wording: { state: { open: 'open', closed: 'closed' } },
  present: ({ state }) => was(state ?? 'given as written'),
  absent: ({ state }) => was(state ? `not ${state}` : 'recorded as absent'),
};

export const IMAGE_DETAIL_PHRASES = {
  'image-reader': reader,
  'image-date': taken,
  'ultrasound-method': method,
  freiberg,
  'mtp-angle': angle,
  'metatarsal-formula': formula,
  'growth-plate': growthPlate,
};
