import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { RayAnalysis, VisitAnalysis } from '../clinical/analysis.ts';
import {
  ANATOMICAL_GRADES,
  HALF_OF_THE_PLATE,
  PLATE_SOURCE,
  plateSeenText,
  platesSeen,
} from '../clinical/scales/anatomical.ts';
import { scaleOutcomeText } from '../clinical/scales/scale-text.ts';
import { otherScales } from '../clinical/scales/tell.ts';
import { cite } from './cite.ts';
import { paragraphs, rayName } from './describe.ts';

const marked = ({ source, mark }: Sourced): string => (source === mark ? mark : `${source}, ${mark}`);

/** The plate as seen and the other scales of a ray, each apart from the stage. Markdown. */
export function describeScales(analysis: VisitAnalysis, ray: RayAnalysis): string {
  const seen = platesSeen(analysis.facts, ray.side, ray.ray).map((plate) => `- plate seen: ${plateSeenText(plate)}`);
  const told = otherScales(analysis, ray).map(
    (each) => `- ${each.scale.id}: ${scaleOutcomeText(each)} (${marked(each.scale)})`,
  );
  return paragraphs(`*Other scales*, ${rayName(ray)}, computed apart from the stage`, [...seen, ...told].join('\n'));
}

/** What each grade of the torn plate means. Markdown. */
export function describeAnatomicalGrades(): string {
  const rows = Object.entries(ANATOMICAL_GRADES).map(([grade, { says }]) => `- ${grade}: ${says}`);
  const { source, mark } = PLATE_SOURCE;
  return paragraphs(`*Anatomical grade*; ${HALF_OF_THE_PLATE}`, rows.join('\n'), cite(source, mark));
}
