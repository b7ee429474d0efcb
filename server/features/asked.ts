// What an editor asks for now and then. The checks need none of it, so that it is a bundle of its own, loaded with the first question.

export { convertEdits } from '../workspace/convert/convert-edits.ts';
export { codeActions } from './code-actions.ts';
export { completion } from './completion.ts';
export { dictationActions } from './dictation.ts';
export { foldingRanges } from './folding.ts';
export { formatting, onEnter } from './formatting.ts';
export { hover } from './hover.ts';
export { stageAtCursor } from './stage-at-cursor.ts';
export { documentSymbols } from './symbols.ts';
