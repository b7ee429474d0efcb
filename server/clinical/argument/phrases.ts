import type { StageOutcome } from '../analysis.ts';
import type { STEPS } from '../deciding.ts';
import type { Gate } from '../gates.ts';

/** What an open gate means where it was asked, or where what is stated leaves it open. A new gate needs its words here; two go without saying. */
export const GATE_OPEN: Readonly<Partial<Record<Gate['id'], string>>> = {
  operated: 'an operation on this ray is denied',
  wound: 'no open wound is stated at this ray',
  symptoms: 'pain or tenderness was asked',
  growing: 'the patient is grown up',
  neuropathic: 'feeling was examined and protects',
  'acute injury': 'no injury or sudden onset under six weeks old is stated',
  systemic: 'nothing stated points to a disease of several joints',
};

/** An outcome after `it would be`. */
export function outcomePhrase(outcome: StageOutcome): string {
  switch (outcome.is) {
    case 'staged':
      return `stage ${outcome.stage}`;
    case 'span':
      return `between stage ${outcome.low} and stage ${outcome.high}`;
    case 'cannot stage':
      return `still without a stage (${outcome.why})`;
    case 'not applicable':
      return `without a stage (${outcome.why})`;
  }
}

const byValue = (words: Readonly<Record<string, string>>) => (value: unknown) => words[String(value)] ?? String(value);

/** What an exam step may show, after `with`. */
export const SHOWING: Readonly<Record<keyof typeof STEPS, (value: unknown) => string>> = {
  dislocated: byValue({ no: 'no dislocation', old: 'one that is old', undated: 'one that nobody can date' }),
  overlap: byValue({ no: 'no overlap', sometimes: 'an overlap at times', rest: 'an overlap at rest' }),
  drawer: byValue({
    0: 'a stable drawer',
    1: 'drawer 1',
    2: 'drawer 2',
    3: 'drawer 3',
    4: 'a joint that lies dislocated',
  }),
  tender: byValue({ true: 'tenderness there', false: 'no tenderness there' }),
  swollen: byValue({ true: 'swelling', false: 'no swelling' }),
  purchase: byValue({ normal: 'normal purchase', reduced: 'reduced purchase' }),
};

/** `a`, `a and b`, `a, b and c`. */
export const listed = (items: readonly string[], word = 'and'): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} ${word} ${items.at(-1)}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
