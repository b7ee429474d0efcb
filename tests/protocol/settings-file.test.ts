import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { folderWith } from '../cli/run.ts';
import { ServerProcess } from './server-process.ts';

test('the settings file is watched, read again on change, and reported once where it is broken', async () => {
  const server = new ServerProcess('--stdio');
  const registered: { method: string; registerOptions?: unknown }[] = [];
  let wake = (): void => undefined;
  const watching = new Promise<void>((resolve) => {
    wake = resolve;
  });
  server.connection.onRequest(
    'client/registerCapability',
    ({ registrations }: { registrations: typeof registered }) => {
      registered.push(...registrations);
      wake();
      return null;
    },
  );
  await server.initialize({ workspace: { didChangeWatchedFiles: { dynamicRegistration: true } } });
  await watching;
  expect(registered).toMatchObject([
    {
      method: 'workspace/didChangeWatchedFiles',
      registerOptions: { watchers: [{ globPattern: '**/.forefoot.json' }] },
    },
  ]);
  const folder = folderWith({ '.forefoot.json': '{ "severity": { "unknown-word": "off" } }' });
  const file = join(folder, '.forefoot.json');
  const uri = pathToFileURL(join(folder, 'note.forefoot')).href;
  const codes = ({ diagnostics }: { diagnostics: readonly { code?: unknown }[] }) =>
    diagnostics.map(({ code }) => code);
  const after = async (change: () => void, method: string, params: object) => {
    change();
    server.published.length = 0;
    server.notify(method, params);
    return codes(await server.diagnosticsOf(uri, 1));
  };
  const watched = ['workspace/didChangeWatchedFiles', { changes: [] }] as const;
  expect(codes(await server.open(uri, 'visit 2026-03-09 first right\n2nd blorp\n'))).not.toContain('unknown-word');
  const broken = await after(() => writeFileSync(file, '{ "severity": 4 }'), ...watched);
  expect(broken.filter((code) => code === 'settings-not-used')).toHaveLength(1);
  expect(broken).toContain('unknown-word');
  const mended = await after(
    () => writeFileSync(file, '{ "severity": { "unknown-word": "off" } }'),
    'textDocument/didSave',
    { textDocument: { uri } },
  );
  expect(mended).not.toContain('settings-not-used');
  expect(mended).not.toContain('unknown-word');
  expect(await after(() => rmSync(file), ...watched)).toContain('unknown-word');
  expect(server.logged).toEqual([]);
  expect(await server.stop()).toBe(0);
});

test('the nearest file above the note holds, above the folder of the workspace too, as on the command line', async () => {
  const folder = folderWith({
    '.forefoot.json': '{ "severity": { "unknown-word": "off" } }',
    'a b/c/1.forefoot': '',
    'd e/.forefoot.json': '{ "scales": x }',
  });
  const server = new ServerProcess('--stdio');
  const at = (...path: string[]) => pathToFileURL(join(folder, ...path)).href;
  await server.initialize({}, {}, at('a b', 'c'));
  const reports = async (uri: string) =>
    (await server.open(uri, 'visit 2026-03-09 first right\n2nd blorp\n')).diagnostics;
  const codes = async (uri: string) => (await reports(uri)).map(({ code }) => code);
  expect(await codes(at('a b', 'c', '1.forefoot'))).not.toContain('unknown-word');
  const [broken] = await reports(at('d e', '2.forefoot'));
  expect(broken).toMatchObject({ code: 'settings-not-used' });
  expect(broken!.message).toContain('/d e/.forefoot.json: ');
  expect(await server.stop()).toBe(0);
});
