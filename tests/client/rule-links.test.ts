import { expect, test, vi } from 'vitest';
import type { Diagnostic, Uri } from 'vscode';
import { RuleLinks } from '../../client/rule-links.ts';

/** As much of the editor's Uri as a link needs. */
const uri = (path: string, fragment = ''): Uri =>
  ({ path, fragment, with: (change: { fragment: string }) => uri(path, change.fragment), toString: () => path }) as Uri;
const page = uri('/server/RULES.md');
const report = (fragment: string) =>
  ({ code: { value: fragment, target: uri(page.path, fragment) } }) as unknown as Diagnostic;
const fragment = ({ code }: Diagnostic) => (typeof code === 'object' ? code.target.fragment : undefined);
const text = '# Rules\n\n## one\n\n## two\n';

/** Links whose page arrives when it is told to, and what they have shown by then: the file and where its codes lead. */
function shown() {
  let arrive: (text: string) => void = () => undefined;
  let fail: (reason: Error) => void = () => undefined;
  const links = new RuleLinks(page, () => new Promise((resolve, reject) => ([arrive, fail] = [resolve, reject])));
  const all: [string, (string | undefined)[]][] = [];
  const show = (file: string, ...diagnostics: Diagnostic[]) =>
    links.show(uri(file), diagnostics, (of, them) => all.push([of.path, them.map(fragment)]));
  const settled = async (settle: () => void) => {
    settle();
    for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
  };
  return { all, show, arrives: () => settled(() => arrive(text)), fails: () => settled(() => fail(new Error('gone'))) };
}

test('the code of a report leads to the line of its heading', async () => {
  const { all, show, arrives } = shown();
  await arrives();
  show('/a', report('two'), report('unknown'));
  expect(all).toEqual([['/a', ['L5', 'unknown']]]);
});

test('reports shown before the page is read are shown again when it is, the last of each file only', async () => {
  const { all, show, arrives } = shown();
  show('/a', report('one'));
  show('/b', report('two'));
  show('/a', report('two'));
  expect(all.splice(0)).toEqual([
    ['/a', ['one']],
    ['/b', ['two']],
    ['/a', ['two']],
  ]);
  await arrives();
  expect(all.splice(0)).toEqual([
    ['/a', ['L5']],
    ['/b', ['L5']],
  ]);
  show('/a', report('one'));
  expect(all).toEqual([['/a', ['L3']]]);
});

test('a page that cannot be read shows nothing twice', async () => {
  const warn = vi.spyOn(console, 'warn').mockReturnValue();
  const { all, show, fails } = shown();
  show('/a', report('one'));
  await fails();
  expect(warn.mock.calls.flat()).toEqual([expect.stringContaining('/server/RULES.md cannot be read')]);
  warn.mockRestore();
  show('/a', report('one'));
  expect(all).toEqual([
    ['/a', ['one']],
    ['/a', ['one']],
  ]);
});
