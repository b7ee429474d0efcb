import { SECTION_WORDS } from '../../../grammar/lexicon/closed-words.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';

/** Words that would say something else of the section that they stand before: it was not tried, it might be planned. */
const TURNING =
  /\b(?:not|no|never|nor|neither|without|would|could|should|might|may|if|unless|until|before|did|does|do|to|we|i|he|she|they|\w+n['’]?t)\b/i;
const NEAR = 4;

/**
 * Is a section word (the role at an index) part of what stands before it, as in `has not tried` or `would not plan`? A line of its own would
 * part it from its denial. Before `tried`, a verb, any word that was not read may turn it; before other sections a few words do.
 */
export function isTurned({ text, roles }: LineSyntax, at: number): boolean {
  const role = roles[at];
  if (!role) return false;
  const before = roles.slice(0, at);
  const opened = before.findLastIndex(({ kind }) => kind === 'punctuation' || kind === 'keyword');
  const own = before.slice(opened + 1);
  const said = text.slice(own[0]?.start ?? role.start, role.start).trim();
  if (SECTION_WORDS[text.slice(role.start, role.end).toLowerCase()]?.section === 'tried')
    return own.some(({ kind }) => kind === 'reported' || kind === 'modifier');
  return TURNING.test(said.split(/\s+/).slice(-NEAR).join(' '));
}
