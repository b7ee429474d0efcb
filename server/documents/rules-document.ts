import { DRAWER_SCALE_TEXTS } from '../../grammar/generate/drawer-scales.ts';
import { code, list, paragraphs, table } from '../../grammar/generate/markdown.ts';
import { sourceText } from '../../grammar/generate/reference-findings.ts';
import { KNOWN_TEXT, names, sourceLine } from '../../grammar/generate/reference-sources.ts';
import type { Sourced } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { isPublished, SOURCES, type SourceKey } from '../../grammar/sources.ts';
import { DRAWER_SCALES } from '../../grammar/values.ts';
import { CAUTIONS } from '../clinical/cautions.ts';
import type { Condition, Role } from '../clinical/differential/condition.ts';
import { CONDITIONS } from '../clinical/differential/conditions.ts';
import { PATH_ROWS } from '../clinical/path-rows.ts';
import { PUBLISHED_FACTS, type PublishedFact } from '../clinical/published-facts.ts';
import {
  CAUTION_SOURCES,
  GATE_TEXTS,
  LIMIT_TEXTS,
  RED_FLAG_TEXTS,
  STAGING_TEXTS,
  WINDOW_TEXTS,
} from '../clinical/row-texts.ts';
import { ANATOMICAL_GRADES, HALF_OF_THE_PLATE } from '../clinical/scales/anatomical.ts';
import { OTHER_SCALES } from '../clinical/scales/other-scales.ts';
import { STAGING_ROWS } from '../clinical/staging-rows.ts';
import { WINDOWS } from '../clinical/windows.ts';
import { RULE_PAGES, SEVERITY_WORDS } from './rule-pages.ts';
import { rulePageText } from './rule-reference.ts';

const cite = ({ source, mark }: Sourced): string => sourceText(source, mark);
const entries = <K extends string, V>(record: Readonly<Record<K, V>>): [K, V][] => Object.entries(record) as [K, V][];

/** The reference of the rules and of every table that the engine decides by, as Markdown. Its examples are executed here. Pure. */
export function rulesDocument(): string {
  const intro = paragraphs(
    '<!-- Made by `npm run generate` from the rules and the tables of the engine. Do not edit. -->',
    '# The rules of Forefoot Notes',
    'What the program reports, and the tables by which it stages, warns and names the next step. All of it is decision support: local protocol and licensed practice come first. Every entry names its source and how that is known; `forefoot rule CODE` prints a page of this file.',
    codesTable(),
  );
  const body = paragraphs('# Reports', ...RULE_PAGES.map((page) => rulePageText(page, cite)), tables());
  return `${paragraphs(intro, body, sources(body))}\n`;
}

const codesTable = (): string =>
  table(
    ['Code', 'Report', 'Severity', 'Source'],
    RULE_PAGES.map((page) => [
      `[${page.code}](#${page.code})`,
      page.name,
      SEVERITY_WORDS[page.severity],
      page.sourced ? cite(page.sourced) : 'the language',
    ]),
  );

const tables = (): string =>
  paragraphs(
    '# Tables of the engine',
    ...beforeStaging(),
    ...staging(),
    ...scales(),
    '## Next steps',
    'Per ray; the first row that applies. Rows for a course without operation are those of stages 0 to 2; a span takes its lower stage, unless overlap or dislocation is in it.',
    table(['Row', 'Step', 'Because', 'What would change it', 'Review', 'Source'], PATH_ROWS.map(pathRow)),
    '## Differential',
    'What argues for and against each condition at a ray, a web or a foot; findings are counted, never weighed, and two conditions can both be true. What must not be missed comes first.',
    table(['Condition', 'For', 'Against', 'Proves nothing', 'Told apart by'], CONDITIONS.map(conditionRow)),
    ...times(),
    '## Published figures and what the engine does with them',
    'Where publications contradict themselves or each other, nothing is computed with them; each line has a check among the tests.',
    table(['Figure or relation', 'Source', 'The engine'], Object.values<PublishedFact>(PUBLISHED_FACTS).map(factRow)),
  );

const beforeStaging = (): string[] => [
  '## Red flags',
  'They come before any stage and in every output, from a pair of signs or the word of the clinician, never from one weak word. No `allow` line hides one.',
  table(
    ['Red flag', 'Raised by', 'First', 'Source'],
    entries(RED_FLAG_TEXTS).map(([id, row]) => [
      id,
      row.says,
      PATH_ROWS.find((each) => each.id === id)?.step ?? '',
      cite(row),
    ]),
  ),
  '## Gates',
  'What keeps a joint from being staged. A gate that nobody asked about shows as an assumption beside the stage.',
  table(
    ['Gate', 'What it says', 'Source'],
    entries(GATE_TEXTS).map(([id, row]) => [id, row.says, cite(row)]),
  ),
];

const staging = (): string[] => [
  '## Stages',
  'The first row that applies decides, on the 0-4 drawer scale, for a native joint with symptoms. Purchase, swelling, rotation, gap and the size of a tear support or question a stage; they move none but stage 0. That stages exist was read; the rows of the published table are from memory.',
  table(
    ['Row', 'Deciding findings', 'Stage', 'Source'],
    STAGING_ROWS.map(({ id, ...row }) => [
      id,
      STAGING_TEXTS[id]?.when ?? '',
      STAGING_TEXTS[id]?.gives ?? '',
      cite(row),
    ]),
  ),
  '## Drawer scales',
  table(
    ['Scale', '0', '1', '2', '3', '4', 'Source'],
    DRAWER_SCALES.map((scale) => {
      const { grades, note, ...row } = DRAWER_SCALE_TEXTS[scale];
      const words = [0, 1, 2, 3, 4].map((grade) => grades[grade] ?? 'no such grade');
      return [code(scale), ...words, `${cite(row)}. ${note}`.trim()];
    }),
  ),
];

const scales = (): string[] => [
  '## Anatomical grade',
  `Stated from operation or image, never computed, never a stage: ${HALF_OF_THE_PLATE}.`,
  table(
    ['Grade', 'The plate', 'Source'],
    entries(ANATOMICAL_GRADES).map(([grade, { says, ...row }]) => [`${grade}`, says, cite(row)]),
  ),
  '## Other scales',
  'Computed on request (`forefoot stage --scales`, or on the word `stage` in an editor), from the same findings and apart from the stage. A description is told where each of its parts is found and no other can be; else the findings that lack are named. What keeps the stage away keeps these away.',
  table(
    ['Scale', 'Stage or grade', 'Its parts', 'Source'],
    OTHER_SCALES.flatMap(({ id, rows, limits, ...row }) =>
      rows.map(({ name, criteria }, at) => [
        id,
        name,
        criteria.map(({ says }) => says).join(', '),
        at === 0 ? `${cite(row)}. ${limits}` : cite(row),
      ]),
    ),
  ),
];

const pathRow = ({ id, step, why, wouldChange, review, urgent, ...row }: (typeof PATH_ROWS)[number]): string[] => [
  urgent ? `${id} (urgent)` : id,
  step,
  why,
  wouldChange,
  review,
  cite(row),
];

/** A claim without a mark of its own is common practice. */
const claimsText = ({ criteria }: Condition, role: Role): string =>
  criteria
    .flatMap(({ finding, claims }) =>
      claims
        .filter((claim) => claim.role === role)
        .map(
          (claim) => `${entryOf(finding).word}: ${claim.why}${claim.source === claim.mark ? '' : ` (${cite(claim)})`}`,
        ),
    )
    .join('; ');
const conditionRow = (condition: Condition): string[] => [
  condition.neverMiss ? `${condition.id} (never to be missed)` : condition.id,
  claimsText(condition, 'for'),
  claimsText(condition, 'against'),
  claimsText(condition, 'no proof'),
  `${condition.separate.ask} (${cite(condition.separate)})`,
];

const times = (): string[] => [
  '## Times and limits',
  'The local protocol takes precedence; a clinic can set its own review time and HbA1c limit.',
  table(
    ['Time or limit', 'What it decides', 'Source'],
    [
      ...entries(WINDOWS).map(([id, row]) => [`${id}: ${row.days} days`, WINDOW_TEXTS[id], cite(row)]),
      ...LIMIT_TEXTS.map((row) => [row.limit, row.says, cite(row)]),
    ],
  ),
  '## Cautions',
  'Each is printed once in a document, beside the step that it belongs to.',
  table(
    ['Caution', 'Source'],
    entries(CAUTIONS).map(([id, text]) => [text, cite(CAUTION_SOURCES[id])]),
  ),
];

const factRow = ({ says, sources: keys, mark, engine, does }: PublishedFact): string[] => [
  says,
  keys.map((key) => sourceText(key, mark)).join('; '),
  `${engine} it. ${does}`,
];

function sources(body: string): string {
  const used = (Object.keys(SOURCES) as SourceKey[]).filter((key) => isPublished(key) && names(body, key));
  return paragraphs('# Sources', KNOWN_TEXT, list(used.map(sourceLine)));
}
