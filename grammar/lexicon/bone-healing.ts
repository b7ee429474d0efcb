import { entry, given, number, words } from './entry.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const later = { ...practice, kind: 'measure', bare: 'incomplete', sections: ['xray', 'ct'] } as const;

/** What a later film says of the bone that was cut or fused, and of what holds it. */
export const BONE_HEALING = [
  entry({
    ...later,
    id: 'union',
    subjects: ['ray', 'foot'],
    bare: 'present',
    word: 'union',
    leads: {
      united: { gives: { state: 'united' } },
      bridging: { gives: { state: 'bridging' } },
      'not united': { gives: { state: 'not united' } },
    },
    slots: {
      of: words(
        {
          'weil osteotomy': ['weil'],
          'pip fusion': ['pip', 'pipj'],
          'scarf osteotomy': ['scarf'],
          'akin osteotomy': ['akin'],
          fracture: [],
        },
        { before: true, locating: true },
      ),
      state: words({ united: [], healing: [], bridging: [], 'not united': [] }, { wider: { bridging: 'healing' } }),
      share: number('%', 0, 100, false),
    },
    many: true,
    order: 79.1,
    technique: 'Name the bone and how much of it is bridged.',
    meaning: 'As read on the film; the joint and its pain decide beside it.',
  }),
  entry({
    ...later,
    id: 'implant-film',
    subjects: ['foot'],
    word: 'implant',
    forms: ['implants', 'hardware'],
    leads: given('what', { screw: 'screw', screws: 'screws', staple: 'staple' }),
    slots: {
      what: words({ screw: [], screws: [], staple: [] }, { locating: true }),
      state: words(
        {
          unremarkable: ['ok', 'fine'],
          'in place': [],
          loose: [],
          broken: [],
          prominent: ['proud'],
          'moved back': ['backed out'],
        },
        { wider: { 'in place': 'unremarkable' } },
      ),
      by: number('mm', 0, 30, false),
    },
    many: true,
    order: 79.2,
    technique: 'Name the implant and where it lies.',
    meaning: 'A prominent tip under the sole hurts on loading.',
  }),
] as const;
