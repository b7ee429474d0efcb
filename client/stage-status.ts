import { Disposable, StatusBarAlignment, window, workspace } from 'vscode';
import { latest } from './latest.ts';
import { isNote } from './note-view.ts';
import type { Ask } from './protocol.ts';
import { stageTooltip } from './stage-text.ts';

/** The stage of the visit at the cursor in the status bar; nothing outside notes. `isNoteFocused` keeps it as it is. */
export function stageStatus(ask: Ask, isNoteFocused: () => boolean): Disposable & { refresh(): void } {
  const item = window.createStatusBarItem('forefoot.stage', StatusBarAlignment.Left, 100);
  item.name = 'Forefoot Notes: stage at the cursor';
  item.command = 'forefoot.showNote';

  const refresh = latest(async () => {
    const editor = window.activeTextEditor;
    if (editor === undefined && isNoteFocused()) return;
    if (editor === undefined || !isNote(editor.document)) return item.hide();
    const at = { uri: editor.document.uri.toString(), line: editor.selection.active.line };
    const stage = await ask('forefoot/stageAtCursor', at);
    if (!stage || stage.text === '') return item.hide();
    item.text = stage.text;
    item.tooltip = stageTooltip(stage);
    item.accessibilityInformation = { label: stageTooltip(stage), role: 'button' };
    item.show();
  });

  const listening = Disposable.from(
    item,
    window.onDidChangeActiveTextEditor(refresh),
    window.onDidChangeTextEditorSelection(({ textEditor }) => textEditor === window.activeTextEditor && refresh()),
    workspace.onDidChangeTextDocument(({ document }) => document === window.activeTextEditor?.document && refresh()),
  );
  refresh();
  return { refresh, dispose: () => listening.dispose() };
}
