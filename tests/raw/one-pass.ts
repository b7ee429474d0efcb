import type { NoteAnalysis } from '../../server/clinical/analyse-note.ts';
import type { Fix } from '../../server/clinical/analysis.ts';
import { unreadFixes } from '../../server/clinical/line-fixes.ts';

/**
 * The note after one pass of the fixes that are offered for unread words, as somebody in a hurry takes them: a line of which
 * nothing was read clearly is kept as history where that is offered, else what isn't understood of it becomes remarks.
 */
export function afterOnePass({ lines, visits }: NoteAnalysis): string {
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
      const wanted = clear ? [/as quoted remarks/] : [/as history/, /as quoted remarks/];
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
