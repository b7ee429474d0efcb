import {
  deviation,
  dislocation,
  drawer,
  extension,
  filmOutOfPlace,
  noDeformity,
  overlap,
  plantarTenderness,
  purchaseLost,
  swelling,
} from './criteria.ts';
import type { OtherScale } from './scale.ts';

const MILD = ['slight', 'mild'] as const;
const MEDIAL = ['medial', 'dorsomedial'] as const;

/** Ways to describe the joint that are not the clinical stage; their names never stand for each other. */
export const OTHER_SCALES: readonly OtherScale[] = [
  {
    id: 'predislocation stage',
    source: 'YU02',
    mark: 'secondary',
    limits:
      'That the authors stage it was read; the descriptions come from another page. Deviation on the film has no word here, so that of the exam counts.',
    rows: [
      {
        name: 'I',
        criteria: [
          noDeformity('toe aligned'),
          swelling('mild swelling', MILD),
          plantarTenderness('extreme tenderness at the plate', 'marked'),
        ],
      },
      {
        name: 'II',
        criteria: [
          deviation('visible deviation, not pronounced', ['slight', 'mild', 'moderate']),
          swelling('moderate swelling', ['moderate']),
          purchaseLost('purchase lost'),
        ],
      },
      {
        name: 'III',
        criteria: [
          deviation('pronounced deviation', ['marked']),
          swelling('moderate swelling', ['moderate']),
          filmOutOfPlace('subluxed or dislocated on the film'),
        ],
      },
    ],
  },
  {
    id: 'crossover grade by displacement',
    source: 'HADD99',
    mark: 'from memory, to be verified',
    ray: 2,
    limits:
      'Its grade 1 has a joint that subluxes; grade 1 of the other crossover grading has a negative drawer. Exactly half is left open.',
    rows: [
      {
        name: '1',
        criteria: [
          deviation('mild medial or dorsomedial shift', MILD, MEDIAL),
          drawer('under half subluxed', [1]),
          overlap('no overlap', ['no']),
          dislocation('not dislocated', false),
        ],
      },
      {
        name: '2',
        criteria: [
          deviation('moderate shift', ['moderate']),
          drawer('half or more subluxed', [2, 3]),
          overlap('no overlap', ['no']),
          dislocation('not dislocated', false),
        ],
      },
      {
        name: '3',
        criteria: [overlap('overlaps the hallux', ['rest']), dislocation('not dislocated', false)],
      },
      { name: '4', criteria: [dislocation('dislocated', true)] },
    ],
  },
  {
    id: 'crossover grade by drawer and overlap',
    source: 'common practice',
    mark: 'common practice',
    ray: 2,
    limits:
      'Its paper was not read and is not cited: another page reports it. Its grade 1 has no deformity; grade 1 of the other crossover grading is displaced.',
    rows: [
      {
        name: '1',
        criteria: [
          noDeformity('no deformity'),
          plantarTenderness('plantar tenderness'),
          drawer('drawer negative', [0]),
          overlap('no overlap', ['no']),
          dislocation('not dislocated', false),
        ],
      },
      {
        name: '2',
        criteria: [
          deviation('minimal medial deviation', MILD, MEDIAL),
          plantarTenderness('plantar tenderness'),
          drawer('drawer positive', [1, 2, 3]),
          overlap('no overlap', ['no']),
          dislocation('not dislocated', false),
        ],
      },
      {
        name: '3',
        criteria: [
          extension('dorsal displacement'),
          overlap('crosses over', ['sometimes', 'rest']),
          drawer('drawer positive', [1, 2, 3]),
          dislocation('not dislocated', false),
        ],
      },
      { name: '4', criteria: [overlap('overrides the hallux', ['rest']), dislocation('dislocated', true)] },
    ],
  },
];
