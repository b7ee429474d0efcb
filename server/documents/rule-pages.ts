import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Severity } from '../clinical/analysis.ts';
import { NOTICE_PAGES, READING_PAGES } from '../clinical/reading-pages.ts';
import { READING_MESSAGES } from '../clinical/reading-reports.ts';
import type { Examples, Rule } from '../clinical/rules/define-rule.ts';
import { RULES } from '../clinical/rules/index.ts';

/** What is to be read about one code. */
export interface RulePage {
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly what: string;
  readonly why: string;
  readonly instead: string;
  readonly reads: readonly FindingId[];
  /** Missing for what an editor says of itself. */
  readonly examples?: Examples;
  /** Missing for the rules of reading, which are those of the language. */
  readonly sourced?: Sourced;
  readonly scope?: Rule['scope'];
}

const ofRule = ({
  code,
  name,
  severity,
  what,
  why,
  instead,
  reads,
  examples,
  source,
  mark,
  scope,
}: Rule): RulePage => ({
  code,
  name,
  severity,
  what,
  why,
  instead,
  reads,
  examples,
  sourced: { source, mark },
  scope,
});
const READING: readonly RulePage[] = Object.entries(READING_PAGES).map(([code, page]) => ({
  ...page,
  code,
  severity: READING_MESSAGES[code as keyof typeof READING_PAGES].severity,
  reads: [],
}));
const NOTICES: readonly RulePage[] = Object.entries(NOTICE_PAGES).map(([code, page]) => ({
  ...page,
  code,
  severity: code === 'visit-unchecked' ? 'danger' : code === 'settings-not-used' ? 'contradiction' : 'style',
  reads: [],
}));

/** A page for every code that a report may carry: the rules by severity of harm, the reader, what an editor says of itself. */
export const RULE_PAGES: readonly RulePage[] = [...RULES.map(ofRule), ...READING, ...NOTICES];

/** The page of a code; missing where no report has that code. */
export const pageOf = (code: string): RulePage | undefined => RULE_PAGES.find((page) => page.code === code);

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  danger: 'danger (an error)',
  contradiction: 'contradiction (a warning)',
  missing: 'missing (a hint)',
  style: 'style (a hint)',
};
