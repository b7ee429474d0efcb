import { readFileSync } from 'node:fs';
import { Refusal } from './command.ts';
import { decode } from './decode.ts';
import { type Found, findNotes } from './paths.ts';
import type { Terminal } from './terminal.ts';

export interface ReadNote {
  /** The path as it was given or found; `<stdin>` for standard input. */
  readonly file: string;
  readonly text: string;
}

/**
 * Reads the notes that the paths name, one at a time. What cannot be read is complained of, and the rest goes on.
 * @returns how many could not be read
 */
export async function eachNote(
  paths: readonly string[],
  terminal: Terminal,
  take: (note: ReadNote) => Promise<void>,
): Promise<number> {
  let failed = 0;
  let done = 0;
  for (const found of findNotes(paths)) {
    const read = await readFound(found, terminal);
    terminal.progress(done++);
    const problem = 'problem' in read ? read.problem : await attempt(read, take);
    if (problem === undefined) continue;
    failed++;
    terminal.complain(problem);
  }
  return failed;
}

/** A fault of ours in one note must not keep the others from being read. */
async function attempt(note: ReadNote, take: (note: ReadNote) => Promise<void>): Promise<string | undefined> {
  try {
    await take(note);
    return undefined;
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    return `${note.file}: internal fault: ${error instanceof Error ? error.message : String(error)}`;
  }
}

async function readFound(found: Found, terminal: Terminal): Promise<ReadNote | { problem: string }> {
  if ('problem' in found) return found;
  const file = 'file' in found ? found.file : '<stdin>';
  try {
    const decoded = decode('file' in found ? readFileSync(file) : await terminal.standardInput());
    return 'text' in decoded ? { file, text: decoded.text } : { problem: `${file}: ${decoded.problem}` };
  } catch (error) {
    return { problem: `${file}: ${REASONS[(error as NodeJS.ErrnoException).code ?? ''] ?? 'cannot be read'}` };
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'cannot be read (permission denied)',
  EPERM: 'cannot be read (permission denied)',
  EISDIR: 'this is a folder',
};
