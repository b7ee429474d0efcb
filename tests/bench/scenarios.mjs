import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Editor, now } from './editor.mjs';
import { noteLines, rayLine } from './generator.mjs';
import { median, summary } from './statistics.mjs';
import { typing } from './typing.mjs';

const probe = fileURLToPath(new URL('heap-probe.cjs', import.meta.url));
const peak = fileURLToPath(new URL('peak-probe.cjs', import.meta.url));

/** Types in the first, the middle and the last visit of a note, by turns of fifty edits. */
async function type(editor, lines, visits, edits, seed) {
  const places = [0, visits >> 1, visits - 1].map((visit, index) => {
    const at = rayLine(visit);
    return { at, script: typing(lines[at], seed + index), took: [], busy: [] };
  });
  for (let done = 0; done < edits; done++) {
    const place = places[Math.floor(done / 50) % places.length];
    const edit = place.script.next().value;
    const before = editor.busy();
    place.took.push(await editor.change(place.at, edit.start, edit.end, edit.text));
    const after = editor.busy();
    if (before !== undefined && after !== undefined) place.busy.push(after - before);
    lines[place.at] = edit.line;
  }
  return { took: places.map(({ took }) => took), busy: places.flatMap(({ busy }) => busy) };
}

async function newlineAtTop(editor, times) {
  const took = [];
  for (let done = 0; done < times; done++) {
    took.push(await editor.change(0, 0, 0, '\n'));
    const range = { start: { line: 0, character: 0 }, end: { line: 1, character: 0 } };
    took.push(await editor.replace({ range, text: '' }));
  }
  return summary(took);
}

/** The `scales` line reaches every visit: what an edit costs that changes how all of them are read. */
async function headerEdit(editor, lines) {
  const at = lines.indexOf('scales drawer 0-4');
  const end = lines[at].length;
  const took = [];
  for (const digit of ['3', '4', '3', '4']) took.push(await editor.change(at, end - 1, end, digit));
  return { median: median(took) };
}

/** One note of a size: opening, typing, a newline at the top, memory. */
export async function noteScenario(server, { visits, edits, warmUp, header = false }) {
  const lines = noteLines(visits);
  const text = lines.join('\n');
  const editor = new Editor(server);
  await editor.initialize();
  const opened = await editor.open(text);
  const reports = editor.diagnostics.length;
  await type(editor, lines, visits, warmUp, 100);
  const before = editor.memory();
  const typed = await type(editor, lines, visits, edits, 200);
  const [first, middle, last] = typed.took;
  const after = editor.memory();
  const newline = await newlineAtTop(editor, 200);
  const everyVisit = header ? await headerEdit(editor, lines) : undefined;
  await editor.close();
  return {
    visits,
    bytes: Buffer.byteLength(text),
    opened,
    reports,
    edits: summary([...first, ...middle, ...last]),
    busiest: typed.busy.length > 0 ? Math.max(...typed.busy) : undefined,
    places: { first: summary(first), middle: summary(middle), last: summary(last) },
    memory: { before, after },
    newline,
    everyVisit,
  };
}

/** Starts of a fresh process, each until `initialize` is answered. */
export async function coldStarts(server, starts) {
  const took = [];
  for (let done = 0; done < starts; done++) {
    const editor = new Editor(server);
    took.push(await editor.initialize());
    await editor.close();
  }
  return summary(took);
}

/** What typing has really kept: the heap after a collection, in a process of its own, in MB. */
export async function heapGrowth(server, { edits, warmUp }) {
  const visits = 1_000;
  const lines = noteLines(visits);
  const editor = new Editor(server, { args: ['--expose-gc', '--require', probe] });
  await editor.initialize();
  await editor.open(lines.join('\n'));
  await type(editor, lines, visits, warmUp, 100);
  const before = await editor.heap();
  await type(editor, lines, visits, edits, 200);
  const after = await editor.heap();
  await editor.close();
  return { before, after };
}

/** `check` of one file, and of four: the difference is what a file costs once the process is warm. */
export function commandLine(cli, cache) {
  if (!existsSync(cli)) return undefined;
  const folder = join(cache, 'notes');
  mkdirSync(folder, { recursive: true });
  const files = Array.from({ length: 4 }, (_, index) => {
    const file = join(folder, `note-${index}.forefoot`);
    writeFileSync(file, `${noteLines(1_000, 7 + index).join('\n')}\n`);
    return file;
  });
  const check = (list) => {
    const start = now();
    try {
      execFileSync(process.execPath, [cli, 'check', '--today', '2026-01-01', ...list], {
        stdio: 'pipe',
        maxBuffer: 1e9,
      });
    } catch (error) {
      if (error.status !== 1) throw error;
    }
    return now() - start;
  };
  const one = [1, 2, 3].map(() => check(files.slice(0, 1)));
  const four = [1, 2, 3].map(() => check(files));
  const megabytes = files.slice(1).reduce((sum, file) => sum + statSync(file).size, 0) / 1e6;
  return { one: median(one), warm: megabytes / ((median(four) - median(one)) / 1_000) };
}

/** `check` of folders of notes of 10 visits: a small one and a large one, and the most memory that each took. */
export function folders(cli, cache, counts) {
  if (!existsSync(cli)) return undefined;
  return counts.map((notes) => {
    const folder = join(cache, `folder-${notes}`);
    mkdirSync(folder, { recursive: true });
    let bytes = 0;
    for (let index = 0; index < notes; index++) {
      const text = `${noteLines(10, 7 + index).join('\n')}\n`;
      bytes += Buffer.byteLength(text);
      writeFileSync(join(folder, `note-${index}.forefoot`), text);
    }
    const start = now();
    const { status, stderr } = spawnSync(
      process.execPath,
      ['--require', peak, cli, 'check', '--today', '2026-01-01', folder],
      { encoding: 'utf8', maxBuffer: 1e9 },
    );
    if (status !== 1 && status !== 0) throw new Error(`check of ${notes} notes ended with ${status}: ${stderr}`);
    const took = now() - start;
    rmSync(folder, { recursive: true });
    return { notes, bytes, took, resident: Number(/peak (\d+)/.exec(stderr)?.[1]) / 1024 };
  });
}
