import type { Diagnostic } from 'vscode-languageserver-types';

/** Where the page of a code stands in the reference of the rules, whose headings are the codes. */
export const pageAt = (rulesPage: string, code: string): string => `${rulesPage}#${code}`;

/** Diagnostics whose code leads to its page. */
export const linked = (diagnostics: readonly Diagnostic[], rulesPage: string): Diagnostic[] =>
  diagnostics.map((each) => ({ ...each, codeDescription: { href: pageAt(rulesPage, String(each.code)) } }));

/** The address of the reference of the rules that a client gives, if it gives one. */
export function rulesPageOf(sent: unknown): string | undefined {
  const given = typeof sent === 'object' && sent !== null && 'rulesPage' in sent ? sent.rulesPage : undefined;
  return typeof given === 'string' && /^[a-z][a-z\d+.-]*:/i.test(given) && !given.includes('#') ? given : undefined;
}
