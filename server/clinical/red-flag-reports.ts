import type { Report } from './analysis.ts';

/** Reports of a red flag, or of words that may be one. They come before all others in every output. */
const RED_FLAG_CODES: ReadonlySet<string> = new Set(['red-flag', 'acute-dislocation-incomplete', 'unread-red-flag']);

export const isRedFlagReport = ({ code }: Pick<Report, 'code'>): boolean => RED_FLAG_CODES.has(code);

/** A list that is cut short keeps these. */
export const isNeverLeftOut = ({ code, severity }: Pick<Report, 'code' | 'severity'>): boolean =>
  severity === 'danger' || RED_FLAG_CODES.has(code);
