/** Do two plain values (records, lists, scalars) hold the same? */
export function sameStructure(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [left, right] = [Object.entries(a), b as Readonly<Record<string, unknown>>];
  if (left.length !== Object.keys(right).length) return false;
  return left.every(([key, value]) => Object.hasOwn(right, key) && sameStructure(value, right[key]));
}
