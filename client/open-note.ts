import { commands, Range, type TextDocument, Uri, ViewColumn, type WebviewPanel, window, workspace } from 'vscode';
import { latest } from './latest.ts';
import { type PageState, readFromPage, type ToPage } from './note-messages.ts';
import { newNonce, notePage } from './note-page.ts';
import type { Ask, ClinicNote } from './protocol.ts';

export const viewType = 'forefoot.note';

export interface Surroundings {
  readonly ask: Ask;
  /** The folder with the page's style and script. */
  readonly media: Uri;
}

/** One open panel, which shows the clinic note of one visit. */
export interface OpenNote {
  readonly panel: WebviewPanel;
  place(): PageState;
  /** Shows the visit at another place; within the shown visit only the marked runs change. */
  goTo(place: Omit<PageState, 'computed'>): void;
  edited(document: TextDocument): void;
  refresh(): void;
  say(text: string): void;
}

const openDocument = (uri: string): TextDocument | undefined =>
  workspace.textDocuments.find((document) => document.uri.toString() === uri);

const fileName = (uri: string): string => decodeURIComponent(uri.slice(uri.lastIndexOf('/') + 1));

function setPage({ webview }: WebviewPanel, media: Uri): void {
  const file = (name: string): string => webview.asWebviewUri(Uri.joinPath(media, name)).toString();
  const source = webview.cspSource;
  webview.html = notePage({ source, style: file('note.css'), script: file('note.js'), nonce: newNonce() });
}

async function selectStatement(uri: string, { line, start, end }: { line: number; start: number; end: number }) {
  const beside = window.visibleTextEditors.find(({ document }) => document.uri.toString() === uri);
  const document = openDocument(uri) ?? (await workspace.openTextDocument(Uri.parse(uri)));
  await window.showTextDocument(document, {
    viewColumn: beside?.viewColumn ?? ViewColumn.One,
    selection: new Range(line, start, line, end),
  });
}

/** An edit may reach the server after the question that it led to; then the question is put again. */
async function askForNote(ask: Ask, place: PageState): Promise<ClinicNote | null | undefined> {
  let note: ClinicNote | null | undefined;
  for (let tries = 0; tries < 3; tries += 1) {
    note = await ask('forefoot/clinicNote', place);
    const newest = openDocument(place.uri)?.version;
    if (!note || newest === undefined || note.version >= newest) break;
  }
  return note;
}

export function openNote(panel: WebviewPanel, from: PageState, { ask, media }: Surroundings): OpenNote {
  let place = from;
  let shown: { uri: string; note: ClinicNote } | undefined;
  const post = (message: ToPage): void => void panel.webview.postMessage(message);
  const say = (text: string): void => post({ is: 'status', text });

  const refresh = latest(async () => {
    const asked = place;
    const note = await askForNote(ask, asked);
    if (note === undefined) return say('The server does not answer; what is shown may be out of date.');
    if (note === null) return say('No visit at the cursor: put it into a visit to see the clinic note.');
    shown = { uri: asked.uri, note };
    panel.title = `Clinic note: ${fileName(asked.uri)}`;
    post({ is: 'note', ...asked, html: note.html, version: note.version });
    post({ is: 'cursor', line: place.line });
  });

  const isShown = ({ uri, line }: Omit<PageState, 'computed'>): boolean =>
    shown?.uri === uri && line >= shown.note.visit.firstLine && line <= shown.note.visit.lastLine;

  panel.webview.onDidReceiveMessage((value) => {
    const message = readFromPage(value);
    if (message?.is === 'ready') refresh();
    if (message?.is === 'copy') void commands.executeCommand('forefoot.copyNote');
    if (message?.is === 'computed') {
      place = { ...place, computed: message.wanted };
      refresh();
    }
    // A place in an older text would select something else.
    if (message?.is === 'select' && message.version === (openDocument(place.uri)?.version ?? message.version))
      void selectStatement(place.uri, message);
  });
  setPage(panel, media);

  return {
    panel,
    place: () => place,
    goTo(to) {
      place = { ...to, computed: place.computed };
      if (isShown(to)) post({ is: 'cursor', line: to.line });
      else refresh();
    },
    edited(document) {
      if (document.uri.toString() === place.uri) refresh();
    },
    refresh,
    say,
  };
}
