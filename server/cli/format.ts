import { readFileSync, realpathSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { convertEdits } from '../workspace/convert/convert-edits.ts';
import { formattedText } from '../workspace/format-note.ts';
import { OpenNote } from '../workspace/note.ts';
import { workshop } from '../workspace/workshop.ts';
import { Refusal, type Run } from './command.ts';
import { NoteSettings } from './note-settings.ts';
import { eachNote } from './read-note.ts';

/** `forefoot format`: notes in their canonical form. What a note says stays the same, as does each of its line ends. */
export const format: Run = async (invocation, terminal) => {
  const { paths, today, dryRun, dictated } = invocation;
  const settings = new NoteSettings(invocation, terminal);
  const shop = workshop();
  let changed = 0;
  let seen = 0;
  const failed = await eachNote(paths, terminal, async ({ file, text }) => {
    const mark = text.startsWith('\ufeff') ? '\ufeff' : '';
    const body = text.slice(mark.length);
    const open = (lines: string) => new OpenNote(file, 0, lines, shop, today, settings.of(file));
    const typed = dictated ? converted(open(body), body) : body;
    const formatted = mark + formattedText(open(typed), typed);
    const piped = file === '<stdin>';
    seen++;
    if (formatted !== text) {
      if (dryRun) await terminal.write(`${file}\n`);
      else if (!piped) replaceFile(file, formatted);
      changed++;
    }
    if (piped && !dryRun) await terminal.write(formatted);
  });
  if (!paths.includes('-')) await terminal.write(`${summary(seen, changed, failed, dryRun === true)}\n`);
  if (failed + settings.broken > 0) return 2;
  return dryRun && changed > 0 ? 1 : 0;
};

/** The text with its dictated lines as typed lines. */
function converted(note: OpenNote, text: string): string {
  const starts = [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map(({ index, 0: end }) => index + end.length)];
  return convertEdits(note, 0, note.lineCount - 1).reduceRight((changed, { range, newText }) => {
    const at = ({ line, character }: { line: number; character: number }) => (starts[line] ?? 0) + character;
    return changed.slice(0, at(range.start)) + newText + changed.slice(at(range.end));
  }, text);
}

function summary(seen: number, changed: number, failed: number, dryRun: boolean): string {
  const verb = dryRun ? 'would change' : 'changed';
  const done = changed > 0 ? `${changed} ${verb}` : failed > 0 ? 'none changed' : 'all formatted already';
  return `${seen} note${seen === 1 ? '' : 's'}: ${done}${failed > 0 ? `, ${failed} could not be read or written` : ''}`;
}

const ANYBODY_WRITES = 0o222;
/** Writes beside the file and renames, so that nobody ever finds half a note. The encoding stays, and a link stays a link. */
function replaceFile(file: string, text: string): void {
  const target = realpathSync(file);
  const { mode } = statSync(target);
  if ((mode & ANYBODY_WRITES) === 0) throw new Refusal(`${file}: cannot be written (read-only); it is left as it was`);
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.tmp`);
  try {
    writeFileSync(beside, encodedAs(readFileSync(target), text), { mode, flag: 'wx' });
    renameSync(beside, target);
  } catch (error) {
    rmSync(beside, { force: true });
    const { code } = error as NodeJS.ErrnoException;
    throw new Refusal(`${file}: cannot be written${code ? ` (${code})` : ''}; it is left as it was`);
  }
}

/** UTF-16 where the old bytes say so by their byte order mark, else UTF-8. */
function encodedAs(old: Buffer, text: string): Buffer {
  const little = old[0] === 0xff && old[1] === 0xfe;
  const big = old[0] === 0xfe && old[1] === 0xff;
  if (!little && !big) return Buffer.from(text, 'utf8');
  const bytes = Buffer.from(`\ufeff${text.replace(/^\ufeff/, '')}`, 'utf16le');
  return big ? bytes.swap16() : bytes;
}
