import { BrowserMessageReader, BrowserMessageWriter, createMessageConnection } from 'vscode-jsonrpc/browser';
import { serve } from './connection.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;

serve(createMessageConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker)), {
  now: () => new Date(),
  exit: () => worker.close(),
  watchParent: () => undefined,
});
