import type { CompletionItem, CompletionItemKind } from 'vscode-languageserver-types';
import type { Position } from '../workspace/blocks.ts';
import type { Note } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';
import { type Candidate, candidates } from './completion-candidates.ts';
import { contextOf } from './completion-context.ts';
import { describeFinding } from './describe-finding.ts';
import { COMPLETION } from './protocol-numbers.ts';

/** A phrase of several words is completed from any of its words. */
const LONGEST_PHRASE = 3;

/** What fits at a position, in the order of the exam; nothing inside a comment or a quote. */
export function completion(note: Note, { line, character }: Position): CompletionItem[] {
  const text = (note.line(line)?.text ?? '').slice(0, character);
  const items: CompletionItem[] = [];
  const seen = new Set<string>();
  for (const start of wordStarts(text).reverse()) {
    const typed = text.slice(start).toLowerCase();
    const phrase = typed.includes(' ');
    const context = contextOf(note, line, text.slice(0, start));
    if (!context) continue;
    for (const candidate of candidates(context)) {
      const filter = filterOf(candidate, typed);
      if (seen.has(candidate.label) || (phrase && !filter?.startsWith(typed))) continue;
      seen.add(candidate.label);
      items.push({
        label: candidate.label,
        kind: KINDS[candidate.kind],
        detail: candidate.detail,
        ...(candidate.about ? { documentation: { kind: 'markdown', value: describeFinding(candidate.about) } } : {}),
        filterText: filter ?? candidate.label,
        sortText: String(items.length).padStart(4, '0'),
        textEdit: { range: spanOn(line, start, character), newText: candidate.text },
      });
    }
  }
  return items;
}

const KINDS: Readonly<Record<Candidate['kind'], CompletionItemKind>> = {
  section: COMPLETION.module,
  header: COMPLETION.keyword,
  subject: COMPLETION.class,
  finding: COMPLETION.property,
  value: COMPLETION.enumMember,
  status: COMPLETION.operator,
};

/** Where the word under the cursor starts, then the words before it. */
function wordStarts(text: string): number[] {
  const starts: number[] = [];
  let end = text.length;
  while (starts.length < LONGEST_PHRASE) {
    const word = /[\p{L}\d'’/°+~<>?-]*$/u.exec(text.slice(0, end))?.[0] ?? '';
    starts.push(end - word.length);
    const space = / +$/.exec(text.slice(0, end - word.length))?.[0] ?? '';
    if (space === '' || end - word.length - space.length === 0) break;
    end -= word.length + space.length;
  }
  return starts;
}

/** The form that the typed letters begin: the canonical word, or another in which the finding is written. */
function filterOf({ label, forms }: Candidate, typed: string): string | undefined {
  const known = typed.endsWith(' ') ? [label] : [label, ...forms];
  return known.find((form) => form.toLowerCase().startsWith(typed));
}
