import type { StageAtCursor } from './protocol.ts';

const ordinals = ['', '1st', '2nd', '3rd', '4th', '5th'];

/** What the status bar says at length: what is computed, what is stated, and who decides. */
export function stageTooltip({ rays }: StageAtCursor): string {
  const lines = rays.map(({ side, ray, stage, stated }) => {
    const own = stated === undefined ? 'no stage stated' : `stated: stage ${stated}`;
    return `${ordinals[ray] ?? ray} ${side}: ${stage}, computed; ${own}.`;
  });
  return [...lines, 'Decision support: the clinician decides. Opens the clinic note.'].join('\n');
}
