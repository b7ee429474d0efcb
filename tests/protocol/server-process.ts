import { type ChildProcessByStdio, spawn } from 'node:child_process';
import type { Readable, Writable } from 'node:stream';
import {
  createMessageConnection,
  type MessageConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-jsonrpc/node';
import type { Diagnostic } from 'vscode-languageserver-types';

export interface Published {
  readonly uri: string;
  readonly version: number;
  readonly diagnostics: readonly Diagnostic[];
}

/** The built server as an editor sees it: a process that speaks over its standard streams. */
export class ServerProcess {
  readonly process: ChildProcessByStdio<Writable, Readable, null>;
  readonly connection: MessageConnection;
  readonly published: Published[] = [];
  readonly logged: string[] = [];
  readonly exited: Promise<number | null>;
  private waiting: (() => void)[] = [];

  constructor(...args: string[]) {
    this.process = spawn(process.execPath, ['dist/server.js', ...args], { stdio: ['pipe', 'pipe', 'inherit'] });
    this.exited = new Promise((resolve) => this.process.once('exit', (code) => resolve(code)));
    this.connection = createMessageConnection(
      new StreamMessageReader(this.process.stdout),
      new StreamMessageWriter(this.process.stdin),
    );
    this.connection.onNotification('textDocument/publishDiagnostics', (params: Published) => {
      this.published.push(params);
      for (const wake of this.waiting.splice(0)) wake();
    });
    this.connection.onNotification('window/logMessage', ({ message }: { message: string }) => {
      this.logged.push(message);
    });
    this.connection.listen();
  }

  async initialize(
    capabilities: object = {},
    options: object = { today: '2026-05-04' },
    rootUri: string | null = null,
  ): Promise<{ capabilities: Record<string, unknown> }> {
    const result = await this.request<{ capabilities: Record<string, unknown> }>('initialize', {
      processId: process.pid,
      rootUri,
      capabilities,
      initializationOptions: options,
    });
    await this.connection.sendNotification('initialized', {});
    return result;
  }
  request<T = unknown>(method: string, params?: object): Promise<T> {
    return params ? this.connection.sendRequest<T>(method, params) : this.connection.sendRequest<T>(method);
  }
  notify(method: string, params?: object): void {
    void (params ? this.connection.sendNotification(method, params) : this.connection.sendNotification(method));
  }
  /** Asks about an open document. */
  about<T = unknown>(method: string, uri: string, params: object = {}): Promise<T> {
    return this.request<T>(method, { textDocument: { uri }, ...params });
  }
  open(uri: string, text: string, version = 1): Promise<Published> {
    this.notify('textDocument/didOpen', { textDocument: { uri, languageId: 'forefoot', version, text } });
    return this.diagnosticsOf(uri, version);
  }
  change(uri: string, version: number, ...contentChanges: object[]): Promise<Published> {
    this.notify('textDocument/didChange', { textDocument: { uri, version }, contentChanges });
    return this.diagnosticsOf(uri, version);
  }
  /** The first diagnostics of a version that satisfy the test. */
  async diagnosticsOf(
    uri: string,
    version: number,
    wanted: (published: Published) => boolean = () => true,
  ): Promise<Published> {
    for (;;) {
      const found = this.published.find((each) => each.uri === uri && each.version === version && wanted(each));
      if (found) return found;
      await new Promise<void>((resolve) => this.waiting.push(resolve));
    }
  }
  async stop(): Promise<number | null> {
    await this.request('shutdown');
    this.notify('exit');
    return this.exited;
  }
}
