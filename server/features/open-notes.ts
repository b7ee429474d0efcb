import { type Position, splitLines } from '../workspace/blocks.ts';
import { type Change, OpenNote } from '../workspace/note.ts';
import { type Settings, systemDay } from '../workspace/settings.ts';
import { workshop } from '../workspace/workshop.ts';
import type { Publisher } from './publisher.ts';

/** The notes that an editor holds open, each followed by its diagnostics. */
export class OpenNotes {
  private readonly notes = new Map<string, OpenNote>();
  private readonly workshop = workshop();
  private readonly publisher: Publisher;
  private readonly now: () => Date;
  private settings: Settings = {};

  constructor(publisher: Publisher, now: () => Date) {
    this.publisher = publisher;
    this.now = now;
  }

  get(uri: string): OpenNote | undefined {
    const note = this.notes.get(uri);
    if (note) note.today = this.today();
    return note;
  }
  open(uri: string, version: number, text: string): void {
    const note = new OpenNote(uri, version, text, this.workshop, this.today());
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

  private today(): string {
    return this.settings.today ?? systemDay(this.now());
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
