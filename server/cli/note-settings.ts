import { readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { ON_REQUEST } from '../clinical/completeness-on-request.ts';
import type { Settings } from '../clinical/settings.ts';
import { foldersUp, type LoadedSettings, loadSettings, settingsIn } from '../workspace/settings-file.ts';
import { type Invocation, Refusal } from './command.ts';
import { decode } from './decode.ts';
import type { Terminal } from './terminal.ts';

/** The settings of each note of a run: those of one file, or of the nearest `.forefoot.json` above the note. */
export class NoteSettings {
  /** Files that are broken; the built-in settings hold in their place. */
  broken = 0;
  private readonly byFolder = new Map<string, LoadedSettings>();
  private readonly told = new Set<string>();
  private readonly fixed: LoadedSettings | undefined;
  private readonly complete: Pick<Settings, 'complete'>;
  private readonly terminal: Terminal;

  constructor({ settings, complete }: Pick<Invocation, 'settings' | 'complete'>, terminal: Terminal) {
    this.terminal = terminal;
    this.complete = complete ? { complete: ON_REQUEST } : {};
    if (settings === undefined) return;
    this.fixed = loadSettings(settings, readText);
    if (!this.fixed) throw new Refusal(`${settings}: no such settings file`);
  }

  /** A note of standard input is taken to stand in the folder in which the command runs. */
  of(file: string): Settings {
    const loaded = this.fixed ?? this.near(dirname(resolve(file === '<stdin>' ? '-' : file)));
    this.tell(loaded);
    return { ...loaded.settings, ...this.complete };
  }

  private near(folder: string): LoadedSettings {
    const known = this.byFolder.get(folder) ?? settingsIn(foldersUp(folder), readText);
    this.byFolder.set(folder, known);
    return known;
  }

  private tell({ file, problems }: LoadedSettings): void {
    if (file === undefined || problems.length === 0 || this.told.has(file)) return;
    this.told.add(file);
    this.broken++;
    for (const problem of problems) this.terminal.complain(`${problem} (the built-in settings hold)`);
  }
}

function readText(file: string): string | undefined {
  try {
    const decoded = decode(readFileSync(file));
    if ('problem' in decoded) throw new Error(decoded.problem);
    return decoded.text;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR') return undefined;
    throw error;
  }
}
