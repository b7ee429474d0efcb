import type { VerbatimNode } from '../syntax.ts';
import type { Binder } from './binder.ts';

/** The side that the segment or the statement of what is kept as typed began with. */
export const heldSide = ({ segmentSide, sectionSide }: Binder): Pick<VerbatimNode, 'side'> => {
  const side = segmentSide ?? sectionSide;
  return side ? { side } : {};
};
