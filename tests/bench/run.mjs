// Measures the built server beside other language services: `npm run bench [-- --quick] [-- --strict]`.
import { copyFileSync, existsSync, mkdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { coreSpeed, serviceSpeed } from './core.mjs';
import { dictationCore, dictationScenario } from './dictation.mjs';
import { noteLines } from './generator.mjs';
import { measurePeers } from './peers.mjs';
import { machine, missed, rows, table } from './report.mjs';
import { scannerSpeed } from './scanner.mjs';
import { coldStarts, commandLine, folders, heapGrowth, noteScenario } from './scenarios.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = resolve(here, '..', '..');
const cache = join(here, '.cache');
const results = join(root, '.cache', 'results');
const VISITS = 1_000;

const quick = process.argv.includes('--quick');
const strict = process.argv.includes('--strict');
const edits = quick
  ? { small: 2_000, large: 600, warmUp: 1_000, starts: 5 }
  : { small: 20_000, large: 6_000, warmUp: 8_000, starts: 20 };

mkdirSync(cache, { recursive: true });
// Measured are copies, so that a build that runs meanwhile changes nothing.
const bundle = (name) => {
  const [built, copy] = [join(root, 'dist', name), join(cache, name.replace('.js', '.cjs'))];
  rmSync(copy, { force: true });
  if (existsSync(built)) copyFileSync(built, copy);
  return copy;
};
const [server, cli] = [bundle('server.js'), bundle('cli.js')];
if (!existsSync(server)) {
  console.error('bench: dist/server.js is not built; run npm run bench');
  process.exit(2);
}
mkdirSync(results, { recursive: true });

const { warmUp } = edits;
const ran = machine();
const measured = {
  small: await step('typing, 1,000 visits', () =>
    noteScenario(server, { visits: VISITS, edits: edits.small, warmUp, header: true }),
  ),
  large: await step('typing, 10,000 visits', () =>
    noteScenario(server, { visits: VISITS * 10, edits: edits.large, warmUp: 1_000 }),
  ),
  heap: await step('memory', async () => ({
    edits: edits.small,
    ...(await heapGrowth(server, { edits: edits.small, warmUp })),
  })),
  cold: await step('starts', () => coldStarts(server, edits.starts)),
  core: await step('reader and analysis', () => coreSpeed(root, cache)),
  bundle: statSync(server).size,
  command: await step('command line', () => commandLine(cli, cache)),
  folders: await step('folders', () => folders(cli, cache, quick ? [50, 500] : [200, 2_000])),
  dictation: await step('dictation', async () => ({
    typed: await dictationScenario(server, quick ? 400 : 2_000),
    ...(await dictationCore(root, cache)),
  })),
  service: await step('our service', () => serviceSpeed(root, cache, VISITS)),
  peers: await step('peers', () => measurePeers(cache, VISITS)),
  scanner: scannerSpeed(noteLines(VISITS).join('\n')),
};
const list = rows(measured);
const misses = missed(list);

console.log(
  `\nForefoot Notes, measured with a scripted editor over standard input and output, each edit sent when the`,
);
console.log(`diagnostics of the one before have arrived. ${quick ? 'QUICK RUN. ' : ''}${ran}\n`);
console.log(table(list));
console.log(`\n${misses.length === 0 ? 'Every goal is met.' : `${misses.length} goals are missed.`}`);
const at = join(results, 'bench.json');
writeFileSync(at, `${JSON.stringify({ machine: ran, quick, rows: list, measured }, null, 2)}\n`);
console.log('All figures: .cache/results/bench.json');
process.exitCode = strict && misses.length > 0 ? 1 : 0;

/** Says on standard error what is being measured, since some of it takes a while. */
async function step(name, work) {
  process.stderr.write(`bench: ${name} ... `);
  const start = performance.now();
  const value = await work();
  process.stderr.write(`${((performance.now() - start) / 1_000).toFixed(1)} s\n`);
  return value;
}
