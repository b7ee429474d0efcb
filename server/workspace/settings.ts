/** What the workspace may set; every part is optional. */
export interface Settings {
  /** The day that counts as today, for a note that is read later than it was written. */
  readonly today?: string;
  /** A dictated line is converted when it is left. */
  readonly convertDictation?: true;
}

/** Reads settings as a client sends them; what has the wrong shape is ignored. */
export function settingsOf(sent: unknown): Settings {
  const { today, convertDictation } = (typeof sent === 'object' && sent !== null ? sent : {}) as Record<
    string,
    unknown
  >;
  return {
    ...(typeof today === 'string' && isDay(today) ? { today } : {}),
    ...(convertDictation === true ? { convertDictation } : {}),
  };
}

const isDay = (text: string): boolean =>
  /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(Date.parse(text)) && new Date(text).toISOString().startsWith(text);

/** The local calendar day, ISO. */
export function systemDay(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
