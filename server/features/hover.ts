import type { Hover } from 'vscode-languageserver-types';
import { PREFIX_WORDS } from '../../grammar/lexicon/lifecycle-words.ts';
import type { SubjectNode } from '../../grammar/syntax.ts';
import type { Evidence, VisitAnalysis } from '../clinical/analysis.ts';
import type { Position } from '../workspace/blocks.ts';
import type { Note, Visit } from '../workspace/note.ts';
import { paragraphs } from './describe.ts';
import type { Explain } from './explain.ts';
import { HEADER_WORDS } from './header-words.ts';
import { isOf, subjectAt, type WordAt, wordAt } from './word-at.ts';

/** Explains the word at a position: a finding, its value, a subject with its computed stage, a header word. */
export function hover(note: Note, position: Position, explain: Explain): Hover | null {
  const word = wordAt(note, position);
  if (!word) return null;
  const value = word.role.finding
    ? finding(note, position, word, explain)
    : subject(note, position, word, explain) || header(word);
  return value ? { contents: { kind: 'markdown', value }, range: word.range } : null;
}

function finding(note: Note, position: Position, { role, line }: WordAt, explain: Explain): string {
  const { finding } = role;
  if (!finding) return '';
  const meaning = explain.describeFinding(finding);
  if (finding !== 'stage') return paragraphs(meaning, role.slot === 'grade' ? scale(note, role.finding) : '');
  const node = line.statements
    .flatMap(({ findings }) => findings)
    .find(({ id, start, end }) => id === 'stage' && start <= role.start && role.start < end);
  return paragraphs(node?.subject ? computed(note, position, node.subject, explain) : '', meaning);
}

/** Three scales exist whose numbers differ, so a grade is never shown without its own. */
function scale(note: Note, finding: string | undefined): string {
  if (finding !== 'drawer') return '';
  const { drawerScale } = note.header;
  return drawerScale
    ? `*Scale.* ${drawerScale}, from the \`scales\` line, where the statement names no other.`
    : '*Scale.* Not stated; read as 0-4 for staging. A line `scales drawer 0-4` in the header states it.';
}

function subject(note: Note, position: Position, word: WordAt, explain: Explain): string {
  const named = subjectAt(word);
  return named ? computed(note, position, named, explain) : '';
}

function computed(
  note: Note,
  { line }: Position,
  subject: NonNullable<ReturnType<typeof subjectAt>>,
  explain: Explain,
): string {
  const visit = note.visitAt(line);
  if (!visit) return '';
  if (subject.at === 'webs') return webs(visit.analysis, subject, explain);
  const rays = visit.analysis.rays.filter((ray) => isOf(ray, subject));
  const each = (ray: (typeof rays)[number]) =>
    explain.describeRay(visit.analysis, ray, (evidence) => textOf(visit, evidence));
  return rays.map(each).join(RULE);
}
const RULE = '\n\n---\n\n';

function webs(
  analysis: VisitAnalysis,
  { webs: named, side }: Extract<SubjectNode, { at: 'webs' }>,
  { describeWeb }: Explain,
): string {
  const sides = (['right', 'left'] as const).filter((each) => side === undefined || side === 'both' || side === each);
  const all = sides.flatMap((on) => named.map((web) => describeWeb(analysis, on, web)));
  return all.filter((text) => text !== '').join(RULE);
}

const textOf = ({ lines }: Visit, { place }: Evidence): string =>
  lines[place.line]?.text.slice(place.start, place.end) ?? '';

const header = ({ line, role, text }: WordAt): string =>
  (line.kind === 'header' || (PREFIXES.includes(text.toLowerCase()) && role === line.roles[0])) &&
  role.kind === 'keyword'
    ? (HEADER_WORDS[text.toLowerCase()]?.about ?? '')
    : '';
/** Words before the statements of a line. */
const PREFIXES: readonly string[] = PREFIX_WORDS;
