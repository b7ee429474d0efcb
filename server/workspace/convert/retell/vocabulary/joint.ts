import type { Said } from './index.ts';

/** The joint and the toe of each ray. */
export const JOINT: Said = {
  drawer: {
    finding: { drawer: ['lock man', 'lockman', 'lachmans', 'draw test', 'drawers'] },
    value: { painful: ['hurts', 'with soreness'] },
  },
  lifted: {
    finding: {
      lifted: ['riding up', 'rides up', 'sits up', 'sitting up', 'sits proud', 'cocks up', 'sits high', 'riding high'],
    },
  },
  swelling: {
    finding: { swelling: ['bogginess'] },
    value: { dorsal: ['dorsum', 'on top', 'over the top'], plantar: ['underneath', 'from below'] },
  },
  tenderness: {
    value: { plantar: ['plantar base', 'under the joint', 'from below'], dorsal: ['over the top'] },
  },
};
