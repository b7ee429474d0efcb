import { entryOf } from '../../../../grammar/lexicon/index.ts';
import type { Reading } from './read-clause.ts';

/** A clause and the words of its sentence on both sides of it. */
export interface Beside {
  readonly before: string;
  readonly own: string;
  readonly after: string;
  readonly reading: Reading;
}

const RAY = '(?:[1-5](?:st|nd|rd|th)|first|second|third|fourth|fifth)';
const NAMES_RAY = new RegExp(`(?<![^ ])${RAY}`);
const OPENS_WITH_RAY = new RegExp(`^(?:(?:the|her|his|right|left) )*${RAY}(?![^ ])`);
const ENDS_WITH_RAY = new RegExp(
  `(?<![^ ])${RAY}(?: (?:toe|ray|mtp|joint|metatarsal|head|m t p|m t p joint|mtp joint))?$`,
);
/** A place that what stands before it is of: `tear of the | second plate partial tear`. */
const OF_A_PLACE = /(?<![^ ])(?:of|under|underneath|beneath|below|between)(?: (?:the|her|his|right|left))*$/;
const SAYS =
  "(?:is|are|was|were|has|had|isn't|doesn't|does|can|can't|cannot|will|would|moves?|cross\\w*|drift\\w*|start\\w*|look\\w*|feels?|felt|sits?|lies?|goes|went|keeps?|seems?|hurts?|points?|lean\\w*|that|which)(?![^ ])";
/** It says what the ray before it does or is: `no numbness the second toe | is starting to drift`. */
const VERB = new RegExp(`^${SAYS}`);
/** What was done about a thing makes it a thing of the past: `bunion | done privately`. */
const DEALT_WITH =
  /^(?:(?:was|were|been|got|had|all|since|\w+ly) )*(?:done|operated|corrected|removed|fused|excised|repaired|replaced|amputated|straightened|sorted|surgery|operation|op)(?![^ ])/;
const OTHER_TOE = new RegExp(`(?<![^ ])(?:big|great|little) toe ${SAYS}(?: [^ ]+){0,5}$`);
const IMAGE = /(?<![^ ])(?:x ?rays?|films?|radiographs?|xr|scan\w*|mri|m r i|ultrasound|ct|c t|views?)(?![^ ])/;
/** So many things have a direction or a length: alone, they are of none. */
const NAMES_APPROACH = /(?<![^ ])(?:approach\w*|incision|incised|longitudinal|transverse)(?![^ ])/;
const NAMES_BONE = /(?<![^ ])(?:mets?|metatarsals?|longer|shorter)(?![^ ])/;
const WOUND = /(?<![^ ])(?:wound|incision|scar|dressing|edges?|stitch\w*|sutures?)(?![^ ])/;

/** Reasons for which words may not be parted from those beside them; each keeps the clause as it was said. */
const PARTED: readonly ((beside: Beside) => boolean)[] = [
  ({ before, own }) => OPENS_WITH_RAY.test(own) && OF_A_PLACE.test(before),
  ({ own, after }) => ENDS_WITH_RAY.test(own) && !OPENS_WITH_RAY.test(own) && VERB.test(after),
  ({ after, reading }) => DEALT_WITH.test(after) && reading.findings.some(isSign),
  // A gap is between toes; that of a wound is another.
  ({ before, own, after, reading }) => says(reading, 'gap') && WOUND.test(`${before} ${own} ${after}`),
  // `joint medial`, where nobody spoke of a film.
  ({ before, own, after, reading }) =>
    reading.findings.some(isBareDirection) && !IMAGE.test(`${before} ${own} ${after}`),
  // `dorsal` of a capsule, `long` of a walk.
  ({ own, reading }) => says(reading, 'approach') && !NAMES_APPROACH.test(own),
  ({ own, reading }) => reading.findings.some(isBareLength) && !NAMES_BONE.test(own),
  // `wound edges`: it is named, and nothing is said of it yet.
  ({ own, reading }) => reading.findings.some(isBareWound) && !/ulcer|incision/.test(own),
  // `a gap at the end of the wound, five millimetres`: what is told is of its end.
  ({ before, own, reading }) =>
    says(reading, 'wound') && /^wound(?![^ ])/.test(own) && /(?<![^ ])(?:of|at|in|from) the$/.test(before),
  // A ray that was named before holds no longer where the words just before are of another toe.
  ({ before, own, reading }) => !NAMES_RAY.test(own) && OTHER_TOE.test(before) && reading.findings.some(isOfLesserRay),
  // Numbness is told of the foot: a ray that was named before it lends it none.
  ({ own, reading }) =>
    !NAMES_RAY.test(own) && reading.findings.some(({ id, subject }) => id === 'numbness' && subject?.at === 'rays'),
];
const says = ({ findings }: Reading, id: string): boolean => findings.some((each) => each.id === id);
const isBareDirection = ({ id, slots }: Reading['findings'][number]): boolean =>
  id === 'film-joint' && Object.keys(slots).every((slot) => slot === 'direction');
const isBareLength = ({ id, slots }: Reading['findings'][number]): boolean => id === 'protrusion' && !slots.by;
const isBareWound = ({ id, slots, status }: Reading['findings'][number]): boolean =>
  id === 'wound' && status === 'present' && Object.keys(slots).length === 0;
const isSign = ({ id }: Reading['findings'][number]): boolean =>
  id !== 'panel' && ['sign', 'measure', 'event'].includes(entryOf(id).kind);
const isOfLesserRay = ({ subject }: Reading['findings'][number]): boolean =>
  subject?.at === 'rays' && subject.rays.every((ray) => ray > 1);

/** May the words of a clause be of what stands beside them, so that alone they would say something else? */
export const isParted = (beside: Beside): boolean => PARTED.some((reason) => reason(beside));
