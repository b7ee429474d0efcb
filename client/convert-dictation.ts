import { Range, WorkspaceEdit, window, workspace } from 'vscode';
import type { Ask } from './protocol.ts';

/** Converts the dictated lines that the selections touch, in one step that can be undone; says so where there is nothing to convert. */
export async function convertDictation(ask: Ask): Promise<void> {
  const editor = window.activeTextEditor;
  if (editor?.document.languageId !== 'forefoot') return;
  const { document, selections } = editor;
  const { version } = document;
  const edit = new WorkspaceEdit();
  for (const { start, end } of selections) {
    const lastLine = end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
    const params = { uri: document.uri.toString(), firstLine: start.line, lastLine };
    for (const { range, newText } of (await ask('forefoot/convertDictation', params)) ?? [])
      edit.replace(
        document.uri,
        new Range(range.start.line, range.start.character, range.end.line, range.end.character),
        newText,
      );
  }
  // What was typed meanwhile is not overwritten.
  if (document.version !== version) return;
  if (edit.size === 0) window.setStatusBarMessage('No dictation here that can be converted.', 4000);
  else await workspace.applyEdit(edit);
}
