import { pageOf } from '../documents/rule-pages.ts';
import { cite } from './cite.ts';
import { paragraphs } from './describe.ts';
import { pageAt } from './rule-link.ts';

/** The rule behind a report: why it matters, what to do instead, its source, and where its page stands. Markdown; empty for a code without a page. */
export function describeRule(code: string, rulesPage?: string): string {
  const page = pageOf(code);
  if (!page) return '';
  const { name, why, instead, sourced } = page;
  return paragraphs(
    `**${name}** (\`${code}\`)`,
    `${why} *Instead.* ${instead}`,
    sourced ? cite(sourced.source, sourced.mark) : '',
    rulesPage ? `[Examples and source](${pageAt(rulesPage, code)})` : `Examples: \`forefoot rule ${code}\``,
  );
}
