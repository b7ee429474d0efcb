import { createRequire } from 'node:module';
import { join } from 'node:path';
import { now } from './editor.mjs';
import { HEADER_LINES, noteLines, VISIT_LINES } from './generator.mjs';
import { median, summary } from './statistics.mjs';

/** Bundles the reader and the analysis alone, as the product does, and loads them into this process. */
export async function loadCore(root, cache) {
  const { build } = createRequire(join(root, 'package.json'))('esbuild');
  const outfile = join(cache, 'core.cjs');
  await build({
    stdin: {
      contents:
        "export { readLine } from './grammar/read-line.ts';\n" +
        "export { analyseHeader, analyseVisit } from './server/clinical/analyse.ts';\n" +
        "export { NO_EPISODE } from './server/clinical/episode.ts';\n",
      resolveDir: root,
      loader: 'ts',
    },
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    logLevel: 'error',
  });
  return createRequire(import.meta.url)(outfile);
}

/** What one line costs to read and one visit to analyse, in µs, without a server, without a cache, once compiled. */
export async function coreSpeed(root, cache) {
  const { readLine, analyseHeader, analyseVisit, NO_EPISODE } = await loadCore(root, cache);
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
  for (let pass = 0; pass < 4; pass++) {
    took = [];
    let before = NO_EPISODE;
    for (let first = HEADER_LINES; first < syntax.length; first += VISIT_LINES) {
      const visit = syntax.slice(first, first + VISIT_LINES);
      const start = now();
      before = analyseVisit(visit, before, { today: '2026-01-01', header }).after;
      took.push((now() - start) * 1_000);
    }
  }
  return { line: median(passes.slice(2)), visit: summary(took) };
}
