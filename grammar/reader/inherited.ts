import type { Section } from '../lexicon/entry.ts';
import type { SectionHeading, VerbatimNode } from '../syntax.ts';
import type { Binder } from './binder.ts';

/** The side that the segment or the statement of what is kept as typed began with. */
export const heldSide = ({ segmentSide, sectionSide }: Binder): Pick<VerbatimNode, 'side'> => {
  const side = segmentSide ?? sectionSide;
  return side ? { side } : {};
};

/** `third drawer 0. plan mri`: what is told or planned next is of no ray that was only examined before. */
const KEEPS_NO_RAY: readonly Section[] = ['history', 'tried', 'plan', 'lab'];
const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];
/** `mri 2nd tear, third normal; pain 6/10`: nor is a pain of what was only seen on an image. */
export const leavesRay = (from: Section, to: Section): boolean =>
  from !== to && (KEEPS_NO_RAY.includes(to) || (to === 'pain' && IMAGES.includes(from)));

/** The section of a line that opens none, below a heading or below nothing. */
export function sectionBelow(under: SectionHeading | undefined): Section {
  if (under === undefined || under === 'images') return 'exam';
  return under === 'operation done' ? 'operation' : under;
}
