import type { Diagnostic } from 'vscode-languageserver-types';
import type { OpenNote } from '../workspace/note.ts';
import { diagnostics } from './diagnostics.ts';

/** Sends the diagnostics of one version of a note. */
export type Publish = (uri: string, version: number, diagnostics: Diagnostic[]) => void;

interface Sent {
  diagnostics: readonly Diagnostic[];
  timer?: ReturnType<typeof setTimeout>;
}

/** How many visits are analysed before what has arrived in the meantime gets its turn. */
const SLICE = 100;
/** Rest after which what is held back on the line being typed is shown. */
const REST = 300;

/** Settles notes after each change, in slices, and publishes; only what is new on the line being typed waits. */
export class Publisher {
  private readonly sent = new Map<string, Sent>();
  private readonly publish: Publish;
  private readonly guard: (work: () => void) => void;

  /** `guard` runs what a timer starts, so that a failure is logged there. */
  constructor(publish: Publish, guard: (work: () => void) => void) {
    this.publish = publish;
    this.guard = guard;
  }

  /** `near` is where the editor works; `typed` is the line that is being typed, if one is. */
  changed(note: OpenNote, near: number, typed?: number): void {
    const sent = this.sent.get(note.uri) ?? { diagnostics: [] };
    this.sent.set(note.uri, sent);
    clearTimeout(sent.timer);
    if (note.settle(SLICE)) {
      this.settled(sent, note, near, typed);
      return;
    }
    // What is being typed is shown at once; what follows from it in later visits, when that is known.
    if (typed !== undefined && note.isSettled(near)) this.show(sent, note, near, typed);
    this.goOn(sent, note, near, typed);
  }

  private goOn(sent: Sent, note: OpenNote, near: number, typed?: number): void {
    this.later(sent, 0, () =>
      note.settle(SLICE) ? this.settled(sent, note, near, typed) : this.goOn(sent, note, near, typed),
    );
  }
  private settled(sent: Sent, note: OpenNote, near: number, typed?: number): void {
    const held = this.show(sent, note, near, typed);
    if (held) this.later(sent, REST, () => this.changed(note, near));
  }

  /** True where something new on the line being typed is held back. */
  private show(sent: Sent, note: OpenNote, near: number, typed?: number): boolean {
    const typing = typed === undefined ? undefined : { line: typed, shown: sent.diagnostics };
    const shown = diagnostics(note, near, typing);
    sent.diagnostics = shown.diagnostics;
    this.publish(note.uri, note.version, shown.diagnostics);
    return shown.held;
  }

  closed(note: OpenNote): void {
    clearTimeout(this.sent.get(note.uri)?.timer);
    this.sent.delete(note.uri);
    this.publish(note.uri, note.version, []);
  }

  private later(sent: Sent, milliseconds: number, work: () => void): void {
    sent.timer = setTimeout(() => this.guard(work), milliseconds);
  }
}
