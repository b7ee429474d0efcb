import type { PanelMember } from './settings.ts';

/** What `normal` says of a subject where the clinic sets nothing else. What a panel does not name stays not mentioned: a joint's stability is never taken from it. */
export interface Panel {
  readonly members: readonly PanelMember[];
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
