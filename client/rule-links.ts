import { type Diagnostic, Uri, workspace } from 'vscode';
import { headingLines } from './heading-lines.ts';

/** The links of diagnostics into the reference of the rules, which open at the heading that their fragment names. */
export class RuleLinks {
  readonly page: Uri;
  private lines: ReadonlyMap<string, number> = new Map();

  constructor(page: Uri) {
    this.page = page;
    void this.read();
  }

  /** Leads the code of each diagnostic to the line of its page, in place. Before the page is read they lead to its top. */
  aim(diagnostics: readonly Diagnostic[]): void {
    for (const { code } of diagnostics) {
      if (typeof code !== 'object' || code.target.path !== this.page.path) continue;
      const line = this.lines.get(code.target.fragment);
      if (line !== undefined) code.target = code.target.with({ fragment: `L${line}` });
    }
  }

  private async read(): Promise<void> {
    try {
      this.lines = headingLines(new TextDecoder().decode(await workspace.fs.readFile(this.page)));
    } catch (error) {
      console.warn(`forefoot: ${this.page.toString()} cannot be read, so codes lead to its top: ${String(error)}`);
    }
  }
}

export const rulesPage = (extension: Uri): Uri => Uri.joinPath(extension, 'server', 'RULES.md');
