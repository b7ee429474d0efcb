import { Disposable, env, type TextDocument, type TextEditor, Uri, ViewColumn, window, workspace } from 'vscode';
import { type PageState, readPageState } from './note-messages.ts';
import { type OpenNote, openNote, type Surroundings, viewType } from './open-note.ts';

/** The clinic note beside the editor: at most one, which follows the note that is being edited. */
export interface NoteView extends Disposable {
  show(): void;
  copy(): Promise<void>;
  refresh(): void;
  isFocused(): boolean;
}

export const isNote = (document: TextDocument): boolean => document.languageId === 'forefoot';

/** The note being edited, or else one that can be seen. */
function noteEditor(): TextEditor | undefined {
  const { activeTextEditor, visibleTextEditors } = window;
  return [activeTextEditor, ...visibleTextEditors].find((editor) => editor !== undefined && isNote(editor.document));
}

const placeOf = ({ document, selection }: TextEditor): Omit<PageState, 'computed'> => ({
  uri: document.uri.toString(),
  line: selection.active.line,
});

export function noteView(surroundings: Surroundings): NoteView {
  const { ask, media } = surroundings;
  const options = { enableScripts: true, localResourceRoots: [media] };
  let open: OpenNote | undefined;

  const adopt = (panel: Parameters<typeof openNote>[0], state: PageState): void => {
    open?.panel.dispose();
    panel.webview.options = options;
    const opened = openNote(panel, state, surroundings);
    open = opened;
    panel.onDidDispose(() => {
      if (open === opened) open = undefined;
    });
  };
  const follow = (editor: TextEditor | undefined): void => {
    if (editor !== undefined && isNote(editor.document)) open?.goTo(placeOf(editor));
  };

  const show = (): void => {
    const editor = noteEditor();
    if (open !== undefined) {
      follow(editor);
      open.panel.reveal(undefined, true);
    } else if (editor !== undefined) {
      const beside = { viewColumn: ViewColumn.Beside, preserveFocus: true };
      adopt(window.createWebviewPanel(viewType, 'Clinic note', beside, options), {
        ...placeOf(editor),
        computed: false,
      });
    } else void window.showInformationMessage('Open a .forefoot file to see its clinic note.');
  };

  const copy = async (): Promise<void> => {
    const editor = noteEditor();
    const place = open?.panel.active === true || editor === undefined ? open?.place() : placeOf(editor);
    const note = place && (await ask('forefoot/clinicNote', { ...place, computed: open?.place().computed ?? false }));
    if (!note) return void window.showWarningMessage('There is no visit at the cursor to copy a clinic note of.');
    await env.clipboard.writeText(note.text);
    const said = `Copied the clinic note${note.visit.date ? ` of ${note.visit.date}` : ''}`;
    window.setStatusBarMessage(said, 4_000);
    open?.say(`${said}, ${open.place().computed ? 'with what is computed' : 'without what is computed'}.`);
  };

  const listening = Disposable.from(
    window.onDidChangeActiveTextEditor(follow),
    window.onDidChangeTextEditorSelection(
      ({ textEditor }) => textEditor === window.activeTextEditor && follow(textEditor),
    ),
    workspace.onDidChangeTextDocument(({ document }) => open?.edited(document)),
    window.registerWebviewPanelSerializer(viewType, {
      async deserializeWebviewPanel(panel, kept) {
        const state = readPageState(kept);
        if (state === undefined) return panel.dispose();
        await Promise.resolve(workspace.openTextDocument(Uri.parse(state.uri))).catch(() => undefined);
        adopt(panel, state);
      },
    }),
  );
  return {
    show,
    copy,
    refresh: () => open?.refresh(),
    isFocused: () => open?.panel.active === true,
    dispose() {
      listening.dispose();
      open?.panel.dispose();
    },
  };
}
