import type { Span } from '../values.ts';
import { type Draft, findingsIn, kindOfSubject, type StatementDraft } from './draft.ts';

const SPOKEN_STOP = /(?:^|\s)(?:full stop|period|stop|semicolon)\s*$/i;

/**
 * What is as often of the whole foot, in a later sentence than the toe that it would inherit: of dictated sentences nobody knows (`second toe
 * in line full stop swelling moderate`). An operation without complications had none at any ray.
 */
export function stopReach(statements: readonly StatementDraft[], line: string): void {
  for (const { start, elements } of statements) {
    const spoken = start > 0 && SPOKEN_STOP.test(line.slice(0, start));
    for (const draft of findingsIn(elements)) {
      const { subject, id, causes } = draft;
      if (!subject || kindOfSubject(subject) !== 'ray' || id === 'panel') continue;
      if (id === 'complication' && draft.status === 'absent' && isApart(draft, subject, line)) delete draft.subject;
      else if (spoken && subject.end <= start && id === 'swelling')
        causes.push({ why: 'toe or foot', text: '', start: draft.word.start, end: draft.word.end });
    }
  }
}

/** Has anything come between a subject and what inherits it? */
const isApart = ({ start }: Draft, subject: Span, line: string): boolean => /\S/.test(line.slice(subject.end, start));
