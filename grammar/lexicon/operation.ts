import { date, duration, entry, grade, leadsOf, number, words } from './entry.ts';
import { PLATE_PLACES } from './plate-places.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** Procedures with their other names; a plan names them too. */
export const PROCEDURES = {
  'plate repair': ['plantar plate repair', 'plate reinsertion'],
  'weil osteotomy': ['weil', 'shortening osteotomy'],
  'tendon transfer': ['flexor transfer', 'flexor to extensor transfer', 'fdl transfer'],
  'brevis transfer': ['edb transfer', 'extensor brevis transfer'],
  'pip fusion': ['pip arthrodesis', 'pipj fusion'],
  'pip resection': ['pip arthroplasty', 'pip excision arthroplasty'],
  'extensor lengthening': ['extensor z lengthening', 'z lengthening', 'edl lengthening'],
  'collateral release': ['collateral ligament release'],
  'collateral repair': ['collateral ligament repair', 'repair of collateral'],
  'joint release': ['capsulotomy', 'dorsal capsulotomy', 'capsular release'],
  'flexor tenotomy': ['fdl tenotomy'],
  'plate shrinkage': ['thermal shrinkage', 'radiofrequency shrinkage'],
  condylectomy: ['plantar condylectomy'],
  'hallux valgus correction': ['hv correction', 'bunion correction'],
  'neuroma excision': ['neurectomy', 'excise neuroma', 'excision of neuroma'],
  debridement: ['washout'],
  amputation: ['toe amputation'],
} as const;

/** Every name of a table opens its finding with that value. */
const DONE = { ...PROCEDURES, pin: ['k-wire'] } as const;
const FIXATION = {
  screw: ['screws', 'snap off screw', 'snap off screws'],
  suture: ['sutures'],
  anchor: ['suture anchor'],
  'drill holes': ['bone tunnels', 'through drill holes', 'through bone tunnels'],
} as const;
const APPROACH = {
  dorsal: ['dorsal approach', 'dorsal incision', 'dorsal longitudinal incision', 'from the top', 'from above'],
  plantar: ['plantar approach', 'plantar incision', 'from below', 'from the sole'],
} as const;
const LOAD = {
  'non-weight-bearing': ['nwb', 'off the foot', 'no weight'],
  'heel only': ['heel weight bearing', 'heel walking', 'heel wb', 'heel wb only', 'heel weight bearing only'],
  'partial-weight-bearing': ['pwb'],
  // What the patient bears, up to all of it: an order of its own, neither partial nor full.
  'weight-bearing-as-tolerated': ['wbat'],
  'full-weight-bearing': ['fwb'],
} as const;
const loadLeads = leadsOf('load', LOAD);

/** The operation note: approach, what was found, what was done, how it was held. */
export const OPERATION = [
  entry({
    ...practice,
    id: 'approach',
    kind: 'measure',
    bare: 'incomplete',
    sections: ['operation'],
    subjects: ['ray', 'web', 'foot'],
    word: 'approach',
    leads: leadsOf('from', APPROACH),
    slots: { from: words(APPROACH) },
    order: 126,
    technique: 'Name the side of the foot from which the joint was reached.',
    meaning:
      'No trial that compares the approaches head to head was found; the later timetable follows the note itself.',
  }),
  entry({
    ...practice,
    id: 'plate-found',
    kind: 'sign',
    bare: 'incomplete',
    sections: ['operation'],
    subjects: ['ray'],
    word: 'plate',
    forms: ['plantar plate'],
    slots: {
      state: words(
        {
          torn: ['tear', 'ruptured', 'avulsed', 'detached'],
          attenuated: ['thinned', 'stretched'],
          buttonholed: ['buttonhole'],
          intact: [],
        },
        { many: true },
      ),
      shape: words({ transverse: [], longitudinal: ['lengthwise'], flap: [] }, { many: true }),
      extent: words({ partial: [], full: ['complete'] }),
      place: words(PLATE_PLACES, { many: true }),
      share: number('%', 0, 100, false, { trails: ['of width', 'of the width', 'of its width'] }),
      grade: grade('anatomical', 4, ['grade', 'gr', 'anatomical grade']),
    },
    order: 127,
    technique: 'State what was seen and probed: torn or attenuated, where, how much of the width, and the grade.',
    meaning: 'The anatomical grade is seen at operation. It is neither the clinical stage nor the drawer grade.',
    source: 'COUGH11',
    mark: 'read',
  }),
  entry({
    id: 'anatomical-grade',
    kind: 'measure',
    bare: 'incomplete',
    sections: ['operation', 'us', 'mri'],
    subjects: ['ray'],
    word: 'anatomical-grade',
    forms: ['anatomic grade'],
    leads: { grade: { sections: ['operation'] }, gr: { sections: ['operation'] } },
    slots: { grade: grade('anatomical', 4, []) },
    order: 128,
    technique:
      'Grade 0 attenuated, 1 under half of the width torn, 2 over half, 3 extensive or lengthwise too, 4 extensive with a buttonhole.',
    meaning:
      'A grade of the torn plate as seen, from operation or image. It is neither the clinical stage nor the drawer grade. No source that could be read assigns exactly half of the width.',
    source: 'from memory',
    mark: 'from memory, to be verified',
  }),
  entry({
    ...practice,
    id: 'procedure',
    kind: 'procedure',
    bare: 'incomplete',
    sections: ['operation'],
    subjects: ['ray', 'web', 'foot'],
    word: 'procedure',
    leads: leadsOf('what', DONE),
    slots: {
      what: words(DONE),
      shortening: number('mm', 0, 15, false, {
        labels: ['shortening', 'shortened'],
        trails: ['shortening', 'shortened', 'of shortening'],
      }),
      for: duration(),
    },
    many: true,
    order: 130,
    technique: 'Name each procedure with its ray; a pin with the weeks that it is to stay.',
    meaning: 'An operated joint is not staged again: a floating or stiff toe is described as such.',
  }),
  entry({
    ...practice,
    id: 'fixation',
    kind: 'procedure',
    bare: 'incomplete',
    sections: ['operation'],
    subjects: ['ray', 'foot'],
    word: 'fixation',
    leads: leadsOf('with', FIXATION),
    slots: {
      with: words(FIXATION),
      size: number('mm', 0.5, 10, false),
      count: number('', 1, 9, true, { labels: ['x'] }),
    },
    many: true,
    order: 131,
    technique: 'Name what holds the osteotomy or the repair. A pin is written as a procedure, with its weeks.',
    meaning: 'Later visits ask for it: a loose screw and a pin past its date are looked for.',
  }),
] as const;

const ANAESTHESIA = {
  general: ['ga', 'general anaesthetic'],
  spinal: [],
  sedation: [],
  'ankle block': [],
  'popliteal block': ['popliteal'],
  'saphenous block': ['saphenous'],
  local: ['local anaesthetic', 'under la'],
} as const;
const HALLUX = {
  'scarf osteotomy': ['scarf'],
  'akin osteotomy': ['akin'],
  'chevron osteotomy': ['chevron'],
  'lapidus fusion': ['lapidus'],
  'lateral release': ['lat release'],
} as const;

/** Anaesthetic, what is done at the great toe beside the lesser rays, and a pin that stays. */
export const OPERATION_BESIDE = [
  entry({
    ...practice,
    id: 'anaesthesia',
    kind: 'event',
    bare: 'incomplete',
    sections: ['operation', 'plan', 'exam'],
    subjects: ['patient'],
    word: 'anaesthesia',
    forms: ['anaesthetic', 'anesthesia'],
    leads: leadsOf('kind', ANAESTHESIA),
    slots: { kind: words(ANAESTHESIA, { many: true }) },
    many: true,
    order: 125,
    technique: 'General, regional by its nerve, or local.',
    meaning: 'A block hides pain and a tight dressing for hours.',
  }),
  entry({
    ...practice,
    id: 'hallux-procedure',
    kind: 'procedure',
    bare: 'incomplete',
    sections: ['operation', 'plan'],
    subjects: ['foot'],
    word: 'hallux-procedure',
    leads: leadsOf('what', HALLUX),
    slots: { what: words(HALLUX) },
    many: true,
    order: 129,
    technique: 'Name each step at the great toe; it never takes a lesser ray.',
    meaning: 'Done beside the lesser ray where the great toe crowds it.',
  }),
  entry({
    ...practice,
    id: 'pin-in-place',
    kind: 'event',
    bare: 'present',
    sections: ['exam'],
    subjects: ['ray', 'foot'],
    word: 'pin-in-place',
    forms: ['pin in situ', 'pin in place', 'pin still in', 'wire in situ', 'wire still in', 'k-wire in situ'],
    slots: {},
    order: 53.8,
    technique: 'Seen today; with the week in which it is due out.',
    meaning: 'No passive motion and no ordinary shoe while a pin crosses the joint.',
  }),
] as const;

/** The orders of an operation note, which win over any local protocol, and what a later plan changes of them. */
export const ORDERS = [
  entry({
    ...practice,
    id: 'weight-bearing',
    kind: 'event',
    bare: 'incomplete',
    sections: ['operation', 'plan'],
    subjects: ['foot', 'patient'],
    word: 'weight-bearing',
    forms: ['weightbearing'],
    leads: loadLeads,
    slots: { load: words(LOAD), for: duration() },
    many: true,
    order: 140,
    technique: 'State how much load and for how long.',
    meaning: 'The order of the operation note wins over any local protocol.',
  }),
  entry({
    ...practice,
    id: 'pin-out',
    kind: 'event',
    bare: 'present',
    sections: ['exam', 'operation', 'plan'],
    subjects: ['ray', 'foot', 'patient'],
    word: 'pin-out',
    forms: [
      'pin removal',
      'pin removed',
      'pins out',
      'remove pin',
      'k-wire out',
      'k-wire removed',
      'k-wire removal',
      'wire out',
      'wires out',
      'wire removed',
    ],
    slots: { at: duration(['at', 'in', 'after']), on: date(['on']) },
    order: 141,
    technique: 'In the note of the operation and in a plan it is ordered, in an exam it has been done.',
    meaning: 'The pin leaves before the shoe returns, and no passive motion of the joint is done through a pin.',
  }),
  entry({
    ...practice,
    id: 'ordinary-shoes',
    kind: 'event',
    bare: 'present',
    sections: ['exam', 'operation', 'plan'],
    subjects: ['foot', 'patient'],
    word: 'ordinary-shoes',
    forms: [
      'normal shoes',
      'normal shoe',
      'own shoes',
      'own shoe',
      'regular shoes',
      'trainers',
      'shoes from',
      'shoe from',
      'shoes at',
      'back to shoes',
      'return to shoes',
      'into shoes',
    ],
    slots: { from: { ...duration(['from', 'at', 'in', 'after']), least: 'days' }, on: date(['on']) },
    order: 143,
    technique: 'In the note of the operation and in a plan they are ordered, in an exam they are worn.',
    meaning: 'After the pin and before impact.',
  }),
] as const;
