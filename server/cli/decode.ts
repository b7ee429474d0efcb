import { isUtf8 } from 'node:buffer';

export type Decoded = { readonly text: string } | { readonly problem: string };

/** Reads the bytes of a note: UTF-8, strictly, or UTF-16 that says so by its byte order mark. */
export function decode(bytes: Buffer): Decoded {
  const marked = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff;
  if (marked) return utf16(bytes, marked === true ? 'utf-16be' : marked);
  const zero = bytes.indexOf(0);
  if (zero >= 0) return { problem: halfOfZeros(bytes) ? UNMARKED : `not a text file (zero byte at byte ${zero + 1})` };
  if (isUtf8(bytes)) return { text: bytes.toString('utf8') };
  const looks = looksLikeWindows1252(bytes) ? ' (looks like Windows-1252)' : '';
  return { problem: `not valid UTF-8 at byte ${firstInvalid(bytes) + 1}${looks}; save it as UTF-8` };
}

const UNMARKED = 'not valid UTF-8 (looks like UTF-16 without a byte order mark); save it as UTF-8';

function utf16(bytes: Buffer, encoding: 'utf-16le' | 'utf-16be'): Decoded {
  try {
    return { text: new TextDecoder(encoding, { fatal: true }).decode(bytes) };
  } catch {
    return { problem: `not valid ${encoding.slice(0, 6).toUpperCase()}, although its byte order mark says so` };
  }
}

/** Plain text in UTF-16 has a zero in every second byte. */
function halfOfZeros(bytes: Buffer): boolean {
  const start = bytes.subarray(0, 512);
  const zeros = start.filter((byte) => byte === 0).length;
  return zeros > start.length * 0.4 && zeros < start.length * 0.6;
}

/** 0-based offset of the first byte that no UTF-8 text has there. */
function firstInvalid(bytes: Buffer): number {
  const text = bytes.toString('utf8');
  for (let at = text.indexOf('\ufffd'); at >= 0; at = text.indexOf('\ufffd', at + 1)) {
    const offset = Buffer.byteLength(text.slice(0, at));
    if (bytes.toString('latin1', offset, offset + 3) !== '\u00ef\u00bf\u00bd') return offset;
  }
  return 0;
}

/** Bytes that Windows-1252 leaves open, and control characters, speak against it. */
const looksLikeWindows1252 = (bytes: Buffer): boolean => {
  const open = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
  return bytes.every((byte) => (byte < 0x20 ? byte === 9 || byte === 10 || byte === 13 : !open.includes(byte)));
};
