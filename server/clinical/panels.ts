import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Status } from '../../grammar/values.ts';

/** What `normal` says of a subject. What a panel does not name stays not mentioned: a joint's stability is never taken from it. */
export interface Panel {
  readonly members: readonly { readonly finding: FindingId; readonly status: Status }[];
}

export const PANELS: Readonly<Record<'ray' | 'web', Panel>> = {
  ray: {
    members: [
      { finding: 'swelling', status: 'absent' },
      { finding: 'tenderness', status: 'absent' },
      { finding: 'deviation', status: 'absent' },
      { finding: 'overlap', status: 'absent' },
    ],
  },
  web: {
    members: [
      { finding: 'click', status: 'absent' },
      { finding: 'squeeze', status: 'absent' },
      { finding: 'numbness', status: 'absent' },
    ],
  },
};
