import type { Diagnostic, Uri } from 'vscode';
import { headingLines } from './heading-lines.ts';

type Show = (uri: Uri, diagnostics: Diagnostic[]) => void;

/** The links of diagnostics into the reference of the rules, which open at the heading that their fragment names. */
export class RuleLinks {
  readonly page: Uri;
  private lines: ReadonlyMap<string, number> = new Map();
  /** What to show again once the page is read, by file; undefined from then on. */
  private early: Map<string, () => void> | undefined = new Map();

  /** `read` gives the text of the page; if it fails, codes lead to its top. */
  constructor(page: Uri, read: () => Promise<string>) {
    this.page = page;
    void this.learn(read);
  }

  /** Shows the diagnostics of a file, each code leading to the line of its page: at once, and again if the page is read only later. */
  show(uri: Uri, diagnostics: Diagnostic[], next: Show): void {
    this.aim(diagnostics);
    this.early?.set(uri.toString(), () => {
      this.aim(diagnostics);
      next(uri, diagnostics);
    });
    next(uri, diagnostics);
  }

  private aim(diagnostics: readonly Diagnostic[]): void {
    for (const { code } of diagnostics) {
      if (typeof code !== 'object' || code.target.path !== this.page.path) continue;
      const line = this.lines.get(code.target.fragment);
      if (line !== undefined) code.target = code.target.with({ fragment: `L${line}` });
    }
  }

  private async learn(read: () => Promise<string>): Promise<void> {
    const early = this.early ?? new Map();
    try {
      this.lines = headingLines(await read());
      for (const showAgain of early.values()) showAgain();
    } catch (error) {
      console.warn(`forefoot: ${this.page.toString()} cannot be read, so codes lead to its top: ${String(error)}`);
    }
    this.early = undefined;
  }
}
