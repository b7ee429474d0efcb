import {
  type Disposable,
  Range,
  type TextDocument,
  TextDocumentChangeReason,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import type { Ask } from './protocol.ts';

interface Typed {
  readonly uri: string;
  readonly line: number;
}

/**
 * Converts a dictated line when the cursor leaves it, where the setting asks for that: only a line that was just typed or dictated in, never
 * one whose conversion was undone, and never over words that arrived meanwhile. One step to undo. Enter is the server's (on-type formatting).
 */
export function convertWhenLeft(ask: Ask): Disposable[] {
  let typed: Typed | undefined;
  const changed = workspace.onDidChangeTextDocument(({ document, contentChanges, reason }) => {
    if (document.languageId !== 'forefoot' || contentChanges.length === 0) return;
    const [only, more] = contentChanges;
    const takenBack = reason === TextDocumentChangeReason.Undo || reason === TextDocumentChangeReason.Redo;
    const within = only && !more && only.range.isSingleLine && !only.text.includes('\n');
    typed = within && !takenBack ? { uri: document.uri.toString(), line: only.range.start.line } : undefined;
  });
  const moved = window.onDidChangeTextEditorSelection(({ textEditor: { document }, selections }) => {
    const left = typed;
    if (!left || left.uri !== document.uri.toString()) return;
    if (selections.some(({ start, end }) => start.line <= left.line && left.line <= end.line)) return;
    typed = undefined;
    if (workspace.getConfiguration('forefoot', document).get('convertDictation', false))
      void convert(document, left.line);
  });
  const convert = async (document: TextDocument, line: number): Promise<void> => {
    const { uri, version } = document;
    const found = await ask('forefoot/convertDictation', { uri: uri.toString(), firstLine: line, lastLine: line });
    if (document.version !== version) return;
    const edit = new WorkspaceEdit();
    for (const { range, newText } of found ?? [])
      edit.replace(
        uri,
        new Range(range.start.line, range.start.character, range.end.line, range.end.character),
        newText,
      );
    if (edit.size > 0) await workspace.applyEdit(edit);
  };
  return [changed, moved];
}
