import { ErrorCodes, type MessageConnection, ResponseError } from 'vscode-jsonrpc';
import type {
  CodeActionParams,
  DidChangeConfigurationParams,
  DidChangeTextDocumentParams,
  DidOpenTextDocumentParams,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  InitializeParams,
  InitializeResult,
  SemanticTokensRangeParams,
  TextDocumentIdentifier,
  TextDocumentPositionParams,
} from 'vscode-languageserver-protocol';
import type { ClinicNoteParams } from './features/clinic-note.ts';
import type { ConvertDictationParams } from './features/dictation.ts';
import { OpenNotes } from './features/open-notes.ts';
import { ACTION_KINDS } from './features/protocol-numbers.ts';
import { Publisher } from './features/publisher.ts';
import { linked, rulesPageOf } from './features/rule-link.ts';
import { LEGEND, semanticTokens } from './features/semantic-tokens.ts';
import type { OpenNote } from './workspace/note.ts';
import { settingsOf } from './workspace/settings.ts';
import { SETTINGS_FILE } from './workspace/settings-file.ts';

declare const FOREFOOT_VERSION: string;

/** What the process or the worker gives: a clock, a way out, and a watch over its parent. */
export interface Host {
  readonly now: () => Date;
  readonly exit: (code: number) => void;
  readonly watchParent: (processId: number) => void;
  /** The text of a file by its URI, `undefined` where there is none; missing where no file can be read. */
  readonly readText?: (uri: string) => string | undefined;
  /** Where RULES.md stands beside the server, for a client that gives no `rulesPage` of its own. */
  readonly rulesPage?: string;
}

interface Row {
  readonly method: string;
  /** The answer for a note that is not open, and after an internal failure. */
  readonly empty: unknown;
  readonly answer: (note: OpenNote, params: unknown, rulesPage: string | undefined) => unknown;
}
const row = <P>(
  method: string,
  empty: unknown,
  answer: (note: OpenNote, params: P, rulesPage: string | undefined) => unknown,
): Row => ({
  method,
  empty,
  answer: (note, params, rulesPage) => answer(note, params as P, rulesPage),
});

const asked = () => import('./features/asked.ts');

/** Every request about a note, and the feature that answers it. */
const REQUESTS: readonly Row[] = [
  row<TextDocumentPositionParams>('textDocument/hover', null, async (note, { position }, rulesPage) =>
    (await asked()).hover(note, position, rulesPage),
  ),
  row<TextDocumentPositionParams>('textDocument/completion', [], async (note, { position }) =>
    (await asked()).completion(note, position),
  ),
  row('textDocument/documentSymbol', [], async (note) => (await asked()).documentSymbols(note)),
  row('textDocument/foldingRange', [], async (note) => (await asked()).foldingRanges(note)),
  row('textDocument/formatting', [], async (note) => (await asked()).formatting(note)),
  row<DocumentRangeFormattingParams>('textDocument/rangeFormatting', [], async (note, { range }) =>
    (await asked()).formatting(note, range),
  ),
  row<CodeActionParams>('textDocument/codeAction', [], async (note, { range, context: { diagnostics, only } }) => {
    const { codeActions, dictationActions } = await asked();
    return [...dictationActions(note, range, diagnostics, only), ...codeActions(note, range, diagnostics, only)];
  }),
  row<ConvertDictationParams>('forefoot/convertDictation', [], async (note, { firstLine, lastLine }) =>
    (await asked()).convertEdits(note, firstLine, lastLine),
  ),
  row<DocumentOnTypeFormattingParams>('textDocument/onTypeFormatting', [], async (note, { position: { line } }) =>
    (await asked()).onEnter(note, line - 1),
  ),
  row('textDocument/semanticTokens/full', { data: [] }, (note) => semanticTokens(note)),
  row<SemanticTokensRangeParams>('textDocument/semanticTokens/range', { data: [] }, (note, { range }) =>
    semanticTokens(note, range),
  ),
  // Prose is the largest part that nobody needs to start: it is a bundle of its own, loaded with the first note that is asked for.
  row<ClinicNoteParams>('forefoot/clinicNote', null, async (note, params) => {
    const { clinicNoteOf } = await import('./features/clinic-note.ts');
    return clinicNoteOf(note, params);
  }),
  row<{ line: number }>('forefoot/stageAtCursor', null, async (note, { line }) =>
    (await asked()).stageAtCursor(note, line),
  ),
];

const CAPABILITIES: InitializeResult['capabilities'] = {
  positionEncoding: 'utf-16',
  textDocumentSync: { openClose: true, change: 2, save: true },
  hoverProvider: true,
  // No trigger characters: a list that opens by itself after `drawer ` would let Enter pick a grade that nobody found.
  completionProvider: {},
  documentSymbolProvider: true,
  foldingRangeProvider: true,
  documentFormattingProvider: true,
  documentRangeFormattingProvider: true,
  // Enter formats the line that it finishes; a dictated one it converts, if the setting asks for that.
  documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
  codeActionProvider: { codeActionKinds: [...ACTION_KINDS] },
  semanticTokensProvider: { legend: LEGEND, full: true, range: true },
};

const SETTINGS_WATCH = {
  id: 'settings-file',
  method: 'workspace/didChangeWatchedFiles',
  registerOptions: { watchers: [{ globPattern: `**/${SETTINGS_FILE}` }] },
};

type Life = 'new' | 'running' | 'shut down';

/** Answers an editor over a connection until it says `exit`. */
export function serve(connection: MessageConnection, host: Host): void {
  const log = (method: string, error: unknown): void => {
    const message = `${method}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`;
    void connection.sendNotification('window/logMessage', { type: 1, message });
  };
  const guarded = (method: string, work: () => void): void => {
    try {
      work();
    } catch (error) {
      log(method, error);
    }
  };
  const publisher = new Publisher(
    (uri, version, diagnostics) =>
      void connection.sendNotification('textDocument/publishDiagnostics', {
        uri,
        version,
        diagnostics: linksCodes() && rulesPage ? linked(diagnostics, rulesPage) : diagnostics,
      }),
    (work) => guarded('diagnostics', work),
  );
  const notes = new OpenNotes(publisher, host.now, host.readText);
  let life: Life = 'new';
  let client: InitializeParams['capabilities'] = {};
  let rulesPage = host.rulesPage;
  const linksCodes = () => client.textDocument?.publishDiagnostics?.codeDescriptionSupport === true;

  const register = (registration: object): void => {
    connection
      .sendRequest('client/registerCapability', { registrations: [registration] })
      .catch((error) => log('client/registerCapability', error));
  };
  const pullSettings = async (): Promise<void> => {
    if (!client.workspace?.configuration) return;
    const [sent] = await connection.sendRequest<unknown[]>('workspace/configuration', {
      items: [{ section: 'forefoot' }],
    });
    notes.configure(settingsOf(sent));
  };

  connection.onRequest('initialize', (params: InitializeParams): InitializeResult => {
    life = 'running';
    client = params.capabilities ?? {};
    if (typeof params.processId === 'number') host.watchParent(params.processId);
    rulesPage = rulesPageOf(params.initializationOptions) ?? host.rulesPage;
    notes.configure(settingsOf(params.initializationOptions));
    return { capabilities: CAPABILITIES, serverInfo: { name: 'forefoot', version: FOREFOOT_VERSION } };
  });
  connection.onRequest('shutdown', () => {
    life = 'shut down';
    return null;
  });
  for (const { method, empty, answer } of REQUESTS)
    connection.onRequest(method, (params: unknown) => {
      if (life !== 'running') return notRunning(life);
      const failed = (error: unknown) => {
        log(method, error);
        return empty;
      };
      try {
        const note = notes.get(uriOf(params));
        const answered = note ? answer(note, params, rulesPage) : empty;
        return answered instanceof Promise ? answered.catch(failed) : answered;
      } catch (error) {
        return failed(error);
      }
    });

  const NOTIFICATIONS: Readonly<Record<string, (params: never) => void>> = {
    'textDocument/didOpen': ({ textDocument: { uri, version, text } }: DidOpenTextDocumentParams) =>
      notes.open(uri, version, text),
    'textDocument/didChange': ({ textDocument: { uri, version }, contentChanges }: DidChangeTextDocumentParams) =>
      notes.change(uri, version, contentChanges),
    'textDocument/didClose': ({ textDocument: { uri } }: { textDocument: TextDocumentIdentifier }) => notes.close(uri),
    'workspace/didChangeConfiguration': ({ settings }: DidChangeConfigurationParams) => {
      if (!client.workspace?.configuration) notes.configure(settingsOf(settings?.forefoot));
      void pullSettings().catch((error) => log('workspace/configuration', error));
    },
    'textDocument/didSave': () => notes.readSettingsAgain(),
    'workspace/didChangeWatchedFiles': () => notes.readSettingsAgain(),
    initialized: () => {
      if (client.workspace?.didChangeWatchedFiles?.dynamicRegistration) register(SETTINGS_WATCH);
      if (client.workspace?.didChangeConfiguration?.dynamicRegistration)
        register({ id: 'settings', method: 'workspace/didChangeConfiguration' });
      void pullSettings().catch((error) => log('workspace/configuration', error));
    },
    exit: () => host.exit(life === 'shut down' ? 0 : 1),
  };
  for (const [method, take] of Object.entries(NOTIFICATIONS))
    connection.onNotification(method, (params: unknown) => guarded(method, () => take(params as never)));

  connection.onError(([error]) => log('connection', error));
  connection.onClose(() => host.exit(life === 'shut down' ? 0 : 1));
  connection.listen();
}

const notRunning = (life: Life): ResponseError<void> =>
  life === 'new'
    ? new ResponseError(ErrorCodes.ServerNotInitialized, 'The server has not been initialized.')
    : new ResponseError(ErrorCodes.InvalidRequest, 'The server has been shut down.');

/** Requests of the protocol name a text document, our own a uri. */
function uriOf(params: unknown): string {
  const { textDocument, uri } = (params ?? {}) as { textDocument?: { uri?: unknown }; uri?: unknown };
  const found = textDocument?.uri ?? uri;
  return typeof found === 'string' ? found : '';
}
