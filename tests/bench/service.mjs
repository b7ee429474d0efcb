// Our own service as the peers are measured, in a process of its own: `node service.mjs bundle visits`. Prints its figures as JSON.
import { createRequire } from 'node:module';
import { now } from './editor.mjs';
import { noteLines, rayLine } from './generator.mjs';
import { median } from './statistics.mjs';

const [bundle = '', count = '1000'] = process.argv.slice(2);
const { OpenNote, workshop, diagnostics } = createRequire(import.meta.url)(bundle);
const visits = Number(count);

/** Opened, read, analysed, all rules on, converted to diagnostics. */
function pass(text) {
  const start = now();
  const note = new OpenNote('file:///bench/note.forefoot', 1, text, workshop(), '2026-01-01');
  note.settle();
  const { length } = diagnostics(note, 0).diagnostics;
  return { took: now() - start, note, found: length };
}

const lines = noteLines(visits);
/** Every second line loses its meaning: its words are turned around. */
const broken = lines.map((line, index) =>
  index % 2 === 0 || /^(?:visit|forefoot|patient|scales|$)/.test(line) ? line : line.replace(/[a-z]{3,}/g, reversed),
);
function reversed(word) {
  return [...word].reverse().join('');
}

const text = lines.join('\n');
const first = pass(text);
const at = rayLine(visits >> 1);
const place = lines[at].search(/drawer \d/) + 'drawer '.length;
const edits = [];
for (const [index, digit] of ['0', 'x', '1', 'x', '3', 'x', '2'].entries()) {
  const range = { start: { line: at, character: place }, end: { line: at, character: place + 1 } };
  const start = now();
  first.note.change([{ range, text: digit }], index + 2);
  first.note.settle();
  diagnostics(first.note, at);
  edits.push(now() - start);
}
const warm = median([1, 2, 3, 4, 5].map(() => pass(text).took));
const half = median([1, 2, 3, 4, 5].map(() => pass(broken.join('\n')).took));
console.log(
  JSON.stringify({
    bytes: Buffer.byteLength(text),
    full: first.took,
    warm,
    half,
    edit: median(edits),
    reports: first.found,
    resident: process.memoryUsage().rss / 1024 / 1024,
  }),
);
