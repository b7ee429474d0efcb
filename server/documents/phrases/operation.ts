import type { Section } from '../../../grammar/lexicon/entry.ts';
import { FIXATION } from '../../../grammar/lexicon/operation.ts';
import {
  asNamed,
  commas,
  type OwnPhrase,
  type Predicate,
  type SubjectPhrase,
  spaced,
  UNREAD_RESULT,
  was,
} from './phrase.ts';

/** Names of procedures in a sentence; a plan uses them too. */
export const PROCEDURE_WORDING = {
  'plate repair': 'plantar plate repair',
  'plate reinsertion': 'plantar plate reinsertion',
  'weil osteotomy': 'Weil osteotomy',
  'shortening osteotomy': 'shortening osteotomy',
  'tendon transfer': 'tendon transfer',
  'flexor transfer': 'flexor tendon transfer',
  'flexor to extensor transfer': 'flexor-to-extensor tendon transfer',
  'fdl transfer': 'FDL tendon transfer',
  'brevis transfer': 'short extensor tendon transfer',
  'pip fusion': 'PIP joint fusion',
  'pip resection': 'PIP joint resection',
  'pip arthroplasty': 'PIP joint arthroplasty',
  'extensor lengthening': 'extensor lengthening',
  'z lengthening': 'extensor Z-lengthening',
  'edl lengthening': 'EDL lengthening',
  'collateral release': 'collateral ligament release',
  'collateral repair': 'collateral ligament repair',
  'joint release': 'joint release',
  capsulotomy: 'capsulotomy',
  'dorsal capsulotomy': 'dorsal capsulotomy',
  'capsular release': 'capsular release',
  'flexor tenotomy': 'flexor tenotomy',
  'fdl tenotomy': 'FDL tenotomy',
  'plate shrinkage': 'plate shrinkage',
  'thermal shrinkage': 'thermal plate shrinkage',
  'radiofrequency shrinkage': 'radiofrequency plate shrinkage',
  condylectomy: 'condylectomy',
  'plantar condylectomy': 'plantar condylectomy',
  'hallux valgus correction': 'hallux valgus correction',
  'neuroma excision': 'neuroma excision',
  debridement: 'debridement',
  washout: 'washout',
  amputation: 'amputation',
  'toe amputation': 'toe amputation',
} as const;

const procedure: OwnPhrase<'procedure'> = {
  shape: 'own',
  name: 'the procedure',
  by: 'carried out',
  wording: { what: { ...PROCEDURE_WORDING, pin: 'pin placement', 'k-wire': 'K-wire placement' } },
  present: ({ what, shortening, for: time }) =>
    was(commas('done', shortening && `with shortening of ${shortening}`, time && `for ${time}`), what),
  absent: ({ what, shortening, for: time }) =>
    was(commas('not part of the operation', shortening, time && `for ${time}`), what),
};

const approach: OwnPhrase<'approach'> = {
  shape: 'own',
  name: 'the approach',
  by: 'chosen',
  preposition: 'to',
  wording: { from: { dorsal: 'dorsal', plantar: 'plantar', 'medial approach': 'medial' } },
  present: ({ from }) => was(from ?? 'given as written'),
  absent: ({ from }) => was(spaced('not', from ?? 'given')),
};

const plateFound: OwnPhrase<'plate-found'> = {
  shape: 'own',
  name: 'the plantar plate',
  by: 'inspected',
  preposition: 'at',
  wording: {
    state: {
      torn: 'torn',
      ruptured: 'ruptured',
      avulsed: 'avulsed',
      detached: 'detached',
      attenuated: 'attenuated',
      thinned: 'thinned',
      stretched: 'stretched',
      buttonholed: 'buttonholed',
      intact: 'intact',
    },
    shape: { transverse: 'transversely', longitudinal: 'lengthwise', flap: 'as a flap' },
    extent: { partial: 'partially', full: 'through its full thickness' },
    place: {
      distal: 'distally',
      insertion: 'at the insertion',
      'phalangeal insertion': 'at the phalangeal insertion',
      midsubstance: 'in its midsubstance',
      proximal: 'proximally',
      medial: 'medially',
      lateral: 'laterally',
      central: 'centrally',
    },
  },
  present: ({ state, shape, extent, place, share, grade }) =>
    was(
      commas(spaced(state, shape, extent, place), share && `over ${share} of the width`, grade) ||
        'described as written',
    ),
  absent: ({ state, shape, extent, place, share, grade }) =>
    was(spaced('not', commas(spaced(state ?? 'abnormal', shape, extent, place), share, grade))),
};

const anatomicalGrade: SubjectPhrase<'anatomical-grade'> = {
  shape: 'subject',
  noun: 'MTP joint',
  name: 'the anatomical grade',
  by: 'assigned',
  wording: {},
  present: ({ grade }) => ({ verb: 'had', rest: grade ?? `an anatomical grade with ${UNREAD_RESULT}` }),
  absent: ({ grade }) => ({ verb: 'had', rest: commas('no anatomical grade', grade) }),
};

const fixation: OwnPhrase<'fixation'> = {
  shape: 'own',
  name: 'fixation',
  by: 'used',
  preposition: 'at',
  wording: { with: asNamed(FIXATION) },
  present: ({ with: what, size, count }) =>
    was(commas(spaced('done', what && `by ${what}`), size, count && `number: ${count}`)),
  absent: ({ with: what, size, count }) =>
    was(commas(spaced('not done', what && `by ${what}`), size, count && `number: ${count}`)),
};

/** Ordered in a plan and in the operation note, done or seen elsewhere. */
const ordered =
  (done: string, order: string) =>
  (section: Section, details: string, not: boolean): Predicate =>
    section === 'exam'
      ? was(spaced(not ? 'not' : undefined, done, details))
      : { verb: 'is', rest: spaced(not ? 'not' : undefined, order, details) };

const weightBearing: OwnPhrase<'weight-bearing'> = {
  shape: 'own',
  name: 'weight-bearing',
  by: 'ordered',
  preposition: 'on',
  wording: {
    load: {
      'non-weight-bearing': 'none',
      'heel only': 'the heel only',
      'partial-weight-bearing': 'partial',
      'weight-bearing-as-tolerated': 'as tolerated',
      'full-weight-bearing': 'full',
    },
  },
  present: ({ load, from, for: time }) => ({
    verb: 'is',
    rest: spaced('ordered', load && `(${load})`, from && `from ${from}`, time && `for ${time}`),
  }),
  absent: ({ load, from, for: time }) => ({
    verb: 'is',
    rest: spaced('not ordered', load && `(${load})`, from && `from ${from}`, time && `for ${time}`),
  }),
};

const removal = ordered('removed', 'to be removed');
const pinOut: OwnPhrase<'pin-out'> = {
  shape: 'own',
  name: 'the pin',
  by: 'seen to',
  preposition: 'at',
  wording: {},
  present: ({ at, on }, section) => removal(section, spaced(at && `at ${at}`, on), false),
  absent: ({ at, on }, section) => removal(section, spaced(at && `at ${at}`, on), true),
};

const named = (told: Predicate, shoes: string | undefined): Predicate =>
  shoes ? { ...told, subject: shoes, plural: true } : told;
const wear = ordered('worn', 'to be worn');
const shoes: OwnPhrase<'ordinary-shoes'> = {
  shape: 'own',
  name: 'ordinary shoes',
  plural: true,
  by: 'tried on',
  preposition: 'on',
  wording: { kind: { trainers: 'trainers' } },
  present: ({ kind, from, on }, section) => named(wear(section, spaced(from && `from ${from}`, on), false), kind),
  absent: ({ kind, from, on }, section) => named(wear(section, spaced(from && `from ${from}`, on), true), kind),
};

export const OPERATION_PHRASES = {
  procedure,
  approach,
  'plate-found': plateFound,
  'anatomical-grade': anatomicalGrade,
  fixation,
  'weight-bearing': weightBearing,
  'pin-out': pinOut,
  'ordinary-shoes': shoes,
};
