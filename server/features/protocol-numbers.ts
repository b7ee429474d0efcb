import type { CompletionItemKind, DiagnosticSeverity, SymbolKind } from 'vscode-languageserver-types';

/** The protocol's own numbers; its library's tables would add an eighth to the size of the server. A test compares them. */
export const SEVERITY = { error: 1, warning: 2, information: 3, hint: 4 } as const satisfies Readonly<
  Record<string, DiagnosticSeverity>
>;
export const SYMBOL = { namespace: 3, property: 7, object: 19, event: 24 } as const satisfies Readonly<
  Record<string, SymbolKind>
>;
export const COMPLETION = {
  class: 7,
  module: 9,
  property: 10,
  keyword: 14,
  enumMember: 20,
  operator: 24,
} as const satisfies Readonly<Record<string, CompletionItemKind>>;

export const CONVERT_LINES = 'refactor.rewrite.dictation';
export const CONVERT_VISIT = 'source.convertDictation';
export const ACTION_KINDS = [
  'quickfix',
  CONVERT_LINES,
  'source.fixAll',
  'source.sortVisit',
  CONVERT_VISIT,
  'source.signVisit',
  'source.carryFindings',
] as const;

/** Does an editor that asks for these kinds only, or for any, want actions of a kind? */
export const wants = (only: readonly string[] | undefined, kind: string): boolean =>
  only === undefined || only.some((each) => kind === each || kind.startsWith(`${each}.`));
