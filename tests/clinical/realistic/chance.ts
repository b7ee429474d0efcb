/** A seeded source of choices: the same seed writes the same note on every machine. */
export class Chance {
  private state: number;
  constructor(seed: number) {
    this.state = (seed * 2_654_435_761) >>> 0;
  }
  /** From 0 up to, not including, 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  }
  whole(low: number, high: number): number {
    return low + Math.floor(this.next() * (high - low + 1));
  }
  likely(share: number): boolean {
    return this.next() < share;
  }
  pick<T>(list: readonly T[]): T {
    return list[Math.floor(this.next() * list.length)] as T;
  }
  /** The text in so many of the notes, else nothing. */
  maybe(share: number, text: string): string {
    return this.likely(share) ? text : '';
  }
}
