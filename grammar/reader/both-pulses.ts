import type { Span } from '../values.ts';
import type { Binder } from './binder.ts';

const PULSES: readonly string[] = ['pulses', 'dp', 'pt'];

/**
 * A bare `both` after pulses. Two that are named by an `and` are both pulses (`pulses dp and pt both palpable`); else it may be both pulses or both feet,
 * and with a result after it (`pulses both palpable`) nobody knows. False where it is read as a side.
 */
export function readBothPulses(binder: Binder, at: Span, awaitsResult: boolean): boolean {
  const last = binder.last();
  if (last?.is !== 'finding') return false;
  const { draft } = last;
  const { id, word, causes } = draft;
  const named = /\s(?:and|&)\s/i.test(binder.line.slice(word.start, word.end));
  if (!named && !(awaitsResult && PULSES.includes(id))) return false;
  if (!named) {
    causes.push({ why: 'both of what', text: '', start: word.start, end: word.end });
    draft.end = Math.max(draft.end, at.end);
  }
  binder.role(named ? 'filler' : 'modifier', at);
  return true;
}
