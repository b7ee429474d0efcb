import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../server/cli/commands.ts';
import { cli, folderWith, forefoot, note } from './run.ts';

const names = COMMANDS.map(({ name }) => name);

test('--version prints the version of the package', () => {
  const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
  expect(forefoot(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
});

test.each(['--help', '-h', 'help'])('%s lists every command', (option) => {
  const { code, out, err } = forefoot([option]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  for (const name of names) expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
});

test.each(names)('help %s explains its options, and --help does the same', (name) => {
  const { code, out } = forefoot(['help', name]);
  expect(code).toBe(0);
  expect(out).toContain(`Usage: forefoot ${name} `);
  const options = COMMANDS.find((each) => each.name === name)?.options ?? [];
  for (const option of options) expect(out).toContain(`  --${option}`);
  expect(forefoot([name, '--help']).out).toBe(out);
});

test('no line of help is wider than 120 columns', () => {
  const lines = [['--help'], ...names.map((name) => ['help', name])].flatMap((args) => forefoot(args).out.split('\n'));
  expect(lines.filter(({ length }) => length > 120)).toEqual([]);
});

describe('a slip of the hand: one line on standard error, exit 2', () => {
  test.each<[string[], string]>([
    [[], 'a command is missing; see forefoot --help'],
    [['chek'], 'unknown command "chek"; see forefoot --help'],
    [['--chek'], 'unknown option "--chek"; see forefoot --help'],
    [['help', 'chek'], 'unknown command "chek"; see forefoot --help'],
    [['check'], 'check needs a note, a folder or a pattern; see forefoot help check'],
    [['write'], 'write takes one note; see forefoot help write'],
    [['write', 'a', 'b'], 'write takes one note; see forefoot help write'],
    [['serve', 'a', '--stdio'], 'serve takes no path; see forefoot help serve'],
    [['serve'], 'serve needs --stdio; see forefoot help serve'],
    [['check', 'samples', '--formt', 'json'], "unknown option '--formt'; see forefoot help check"],
    [['write', 'samples', '--format', 'json'], "unknown option '--format'; see forefoot help write"],
    [['check', 'samples', '--format', 'yaml'], '--format is text or json, not "yaml"'],
    [['check', 'samples', '--today', '1.5.2026'], '--today is a day such as 2026-05-04, not "1.5.2026"'],
    [['stage', 'samples', '--today', '2026-02-30'], '--today is a day such as 2026-05-04, not "2026-02-30"'],
    [['write', 'a', '--visit', 'monday'], '--visit is a day such as 2026-05-04, not "monday"'],
  ])('%j', (args, line) => {
    expect(forefoot(args)).toEqual({ code: 2, out: '', err: `forefoot: ${line}\n` });
  });

  test('an option without its value', () => {
    const { code, out, err } = forefoot(['check', 'samples', '--today']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^forefoot: .*--today.*\n$/);
  });
});

test('a reader that leaves early is no fault', async () => {
  const many = Object.fromEntries(
    Array.from({ length: 40 }, (_, i) => [`${i}.forefoot`, note('2nd drawer 9\n'.repeat(80))]),
  );
  const child = spawn(process.execPath, [cli, 'check', '.'], { cwd: folderWith(many) });
  let err = '';
  child.stderr.on('data', (part) => {
    err += part;
  });
  child.stdout.once('data', () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.once('exit', resolve));
  expect({ code, err }).toEqual({ code: 0, err: '' });
});

test('serve answers an editor and leaves when it is told to', async () => {
  const child = spawn(process.execPath, [cli, 'serve', '--stdio']);
  const send = (message: object): void => {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message });
    child.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  let out = '';
  const answered = new Promise<void>((resolve) =>
    child.stdout.on('data', (part) => {
      out += part;
      if (out.includes('"id":1')) resolve();
    }),
  );
  const left = new Promise((resolve) => child.once('exit', resolve));
  send({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
  await answered;
  expect(out).toContain('"name":"forefoot"');
  send({ id: 2, method: 'shutdown' });
  send({ method: 'exit' });
  expect(await left).toBe(0);
});
