import type { Terminal } from './terminal.ts';

/** Writes one JSON array record by record, so that a long list never stands in memory. */
export class JsonList {
  private readonly terminal: Terminal;
  private count = 0;

  constructor(terminal: Terminal) {
    this.terminal = terminal;
  }
  async add(records: readonly unknown[]): Promise<void> {
    const lines = records.map((record) => `${this.count++ === 0 ? '[\n' : ',\n'}${JSON.stringify(record)}`);
    if (lines.length > 0) await this.terminal.write(lines.join(''));
  }
  async end(): Promise<void> {
    await this.terminal.write(this.count === 0 ? '[]\n' : '\n]\n');
  }
}
