import type { NoteAnalysis } from '../../server/clinical/analyse-note.ts';
import type { Fix } from '../../server/clinical/analysis.ts';
import { unreadFixes } from '../../server/clinical/line-fixes.ts';

const READ = /^Read the findings/;

/**
 * The note after one pass of the fixes that are offered for unread words, as somebody in a hurry takes them: the findings are read
 * where that is offered and says what was meant (`declined` are the lines, from 1, where it does not); a line of which nothing
 * was read clearly is kept as history, and of any other what isn't understood becomes remarks.
 */
export function afterOnePass({ lines, visits }: NoteAnalysis, declined: ReadonlySet<number> = new Set()): string {
  const mended = [...lines];
  for (const { firstLine, syntax, analysis } of visits) {
    const fixesOf = unreadFixes(syntax, analysis.facts);
    const offered = new Map<number, Fix[]>();
    for (const report of analysis.reports) {
      const known = offered.get(report.place.line) ?? [];
      offered.set(report.place.line, [...known, ...fixesOf(report)]);
    }
    for (const [line, fixes] of offered) {
      const clear = analysis.facts.facts.some(
        ({ clarity, origin }) => clarity === 'clear' && origin.place.line === line,
      );
      const kept = clear ? [/as quoted remarks/] : [/^Keep this line as history/, /as quoted remarks/];
      const wanted = declined.has(firstLine + line + 1) ? kept : [READ, ...kept];
      const fix = wanted.map((title) => fixes.find((each) => title.test(each.title))).find((each) => each);
      if (fix) mended[firstLine + line] = edited(lines[firstLine + line] ?? '', fix);
    }
  }
  return mended.join('\n');
}

function edited(text: string, { edits }: Fix): string {
  return edits
    .flatMap((each) => (each.edit === 'replace' ? [each] : []))
    .sort((a, b) => b.place.start - a.place.start)
    .reduce((line, { place, text: words }) => line.slice(0, place.start) + words + line.slice(place.end), text);
}
