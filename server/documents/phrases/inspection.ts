import {
  AMOUNT,
  commas,
  did,
  type Said,
  type SubjectPhrase,
  spaced,
  type TherePhrase,
  was,
  withArticle,
} from './phrase.ts';

const lifted: SubjectPhrase<'lifted'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'lifting off the ground',
  wording: { kind: { floating: 'floating' }, from: { floor: 'floor' } },
  present: ({ kind, by, from }) =>
    was(kind && !by && !from ? kind : commas(kind, spaced('lifted off the', from ?? 'ground', by && `by ${by}`))),
  absent: ({ kind, by, from }) =>
    was(
      kind && !by && !from
        ? `not ${kind}`
        : spaced('not', commas(kind, spaced('lifted off the', from ?? 'ground', by && `(${by})`))),
    ),
};

const gapText = ({ kind, between, size, by }: Said<'gap'>): string =>
  spaced(size, 'widening of the gap', between, by && `of ${by}`, kind && `(${kind})`);
const gap: TherePhrase<'gap'> = {
  shape: 'there',
  name: 'widening of the gap',
  wording: { kind: { 'v sign': 'V sign', 'daylight sign': 'daylight sign' }, size: AMOUNT },
  present: gapText,
  absent: gapText,
};

const valgus: TherePhrase<'hallux-valgus'> = {
  shape: 'there',
  name: 'hallux valgus',
  wording: { kind: { bunion: 'bunion' }, degree: AMOUNT },
  present: ({ kind, degree, angle }) =>
    spaced(kind ? withArticle(spaced(degree, kind)) : spaced(degree, 'hallux valgus'), angle && `of ${angle} by eye`),
  absent: ({ kind, degree, angle }) => spaced(degree, kind ?? 'hallux valgus', angle && `of ${angle}`),
};

const swellingText = ({ degree, place, feel }: Said<'swelling'>): string =>
  feel === 'thickening'
    ? spaced(degree, place, feel)
    : feel === 'effusion'
      ? spaced('swelling by', degree, place, feel)
      : spaced(degree, feel, place, 'swelling');
const swelling: TherePhrase<'swelling'> = {
  shape: 'there',
  name: 'swelling',
  wording: {
    degree: AMOUNT,
    place: { dorsal: 'dorsal', plantar: 'plantar' },
    feel: { boggy: 'boggy', effusion: 'effusion', thickening: 'thickening' },
  },
  present: swellingText,
  absent: swellingText,
};

const footSwelling = ({ degree, kind, place, for: time }: Said<'foot-swelling'>): string =>
  spaced(degree, kind ?? 'swelling', place && `(${place})`, time && `for ${time}`);
const swollenFoot: TherePhrase<'foot-swelling'> = {
  shape: 'there',
  name: 'swelling',
  wording: {
    degree: AMOUNT,
    kind: {
      'diffuse swelling': 'diffuse swelling',
      'whole foot swollen': 'swelling of the whole foot',
      oedema: 'oedema',
      'pitting oedema': 'pitting oedema',
    },
    place: { forefoot: 'forefoot', midfoot: 'midfoot', ankle: 'ankle' },
  },
  present: footSwelling,
  absent: footSwelling,
};

const redness: TherePhrase<'redness'> = {
  shape: 'there',
  name: 'redness',
  wording: { degree: AMOUNT },
  present: ({ degree }) => spaced(degree, 'redness'),
  absent: ({ degree }) => spaced(degree, 'redness'),
};

const hot: TherePhrase<'hot'> = {
  shape: 'there',
  name: 'heat',
  wording: {
    degree: { warm: 'warmth' },
    than: { 'the other side': 'the other side', 'the left': 'the left', 'the right': 'the right' },
  },
  present: ({ degree, than }) => spaced(degree ?? 'heat', than && `compared with ${than}`),
  absent: ({ degree, than }) => spaced(degree ?? 'heat', than && `compared with ${than}`),
};

const wound: TherePhrase<'wound'> = {
  shape: 'there',
  name: 'a wound',
  by: 'looked for',
  wording: {
    state: {
      clean: 'clean',
      dry: 'dry',
      'clean and dry': 'clean and dry',
      unremarkable: 'unremarkable',
      healed: 'healed',
      open: 'open',
      dehisced: 'dehisced',
      gaping: 'gaping',
      discharging: 'discharging',
      oozing: 'oozing',
      pus: 'pus',
      spreading: 'spreading redness',
    },
    kind: { ulcer: 'ulcer', incision: 'incision' },
    bone: { 'reaches bone': 'reaching bone', 'probes to bone': 'probing to bone', 'bone exposed': 'with exposed bone' },
  },
  present: ({ state, kind, size, across, bone }) => {
    const wound = spaced(kind ?? 'wound', size && `of ${size}`, across && `by ${across}`);
    const whole = !state
      ? withArticle(wound)
      : /pus|redness/.test(state)
        ? `${withArticle(wound)} with ${state}`
        : withArticle(`${state} ${wound}`);
    return commas(whole, bone);
  },
  absent: ({ state, kind, size, across, bone }) =>
    commas(spaced(state, kind ?? 'wound', size && `of ${size}`, across && `by ${across}`), bone),
};

const tenderness: TherePhrase<'tenderness'> = {
  shape: 'there',
  name: 'tenderness',
  wording: {
    place: {
      plate: 'plantar plate',
      plantar: 'plantar',
      head: 'metatarsal head',
      shaft: 'metatarsal shaft',
      'phalanx base': 'proximal phalanx base',
      dorsal: 'dorsal',
      sesamoids: 'sesamoid',
      'medial sesamoid': 'medial sesamoid',
      'lateral sesamoid': 'lateral sesamoid',
    },
    degree: AMOUNT,
  },
  present: ({ place, degree }) => spaced(degree, place, 'tenderness'),
  absent: ({ place, degree }) => spaced(degree, place, 'tenderness'),
};

const perfusion: SubjectPhrase<'perfusion'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'the colour',
  topic: 'perfusion',
  wording: {
    state: {
      pink: 'pink',
      'warm and pink': 'warm and pink',
      pale: 'pale',
      white: 'white',
      blue: 'blue',
      dusky: 'dusky',
      cold: 'cold',
    },
  },
  present: ({ state }) => (state ? was(state) : did('had', 'a colour that is given as written')),
  absent: ({ state }) => (state ? was(`not ${state}`) : did('had', 'a colour recorded as absent')),
};

export const INSPECTION_PHRASES = {
  lifted,
  gap,
  'hallux-valgus': valgus,
  swelling,
  'foot-swelling': swollenFoot,
  redness,
  hot,
  wound,
  tenderness,
  perfusion,
};
