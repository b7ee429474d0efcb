import { HEADING_WORDS, SECTION_WORD, SECTION_WORDS } from '../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { own } from '../../grammar/own.ts';
import { formOf, type WordClass } from '../../grammar/reader/forms.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { PANELS } from '../clinical/panels.ts';
import type { PanelMember, Settings } from '../clinical/settings.ts';
import { valueWords } from '../documents/values.ts';
import { paragraphs } from './describe.ts';
import type { WordAt } from './word-at.ts';

/** What each section holds, in a few words. */
export const SECTION_DETAIL: Readonly<Record<Section, string>> = {
  history: 'what the patient reports',
  pain: 'where and how much',
  tried: 'treatment so far',
  stand: 'what is seen standing',
  exam: 'examination',
  xray: 'radiographs',
  us: 'ultrasound',
  mri: 'magnetic resonance',
  ct: 'computed tomography',
  lab: 'laboratory results',
  operation: 'what was operated',
  impression: 'what the clinician thinks it is',
  plan: 'what is planned',
};

/** Words that say what became of a finding, or keep it from being read. */
const STATUS_WORDS: readonly (readonly [WordClass, string])[] = [
  [
    'no',
    'denies the one finding after it; a place or one adjective may stand between. In a plan it means: to be avoided.',
  ],
  [
    'not',
    'stands directly before a finding and denies it. Before a value or another word it makes the finding unclear.',
  ],
  ['absent', 'denies the finding before it, and never looks ahead.'],
  ['not done', 'The test before it was not done: that says nothing of the result, and it is not normal.'],
  ['unable', 'The test before it was not possible; the reason may follow in quotes. It says nothing of the result.'],
  ['equivocal', 'The finding before it is neither there nor absent.'],
  ['avoid', 'In a plan: what follows is to be avoided.'],
  [
    'distancing',
    'says that something is of another time, person or condition: what it reaches is kept as written, and never computed with.',
  ],
];

/** A word of the language that names no finding: `normal`, a section, `no`, `not done`. Markdown; empty for any other. */
export const describeWord = (word: WordAt, settings: Settings): string =>
  describePanel(word, settings) || describeSection(word) || describeStatus(word);

function describeStatus({ role, text }: WordAt): string {
  if (role.kind !== 'modifier') return '';
  const classes = formOf(text)?.classes;
  const found = STATUS_WORDS.find(([name]) => classes?.has(name));
  if (!found) return '';
  const [, about] = found;
  const name = `**${text.toLowerCase()}**`;
  return /^[a-z]/.test(about) ? `${name} ${about}` : `${name}. ${about}`;
}

function describeSection({ role, text, line }: WordAt): string {
  if (role.kind !== 'keyword' || line.kind !== 'statements') return '';
  if (HEADING_WORDS[text.toLowerCase()] === 'images') return `**${text}**: a heading; each line names its image.`;
  const name = own(SECTION_WORDS, role.canonical ?? '')?.section;
  if (!name) return '';
  return paragraphs(
    `**${SECTION_WORD[name]}**: ${SECTION_DETAIL[name]}.`,
    line.opens
      ? 'A heading: it holds for the lines below, down to the next blank line or heading.'
      : 'It opens its section for the rest of the line, up to the next section word.',
  );
}

function describePanel({ role, line }: WordAt, { panels }: Settings): string {
  const node = panelAt(line, role.start);
  if (!node) return '';
  const kind = node.subject?.at === 'webs' ? 'web' : 'ray';
  const set = panels?.[kind];
  const said = (set ?? PANELS[kind].members).map(memberText).join('; ');
  return paragraphs(
    `**normal** of a ${kind === 'web' ? 'web space' : 'ray'} says: ${said}.`,
    `${set ? 'From the settings of the clinic (`panels` in `.forefoot.json`)' : 'Built in; a clinic may set its own (`panels` in `.forefoot.json`)'}. Each is marked as said by \`normal\`, and what it does not name stays not mentioned.`,
  );
}

const panelAt = ({ statements }: LineSyntax, start: number) =>
  statements.flatMap(({ findings }) => findings).find(({ id, word }) => id === 'panel' && word.start === start);

function memberText({ finding, status, values = {} }: PanelMember): string {
  const result = status === 'absent' ? ['none'] : Object.values(values).map(valueWords);
  return [entryOf(finding).word, ...result].join(' ');
}
