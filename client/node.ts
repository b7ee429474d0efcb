import type { ExtensionContext } from 'vscode';
import { LanguageClient, type NodeModule, TransportKind } from 'vscode-languageclient/node';
import { activateWith } from './extension.ts';
import type { Server } from './server-life.ts';

let server: Server | undefined;

export function activate(context: ExtensionContext): void {
  const module: NodeModule = { module: context.asAbsolutePath('dist/server.js'), transport: TransportKind.stdio };
  server = activateWith(
    context,
    (options) => new LanguageClient('forefoot', 'Forefoot Notes', { run: module, debug: module }, options),
  );
}

export function deactivate(): Promise<void> | undefined {
  return server?.stop();
}
