import { random } from './generator.mjs';

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

/**
 * Edits of one character each on a line of the second ray, for ever: the drawer's grade and the angle are deleted and
 * typed anew, a finding and a quoted remark are typed and deleted letter by letter. Facts, stage and reports change with
 * them. A remark is never the same twice, so that no reader gains by remembering lines.
 * @yields {{ start: number, end: number, text: string, line: string }} the edit, and the line after it
 */
export function* typing(line, seed) {
  const next = random(seed);
  let now = line;
  const edit = (start, end, text) => {
    now = now.slice(0, start) + text + now.slice(end);
    return { start, end, text, line: now };
  };
  const digitAfter = (pattern) => {
    const match = pattern.exec(now);
    return match ? match.index + match[0].length - 1 : undefined;
  };
  for (;;) {
    const remark = Array.from({ length: 7 }, () => LETTERS[Math.floor(next() * 26)]).join('');
    const typed = ` "${remark}", extended`;
    for (const letter of typed) yield edit(now.length, now.length, letter);
    for (const [pattern, digits] of [
      [/drawer \d/, '0123'],
      [/medial \d/, '12'],
    ]) {
      const at = digitAfter(pattern);
      if (at === undefined) continue;
      yield edit(at, at + 1, '');
      yield edit(at, at, digits[Math.floor(next() * digits.length)]);
    }
    for (let left = typed.length; left > 0; left--) yield edit(now.length - 1, now.length, '');
  }
}
