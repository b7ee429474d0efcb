import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import type { Range } from '../workspace/blocks.ts';
import type { Note } from '../workspace/note.ts';
import { planAcceptances } from './accept-plan.ts';
import { codeActions, wants } from './code-actions.ts';
import { dictationActions } from './dictation.ts';

export { convertEdits } from './dictation.ts';

/** What the editor says of its request. */
export interface Asked {
  readonly given?: readonly Diagnostic[];
  readonly only?: readonly string[] | undefined;
}
type Explain = Parameters<typeof planAcceptances>[2];

/** All that is offered for a range, what a misheard word may have been first. A bundle of its own, loaded when it is first asked for. */
export async function actions(
  note: Note,
  range: Range,
  { given = [], only }: Asked = {},
  explain?: () => Promise<Explain>,
): Promise<CodeAction[]> {
  const plans = explain && wants(only, 'quickfix') ? planAcceptances(note, range, await explain()) : [];
  return [...dictationActions(note, range, given, only), ...codeActions(note, range, given, only), ...plans];
}
