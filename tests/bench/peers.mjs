import { execFile } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
const here = fileURLToPath(new URL('.', import.meta.url));
const PEERS = { json: 'vscode-json-languageservice', yaml: 'yaml-language-server' };
const LIMIT = 120_000;

/** Installs the peers into the ignored cache, from the lock file, once a version. */
async function install(folder) {
  const wanted = readFileSync(join(here, 'package-lock.json'), 'utf8');
  const lock = join(folder, 'package-lock.json');
  const installed =
    existsSync(join(folder, 'node_modules')) && existsSync(lock) && readFileSync(lock, 'utf8') === wanted;
  if (installed) return;
  mkdirSync(folder, { recursive: true });
  for (const file of ['package.json', 'package-lock.json', '.npmrc'])
    copyFileSync(join(here, file), join(folder, file));
  await run('npm', ['ci', '--ignore-scripts'], { cwd: folder, timeout: LIMIT });
}

/** Each peer over the same visits, in a process of its own; one that can't be had or fails says so. */
export async function measurePeers(cache, visits) {
  const folder = join(cache, 'peers');
  const failed = (error) => ({ failed: String(error.message).split('\n')[0] });
  const names = Object.values(PEERS);
  try {
    await install(folder);
  } catch (error) {
    return Object.fromEntries(names.map((name) => [name, failed(error)]));
  }
  const results = {};
  for (const [kind, name] of Object.entries(PEERS)) {
    try {
      const { stdout } = await run(process.execPath, [join(here, 'peer.mjs'), kind, folder, String(visits)], {
        timeout: LIMIT,
      });
      results[name] = JSON.parse(stdout);
    } catch (error) {
      results[name] = failed(error);
    }
  }
  return results;
}
