import { describe, expect, test } from 'vitest';
import { delays, restartPolicy, wellAfter } from '../../client/restarts.ts';

describe('a server that stops', () => {
  test('is restarted at once the first time, later after growing waits', () => {
    const policy = restartPolicy();
    const waits = delays.map((_, second) => policy.afterStop(second * 1_000));
    expect(waits).toEqual(delays);
    expect(waits[0]).toBe(0);
    expect(waits).toEqual([...waits].sort((a, b) => Number(a) - Number(b)));
  });

  test('is left alone once it has stopped too often in a short time', () => {
    const policy = restartPolicy();
    for (const _ of delays) policy.afterStop(0);
    expect(policy.afterStop(1)).toBeUndefined();
  });

  test('counts as well again after a long run', () => {
    const policy = restartPolicy();
    for (const _ of delays) policy.afterStop(0);
    expect(policy.afterStop(wellAfter)).toBe(0);
  });

  test('starts anew when a person restarts it', () => {
    const policy = restartPolicy();
    for (const _ of delays) policy.afterStop(0);
    policy.forget();
    expect(policy.afterStop(1)).toBe(0);
  });
});
