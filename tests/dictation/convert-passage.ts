import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { readHeaderFacts, readVisitFacts } from '../../server/clinical/read-facts.ts';
import { convertLine } from '../../server/workspace/convert/convert-line.ts';

const header = readHeaderFacts([readLine('forefoot 1'), readLine('scales drawer 0-4')]);
export const readVisit = (lines: readonly LineSyntax[]) => readVisitFacts(lines, header);

/** A dictated line under a visit line as its conversion writes it; as it was said where nothing is converted. */
export function convertedText(visit: string, dictated: string): string {
  const lines = [readLine(visit), readLine(dictated)];
  return convertLine({ lines, at: 1, read: readVisit })?.join('\n') ?? dictated;
}
/** A converted text once its speaker has confirmed every proposal. */
export const confirmed = (text: string): string => text.replace(/^proposed\s+/gm, '');
