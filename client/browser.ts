import { type ExtensionContext, Uri, workspace } from 'vscode';
import { LanguageClient } from 'vscode-languageclient/browser';
import { activateWith } from './extension.ts';
import type { Server } from './server-life.ts';

let server: Server | undefined;

/** A worker can't be made from an address that only the editor can read; then from the text that stands there. */
async function startWorker(script: Uri): Promise<Worker> {
  if (/^https?$/.test(script.scheme)) return new Worker(script.toString(true));
  const text = new TextDecoder().decode(await workspace.fs.readFile(script));
  const address = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
  try {
    return new Worker(address);
  } finally {
    URL.revokeObjectURL(address);
  }
}

export function activate(context: ExtensionContext): void {
  const script = Uri.joinPath(context.extensionUri, 'dist', 'server-browser.js');
  server = activateWith(
    context,
    (options) => new LanguageClient('forefoot', 'Forefoot Notes', () => startWorker(script), options),
  );
}

export function deactivate(): Promise<void> | undefined {
  return server?.stop();
}
