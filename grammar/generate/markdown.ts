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
