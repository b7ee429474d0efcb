/** Where a plate is torn, seen at operation or on an image. It inserts on the phalanx, at its distal end. */
export const PLATE_PLACES = {
  distal: [],
  insertion: ['at the insertion'],
  'phalangeal insertion': ['at the phalangeal insertion'],
  midsubstance: ['mid substance'],
  proximal: [],
  medial: [],
  lateral: [],
  central: [],
} as const;
export const WIDER_PLACES = { insertion: 'distal', 'phalangeal insertion': 'distal' };
