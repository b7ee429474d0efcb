import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Editor, now } from './editor.mjs';
import { random } from './generator.mjs';
import { summary } from './statistics.mjs';

const HEADER = ['forefoot 1', 'scales drawer 0-4', '', 'visit 2026-03-09 first right'];
/** What one ray sounds like, 28 words; eleven of them are a long dictation. */
const RAY =
  'ray swelling mild comma tender plantar comma drawer grade one no sorry grade two painful comma medial twelve degrees comma paper pulls out comma p i p flexible full stop';
const RAYS = ['second', 'third', 'fourth', 'fifth'];

/** A dictated line of about three hundred words. */
export const dictatedLine = (rays = 11) =>
  Array.from({ length: rays }, (_, index) => `${RAYS[index % RAYS.length]} ${RAY}`).join(' ');

/** Words typed, letter by letter, at the end of a dictated line of about three hundred words. */
export async function dictationScenario(server, edits) {
  const editor = new Editor(server);
  await editor.initialize();
  const line = dictatedLine();
  await editor.open([...HEADER, line].join('\n'));
  const at = HEADER.length;
  const took = [];
  let length = line.length;
  const more = ` ${dictatedLine(1)}`;
  for (let done = 0; done < edits; done++) {
    const letter = done % (2 * more.length);
    if (letter < more.length) took.push(await editor.change(at, length, length++, more[letter]));
    else took.push(await editor.change(at, length - 1, length--, ''));
  }
  await editor.close();
  return { words: line.split(' ').length, edits: summary(took.slice(edits >> 2)) };
}

const SOURCE = [
  "export { alike } from './server/workspace/suggest/sound-index.ts';",
  "export { convertLine } from './server/workspace/convert/convert-line.ts';",
  "export { readLine } from './grammar/read-line.ts';",
  "export { readHeaderFacts, readVisitFacts } from './server/clinical/read-facts.ts';",
];

/** Seconds for the words alike of a hundred thousand unknown words, and milliseconds to convert the long line. */
export async function dictationCore(root, cache, words = 100_000) {
  const { build } = createRequire(join(root, 'package.json'))('esbuild');
  const outfile = join(cache, 'dictation-core.cjs');
  await build({
    stdin: { contents: SOURCE.join('\n'), resolveDir: root, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    minify: true,
    outfile,
  });
  const { alike, convertLine, readLine, readHeaderFacts, readVisitFacts } = createRequire(import.meta.url)(outfile);
  const next = random(11);
  const unknown = Array.from({ length: words }, () =>
    Array.from({ length: 3 + Math.floor(next() * 9) }, () => String.fromCharCode(97 + Math.floor(next() * 26))).join(
      '',
    ),
  );
  const first = now();
  alike('planter');
  const start = now();
  for (const word of unknown) alike(word);
  const suggested = now() - start;
  const lines = [readLine(HEADER[3]), readLine(dictatedLine())];
  const header = readHeaderFacts([]);
  const took = Array.from({ length: 12 }, () => {
    const began = now();
    convertLine({ lines, at: 1, read: (all) => readVisitFacts(all, header) });
    return now() - began;
  });
  return { words, index: start - first, suggested, converted: summary(took.slice(4)) };
}
