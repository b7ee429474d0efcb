import { scaleOutcomeText } from '../clinical/scales/scale-text.ts';
import { labelled, markText } from './layout.ts';
import type { ScaleRecord } from './scale-records.ts';

/** A row for each scale, each apart from the stage and from the others, then what they take for granted beyond the stage. */
export function scaleRows(scales: readonly ScaleRecord[], assumedBeside: readonly string[], width: number): string[] {
  const row = (label: string, text: string) => labelled(label, text, { left: 6, width });
  const [first] = scales;
  if (first?.outcome.is === 'not applied') {
    const { why } = first.outcome;
    const none = scales.every(({ outcome }) => outcome.is === 'not applied' && outcome.why === why);
    if (none) return [row('scales', 'none is applied, for the reason that keeps the stage away')];
  }
  const assumed = [...new Set(scales.flatMap(({ assumptions }) => assumptions))];
  const beyond = assumed.filter((each) => !assumedBeside.includes(each));
  return [
    ...scales.map((record, at) => row(at === 0 ? 'scales' : '', scaleText(record))),
    ...(beyond.length > 0 ? [row('', `assumed for the scales: ${beyond.join('; ')}`)] : []),
  ];
}

function scaleText(record: ScaleRecord): string {
  const { scale, outcome, limits } = record;
  const limited = outcome.is === 'told' ? ` ${limits}` : '';
  return `${scale}: ${scaleOutcomeText(record)}.${limited} [${markText(record)}]`;
}
