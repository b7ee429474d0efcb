// Speaks the dictated passages with a synthesiser, hears them with an offline recogniser, and reads what it prints:
// `node tests/bench/round-trip.mjs [--all] [--verbose]`. Both are Debian packages (espeak-ng; pocketsphinx with pocketsphinx-en-us); where one
// is missing nothing is measured, and the run says so.
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { bigramModel, PRONOUNCED } from './round-trip-model.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = resolve(here, '..', '..');
const MODEL = '/usr/share/pocketsphinx/model/en-us';
const VISIT = 'visit 2026-03-09 first right';

const has = (command) => spawnSync('which', [command]).status === 0;
const missing = ['espeak-ng', 'pocketsphinx_continuous'].filter((command) => !has(command));
if (!existsSync(join(MODEL, 'cmudict-en-us.dict'))) missing.push('the model pocketsphinx-en-us');
if (missing.length > 0) {
  console.log(`round trip: NOT MEASURED, ${missing.join(' and ')} not found`);
  process.exit(0);
}

const temporary = mkdtempSync(join(tmpdir(), 'forefoot-speech-'));
process.on('exit', () => rmSync(temporary, { recursive: true, force: true }));

async function reading() {
  const { build } = createRequire(join(root, 'package.json'))('esbuild');
  const outfile = join(temporary, 'reading.cjs');
  const contents = [
    "export { analyseNote } from './server/clinical/analyse-note.ts';",
    "export { clearFactsOf } from './tests/raw/measure.ts';",
  ].join('\n');
  await build({
    stdin: { contents, resolveDir: root, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'cjs',
    outfile,
  });
  const { analyseNote, clearFactsOf } = createRequire(import.meta.url)(outfile);
  return (visit, text) =>
    clearFactsOf(analyseNote(`forefoot 1\nscales drawer 0-4\n\n${visit}\n${text}\n`, '2026-07-02')).map(({ fact }) =>
      fact.replace(/^(.* ray \d) joint: /, '$1: '),
    );
}

const folder = join(here, '..', 'dictation', 'passages');
const passages = readdirSync(folder)
  .sort()
  .map((file) => {
    const [said = '', rest = ''] = readFileSync(join(folder, file), 'utf8').split(/^---\n/m);
    const lines = rest.trim().split('\n');
    const visit = lines[0]?.startsWith('visit ') ? lines.shift() : VISIT;
    return {
      name: file.replace('.txt', ''),
      said: said.toLowerCase().replaceAll(/[,.]/g, '').trim(),
      visit,
      typed: lines.join('\n'),
    };
  })
  .filter(({ said }) => !/\d/.test(said));
// Recognising takes about as long as speaking does: by default, the first dozen.
const chosen = process.argv.includes('--all') ? passages : passages.slice(0, 12);

const dictionary = join(temporary, 'words.dict');
const known = readFileSync(join(MODEL, 'cmudict-en-us.dict'), 'utf8');
writeFileSync(dictionary, `${known.trimEnd()}\n${PRONOUNCED.join('\n')}\n`);
const model = join(temporary, 'words.lm');
writeFileSync(model, bigramModel(passages.map(({ said }) => said)));

function heard(said) {
  const [spoken, wave] = [join(temporary, 'spoken.wav'), join(temporary, 'heard.raw')];
  execFileSync('espeak-ng', ['-v', 'en-us', '-s', '125', '-g', '2', '-w', spoken, said]);
  writeFileSync(wave, resampled(readFileSync(spoken)));
  const args = [
    '-infile',
    wave,
    '-hmm',
    join(MODEL, 'en-us'),
    '-lm',
    model,
    '-dict',
    dictionary,
    '-logfn',
    '/dev/null',
  ];
  const run = spawnSync('pocketsphinx_continuous', args, { encoding: 'utf8', timeout: 120_000 });
  return run.status === 0 ? run.stdout.replaceAll(/\s+/g, ' ').trim() : undefined;
}
/** 16 kHz samples of 16 bits from a wave file of any rate, by straight lines between samples, with a second of silence around. */
function resampled(file) {
  const rate = file.readUInt32LE(24);
  const data = file.subarray(file.indexOf('data') + 8);
  const samples = new Int16Array(data.buffer.slice(data.byteOffset, data.byteOffset + (data.length & ~1)));
  const count = Math.floor((samples.length * 16_000) / rate);
  const out = new Int16Array(count + 16_000);
  for (let i = 0; i < count; i++) {
    const at = (i * rate) / 16_000;
    const [low, share] = [Math.floor(at), at % 1];
    out[i + 8_000] = Math.round((samples[low] ?? 0) * (1 - share) + (samples[low + 1] ?? 0) * share);
  }
  return Buffer.from(out.buffer);
}
/** Words that were put in, left out or taken for others. */
function wordErrors(said, printed) {
  const [a, b] = [said.split(' '), printed.split(' ')];
  let row = b.map((_, i) => i + 1);
  a.forEach((word, i) => {
    let [diagonal, left] = [i, i + 1];
    row = b.map((other, j) => {
      const cost = Math.min(row[j] + 1, left + 1, diagonal + (word === other ? 0 : 1));
      diagonal = row[j];
      left = cost;
      return cost;
    });
  });
  return row.at(-1) ?? a.length;
}

const factsOf = await reading();
const sum = { unheard: 0, words: 0, errors: 0, meant: 0, placed: 0, wrong: 0 };
for (const { name, said, visit, typed } of chosen) {
  const printed = heard(said);
  if (printed === undefined) {
    sum.unheard++;
    continue;
  }
  const meant = factsOf(visit, typed);
  const read = factsOf(visit, printed);
  const wrong = read.filter((fact) => !meant.includes(fact));
  sum.words += said.split(' ').length;
  sum.errors += wordErrors(said, printed);
  sum.meant += meant.length;
  sum.placed += meant.filter((fact) => read.includes(fact)).length;
  sum.wrong += wrong.length;
  if (process.argv.includes('--verbose'))
    console.log(`${name}\n  said    ${said}\n  printed ${printed}\n  ${wrong.join('\n  ')}`);
}
const percent = (part, whole) => `${((100 * part) / whole).toFixed(0)} %`;
console.log(
  `round trip: ${chosen.length - sum.unheard} of ${chosen.length} passages, ${sum.words} words, ${percent(sum.errors, sum.words)} of them misheard`,
);
console.log(
  `  facts placed ${sum.placed} of ${sum.meant}; facts that the recogniser's words say and the speaker's do not: ${sum.wrong}`,
);
