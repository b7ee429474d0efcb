import { duration, entry, given, type Lead, leadsOf, number, words } from './entry.ts';

const DRESSINGS = { 'bulky dressing': [], bandage: [], 'forefoot bandage': [], 'forefoot dressing': [] } as const;

const noted = {
  source: 'common practice',
  mark: 'common practice',
  kind: 'event',
  sections: ['operation', 'exam'],
} as const;

/** What an operation note records beside the operation itself. */
export const THEATRE = [
  entry({
    ...noted,
    id: 'tourniquet',
    bare: 'present',
    subjects: ['foot', 'patient'],
    word: 'tourniquet',
    forms: ['tnq'],
    leads: Object.fromEntries(
      (['thigh', 'calf', 'ankle'] as const).flatMap((site) =>
        ['tourniquet', 'tnq'].map((word): [string, Lead] => [
          `${site} ${word}`,
          { gives: { site: `at ${site}` }, noun: true },
        ]),
      ),
    ),
    slots: {
      site: words({ 'at thigh': [], 'at calf': [], 'at ankle': [] }, { locating: true }),
      pressure: { ...number('mmHg', 100, 400, true), bareFrom: 100 },
      for: duration(['for', 'time', 'x']),
    },
    order: 124.1,
    technique: 'Site, pressure and time.',
    meaning: 'Kept as recorded.',
  }),
  entry({
    ...noted,
    id: 'blood-loss',
    bare: 'incomplete',
    subjects: ['patient'],
    word: 'blood-loss',
    forms: ['blood loss', 'ebl'],
    slots: {
      volume: { ...number('ml', 0, 2000, true) },
      amount: words({ minimal: ['min', 'negligible'] }),
    },
    order: 124.2,
    technique: 'As estimated at the end.',
    meaning: 'Kept as recorded.',
  }),
  entry({
    ...noted,
    id: 'dressing',
    bare: 'present',
    subjects: ['ray', 'foot', 'patient'],
    word: 'dressing',
    leads: leadsOf('kind', DRESSINGS),
    slots: { kind: words(DRESSINGS) },
    order: 124.3,
    technique: 'Say in which position the toe is held by it.',
    meaning: 'Kept as recorded; in a plan, dressings have their own word.',
  }),
  entry({
    ...noted,
    id: 'closure',
    bare: 'incomplete',
    sections: ['operation'],
    subjects: ['ray', 'foot', 'patient'],
    word: 'closure',
    forms: ['closed with', 'wound closure'],
    leads: given('layer', {
      skin: 'to skin',
      'skin closure': 'to skin',
      subcutaneous: 'subcutaneous',
      subcut: 'subcutaneous',
    }),
    slots: {
      layer: words({ 'to skin': [], subcutaneous: ['subcut'], deep: [] }),
      size: words({ '2-0': ['2/0'], '3-0': ['3/0'], '4-0': ['4/0'], '5-0': ['5/0'] }),
      material: words(
        { nylon: [], polypropylene: [], silk: [], absorbable: ['dissolvable'], staples: ['clips'], strips: [] },
        { many: true },
      ),
    },
    many: true,
    order: 124.25,
    technique: 'Layer, size and material.',
    meaning: 'Says whether something has to come out.',
  }),
] as const;
