import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';

const LIMIT = 60_000;
const URI = 'file:///bench/note.forefoot';
/** Counts from a fixed day, so that a run tomorrow computes what a run today does. */
const TODAY = '2026-01-01';

export const now = () => Number(process.hrtime.bigint()) / 1e6;

/** A scripted editor: drives the real server process over its standard streams, one message at a time. */
export class Editor {
  /** @param {string} server */
  constructor(server, { args = [] } = {}) {
    this.started = now();
    this.process = spawn(process.execPath, [...args, server, '--stdio'], {
      stdio: ['pipe', 'pipe', 'inherit', 'pipe'],
    });
    this.process.on('exit', () => this.fail(new Error('the server ended')));
    this.process.stdout.on('data', (chunk) => this.take(chunk));
    this.rest = Buffer.alloc(0);
    this.waiting = new Map();
    this.id = 0;
    this.version = 0;
    this.diagnostics = [];
  }

  fail(error) {
    for (const { reject } of this.waiting.values()) reject(error);
    this.waiting.clear();
  }
  take(chunk) {
    this.rest = this.rest.length === 0 ? chunk : Buffer.concat([this.rest, chunk]);
    for (;;) {
      const end = this.rest.indexOf('\r\n\r\n');
      if (end < 0) return;
      const length = Number(/content-length: *(\d+)/i.exec(this.rest.toString('latin1', 0, end))?.[1]);
      if (this.rest.length < end + 4 + length) return;
      const body = this.rest.toString('utf8', end + 4, end + 4 + length);
      this.rest = this.rest.subarray(end + 4 + length);
      this.receive(JSON.parse(body));
    }
  }
  receive(message) {
    if (message.method === 'textDocument/publishDiagnostics') {
      this.diagnostics = message.params.diagnostics;
      this.settle(`version ${message.params.version}`, message.params);
    } else if (message.method === 'window/logMessage') this.fail(new Error(message.params.message));
    else if (message.method && message.id !== undefined) this.send({ id: message.id, result: null });
    else if (message.error) this.fail(new Error(message.error.message));
    else if (message.id !== undefined) this.settle(`answer ${message.id}`, message.result);
  }
  settle(key, value) {
    this.waiting.get(key)?.resolve(value);
    this.waiting.delete(key);
  }
  wait(key) {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error(`no ${key} within ${LIMIT / 1000} s`)), LIMIT);
      const done = (settle) => (value) => {
        clearTimeout(timer);
        settle(value);
      };
      this.waiting.set(key, { resolve: done(resolve), reject: done(reject) });
    });
  }

  send(message) {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message });
    this.process.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  }
  request(method, params) {
    const id = ++this.id;
    const answer = this.wait(`answer ${id}`);
    this.send({ id, method, params });
    return answer;
  }

  /** Milliseconds from the start of the process to the answer. */
  async initialize() {
    const capabilities = { general: { positionEncodings: ['utf-16'] } };
    const initializationOptions = { today: TODAY };
    await this.request('initialize', { processId: process.pid, rootUri: null, capabilities, initializationOptions });
    const took = now() - this.started;
    this.send({ method: 'initialized', params: {} });
    return took;
  }
  /** Milliseconds until the diagnostics of the whole note have arrived. */
  async open(text) {
    const textDocument = { uri: URI, languageId: 'forefoot', version: ++this.version, text };
    return this.timed({ method: 'textDocument/didOpen', params: { textDocument } });
  }
  /** Milliseconds until the diagnostics of the new version have arrived. */
  async change(line, start, end, text) {
    const range = { start: { line, character: start }, end: { line, character: end } };
    return this.replace({ range, text });
  }
  async replace(change) {
    const textDocument = { uri: URI, version: ++this.version };
    return this.timed({ method: 'textDocument/didChange', params: { textDocument, contentChanges: [change] } });
  }
  async timed(message) {
    const arrival = this.wait(`version ${this.version}`);
    const start = now();
    this.send(message);
    await arrival;
    return now() - start;
  }

  /** What the system says of the process, in MB; nothing is collected or forced before it is asked. */
  memory() {
    const status = readFileSync(`/proc/${this.process.pid}/status`, 'utf8');
    const of = (field) => Number(new RegExp(`^${field}:\\s+(\\d+) kB`, 'm').exec(status)?.[1]) / 1024;
    return { resident: of('VmRSS'), anonymous: of('RssAnon'), peak: of('VmHWM') };
  }
  /** Milliseconds that the server's own thread has run so far; `undefined` where the system doesn't tell. What an edit took beyond that, it waited. */
  busy() {
    try {
      return Number(readFileSync(`/proc/${this.process.pid}/schedstat`, 'utf8').split(' ')[0]) / 1e6;
    } catch {
      return undefined;
    }
  }
  /** Heap in use after a collection, in MB; the process must hold the probe. */
  async heap() {
    const said = new Promise((resolve) => this.process.stdio[3].once('data', resolve));
    this.process.kill('SIGUSR2');
    return Number(String(await said)) / 1024 / 1024;
  }
  async close() {
    const ended = new Promise((resolve) => this.process.once('exit', resolve));
    await this.request('shutdown', null);
    this.send({ method: 'exit', params: null });
    await ended;
  }
}
