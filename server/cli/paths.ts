import { type Dirent, lstatSync, readdirSync, statSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';

/** A file to read, standard input, or a path that could not be followed. */
export type Found = { readonly file: string } | { readonly standardInput: true } | { readonly problem: string };

const ENDING = '.forefoot';

/** Follows paths in their order, one file at a time: files, folders, patterns with `*`, `**`, `?`, and `-`. */
export function* findNotes(paths: readonly string[]): Generator<Found> {
  const seen = new Set<string>();
  for (const path of paths)
    for (const found of follow(path)) {
      const key = 'file' in found ? resolve(found.file) : path;
      if ('problem' in found || !seen.has(key)) yield found;
      seen.add(key);
    }
}

function* follow(path: string): Generator<Found> {
  if (path === '-') return yield { standardInput: true };
  const kind = kindOf(path);
  if (kind === 'file') return yield { file: path };
  if (kind === 'missing' && /[*?]/.test(path)) return yield* matches(path);
  if (kind === 'folder') return yield* orElse(notesUnder(path), `${path}: no ${ENDING} file in this folder`);
  const what = kind === 'missing' ? 'no such file or folder' : kind === 'other' ? 'neither a file nor a folder' : kind;
  yield { problem: `${path}: ${what}` };
}

type Kind = 'file' | 'folder' | 'missing' | 'other' | 'cannot be read (permission denied)';

function kindOf(path: string): Kind {
  try {
    const stat = statSync(path);
    return stat.isDirectory() ? 'folder' : stat.isFile() || stat.isFIFO() ? 'file' : 'other';
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    return code === 'EACCES' || code === 'EPERM' ? 'cannot be read (permission denied)' : 'missing';
  }
}

function* orElse(found: Iterable<Found>, problem: string): Generator<Found> {
  let any = false;
  for (const each of found) {
    any = true;
    yield each;
  }
  if (!any) yield { problem };
}

/** Every note below a folder, by name; hidden folders, dependencies and links to folders are left alone. */
function* notesUnder(folder: string, takes = (file: string): boolean => file.endsWith(ENDING)): Generator<Found> {
  const entries = entriesOf(folder);
  if (!entries) return yield { problem: `${folder}: cannot be read (permission denied)` };
  for (const entry of entries) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      if (!entry.name.startsWith('.') && entry.name !== 'node_modules') yield* notesUnder(path, takes);
    } else if (takes(path)) yield { file: path };
  }
}

function entriesOf(folder: string): Dirent[] | undefined {
  try {
    return readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch {
    return undefined;
  }
}

/** The files that a pattern names; one whose last part has no ending means notes. */
function* matches(pattern: string): Generator<Found> {
  const parts = pattern.split(/[/\\]/);
  const fixed = parts.slice(
    0,
    parts.findIndex((part) => /[*?]/.test(part)),
  );
  const base = fixed.join('/') || (pattern.startsWith('/') ? '/' : '.');
  const expression = expressionOf(parts.slice(fixed.length));
  const noteOnly = !basename(pattern).includes('.');
  const from = base === '.' ? 0 : join(base, 'x').length - 1;
  const takes = (file: string): boolean =>
    expression.test(file.slice(from).replaceAll('\\', '/')) && (!noteOnly || file.endsWith(ENDING));
  const found = isFolder(base) ? notesUnder(base, takes) : [];
  yield* orElse(found, `${pattern}: no file matches`);
}

const isFolder = (path: string): boolean => lstatSync(path, { throwIfNoEntry: false })?.isDirectory() === true;

/** `**` stands for any folders, `*` for anything in a name, `?` for one character. */
function expressionOf(parts: readonly string[]): RegExp {
  const source = parts.map((part, at) => {
    const last = at === parts.length - 1;
    if (part === '**') return last ? '.*' : '(?:[^/]+/)*';
    const name = part
      .replaceAll(/[.+^${}()|[\]\\]/g, '\\$&')
      .replaceAll(/\*+/g, '[^/]*')
      .replaceAll('?', '[^/]');
    return last ? name : `${name}/`;
  });
  return new RegExp(`^${source.join('')}$`, 'u');
}
