import { entryOf } from '../../grammar/lexicon/index.ts';
import { subjectText } from '../../grammar/reader/read-subjects.ts';
import type { FindingNode, LineSyntax } from '../../grammar/syntax.ts';
import type { Fix, Report } from './analysis.ts';
import { replace } from './rules/define-rule.ts';

/** `callus, tender`, `tender, medial`: one fix for each thing that may have been meant, where the finding before the comma leaves it open. */
export function oneOfTwo({ text, statements }: LineSyntax, { code, place, related }: Report): Fix[] {
  const at = related[0]?.place;
  if (code !== 'unclear-finding' || !at) return [];
  const findings = statements.flatMap((each) => each.findings);
  const node = findings.find(({ word }) => word.start === at.start);
  const before = findings.find(({ word }) => word.start === place.start && word.start < at.start);
  if (!node || !before || !node.causes.some(({ why, text: of }) => OPEN.has(why) && of === '')) return [];
  const fix = (title: string, start: number, words: string): Fix => ({
    title: `${title}: ${words.trim()}`,
    safety: 'needs review',
    edits: [replace({ line: at.line, start, end: at.end }, words)],
  });
  const word = text.slice(at.start, at.end);
  if (node.id === 'deviation') return [fix('Say that the toe deviates', at.start, `deviation ${word}`)];
  if (node.id !== 'tenderness') return [];
  const own = node.subject ? [fix('Say it of the joint', at.start, `${subjectText(node.subject)} ${word}`)] : [];
  if (before.id === 'panel' || !takes(before, word)) return own;
  return [fix(`Say it of the ${entryOf(before.id).word}`, before.end, ` ${word}`), ...own];
}

const OPEN: ReadonlySet<string> = new Set(['either neighbour', 'foreign part']);

/** `no ulcer, callus`: denied too, or there? */
export function deniedOrNot({ text, statements }: LineSyntax, { code, place, related }: Report): Fix[] {
  const at = related[0]?.place;
  const node = statements.flatMap((each) => each.findings).find(({ word }) => word.start === at?.start);
  if (code !== 'unclear-finding' || !at || place.start !== at.start || node?.causes[0]?.why !== 'reach of no')
    return [];
  const comma = text.lastIndexOf(',', at.start);
  if (comma < 0 || text.slice(comma + 1, at.start).trim() !== '') return [];
  const word = text.slice(at.start, at.end);
  const edit = (title: string, start: number, words: string): Fix => ({
    title: `${title} ${word}`,
    safety: 'needs review',
    edits: [replace({ line: at.line, start, end: at.end }, words)],
  });
  return [edit('Say that there is no', at.start, `no ${word}`), edit('Say that there is', comma, `; ${word}`)];
}

/** Has the finding a value of that word? */
function takes({ id }: FindingNode, word: string): boolean {
  if (id === 'panel') return false;
  return Object.values(entryOf(id).slots).some(
    (slot) => slot.kind === 'words' && Object.values(slot.values).some((forms) => forms.includes(word.toLowerCase())),
  );
}
