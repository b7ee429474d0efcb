import type { VisitAnalysis } from '../../server/clinical/analysis.ts';
import { NO_SETTINGS } from '../../server/clinical/settings.ts';
import { OpenNote, type Workshop } from '../../server/workspace/note.ts';
import { workshop } from '../../server/workspace/workshop.ts';

export const TODAY = '2026-05-04';

export const openNote = (text: string, shop: Workshop = workshop(), today = TODAY, settings = NO_SETTINGS): OpenNote =>
  new OpenNote('file:///note.forefoot', 1, text, shop, today, settings);

/** A workshop that counts the lines that it reads and the visits that it analyses. */
export function countingWorkshop(): { shop: Workshop; work: { lines: number; visits: number; headers: number } } {
  const own = workshop();
  const work = { lines: 0, visits: 0, headers: 0 };
  return {
    work,
    shop: {
      read: (text, under) => {
        work.lines++;
        return own.read(text, under);
      },
      analyser: {
        ...own.analyser,
        header: (lines, settings) => {
          work.headers++;
          return own.analyser.header(lines, settings);
        },
        visit: (lines, before, context) => {
          work.visits++;
          return own.analyser.visit(lines, before, context);
        },
      },
    },
  };
}

/** An analysis with what its rays argue, which is worked out when it is asked for. */
export const argued = (analysis: VisitAnalysis | undefined): unknown =>
  analysis && {
    ...analysis,
    rays: analysis.rays.map((ray) => {
      const { labels, evidence, assumptions, statements } = ray;
      return { ...ray, labels, evidence, assumptions, statements };
    }),
  };

/** All that a note knows, by blocks: what an edited note must have in common with a new one. */
export function everything(note: OpenNote): unknown {
  note.settle();
  return {
    text: note.text(),
    lineCount: note.lineCount,
    header: note.header,
    headerReports: note.headerReports,
    counts: { reports: [...note.counts.reports], dangers: [...note.counts.dangers] },
    visits: Array.from({ length: note.blockCount }, (_, index) => ({
      firstLine: note.firstLine(index),
      lines: note.block(index),
      analysis: argued(note.visit(index)?.analysis),
    })),
  };
}

const pad = (value: number): string => String(value).padStart(2, '0');
/** An invented note of so many visits of 18 lines. */
export const longNote = (visits: number): string =>
  ['forefoot 1', 'patient KM-207  born 1971  female', 'scales drawer 0-4', '', ...range(visits).map(visit)].join('\n');
const range = (count: number): number[] => Array.from({ length: count }, (_, index) => index);
const visit = (
  index: number,
): string => `visit ${2000 + Math.floor(index / 300)}-${pad(1 + (Math.floor(index / 25) % 12))}-${pad(1 + (index % 25))} review right
history  onset gradual 5 months; trigger running
pain     2nd plantar ${index % 10}/10
tried    met-pad 4 weeks no-relief
stand    2nd lifted 3 mm; gap 2-3; hallux-valgus mild
2nd      swelling moderate, tender plantar, drawer 2 painful, paper pulls-out, pip flexible
3rd      tender none, drawer 1, straight, paper holds
4th-5th  normal
webs 2-3 click none, squeeze none
sense    monofilament 10/10
pulses   dp 2, pt 2
us       2nd tear partial distal lateral 40%
stage    2nd 2
plan     tape 2nd 8 weeks; stiff-insert; review in 8 weeks
// seen with the resident


`;
