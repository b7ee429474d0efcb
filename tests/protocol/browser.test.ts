import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { describe, expect, test } from 'vitest';

interface Message {
  readonly id?: number;
  readonly method?: string;
  readonly params?: { readonly diagnostics: readonly { readonly code: string }[] };
  readonly result?: { readonly serverInfo?: { readonly name: string } };
}

/** The built browser server in a global scope that has what a worker has, and nothing of Node. */
function worker() {
  const received: Message[] = [];
  let wake: () => void = () => undefined;
  const scope: Record<string, unknown> = {
    postMessage: (message: Message) => {
      received.push(message);
      wake();
    },
    addEventListener: () => undefined,
    close: () => undefined,
    onmessage: undefined,
    ...{ setTimeout, clearTimeout, TextDecoder, TextEncoder, queueMicrotask, console },
  };
  scope.self = scope;
  createContext(scope);
  runInContext(readFileSync('dist/server-browser.js', 'utf8'), scope);
  return {
    send: (message: object) =>
      (scope.onmessage as (event: { data: object }) => void)({ data: { jsonrpc: '2.0', ...message } }),
    receive: async (wanted: (message: Message) => boolean): Promise<Message> => {
      for (;;) {
        const found = received.find(wanted);
        if (found) return found;
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
    },
  };
}

describe('the server in a browser worker', () => {
  test('starts and checks a note without anything of Node', async () => {
    const { send, receive } = worker();
    send({ id: 1, method: 'initialize', params: { processId: null, capabilities: {} } });
    expect((await receive(({ id }) => id === 1)).result?.serverInfo?.name).toBe('forefoot');
    const textDocument = {
      uri: 'file:///a',
      languageId: 'forefoot',
      version: 1,
      text: 'visit 2026-03-09 right\n2nd blorp',
    };
    send({ method: 'textDocument/didOpen', params: { textDocument } });
    const { params } = await receive(({ method }) => method === 'textDocument/publishDiagnostics');
    expect(params!.diagnostics.map(({ code }) => code)).toContain('unknown-word');
  });
});
