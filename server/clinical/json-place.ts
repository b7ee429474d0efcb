/** A fault in a text that should be JSON (RFC 8259), with its place: `line 2, column 13: expected a value, not x`. */
class Fault extends Error {}

const SPACE = /[ \t\r\n]*/y;
const STRING = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const SCALAR = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)/y;
/** A settings file nests three deep. */
const DEEPEST = 50;

class Scanner {
  private at = 0;
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  whole(): void {
    this.value(0);
    if (this.at < this.text.length) throw this.fault('expected the end of the file');
  }

  private value(depth: number): void {
    if (depth > DEEPEST) throw this.fault('nested too deeply');
    this.skip();
    if (this.takes('{')) this.members(depth);
    else if (this.takes('[')) this.items(depth);
    else if (this.match(STRING) === undefined && this.match(SCALAR) === undefined) throw this.fault('expected a value');
    this.skip();
  }

  private members(depth: number): void {
    const keys = new Set<string>();
    this.skip();
    if (this.takes('}')) return;
    do {
      this.skip();
      const start = this.at;
      const key = this.match(STRING);
      if (key === undefined) throw this.fault('expected a key in double quotes');
      if (keys.has(key)) throw this.fault(`${key} stands twice; expected each key once`, start);
      keys.add(key);
      this.skip();
      if (!this.takes(':')) throw this.fault('expected ":"');
      this.value(depth + 1);
    } while (this.takes(','));
    if (!this.takes('}')) throw this.fault('expected "," or "}"');
  }

  private items(depth: number): void {
    this.skip();
    if (this.takes(']')) return;
    do this.value(depth + 1);
    while (this.takes(','));
    if (!this.takes(']')) throw this.fault('expected "," or "]"');
  }

  private takes(mark: string): boolean {
    if (this.text[this.at] !== mark) return false;
    this.at++;
    return true;
  }
  private skip(): void {
    this.match(SPACE);
  }
  private match(shape: RegExp): string | undefined {
    shape.lastIndex = this.at;
    const [found] = shape.exec(this.text) ?? [];
    if (found !== undefined) this.at += found.length;
    return found;
  }

  private fault(expected: string, at = this.at): Fault {
    const before = this.text.slice(0, at).split(/\r\n|\n|\r/);
    const place = `line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`;
    if (expected.includes(';') || expected.startsWith('nested')) return new Fault(`${place}: ${expected}`);
    const [word] = /^[\w.+-]{1,20}|^\P{Cc}/u.exec(this.text.slice(at)) ?? [];
    return new Fault(`${place}: ${expected}, not ${word ?? (at < this.text.length ? 'this' : 'the end of the file')}`);
  }
}

/** What keeps a text from being JSON in which each key of an object stands once, in one line with its place; `undefined` where nothing does. */
export function jsonFault(text: string): string | undefined {
  try {
    new Scanner(text).whole();
    return undefined;
  } catch (error) {
    if (error instanceof Fault) return error.message;
    throw error;
  }
}
