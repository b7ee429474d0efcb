/** The parts of a TextMate grammar that this language needs, and its scopes. */

export type Rule =
  | { readonly include: string }
  | { readonly match: string; readonly name?: string; readonly captures?: Captures }
  | {
      readonly begin: string;
      readonly end: string;
      /** The rules inside are tried before the end. */
      readonly applyEndPatternLast?: 1;
      readonly name?: string;
      readonly beginCaptures?: Captures;
      readonly patterns?: readonly Rule[];
    }
  | { readonly patterns: readonly Rule[] };
type Captures = Readonly<Record<string, { readonly name: string }>>;
export type Rules = Readonly<Record<string, Rule>>;

export const SCOPES = {
  comment: 'comment.line.double-slash.forefoot',
  quote: 'string.quoted.double.forefoot',
  reason: 'string.unquoted.reason.forefoot',
  section: 'keyword.control.section.forefoot',
  header: 'keyword.control.header.forefoot',
  heading: 'keyword.control.heading.forefoot',
  subject: 'entity.name.tag.subject.forefoot',
  finding: 'entity.name.function.finding.forefoot',
  value: 'constant.language.value.forefoot',
  quantity: 'constant.numeric.quantity.forefoot',
  date: 'constant.numeric.date.forefoot',
  name: 'constant.other.name.forefoot',
  code: 'constant.other.code.forefoot',
  negation: 'keyword.operator.negation.forefoot',
  status: 'keyword.operator.status.forefoot',
  side: 'keyword.operator.side.forefoot',
  distancing: 'keyword.operator.distancing.forefoot',
  doubt: 'keyword.operator.doubt.forefoot',
  separator: 'punctuation.separator.forefoot',
  bracket: 'punctuation.section.parens.forefoot',
} as const;

/** Case never matters in a note. */
export const anyCase = (pattern: string): string => `(?i)${pattern}`;
export const match = (name: string, pattern: string): Rule => ({ match: anyCase(pattern), name });
/** One rule that gives each numbered group of the pattern a scope. */
export const captures = (...names: readonly string[]): Captures =>
  Object.fromEntries(names.map((name, i) => [String(i + 1), { name }]));
