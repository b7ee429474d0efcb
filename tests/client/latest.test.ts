import { describe, expect, test } from 'vitest';
import { latest } from '../../client/latest.ts';

/** A task whose runs are ended by hand. */
function byHand() {
  const ends: (() => void)[] = [];
  const task = () => new Promise<void>((resolve) => ends.push(resolve));
  const settle = async () => {
    for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
  };
  return {
    task,
    runs: () => ends.length,
    async endLast() {
      ends.at(-1)?.();
      await settle();
    },
  };
}

describe('the latest of many calls', () => {
  test('starts at once', () => {
    const { task, runs } = byHand();
    latest(task)();
    expect(runs()).toBe(1);
  });

  test('runs once more for all calls that came meanwhile', async () => {
    const { task, runs, endLast } = byHand();
    const call = latest(task);
    for (let times = 0; times < 10; times += 1) call();
    expect(runs()).toBe(1);
    await endLast();
    expect(runs()).toBe(2);
    await endLast();
    expect(runs()).toBe(2);
  });

  test('starts again after it has come to rest', async () => {
    const { task, runs, endLast } = byHand();
    const call = latest(task);
    call();
    await endLast();
    call();
    expect(runs()).toBe(2);
  });
});
