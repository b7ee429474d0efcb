// Runs the suites in a real VS Code: `node tests/editors/run.mjs [suite ...]`.
// FOREFOOT_VSIX names another package to test than the one that is built here.
import assert from 'node:assert/strict';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { startBrowser } from './browser.mjs';
import { startHost } from './host.mjs';
import { cache, ensureInstalled, here } from './install.mjs';
import { endAll, output } from './processes.mjs';
import { openWorkbench } from './workbench.mjs';

const repository = resolve(here, '..', '..');
const screens = join(cache, 'screens');
const runLimit = 8 * 60_000;
const suiteLimit = 90_000;

const say = (line) => console.log(line);
const oneLine = (error) =>
  String(error?.message ?? error)
    .split('\n')
    .find((line) => line.trim() !== '') ?? 'failed';

function newest(path) {
  if (!existsSync(path)) return 0;
  const entry = statSync(path);
  if (!entry.isDirectory()) return path.endsWith('.vsix') ? 0 : entry.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => newest(join(path, name))));
}

/** The package under test, built anew when anything that it is made of is newer. */
async function currentPackage() {
  const given = process.env.FOREFOOT_VSIX;
  if (given && !existsSync(given)) throw new Error(`FOREFOOT_VSIX names ${given}, which is not there`);
  if (given) return resolve(given);
  const vsix = join(repository, 'dist', 'forefoot-notes.vsix');
  const sources = ['dist', 'grammar', 'server', 'client', 'package.json', 'esbuild.config.mjs'].map((name) =>
    newest(join(repository, name)),
  );
  if (!existsSync(vsix) || statSync(vsix).mtimeMs < Math.max(...sources)) {
    say('packaging the extension');
    await output('npm', ['run', 'package'], { cwd: repository, timeout: 180_000 });
  }
  return vsix;
}

async function loadSuite(file) {
  const { name, run, fixture = 'clinic', settings } = await import(new URL(`suites/${file}`, import.meta.url));
  if (typeof name !== 'string' || typeof run !== 'function') throw new Error(`${file} must export name and run`);
  return { name, run, fixture, settings };
}

/** The suites by name, or all of them. */
async function loadSuites(names) {
  const files = readdirSync(join(here, 'suites'))
    .filter((file) => file.endsWith('.mjs'))
    .sort();
  const unknown = names.filter((name) => !files.includes(`${name}.mjs`));
  if (unknown.length > 0) throw new Error(`no such suite: ${unknown.join(', ')}`);
  const chosen = names.length > 0 ? names.map((name) => `${name}.mjs`) : files;
  if (chosen.length === 0) throw new Error('there is no suite to run');
  return Promise.all(chosen.map(loadSuite));
}

function within(limit, promise) {
  let clock;
  const late = new Promise((_, reject) => {
    clock = setTimeout(() => reject(new Error(`not finished after ${limit / 1000} s`)), limit);
  });
  return Promise.race([promise, late]).finally(() => clearTimeout(clock));
}

/** Runs one suite on its own copy of its fixture, in a page of its own. Returns whether it passed. */
async function runSuite(suite, number, { host, browser, temporary }) {
  const began = Date.now();
  const workspace = join(temporary, `workspace-${number}`, suite.fixture);
  cpSync(join(here, 'fixtures', suite.fixture), workspace, { recursive: true });
  host.configure(suite.settings);
  const { page, outside } = await browser.openPage();
  const screenshot = (name) => page.screenshot({ path: join(screens, `${name}.png`) });
  const seconds = () => `${((Date.now() - began) / 1000).toFixed(1)} s`;
  const url = host.url(workspace);
  try {
    await within(
      suiteLimit,
      openWorkbench(page, url).then(() => suite.run({ page, workspace, screenshot, url })),
    );
    assert.deepEqual([...outside], [], `it asked for something outside the machine: ${[...outside].join(', ')}`);
    say(`ok    ${suite.name} (${seconds()})`);
    return true;
  } catch (error) {
    await screenshot(`failed-${number}`).catch(() => undefined);
    say(`FAIL  ${suite.name} (${seconds()}): ${oneLine(error)} [see .cache/screens/failed-${number}.png]`);
    return false;
  } finally {
    await page.context().close();
  }
}

async function runAll(temporary) {
  const suites = await loadSuites(process.argv.slice(2));
  const parts = await ensureInstalled(say);
  const vsix = await currentPackage();
  mkdirSync(screens, { recursive: true });
  const host = await startHost(parts, { vsix, folder: join(temporary, 'host'), logFile: join(cache, 'host.log') });
  try {
    const browser = await startBrowser(parts, join(temporary, 'browser'));
    try {
      let passed = 0;
      for (const [index, suite] of suites.entries())
        if (await runSuite(suite, index + 1, { host, browser, temporary })) passed += 1;
      return { passed, failed: suites.length - passed };
    } finally {
      await browser.stop();
    }
  } finally {
    await host.stop();
  }
}

const temporary = mkdtempSync(join(tmpdir(), 'forefoot-'));
process.on('exit', () => {
  endAll();
  rmSync(temporary, { recursive: true, force: true });
});
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(1));
setTimeout(() => {
  say(`real-editor tests: not finished after ${runLimit / 60_000} minutes`);
  process.exit(1);
}, runLimit).unref();

/** For the tally of all test runners. A run that can't finish is a failure, so that is what stands there until it has. */
function record(result) {
  const folder = join(repository, '.cache', 'results');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'editors.json'), JSON.stringify(result));
}

try {
  record({ passed: 0, failed: 1 });
  const result = await runAll(temporary);
  record(result);
  say(`${result.passed} passed, ${result.failed} failed`);
  process.exit(result.failed === 0 ? 0 : 1);
} catch (error) {
  say(`real-editor tests: could not run: ${oneLine(error)}`);
  process.exit(1);
}
