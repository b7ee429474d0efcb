import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from 'vscode-jsonrpc/node';
import { decode } from './cli/decode.ts';
import { serve } from './connection.ts';

/** An editor that vanishes without a word is noticed within this time. */
const PARENT_CHECK = 3_000;

function watchParent(processId: number): void {
  const timer = setInterval(() => {
    try {
      process.kill(processId, 0);
    } catch {
      process.exit(1);
    }
  }, PARENT_CHECK);
  timer.unref();
}

function readText(uri: string): string | undefined {
  if (!uri.startsWith('file:///')) return undefined;
  try {
    const decoded = decode(readFileSync(fileURLToPath(uri)));
    if ('problem' in decoded) throw new Error(decoded.problem);
    return decoded.text;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT' || code === 'ENOTDIR' || code === 'ERR_INVALID_FILE_URL_PATH') return undefined;
    throw error;
  }
}

/** The reference of the rules as it stands beside the built server, in the repository and in the package. */
function rulesPage(): string | undefined {
  const path = join(__dirname, '..', 'server', 'RULES.md');
  return existsSync(path) ? pathToFileURL(path).href : undefined;
}

// Standard output carries the protocol alone; `--stdio` is accepted, since it is the only transport.
const rules = rulesPage();
serve(createMessageConnection(new StreamMessageReader(process.stdin), new StreamMessageWriter(process.stdout)), {
  ...(rules ? { rulesPage: rules } : {}),
  now: () => new Date(),
  exit: (code) => process.exit(code),
  watchParent,
  readText,
});
