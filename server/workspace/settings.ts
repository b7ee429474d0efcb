/** What the workspace may set; every part is optional. */
export interface Settings {
  /** The day that counts as today, for a note that is read later than it was written. */
  readonly today?: string;
}

/** Reads settings as a client sends them; what has the wrong shape is ignored. */
export function settingsOf(sent: unknown): Settings {
  const today = typeof sent === 'object' && sent !== null && 'today' in sent ? sent.today : undefined;
  return typeof today === 'string' && isDay(today) ? { today } : {};
}

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text)) && new Date(text).toISOString().startsWith(text);

/** The local calendar day, ISO. */
export function systemDay(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
