import type { ReadingProblem, Role } from '../syntax.ts';
import type { Span } from '../values.ts';
import type { Item } from './items.ts';

/** The lower-case text of a word; empty for every other item. */
export const lower = (item: Item | undefined): string => (item?.is === 'word' ? item.text.toLowerCase() : '');

/** The state of reading one header line. */
export class HeaderReader {
  readonly roles: Role[] = [];
  readonly problems: ReadingProblem[] = [];
  readonly line: string;
  readonly items: readonly Item[];
  private taken = 1;

  constructor(line: string, items: readonly Item[]) {
    this.line = line;
    this.items = items;
  }
  role(kind: Role['kind'], at: Span, canonical?: string): void {
    this.roles.push({ kind, start: at.start, end: at.end, ...(canonical ? { canonical } : {}) });
  }
  bad(at: Span): void {
    this.role('reported', at);
    this.problems.push({ code: 'bad-header', text: this.line.slice(at.start, at.end), start: at.start, end: at.end });
  }
  /** Keeps an item as typed; what is said of it is said once for all of the line. */
  refuse(at: Span): true {
    this.role('reported', at);
    return true;
  }
  /** The known form of up to four items that starts at an index, longest first; as typed, so that `a&e` is one. */
  formAt<K>(i: number, forms: ReadonlyMap<string, K>): { value: K; next: number } | undefined {
    for (let next = Math.min(i + 4, this.items.length); next > i; next--) {
      const [start = 0, end = 0] = [this.items[i]?.start, this.items[next - 1]?.end];
      const value = forms.get(this.line.slice(start, end).toLowerCase().replace(/\s+/g, ' '));
      if (value !== undefined) return { value, next };
    }
    return undefined;
  }
  /** Gives the items before `next` one role; `each` passes over them. */
  take(i: number, next: number, canonical?: string): void {
    const [start = 0, end = 0] = [this.items[i]?.start, this.items[next - 1]?.end];
    this.role('value', { start, end }, canonical);
    this.taken = next;
  }
  /** Gives each item after the keyword to `take`; what it refuses is reported. */
  each(take: (item: Item, index: number) => boolean): void {
    for (let i = 1; i < this.items.length; i++) {
      const item = this.items[i] as Item;
      if (i < this.taken) continue;
      if (item.is === 'comment') this.role('comment', item);
      else if (item.is === 'break' || item.is === 'keeper') this.role('punctuation', item);
      else if (!take(item, i)) this.bad(item);
    }
  }
}
