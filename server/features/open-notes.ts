import { type Position, splitLines } from '../workspace/blocks.ts';
import { type Change, OpenNote } from '../workspace/note.ts';
import { type Settings, systemDay } from '../workspace/settings.ts';
import { foldersUp, NOTHING_SET, type ReadText, settingsIn } from '../workspace/settings-file.ts';
import { workshop } from '../workspace/workshop.ts';
import type { Publisher } from './publisher.ts';

/** The notes that an editor holds open, each followed by its diagnostics. */
export class OpenNotes {
  private readonly notes = new Map<string, OpenNote>();
  private readonly workshop = workshop();
  private readonly publisher: Publisher;
  private readonly now: () => Date;
  private readonly readText: ReadText | undefined;
  private settings: Settings = {};

  /** `readText` gives the text of a file by its URI; without it no settings file is read. */
  constructor(publisher: Publisher, now: () => Date, readText?: ReadText) {
    this.publisher = publisher;
    this.now = now;
    this.readText = readText;
  }

  get(uri: string): OpenNote | undefined {
    const note = this.notes.get(uri);
    if (note) {
      note.today = this.today();
      note.convertsDictation = this.settings.convertDictation === true;
    }
    return note;
  }
  open(uri: string, version: number, text: string): void {
    const note = new OpenNote(uri, version, text, this.workshop, this.today());
    this.takeSettings(note);
    this.notes.set(uri, note);
    this.publisher.changed(note, 0);
  }
  change(uri: string, version: number, changes: readonly Change[]): void {
    const note = this.get(uri);
    if (!note) return;
    note.change(changes, version);
    const { near, typed } = placeOf(changes);
    this.publisher.changed(note, near.line, typed ? near.line : undefined);
  }
  close(uri: string): void {
    const note = this.notes.get(uri);
    this.notes.delete(uri);
    if (note) this.publisher.closed(note);
  }
  configure(settings: Settings): void {
    this.settings = settings;
    for (const uri of this.notes.keys()) {
      const note = this.get(uri);
      if (note) this.publisher.changed(note, 0);
    }
  }

  /** Reads the settings files again, and publishes the notes for which something changed. */
  readSettingsAgain(): void {
    for (const note of this.notes.values()) if (this.takeSettings(note)) this.publisher.changed(note, 0);
  }

  /** True where the clinic's settings for the note are others than before. */
  private takeSettings(note: OpenNote): boolean {
    const folder = note.uri.slice(0, Math.max(0, note.uri.lastIndexOf('/')));
    const [top] = /^[a-z][\w+.-]*:\/\/[^/]*/i.exec(folder) ?? [];
    const loaded = this.readText ? settingsIn(foldersUp(folder, top), this.readText) : NOTHING_SET;
    const problems = loaded.problems.map(readable);
    const before = [note.settings, note.settingsProblems.join('\n')];
    note.settings = loaded.settings;
    note.settingsProblems = problems;
    return note.settings !== before[0] || problems.join('\n') !== before[1];
  }

  private today(): string {
    return this.settings.today ?? systemDay(this.now());
  }
}

/** A problem with the path of its file as a person would write it. */
function readable(problem: string): string {
  const [, file = '', rest = ''] = /^file:\/\/(\S*?\.forefoot\.json)(.*)$/s.exec(problem) ?? [];
  if (file === '') return problem;
  try {
    return decodeURIComponent(file) + rest;
  } catch {
    return file + rest;
  }
}

/** Where the last change ended, and whether it looks like typing rather than pasting. */
function placeOf(changes: readonly Change[]): { near: Position; typed: boolean } {
  const last = changes.at(-1);
  if (!last?.range) return { near: { line: 0, character: 0 }, typed: false };
  const { start, end } = last.range;
  const added = splitLines(last.text).length - 1;
  return { near: { line: start.line + added, character: 0 }, typed: added + end.line - start.line <= 1 };
}
