import type { StageAtCursor } from './protocol.ts';

/** What the status bar says at length about the stage. */
export function stageTooltip({ text }: StageAtCursor): string {
  return `${text}. Decision support; the clinician decides. Select to see the clinic note.`;
}
