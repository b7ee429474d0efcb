import { mkdirSync, openSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { end, output, start } from './processes.mjs';

/** No dialog, no suggestion, no request to the outside, and nothing that differs from one run to the next. */
const quietSettings = {
  'chat.disableAIFeatures': true,
  'editor.experimental.editContext': false,
  'editor.minimap.enabled': false,
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'files.hotExit': 'off',
  'git.enabled': false,
  'remote.autoForwardPorts': false,
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'window.commandCenter': false,
  'workbench.enableExperiments': false,
  'workbench.layoutControl.enabled': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

const quietFlags = [
  '--auth',
  'none',
  '--disable-telemetry',
  '--disable-update-check',
  '--disable-workspace-trust',
  '--disable-getting-started-override',
  '--disable-proxy',
  '--ignore-last-opened',
  // A closed page is not waited for, so that no suite pays for the extension host of the one before.
  '--reconnection-grace-time',
  '1',
];

const stopGrace = 15_000;

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

async function untilHealthy(origin, child, logFile) {
  for (const until = Date.now() + 30_000; Date.now() < until; await pause(100)) {
    if (child.exitCode !== null) break;
    const answer = await fetch(`${origin}/healthz`).catch(() => undefined);
    if (answer?.ok) return;
  }
  throw new Error(`the editor host did not start; its log is ${logFile}`);
}

/** The host's log module complains first, so its last error is the one about the extension. */
async function installExtension(args, { node, env }) {
  try {
    await output(node, args, { env, timeout: 60_000 });
  } catch (error) {
    const errors = error.text?.match(/^Error: .*$/gm) ?? [error.message];
    throw new Error(`the host refuses the extension: ${errors.at(-1)}`);
  }
}

/**
 * Starts a VS Code workbench with one extension installed, its data in `folder`.
 * Returns `url(workspace)`, `configure(settings)` for settings on top of the quiet ones, and `stop()`.
 */
export async function startHost({ node, server }, { vsix, folder, logFile }) {
  const data = join(folder, 'user-data');
  const places = ['--user-data-dir', data, '--extensions-dir', join(folder, 'extensions')];
  const env = { ...process.env, EXTENSIONS_GALLERY: '{"serviceUrl":"","itemUrl":"","resourceUrlTemplate":""}' };
  for (const kind of ['CONFIG', 'DATA', 'CACHE']) env[`XDG_${kind}_HOME`] = join(folder, kind.toLowerCase());
  const configure = (settings = {}) =>
    writeFileSync(join(data, 'User', 'settings.json'), JSON.stringify({ ...quietSettings, ...settings }, null, 2));
  mkdirSync(join(data, 'User'), { recursive: true });
  configure();

  await installExtension([server, ...places, '--install-extension', vsix], { node, env });

  const port = await freePort();
  const origin = `http://127.0.0.1:${port}`;
  const log = openSync(logFile, 'w');
  const bind = ['--bind-addr', `127.0.0.1:${port}`];
  const child = start(node, [server, ...places, ...bind, ...quietFlags, folder], { env, stdio: ['ignore', log, log] });
  const stop = () => end(child, stopGrace);
  try {
    await untilHealthy(origin, child, logFile);
  } catch (error) {
    await stop();
    throw error;
  }
  return { url: (workspace) => `${origin}/?folder=${encodeURIComponent(workspace)}`, configure, stop };
}
