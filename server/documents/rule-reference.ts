import { entryOf } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';
import { readBelow } from '../../grammar/reader/section-heading.ts';
import { analyseNote } from '../clinical/analyse-note.ts';
import type { Fix, Report } from '../clinical/analysis.ts';
import { namedCures } from '../clinical/named-cures.ts';
import { EXAMPLE_DAY, exampleNote } from '../clinical/rules/example-note.ts';
import { type RulePage, SEVERITY_WORDS } from './rule-pages.ts';

/** What an example gives when it is executed: the reports with the code of its page. */
export function reportsOf(example: string, code: string): Report[] {
  return analysed(example).flatMap(({ reports }) => reports.filter((each) => each.code === code));
}

/** The header of an example and its visits, each with its reports and the fixes that its messages name. */
function analysed(example: string) {
  const { lines, headerReports, visits } = analyseNote(exampleNote(example), EXAMPLE_DAY);
  const header = { reports: headerReports, cures: namedCures(readBelow(lines, readLine), undefined) };
  return [
    header,
    ...visits.map(({ syntax, analysis: { reports, facts } }) => ({ reports, cures: namedCures(syntax, facts) })),
  ];
}

const block = (text: string): string => `\`\`\`forefoot\n${text.replace(/\n$/, '')}\n\`\`\``;
const paragraphs = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n\n');

const fixLine = ({ title, safety }: Fix): string =>
  `- ${title} (${safety === 'safe' ? 'safe' : 'needs review: it changes what the note says'})`;

/** The fixes that the invalid example is offered: those of the rule, and those that do what its message says. */
export const fixesOf = ({ examples, code }: RulePage): readonly Fix[] =>
  examples
    ? analysed(examples.invalid).flatMap(({ reports, cures }) =>
        reports.filter((each) => each.code === code).flatMap((report) => [...report.fixes, ...cures(report)]),
      )
    : [];

function examplesText(page: RulePage): string {
  const { examples, code } = page;
  if (!examples) return '';
  const fixes = fixesOf(page);
  return paragraphs(
    'Reported:',
    block(examples.invalid),
    ...reportsOf(examples.invalid, code).map(({ message }) => `> ${message}`),
    fixes.length > 0
      ? `Offered:\n\n${fixes.map(fixLine).join('\n')}`
      : 'No fix is offered: only the clinician knows which is right.',
    'Not reported:',
    block(examples.valid),
    'Looks alike, and is not reported:',
    block(examples.nearMiss),
  );
}

function headText({ name, severity, scope, code }: RulePage): string {
  const looks = scope ? ` Looks at one ${scope}.` : '';
  const never = severity === 'danger' || code === 'unread-red-flag' ? ' No `allow` line hides it.' : '';
  return `**${name}.** Severity: ${SEVERITY_WORDS[severity]}.${looks}${never}`;
}

/** One page in Markdown; `cite` says how a source is written there. */
export function rulePageText(page: RulePage, cite: (sourced: NonNullable<RulePage['sourced']>) => string): string {
  const reads = page.reads.map((id) => `\`${entryOf(id).word}\``).join(', ');
  return paragraphs(
    `## ${page.code}`,
    headText(page),
    `*What.* ${page.what}`,
    `*Why.* ${page.why}`,
    `*Instead.* ${page.instead}`,
    reads === '' ? '' : `*Looks at.* ${reads}.`,
    `*Source.* ${page.sourced ? cite(page.sourced) : 'the rules of reading of the language (LANGUAGE.md)'}.`,
    examplesText(page),
  );
}
