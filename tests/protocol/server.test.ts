import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CompletionItem, Hover, TextEdit } from 'vscode-languageserver-types';
import { applied, settled } from '../features/fixture.ts';
import { ServerProcess } from './server-process.ts';

const note = `forefoot 1
scales drawer 0-4

visit 2026-03-09 first right
2nd swelling moderate, drawer 2, straight, paper weak, pip flexible
plan     tape 2nd 8 weeks
`;
const at = (line: number, character: number) => ({ position: { line, character } });
const typed = (line: number, character: number, text: string) => ({
  range: { start: { line, character }, end: { line, character } },
  text,
});

describe('the built server', () => {
  let server: ServerProcess;
  let last = 0;
  const open = async (text: string): Promise<string> => {
    const uri = `file:///clinic/${++last}.forefoot`;
    await server.open(uri, text);
    return uri;
  };
  let answer: { capabilities: Record<string, unknown> };
  beforeAll(async () => {
    server = new ServerProcess('--stdio');
    answer = await server.initialize();
  });
  afterAll(async () => {
    expect(server.logged).toEqual([]);
    expect(await server.stop()).toBe(0);
  });

  test('says what it can do', () => {
    expect(answer).toMatchObject({
      serverInfo: { name: 'forefoot' },
      capabilities: {
        textDocumentSync: { openClose: true, change: 2 },
        hoverProvider: true,
        completionProvider: {},
        documentSymbolProvider: true,
        foldingRangeProvider: true,
        documentFormattingProvider: true,
        documentRangeFormattingProvider: true,
        documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
        codeActionProvider: {
          codeActionKinds: [
            'quickfix',
            'refactor.rewrite.dictation',
            'source.fixAll',
            'source.sortVisit',
            'source.convertDictation',
            'source.signVisit',
            'source.carryFindings',
          ],
        },
        semanticTokensProvider: { full: true, range: true },
      },
    });
  });

  test('publishes diagnostics with the version that they belong to', async () => {
    const uri = await open(note);
    const broken = await server.change(uri, 2, { text: note.replace('drawer 2', 'blorp 2') });
    expect(broken.diagnostics.map(({ code }) => code)).toContain('unknown-word');
    const mended = await server.change(uri, 3, {
      range: { start: { line: 4, character: 23 }, end: { line: 4, character: 28 } },
      text: 'drawer',
    });
    expect(mended.diagnostics.map(({ code }) => code)).not.toContain('unknown-word');
  });

  test('shows a half-typed word after a rest, under the same version', async () => {
    const uri = await open('visit 2026-03-09 first right\n2nd ');
    const isShown = ({ diagnostics }: { diagnostics: readonly { code?: unknown }[] }) =>
      diagnostics.some(({ code }) => code === 'unknown-word');
    expect(isShown(await server.change(uri, 2, typed(1, 4, 'blo')))).toBe(false);
    expect(isShown(await server.diagnosticsOf(uri, 2, isShown))).toBe(true);
  });

  test('applies several changes in order', async () => {
    const uri = await open('visit 2026-03-09 first right\n2nd \n');
    await server.change(uri, 2, typed(1, 4, 'drawr 2'), typed(1, 8, 'e'));
    const hover = await server.about<Hover>('textDocument/hover', uri, at(1, 6));
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('**drawer**') });
  });

  test('clears the diagnostics of a closed note', async () => {
    const uri = await open('visit 2026-03-09 first right\n2nd blorp');
    server.notify('textDocument/didClose', { textDocument: { uri } });
    await server.diagnosticsOf(uri, 1, ({ diagnostics }) => diagnostics.length === 0);
    expect(await server.about('textDocument/hover', uri, at(0, 1))).toBeNull();
  });

  test('hovers', async () => {
    const uri = await open(note);
    const hover = await server.about<Hover>('textDocument/hover', uri, at(4, 1));
    expect(hover.contents).toMatchObject({ kind: 'markdown', value: expect.stringContaining('2nd right') });
  });

  test('completes', async () => {
    const uri = await open(`${note}2nd dr`);
    const items = await server.about<CompletionItem[]>('textDocument/completion', uri, at(6, 6));
    const drawer = items.find(({ label }) => label === 'drawer')!;
    expect(applied(settled(`${note}2nd dr`), [drawer.textEdit as TextEdit])).toBe(`${note}2nd drawer`);
  });

  test('outlines and folds', async () => {
    const uri = await open(note);
    expect(await server.about('textDocument/documentSymbol', uri)).toMatchObject([
      { name: '2026-03-09 first right', children: [{ name: '2nd' }, { name: 'plan' }] },
    ]);
    expect(await server.about('textDocument/foldingRange', uri)).toEqual([{ startLine: 3, endLine: 5 }]);
  });

  test('formats the whole note and a range', async () => {
    const uri = await open(note);
    const options = { tabSize: 2, insertSpaces: true };
    const edits = await server.about<TextEdit[]>('textDocument/formatting', uri, { options });
    expect(applied(settled(note), edits)).toBe(note.replace('2nd swelling', '2nd      swelling'));
    const range = { start: { line: 5, character: 0 }, end: { line: 6, character: 0 } };
    expect(await server.about('textDocument/rangeFormatting', uri, { options, range })).toEqual([]);
  });

  test('offers fixes, and the computed stage to accept', async () => {
    const uri = await open(note.replace('pip flexible', 'pip flexible, blorp'));
    const range = { start: { line: 4, character: 0 }, end: { line: 4, character: 80 } };
    const actions = await server.about<{ title: string; kind: string }[]>('textDocument/codeAction', uri, {
      range,
      context: { diagnostics: [] },
    });
    const titles = actions.map(({ title }) => title).join('\n');
    expect(titles).toMatch(/Keep "blorp" as a quoted remark/);
    expect(titles).toMatch(/Accept stage \d, 2nd right/);
    expect(new Set(actions.map(({ kind }) => kind))).toEqual(new Set(['quickfix']));
  });

  test('converts dictated lines, and on Enter only where the setting asks for it', async () => {
    const dictated = note.replace(/^2nd swelling.*$/m, 'second ray drawer two comma tender stop third ray drawer one');
    const uri = await open(dictated);
    const typed = '2nd      drawer 2, tender\n3rd      drawer 1';
    const converted = [expect.objectContaining({ newText: typed })];
    expect(await server.request('forefoot/convertDictation', { uri, firstLine: 3, lastLine: 6 })).toEqual(converted);
    const onEnter = () =>
      server.about('textDocument/onTypeFormatting', uri, { ...at(5, 0), ch: '\n', options: { tabSize: 2 } });
    expect(await onEnter()).toEqual([]);
    server.notify('workspace/didChangeConfiguration', { settings: { forefoot: { convertDictation: true } } });
    expect(await onEnter()).toEqual(converted);
    server.notify('workspace/didChangeConfiguration', { settings: {} });
  });

  test('formats on Enter the line that it finishes, as the formatter would, and no other', async () => {
    const body = ['2nd  TTP , drawer 2', '3rd  TTP , drawer 1', '', ''].join('\n');
    const text = `visit 2026-03-09 first right\n${body}`;
    const uri = await open(text);
    const options = { tabSize: 2, insertSpaces: true };
    const edits = await server.about<TextEdit[]>('textDocument/onTypeFormatting', uri, {
      ...at(3, 0),
      ch: '\n',
      options,
    });
    const wanted = await server.about<TextEdit[]>('textDocument/formatting', uri, { options });
    expect(edits.length).toBeGreaterThan(0);
    expect(edits).toEqual(wanted.filter(({ range }) => range.start.line === 2));
    expect(applied(settled(text), edits).split('\n')[2]).toBe('3rd      tender, drawer 1');
    expect(await server.about('textDocument/onTypeFormatting', uri, { ...at(1, 0), ch: '\n', options })).toEqual([]);
  });

  test('colours the whole note and a range', async () => {
    const uri = await open(note);
    const full = await server.about<{ data: number[] }>('textDocument/semanticTokens/full', uri);
    const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 10 } };
    const part = await server.about<{ data: number[] }>('textDocument/semanticTokens/range', uri, { range });
    expect(part.data).toEqual([0, 0, 8, 0, 0, 0, 9, 1, 3, 0]);
    expect(full.data.slice(0, part.data.length)).toEqual(part.data);
  });

  test('writes the clinic note and tells the stage at the cursor', async () => {
    const uri = await open(note);
    expect(await server.request('forefoot/clinicNote', { uri, line: 4, computed: true })).toMatchObject({
      html: expect.stringContaining('data-line="4"'),
      text: expect.stringMatching(/drawer/i),
      visit: { date: '2026-03-09', firstLine: 3, lastLine: 6 },
      version: 1,
    });
    expect(await server.request('forefoot/stageAtCursor', { uri, line: 4 })).toMatchObject({
      text: expect.stringMatching(/^2nd right: stage \d/),
      rays: [{ side: 'right', ray: 2 }],
    });
  });

  test.each([
    ['textDocument/hover', at(0, 0), null],
    ['textDocument/completion', at(0, 0), []],
    ['textDocument/documentSymbol', {}, []],
    ['textDocument/foldingRange', {}, []],
    ['textDocument/formatting', {}, []],
    [
      'textDocument/codeAction',
      { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, context: {} },
      [],
    ],
    ['textDocument/semanticTokens/full', {}, { data: [] }],
  ])('answers %s for a document that is not open', async (method, params, empty) => {
    expect(await server.about(method, 'file:///nowhere.forefoot', params)).toEqual(empty);
  });

  test('answers the requests of its own for a document that is not open', async () => {
    const uri = 'file:///nowhere.forefoot';
    expect(await server.request('forefoot/clinicNote', { uri, line: 0, computed: false })).toBeNull();
    expect(await server.request('forefoot/stageAtCursor', { uri, line: 0 })).toBeNull();
    expect(await server.request('forefoot/convertDictation', { uri, firstLine: 0, lastLine: 0 })).toEqual([]);
  });

  test('refuses an unknown request and goes on', async () => {
    await expect(server.request('forefoot/nonsense', {})).rejects.toMatchObject({ code: -32601 });
    expect(await server.about('textDocument/foldingRange', await open(note))).toHaveLength(1);
  });
});

describe('the life of the server', () => {
  test('ends with 1 when it was not shut down', async () => {
    const server = new ServerProcess();
    await server.initialize();
    server.notify('exit');
    expect(await server.exited).toBe(1);
  });

  test('ends when the editor closes the stream', async () => {
    const server = new ServerProcess();
    await server.initialize();
    server.process.stdin!.end();
    expect(await server.exited).toBe(1);
  });

  test('refuses requests before the start and after the end', async () => {
    const server = new ServerProcess();
    await expect(server.about('textDocument/hover', 'file:///a', at(0, 0))).rejects.toMatchObject({ code: -32002 });
    await server.initialize();
    await server.request('shutdown');
    await expect(server.about('textDocument/hover', 'file:///a', at(0, 0))).rejects.toMatchObject({ code: -32600 });
    server.notify('exit');
    expect(await server.exited).toBe(0);
  });

  test('survives garbage: wrong parameters, wrong notifications, an unreadable message', async () => {
    const server = new ServerProcess();
    await server.initialize();
    const uri = 'file:///a.forefoot';
    await server.open(uri, note);
    server.notify('textDocument/didChange', { textDocument: { uri, version: 2 } });
    server.notify('textDocument/didOpen', {});
    server.notify('nonsense/notification', { a: 1 });
    expect(await server.about('textDocument/hover', uri, {})).toBeNull();
    expect(await server.request('forefoot/clinicNote', { uri: 7 })).toBeNull();
    server.process.stdin!.write('Content-Length: 9\r\n\r\n{"a": nul');
    expect(await server.about('textDocument/foldingRange', uri)).toHaveLength(1);
    expect(server.logged.length).toBeGreaterThanOrEqual(3);
    expect(await server.stop()).toBe(0);
  });

  test('asks an editor that can be asked for the day that counts as today', async () => {
    const server = new ServerProcess();
    let day = '2026-05-04';
    server.connection.onRequest('workspace/configuration', () => [{ today: day }]);
    const registered = new Promise((resolve) =>
      server.connection.onRequest('client/registerCapability', (params) => {
        resolve(params);
        return null;
      }),
    );
    await server.initialize(
      { workspace: { configuration: true, didChangeConfiguration: { dynamicRegistration: true } } },
      {},
    );
    expect(await registered).toMatchObject({ registrations: [{ method: 'workspace/didChangeConfiguration' }] });
    const uri = 'file:///a.forefoot';
    await server.open(uri, 'visit ');
    const today = async () =>
      (await server.about<CompletionItem[]>('textDocument/completion', uri, at(0, 6)))[0]!.label;
    expect(await today()).toBe('2026-05-04');
    const before = server.published.length;
    day = '2027-01-02';
    server.notify('workspace/didChangeConfiguration', { settings: null });
    await server.diagnosticsOf(uri, 1, (published) => server.published.indexOf(published) >= before);
    expect(await today()).toBe('2027-01-02');
    await server.stop();
  });
});

describe('the code of a diagnostic', () => {
  const capable = { textDocument: { publishDiagnostics: { codeDescriptionSupport: true } } };
  const page = 'file:///opt/forefoot/server/RULES.md';
  async function hrefs(capabilities: object, options: object): Promise<(string | undefined)[]> {
    const server = new ServerProcess('--stdio');
    await server.initialize(capabilities, options);
    const { diagnostics } = await server.open('file:///clinic/a.forefoot', note.replace('drawer 2', 'drawer 9'));
    await server.stop();
    return diagnostics
      .filter(({ code }) => code === 'value-out-of-range')
      .map(({ codeDescription }) => codeDescription?.href);
  }
  test('leads to its page where the client says that RULES.md stands', async () => {
    expect(await hrefs(capable, { rulesPage: page })).toEqual([`${page}#value-out-of-range`]);
  });
  test('leads to the file beside the server where the client does not say', async () => {
    const [href = ''] = await hrefs(capable, {});
    expect(href).toMatch(/^file:\/\/\/.*\/server\/RULES\.md#value-out-of-range$/);
    expect(readFileSync(fileURLToPath(href.split('#')[0] ?? ''), 'utf8')).toContain('\n## value-out-of-range\n');
  });
  test('leads nowhere where the client cannot follow', async () => {
    expect(await hrefs({}, { rulesPage: page })).toEqual([undefined]);
  });
});
