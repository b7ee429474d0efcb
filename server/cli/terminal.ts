/** The ways out of a command, and standard input. */
export interface Terminal {
  /** Resolves when the text has left, so that a slow reader slows the work and not the memory. */
  readonly write: (text: string) => Promise<void>;
  /** One line on standard error. */
  readonly complain: (line: string) => void;
  /** Shows how far long work has come, on a terminal only. */
  readonly progress: (done: number) => void;
  readonly standardInput: () => Promise<Buffer>;
  /** Columns of the terminal, or of `COLUMNS`; missing where the output goes to a file, which takes whole lines. */
  readonly width?: number;
}

const EVERY_MS = 200;

export function processTerminal(): Terminal {
  const { stdout, stderr } = process;
  const leave = (error: NodeJS.ErrnoException): void => {
    // The reader of a pipe has gone (`| head`): nothing more can be said to it.
    if (error.code === 'EPIPE') process.exit();
    throw error;
  };
  stdout.on('error', leave);
  stderr.on('error', leave);
  // Beside results on the same terminal a counter would only disturb them.
  const counts = stderr.isTTY === true && stdout.isTTY !== true;
  let shownAt = Date.now();
  let shown = false;
  const clear = (): void => {
    if (shown) stderr.write('\r\u001b[K');
    shown = false;
  };
  process.once('exit', clear);
  const columns = stdout.columns ?? Number(process.env.COLUMNS);
  return {
    ...(columns >= 40 ? { width: Math.min(columns, 100) } : {}),
    write: (text) => new Promise((resolve) => stdout.write(text, () => resolve())),
    complain: (line) => {
      clear();
      stderr.write(`forefoot: ${line}\n`);
    },
    progress: (done) => {
      if (!counts || Date.now() - shownAt < EVERY_MS) return;
      shownAt = Date.now();
      shown = true;
      stderr.write(`\r${done} notes`);
    },
    standardInput: async () => {
      const parts: Buffer[] = [];
      for await (const part of process.stdin) parts.push(part as Buffer);
      return Buffer.concat(parts);
    },
  };
}
