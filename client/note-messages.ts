/** To the page of the clinic note. */
export type ToPage =
  | {
      readonly is: 'note';
      readonly uri: string;
      readonly line: number;
      readonly html: string;
      readonly computed: boolean;
      readonly version: number;
    }
  | { readonly is: 'cursor'; readonly line: number }
  | { readonly is: 'status'; readonly text: string };

/** From the page, once it has been checked. */
export type FromPage =
  | { readonly is: 'ready' }
  | { readonly is: 'copy' }
  | { readonly is: 'computed'; readonly wanted: boolean }
  | {
      readonly is: 'select';
      readonly line: number;
      readonly start: number;
      readonly end: number;
      readonly version: number;
    };

/** What the page keeps over a reload of the window. */
export interface PageState {
  readonly uri: string;
  readonly line: number;
  readonly computed: boolean;
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const isPlace = (value: unknown): value is number => typeof value === 'number' && Number.isInteger(value) && value >= 0;

/** Checks what came from the page; undefined when it is nothing that the page sends. */
export function readFromPage(value: unknown): FromPage | undefined {
  if (!isRecord(value)) return undefined;
  const { is, wanted, line, start, end, version } = value;
  if (is === 'ready' || is === 'copy') return { is };
  if (is === 'computed' && typeof wanted === 'boolean') return { is, wanted };
  if (is === 'select' && isPlace(line) && isPlace(start) && isPlace(end) && isPlace(version))
    return { is, line, start, end, version };
  return undefined;
}

/** Checks what an earlier page has kept; undefined when it can't be used. */
export function readPageState(value: unknown): PageState | undefined {
  if (!isRecord(value)) return undefined;
  const { uri, line, computed } = value;
  return typeof uri === 'string' && isPlace(line) && typeof computed === 'boolean'
    ? { uri, line, computed }
    : undefined;
}
