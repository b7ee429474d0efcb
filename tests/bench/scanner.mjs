import { now } from './editor.mjs';
import { median } from './statistics.mjs';

const isLetter = (code) => (code >= 97 && code <= 122) || (code >= 65 && code <= 90) || code >= 0xc0;
const isDigit = (code) => code >= 48 && code <= 57;

/** The least that any reader must do: cut a text into words, numbers, quotes and signs by hand. Understands nothing. */
export function scan(text) {
  let tokens = 0;
  for (let at = 0; at < text.length; tokens++) {
    const code = text.charCodeAt(at);
    if (code === 34) {
      do at++;
      while (at < text.length && text.charCodeAt(at) !== 34 && text.charCodeAt(at) !== 10);
      at++;
    } else if (isLetter(code)) while (isLetter(text.charCodeAt(at))) at++;
    else if (isDigit(code)) while (isDigit(text.charCodeAt(at))) at++;
    else at++;
  }
  return tokens;
}

/** The scanner's speed over a whole text, in MB/s. */
export function scannerSpeed(text) {
  const took = [];
  let tokens = 0;
  for (let pass = 0; pass < 12; pass++) {
    const start = now();
    tokens += scan(text);
    took.push(now() - start);
  }
  if (tokens === 0) throw new Error('the scanner read nothing');
  return text.length / 1e6 / (median(took.slice(4)) / 1_000);
}
