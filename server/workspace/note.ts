import type { LineReader } from '../../grammar/remembering-reader.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Report, VisitAnalysis } from '../clinical/analysis.ts';
import type { HeaderFacts } from '../clinical/facts.ts';
import { NO_SETTINGS, type Settings } from '../clinical/settings.ts';
import { type Block, Blocks, type Range } from './blocks.ts';
import { type Analyser, type Counts, Episode } from './episode.ts';

export interface Change {
  /** Missing where the whole text is replaced. */
  readonly range?: Range;
  readonly text: string;
}

/** A visit of an open note. `firstLine` and `lastLine` are lines of the file. */
export interface Visit {
  readonly index: number;
  readonly firstLine: number;
  readonly lastLine: number;
  readonly lines: Block;
  readonly analysis: VisitAnalysis;
}

/** What features read: an open note at one version. */
export interface Note {
  readonly uri: string;
  readonly version: number;
  readonly lineEnd: string;
  readonly lineCount: number;
  readonly blockCount: number;
  readonly today: string;
  readonly settings: Settings;
  /** Why the clinic's settings file is not used, each in one line. */
  readonly settingsProblems: readonly string[];
  readonly header: HeaderFacts;
  readonly headerReports: readonly Report[];
  readonly line: (line: number) => LineSyntax | undefined;
  readonly block: (index: number) => Block;
  readonly firstLine: (index: number) => number;
  readonly indexAt: (line: number) => number;
  /** The visit that holds a line; `undefined` in the header. */
  readonly visitAt: (line: number) => Visit | undefined;
  readonly visit: (index: number) => Visit | undefined;
  /** Reports of a visit as far as they are known already, without any work. */
  readonly reports: (index: number) => readonly Report[];
  /** How many reports, and how many of danger, each block has, without any work. */
  readonly counts: Counts;
}

/** How a workspace opens notes. */
export interface Workshop {
  readonly read: LineReader;
  readonly analyser: Analyser;
}

/** An open note that follows its editor. All costs follow the edit, not the file. */
export class OpenNote implements Note {
  readonly uri: string;
  version: number;
  lineEnd = '\n';
  settingsProblems: readonly string[] = [];
  convertsDictation = false;
  private readonly workshop: Workshop;
  private blocks: Blocks;
  private episode: Episode;

  constructor(uri: string, version: number, text: string, workshop: Workshop, today: string, settings = NO_SETTINGS) {
    this.uri = uri;
    this.version = version;
    this.workshop = workshop;
    this.lineEnd = lineEndOf(text);
    this.blocks = new Blocks(text, workshop.read);
    this.episode = new Episode(this.blocks, workshop.analyser, today, settings);
  }

  change(changes: readonly Change[], version: number): void {
    this.version = version;
    for (const { range, text } of changes) {
      if (range) this.episode.replaced(this.blocks.splice(range, text));
      else this.replace(text);
    }
  }
  private replace(text: string): void {
    const { today, settings } = this.episode;
    this.lineEnd = lineEndOf(text);
    this.blocks = new Blocks(text, this.workshop.read);
    this.episode = new Episode(this.blocks, this.workshop.analyser, today, settings);
  }

  /** Does a part of the outstanding analysis; true when nothing is left. */
  settle(visits?: number): boolean {
    return this.episode.settle(visits);
  }
  /** Are the reports of the visit that holds a line those of its text? */
  isSettled(line: number): boolean {
    return this.episode.isSettled(this.indexAt(line));
  }
  get today(): string {
    return this.episode.today;
  }
  set today(today: string) {
    this.episode.today = today;
  }
  get settings(): Settings {
    return this.episode.settings;
  }
  set settings(settings: Settings) {
    this.episode.settings = settings;
  }
  get lineCount(): number {
    return this.blocks.lineCount;
  }
  get blockCount(): number {
    return this.blocks.count;
  }
  get header(): HeaderFacts {
    return this.episode.header;
  }
  get headerReports(): readonly Report[] {
    return this.episode.headerReports;
  }
  line(line: number): LineSyntax | undefined {
    return line < 0 ? undefined : this.blocks.line(line);
  }
  block(index: number): Block {
    return this.blocks.block(index);
  }
  firstLine(index: number): number {
    return this.blocks.firstLine(index);
  }
  indexAt(line: number): number {
    return this.blocks.indexAt(line);
  }
  visitAt(line: number): Visit | undefined {
    return this.visit(this.indexAt(line));
  }
  visit(index: number): Visit | undefined {
    const analysis = index > 0 ? this.episode.visit(index) : undefined;
    if (!analysis) return undefined;
    const lines = this.block(index);
    const firstLine = this.firstLine(index);
    return { index, firstLine, lastLine: firstLine + lines.length - 1, lines, analysis };
  }
  reports(index: number): readonly Report[] {
    return index === 0 ? this.headerReports : this.episode.reports(index);
  }
  get counts(): Counts {
    return this.episode.counts;
  }
  text(): string {
    return this.blocks.text(this.lineEnd);
  }
}

const lineEndOf = (text: string): string => /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
