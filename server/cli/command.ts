import type { Terminal } from './terminal.ts';

/** 0 clean or hints only, 1 a warning or an error in a note, 2 something could not be run. */
export type ExitCode = 0 | 1 | 2;

/** What stands behind the name of a command, already checked against its options. */
export interface Invocation {
  readonly paths: readonly string[];
  readonly format: 'text' | 'json';
  /** ISO day that due dates are counted from. */
  readonly today: string;
  /** ISO day of the visit that is asked for. */
  readonly visit?: string;
  readonly filed: boolean;
  readonly stdio: boolean;
  /** A settings file in place of those near the notes. */
  readonly settings?: string;
  /** Every visit is asked to be complete. */
  readonly complete?: true;
  /** The argument for each stage, in sentences. */
  readonly why?: true;
  /** The other scales beside each stage. */
  readonly scales?: true;
  /** Only says which files formatting would change. */
  readonly dryRun?: true;
  /** Dictated lines are converted before the note is formatted. */
  readonly dictated?: true;
}

export type Run = (invocation: Invocation, terminal: Terminal) => Promise<ExitCode>;

export type OptionName =
  | 'format'
  | 'today'
  | 'visit'
  | 'filed'
  | 'stdio'
  | 'settings'
  | 'complete'
  | 'check'
  | 'dictated'
  | 'why'
  | 'scales';

export interface Command {
  readonly name: string;
  /** What follows the name in the usage line. */
  readonly usage: string;
  readonly summary: string;
  readonly help: readonly string[];
  readonly options: readonly OptionName[];
  /** `code`: the code of a report, or nothing. */
  readonly paths: 'none' | 'one' | 'some' | 'code';
  /** Loaded only when it runs, so that help and version start at once. */
  readonly load: () => Promise<Run>;
}

/** Ends a command with one clear line on standard error. */
export class Refusal extends Error {}
