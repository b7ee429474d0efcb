import { execFile } from 'node:child_process';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { now } from './editor.mjs';
import { HEADER_LINES, noteLines, VISIT_LINES } from './generator.mjs';
import { median, summary } from './statistics.mjs';

const CORE = [
  "export { readLine } from './grammar/read-line.ts';",
  "export { analyseHeader, analyseVisit } from './server/clinical/analyse.ts';",
  "export { differentialOf } from './server/clinical/differential/differential.ts';",
  "export { NO_EPISODE } from './server/clinical/episode.ts';",
];
const SERVICE = [
  "export { OpenNote } from './server/workspace/note.ts';",
  "export { workshop } from './server/workspace/workshop.ts';",
  "export { diagnostics } from './server/features/diagnostics.ts';",
];

/** Bundles some modules as the product does; returns the bundle's path. */
async function bundled(root, outfile, exports) {
  const { build } = createRequire(join(root, 'package.json'))('esbuild');
  await build({
    stdin: { contents: exports.join('\n'), resolveDir: root, loader: 'ts' },
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    logLevel: 'error',
  });
  return outfile;
}

/** The reader and the analysis alone, loaded into this process. */
export const loadCore = async (root, cache) =>
  createRequire(import.meta.url)(await bundled(root, join(cache, 'core.cjs'), CORE));

/** Our own service in a process of its own, as the peers are measured: the first full pass, then one character at a time. */
export async function serviceSpeed(root, cache, visits) {
  const bundle = await bundled(root, join(cache, 'service.cjs'), SERVICE);
  const script = fileURLToPath(new URL('service.mjs', import.meta.url));
  const { stdout } = await promisify(execFile)(process.execPath, [script, bundle, String(visits)]);
  return JSON.parse(stdout);
}

/** What one line costs to read, one visit to analyse and its differential to weigh, in µs, without a server or a cache, once compiled. */
export async function coreSpeed(root, cache) {
  const { readLine, analyseHeader, analyseVisit, differentialOf, NO_EPISODE } = await loadCore(root, cache);
  const lines = noteLines(1_000);
  const passes = [];
  for (let pass = 0; pass < 6; pass++) {
    const start = now();
    for (const line of lines) readLine(line);
    passes.push(((now() - start) * 1_000) / lines.length);
  }
  const syntax = lines.map(readLine);
  const { header } = analyseHeader(syntax.slice(0, HEADER_LINES));
  let took = [];
  let weighed = [];
  for (let pass = 0; pass < 4; pass++) {
    took = [];
    weighed = [];
    let before = NO_EPISODE;
    for (let first = HEADER_LINES; first < syntax.length; first += VISIT_LINES) {
      const visit = syntax.slice(first, first + VISIT_LINES);
      const start = now();
      const analysis = analyseVisit(visit, before, { today: '2026-01-01', header });
      const analysed = now();
      differentialOf(analysis);
      weighed.push((now() - analysed) * 1_000);
      took.push((analysed - start) * 1_000);
      before = analysis.after;
    }
  }
  return { line: median(passes.slice(2)), visit: summary(took), differential: summary(weighed) };
}
