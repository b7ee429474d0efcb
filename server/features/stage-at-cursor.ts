import type { Note } from '../workspace/note.ts';
import { rayName, stageText } from './describe.ts';
import { raysOn } from './word-at.ts';

export interface StageAtCursor {
  /** `2nd right: stage 1-3`; empty where nothing is staged. */
  readonly text: string;
  readonly rays: readonly {
    readonly side: string;
    readonly ray: number;
    readonly stage: string;
    readonly stated?: string;
  }[];
}

/** The computed stages of the rays on a line, else of its visit; in the header, of the newest visit. */
export function stageAtCursor(note: Note, line: number): StageAtCursor {
  const own = note.visitAt(line);
  const visit = own ?? note.visit(note.blockCount - 1);
  if (!visit) return { text: '', rays: [] };
  const rays = raysOn(visit.analysis.rays, own ? note.line(line) : undefined);
  const staged = rays.filter(({ outcome }) => outcome.is === 'staged' || outcome.is === 'span');
  return {
    text: staged.map((ray) => `${rayName(ray)}: ${stageText(ray.outcome)}`).join('; '),
    rays: rays.map(({ side, ray, outcome, stated }) => ({
      side,
      ray,
      stage: stageText(outcome),
      ...(stated ? { stated: stated.low === stated.high ? `${stated.low}` : `${stated.low}-${stated.high}` } : {}),
    })),
  };
}
