import type { StatementDraft } from '../reader/draft.ts';
import { ERASING } from './spoken-words.ts';

/**
 * `scratch that` where nothing is said again may take back all that its statement has said so far or, at its start, the whole
 * statement before: all of it is unclear.
 */
export function takenBackReach(statements: readonly StatementDraft[]): void {
  statements.forEach(({ elements }, at) => {
    elements.forEach((element, i) => {
      if (element.is !== 'distancing' || !ERASING.includes(element.cause.text.toLowerCase())) return;
      const here = elements.slice(0, i);
      const reached = here.some(({ is }) => is === 'finding') ? here : (statements[at - 1]?.elements ?? []);
      for (const each of reached)
        if (each.is === 'finding' && !each.draft.causes.includes(element.cause)) each.draft.causes.push(element.cause);
    });
  });
}
