/** The few shapes of Markdown that the reference is made of. */

export const code = (text: string): string => `\`${text}\``;
export const codes = (texts: readonly string[]): string => texts.map(code).join(', ');
export const list = (items: readonly string[]): string => items.map((item) => `- ${item}`).join('\n');
export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

const cell = (text: string): string => text.replaceAll('|', '\\|');
const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
}
export const paragraphs = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n\n');

/** What a link to a heading names. */
export const slugOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^a-z0-9 -]/g, '')
    .replaceAll(' ', '-');

const WIDTH = 160;
/** Long lines of words, each part after a comma on the next line where it is full; tables and samples stay as they are. */
export function wrapped(text: string): string {
  let sample = false;
  return text
    .split('\n')
    .map((line) => {
      if (line.startsWith('```')) sample = !sample;
      return sample || line.length <= WIDTH || /^[|#<]/.test(line) ? line : filled(line);
    })
    .join('\n');
}
function filled(line: string): string {
  const indent = line.startsWith('- ') ? '  ' : '';
  const lines = [''];
  // Never within a word in code; a line that starts with a sign could be taken for a list.
  for (const part of line.split(/(?<=, )(?=[`[\p{L}])(?=(?:[^`]*`[^`]*`)*[^`]*$)/u)) {
    const last = lines.at(-1) ?? '';
    if (last !== '' && (last + part).trimEnd().length > WIDTH) lines.push(indent + part);
    else lines[lines.length - 1] = last + part;
  }
  return lines.map((each) => each.trimEnd()).join('\n');
}
