import type { Report } from './analysis.ts';
import type { Settings } from './settings.ts';

/** Reports with the severity that the clinic gives their code. A danger keeps its own; `off` waits for `shown`. */
export function weighed(reports: readonly Report[], { severity: chosen }: Settings): Report[] {
  if (!chosen) return [...reports];
  return reports.map((report) => {
    const own = chosen[report.code];
    return own === undefined || own === 'off' || report.severity === 'danger' ? report : { ...report, severity: own };
  });
}

/** Without what the clinic turned off. Applied after allowances, which it must not make unused. */
export const shown = (reports: readonly Report[], { severity: chosen }: Settings): Report[] =>
  reports.filter(({ code, severity }) => chosen?.[code] !== 'off' || severity === 'danger');

export const settled = (reports: readonly Report[], settings: Settings): Report[] =>
  shown(weighed(reports, settings), settings);
