/**
 * A map that forgets, for what is pure and costs more to make than to find: at `limit` entries it drops the older half, except what
 * was asked for since. What it holds is bounded however long an editor stays open.
 */
export class Recent<K, V> {
  private recent = new Map<K, V>();
  private older = new Map<K, V>();
  private readonly limit: number;

  constructor(limit: number) {
    this.limit = limit;
  }

  get(key: K): V | undefined {
    const known = this.recent.get(key);
    if (known !== undefined) return known;
    const older = this.older.get(key);
    if (older !== undefined) this.set(key, older);
    return older;
  }

  set(key: K, value: V): void {
    if (this.recent.size >= this.limit / 2) {
      this.older = this.recent;
      this.recent = new Map();
    }
    this.recent.set(key, value);
  }
}
