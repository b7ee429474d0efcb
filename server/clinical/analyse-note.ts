import { opensVisit, readLine } from '../../grammar/read-line.ts';
import { readBelow } from '../../grammar/reader/section-heading.ts';
import type { LineReader } from '../../grammar/remembering-reader.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { advised } from './advise.ts';
import { analyseHeader, analyseVisit, unusedAllowances } from './analyse.ts';
import type { AdvisedVisit, Report, VisitAnalysis } from './analysis.ts';
import { NO_EPISODE } from './episode.ts';
import type { HeaderFacts } from './facts.ts';
import type { Rule } from './rules/define-rule.ts';
import { RULES } from './rules/index.ts';
import { NO_SETTINGS, type Settings } from './settings.ts';

export interface NoteAnalysis {
  readonly lines: readonly string[];
  readonly header: HeaderFacts;
  readonly headerReports: readonly Report[];
  readonly visits: readonly VisitOfNote[];
}

/** A visit with the line of the file on which it starts. */
export interface AnalysedVisit {
  readonly firstLine: number;
  readonly syntax: readonly LineSyntax[];
  readonly analysis: VisitAnalysis;
}

export interface VisitOfNote extends AnalysedVisit {
  readonly analysis: AdvisedVisit;
}

interface Folding {
  readonly today: string;
  readonly settings: Settings;
  readonly rules?: readonly Rule[];
  /** Notes of one clinic repeat each other's lines: a reader that remembers them saves most of the reading. */
  readonly read?: LineReader;
}

/** A whole note at once, for the command line and tests; the editor keeps visits apart and analyses what changed. */
export function analyseNote(
  text: string,
  today: string,
  settings: Settings = NO_SETTINGS,
  rules: readonly Rule[] = RULES,
): NoteAnalysis {
  const folded: AnalysedVisit[] = [];
  const whole = foldNote(text, { today, settings, rules }, (visit) => folded.push(visit));
  const { header } = whole;
  const visits = folded.map((visit) => ({ ...visit, analysis: advised(visit.analysis, { header, settings }) }));
  return { ...whole, visits };
}

/** Analyses a note visit by visit and hands each over, so that only what the taker keeps stays in memory. */
export function foldNote(
  text: string,
  { today, settings, rules = RULES, read = readLine }: Folding,
  take: (visit: AnalysedVisit) => void,
): Omit<NoteAnalysis, 'visits'> {
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\n|\r/);
  const starts = lines.flatMap((line, i) => (opensVisit(line) ? [i] : []));
  const { header, reports } = analyseHeader(readBelow(lines.slice(0, starts[0] ?? lines.length), read), settings);
  const hidden = new Set<string>();
  let before = NO_EPISODE;
  starts.forEach((firstLine, i) => {
    const syntax = readBelow(lines.slice(firstLine, starts[i + 1] ?? lines.length), read);
    const analysis = analyseVisit(syntax, before, { today, header, settings }, rules);
    before = analysis.after;
    for (const code of analysis.hidden) hidden.add(code);
    take({ firstLine, syntax, analysis });
  });
  return { lines, header, headerReports: [...reports, ...unusedAllowances(header, hidden, settings)] };
}
