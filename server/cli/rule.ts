import type { Sourced } from '../../grammar/lexicon/entry.ts';
import { identifiers, SOURCES } from '../../grammar/sources.ts';
import { pageOf, RULE_PAGES, type RulePage, SEVERITY_WORDS } from '../documents/rule-pages.ts';
import { fixesOf, rulePageText } from '../documents/rule-reference.ts';
import { markWords } from '../documents/source-marks.ts';
import { Refusal, type Run } from './command.ts';
import { JsonList } from './json-list.ts';

/** `forefoot rule`: the page of one code, or the list of all. */
export const rule: Run = async ({ paths: [code], format }, terminal) => {
  const page = code === undefined ? undefined : pageOf(code);
  if (code !== undefined && !page)
    throw new Refusal(`no report has the code "${code}"; forefoot rule lists every code`);
  const pages = page ? [page] : RULE_PAGES;
  if (format === 'json') {
    const list = new JsonList(terminal);
    await list.add(pages.map(recordOf));
    await list.end();
  } else await terminal.write(`${page ? textOf(page) : listOf(pages)}\n`);
  return 0;
};

function recordOf(page: RulePage): object {
  const { code, name, severity, what, why, instead, examples, sourced } = page;
  const fixes = fixesOf(page).map(({ title, safety }) => ({ title, safety }));
  const cited = sourced ? { ...sourced, citation: citationOf(sourced) } : {};
  return { code, name, severity, what, why, instead, ...(examples ? { examples, fixes } : {}), ...cited };
}

const citationOf = ({ source }: Sourced): string =>
  [SOURCES[source].citation, ...identifiers(SOURCES[source])].join(' ');

function textOf(page: RulePage): string {
  const { sourced } = page;
  const text = rulePageText(page, markWords);
  const published = sourced && sourced.source !== sourced.mark;
  return published ? `${text}\n\n${sourced.source}: ${citationOf(sourced)}` : text;
}

function listOf(pages: readonly RulePage[]): string {
  const width = Math.max(...pages.map(({ code }) => code.length));
  return pages
    .map(({ code, name, severity }) => `${code.padEnd(width)}  ${name}: ${SEVERITY_WORDS[severity]}`)
    .join('\n');
}
