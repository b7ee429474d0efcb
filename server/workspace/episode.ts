import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Context, Report, VisitAnalysis } from '../clinical/analysis.ts';
import { type EpisodeState, NO_EPISODE } from '../clinical/episode.ts';
import type { HeaderFacts } from '../clinical/facts.ts';
import { isNeverLeftOut } from '../clinical/red-flag-reports.ts';
import type { Settings } from '../clinical/settings.ts';
import { type Block, type BlockChange, type Blocks, replaced } from './blocks.ts';
import { sameStructure } from './same-structure.ts';

/** How a note is analysed; given from outside so that a test can count the work. */
export interface Analyser {
  readonly header: (
    lines: readonly LineSyntax[],
    settings: Settings,
  ) => { header: HeaderFacts; reports: readonly Report[] };
  readonly visit: (lines: readonly LineSyntax[], before: EpisodeState, context: Context) => VisitAnalysis;
  /** Reports allowances of the header whose codes no visit has hidden. */
  readonly unused: (header: HeaderFacts, hidden: ReadonlySet<string>, settings: Settings) => readonly Report[];
}

/** What is kept of every visit; its facts are many times as large, and quickly found again. */
interface Entry extends Pick<VisitAnalysis, 'before' | 'after' | 'reports' | 'hidden'> {
  readonly block: Block;
  readonly context: Context;
}
/** What passing a visit that is as it was costs, against analysing one. */
const KEPT_COSTS = 0.01;
/** How many whole analyses are kept: those of the visits that an editor shows and asks about. */
const WHOLE = 32;

/** By block; kept apart from the analyses, so that a look over ten thousand visits is a walk over numbers. */
export interface Counts {
  readonly reports: readonly number[];
  readonly dangers: readonly number[];
}

/**
 * The analyses of a note's visits, each keyed by its lines, the state before it, and the context. After an edit the fold
 * restarts at the edited visit and stops where the state after a visit is what it was.
 */
export class Episode {
  private readonly blocks: Blocks;
  private readonly analyser: Analyser;
  private entries: (Entry | undefined)[];
  private readonly whole = new Map<Entry, VisitAnalysis>();
  private reportCounts: number[];
  private dangerCounts: number[];
  private heading: { block: Block; header: HeaderFacts; reports: readonly Report[] };
  private context: Context & { readonly settings: Settings };
  /** Visits before `next` are settled; those after `through` are, too, once one of them is found unchanged. */
  private next = 1;
  private through: number;

  constructor(blocks: Blocks, analyser: Analyser, today: string, settings: Settings) {
    this.blocks = blocks;
    this.analyser = analyser;
    this.entries = new Array(blocks.count).fill(undefined);
    this.reportCounts = new Array(blocks.count).fill(0);
    this.dangerCounts = new Array(blocks.count).fill(0);
    this.heading = { block: blocks.block(0), ...analyser.header(blocks.block(0), settings) };
    this.context = { today, header: forVisits(this.heading.header), settings };
    this.through = blocks.count - 1;
  }

  get header(): HeaderFacts {
    return this.heading.header;
  }
  get headerReports(): readonly Report[] {
    const { header, reports } = this.heading;
    if (header.allowances.length === 0) return reports;
    const hidden = new Set(this.entries.flatMap((entry) => entry?.hidden ?? []));
    return [...reports, ...this.analyser.unused(header, hidden, this.context.settings)];
  }
  get today(): string {
    return this.context.today;
  }
  set today(today: string) {
    if (today !== this.context.today) this.useContext({ ...this.context, today });
  }

  get settings(): Settings {
    return this.context.settings;
  }
  /** Settings may change what any line means, so everything is analysed again. */
  set settings(settings: Settings) {
    if (sameStructure(settings, this.context.settings)) return;
    this.heading = { block: this.blocks.block(0), ...this.analyser.header(this.blocks.block(0), settings) };
    this.useContext({ ...this.context, settings });
  }

  /** Takes note of replaced blocks; what has to be analysed again is analysed by `settle` or when asked for. */
  replaced({ at, removed, inserted }: BlockChange): void {
    const waiting = this.next < this.entries.length;
    const through = waiting ? Math.max(this.next, this.through) : 0;
    this.entries = replaced(this.entries, at, removed, new Array<undefined>(inserted).fill(undefined));
    const none = new Array<number>(inserted).fill(0);
    this.reportCounts = replaced(this.reportCounts, at, removed, none);
    this.dangerCounts = replaced(this.dangerCounts, at, removed, none);
    this.next = Math.max(1, waiting ? Math.min(this.next, at) : at);
    this.through = Math.max(through >= at + removed ? through + inserted - removed : 0, at + inserted);
    if (this.heading.block === this.blocks.block(0)) return;
    this.heading = {
      block: this.blocks.block(0),
      ...this.analyser.header(this.blocks.block(0), this.context.settings),
    };
    const header = forVisits(this.heading.header);
    if (!sameStructure(header, this.context.header)) this.useContext({ ...this.context, header });
  }

  /** Analyses up to `limit` visits; true when nothing is left to do. Those on the way that are as they were cost next to nothing. */
  settle(limit = Number.POSITIVE_INFINITY): boolean {
    for (let done = 0; done < limit; ) {
      const step = this.step();
      if (step === undefined) return true;
      done += step === 'analysed' ? 1 : KEPT_COSTS;
    }
    return this.next >= this.blocks.count;
  }

  isSettled(index: number): boolean {
    return index < this.next;
  }

  /** The analysis of the visit in a block, settled up to it. `undefined` for the header and beyond the end. */
  visit(index: number): VisitAnalysis | undefined {
    while (this.next <= index && this.step());
    const entry = this.entries[index];
    if (!entry) return undefined;
    return this.whole.get(entry) ?? this.keep(entry, this.analyser.visit(entry.block, entry.before, entry.context));
  }
  get counts(): Counts {
    this.count(0, this.headerReports);
    return { reports: this.reportCounts, dangers: this.dangerCounts };
  }
  /** The reports of a visit, as far as they are known without analysing it. */
  reports(index: number): readonly Report[] {
    return this.entries[index]?.reports ?? [];
  }

  /** Settles one visit; `undefined` when all are settled. */
  private step(): 'analysed' | 'kept' | undefined {
    const index = this.next;
    if (index >= this.blocks.count) return undefined;
    const before = this.entries[index - 1]?.after ?? NO_EPISODE;
    const block = this.blocks.block(index);
    const entry = this.entries[index];
    const valid = entry?.block === block && entry.context === this.context && sameStructure(entry.before, before);
    if (valid && index > this.through) {
      this.next = this.blocks.count;
      return undefined;
    }
    if (!valid) {
      const analysis = this.analyser.visit(block, before, this.context);
      const { reports, hidden } = analysis;
      // Most visits change nothing of the episode: sharing the state makes the next comparison one of identity.
      const after = sameStructure(analysis.after, before) ? before : analysis.after;
      const made: Entry = { block, context: this.context, before, after, reports, hidden };
      this.entries[index] = made;
      this.keep(made, analysis);
      this.count(index, reports);
    }
    this.next = index + 1;
    return valid ? 'kept' : 'analysed';
  }

  private keep(entry: Entry, analysis: VisitAnalysis): VisitAnalysis {
    this.whole.set(entry, analysis);
    for (const oldest of this.whole.keys()) {
      if (this.whole.size <= WHOLE) break;
      this.whole.delete(oldest);
    }
    return analysis;
  }

  private count(index: number, reports: readonly Report[]): void {
    this.reportCounts[index] = reports.length;
    this.dangerCounts[index] = reports.filter(isNeverLeftOut).length;
  }

  private useContext(context: Context & { readonly settings: Settings }): void {
    this.context = context;
    this.next = 1;
    this.through = this.blocks.count - 1;
  }
}

/** What of the header a visit may depend on: neither the patient's name nor where an allowance stands. */
function forVisits(header: HeaderFacts): HeaderFacts {
  const { patient, allowances } = header;
  return {
    ...header,
    ...(patient ? { patient: { ...patient, name: '' } } : {}),
    allowances: allowances.map((each) => ({ ...each, place: { line: 0, start: 0, end: 0 } })),
  };
}
