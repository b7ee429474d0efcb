import { expect, test } from 'vitest';
import { stageTooltip } from '../../client/stage-text.ts';

test('the tooltip tells what is computed from what is stated, and that the clinician decides', () => {
  const rays = [
    { side: 'right', ray: 2, stage: 'stage 2', stated: '1' },
    { side: 'right', ray: 3, stage: 'stage 0-1' },
  ];
  expect(stageTooltip({ text: '2nd right: stage 2; 3rd right: stage 0-1', rays }).split('\n')).toEqual([
    '2nd right: stage 2, computed; stated: stage 1.',
    '3rd right: stage 0-1, computed; no stage stated.',
    'Decision support: the clinician decides. Opens the clinic note.',
  ]);
});
