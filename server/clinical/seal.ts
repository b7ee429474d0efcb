/** Letters and digits that are not mistaken for each other: no `i`, `l`, `o`, `u`. */
const DIGITS = '0123456789abcdefghjkmnpqrstvwxyz';
const CHARACTERS = 6;

/** The words of a line as they are sealed: without comment, white space as single spaces; empty for a blank line. */
const sealedWords = (text: string): string => text.normalize('NFC').trim().replace(/\s+/g, ' ');

/**
 * A short checksum over the words of some lines, such as `k3f9-2p`: 30 bits of FNV-1a over code points, mixed once more.
 * Blank lines, white space at either end and its width elsewhere don't count; comments are left out by the caller. It is
 * computed offline and never changes, so that a seal written today is checked for ever. It shows that words were altered,
 * not by whom; it is no cryptographic signature.
 */
export function sealOf(lines: readonly string[]): string {
  const words = lines.map(sealedWords).filter((line) => line !== '');
  let hash = 0x811c9dc5;
  for (const character of words.join('\n')) {
    const code = character.codePointAt(0) ?? 0;
    for (const byte of [code & 0xff, (code >>> 8) & 0xff, code >>> 16]) hash = Math.imul(hash ^ byte, 0x01000193);
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  hash ^= hash >>> 16;
  const text = Array.from({ length: CHARACTERS }, (_, at) => DIGITS.charAt((hash >>> (5 * at)) & 31)).join('');
  return `${text.slice(0, 4)}-${text.slice(4)}`;
}
