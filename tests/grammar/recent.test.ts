import { describe, expect, test } from 'vitest';
import { Recent } from '../../grammar/recent.ts';

describe('a map that forgets', () => {
  test('never holds more than its limit', () => {
    const map = new Recent<number, number>(10);
    for (let key = 0; key < 1_000; key++) map.set(key, key);
    const held = Array.from({ length: 1_000 }, (_, key) => map.get(key)).filter((value) => value !== undefined);
    expect(held.length).toBeLessThanOrEqual(10);
    expect(held.at(-1)).toBe(999);
  });
  test('keeps what is asked for again and again', () => {
    const map = new Recent<string, number>(10);
    map.set('often', 1);
    for (let key = 0; key < 1_000; key++) {
      map.set(String(key), key);
      expect(map.get('often')).toBe(1);
    }
    expect(map.get('0')).toBeUndefined();
  });
});
