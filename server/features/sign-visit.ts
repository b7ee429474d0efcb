import type { CodeAction } from 'vscode-languageserver-types';
import type { SyntaxEdit } from '../clinical/analysis.ts';
import type { Signature, VisitPart } from '../clinical/facts.ts';
import { sealedPart } from '../clinical/lifecycle.ts';
import type { Range } from '../workspace/blocks.ts';
import type { Note, Visit } from '../workspace/note.ts';
import { textEdits } from '../workspace/text-edits.ts';
import { linesOf } from './code-actions.ts';

/** As many signers as a menu holds. */
const OFFERED = 3;

/**
 * Offers to sign the visit, or its newest addendum, today and with a seal, as each signer that the note knows; or to seal
 * the words of a signature that has none. Words that a seal no longer fits are never signed again at a stroke.
 */
export function signVisit(note: Note, { start }: Range): CodeAction[] {
  const visit = note.visitAt(start.line);
  const part = visit && (visit.analysis.facts.lifecycle?.parts.at(-1) ?? { from: 0 });
  if (!visit || !part) return [];
  if (part.signature) return sealing(note, visit, part, part.signature);
  const afterLine = visit.lines.findLastIndex(({ kind }) => kind !== 'blank');
  const seal = sealedPart(visit.lines, part.from, afterLine + 1);
  const what = part.addendum ? 'addendum' : 'visit';
  const sign = (title: string, by: string): CodeAction => {
    const text = `signed   ${note.today} ${by}seal ${seal}`;
    return action(note, visit, title, { edit: 'insert line', afterLine, text });
  };
  const known = signersOf(note, visit.index);
  if (known.length === 0) return [sign(`Sign this ${what} (add your initials)`, '')];
  return known.map((by) => sign(`Sign this ${what} as ${by}`, `${by} `));
}

function sealing(note: Note, visit: Visit, part: VisitPart, { seal, place }: Signature): CodeAction[] {
  if (seal) return [];
  const text = ` seal ${sealedPart(visit.lines, part.from, place.line)}`;
  const at = { line: place.line, start: place.end, end: place.end };
  return [action(note, visit, 'Seal the signed words', { edit: 'replace', place: at, text })];
}

const action = (note: Note, { firstLine }: Visit, title: string, edit: SyntaxEdit): CodeAction => ({
  title,
  kind: 'source.signVisit',
  edit: { changes: { [note.uri]: textEdits([edit], firstLine, linesOf(note)) } },
});

/** Who signed in this note, the newest first, from the visit backwards. */
function signersOf(note: Note, index: number): string[] {
  const found = new Set<string>();
  for (let at = index; at > 0 && found.size < OFFERED; at--)
    for (const { header } of note.block(at).toReversed())
      if ((header?.is === 'signed' || header?.is === 'addendum') && header.by) found.add(header.by);
  return [...found].slice(0, OFFERED);
}
