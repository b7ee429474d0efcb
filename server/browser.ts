import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createProtocolConnection,
} from 'vscode-languageserver-protocol/browser';
import { serve } from './connection.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;

serve(createProtocolConnection(new BrowserMessageReader(worker), new BrowserMessageWriter(worker)), {
  now: () => new Date(),
  exit: () => worker.close(),
  watchParent: () => undefined,
});
