import { describe, expect, test } from 'vitest';
import { type Edge, importGraph, sourceFiles, withVisibleTypes } from './graph.ts';
import { violations } from './layers.ts';

function edge(text: string): Edge {
  const [from = '', arrow, to = ''] = text.split(' ');
  return { from, to, kind: arrow === '~>' ? 'type' : 'value' };
}

describe('the architecture of the source', () => {
  test('no import crosses a layer the wrong way', async () => {
    const graph = await importGraph(sourceFiles());
    expect(graph.length).toBeGreaterThan(0);
    expect(violations(graph)).toEqual([]);
  });

  test('type imports are in the graph too', async () => {
    const graph = await importGraph(['tests/architecture/layers.ts']);
    expect(graph).toContainEqual(edge('tests/architecture/layers.ts ~> tests/architecture/graph.ts'));
    expect(graph).toContainEqual(edge('tests/architecture/layers.ts -> node:module'));
  });

  test.each([
    [`import type { A } from './a.ts';`, `import './a.ts';`],
    [`import { type A, b } from './a.ts';`, `import './a.ts';`],
    [`import type {\n  A,\n  B,\n} from './a.ts';`, `import './a.ts';`],
    [`import type * as a from './a.ts';`, `import './a.ts';`],
    [`import a from './a.ts';`, `import './a.ts';`],
    [`export type { A } from './a.ts';`, `export { A } from './a.ts';`],
    [`export type A = 'a';`, `export type A = 'a';`],
  ])('%s stays visible to the bundler', (source, visible) => {
    expect(withVisibleTypes(source)).toBe(visible);
  });
});

describe('what counts as a violation', () => {
  test.each([
    'grammar/reader.ts -> server/clinical/stage.ts',
    'grammar/reader.ts ~> server/clinical/stage.ts',
    'grammar/reader.ts -> client/extension.ts',
    'grammar/reader.ts -> node:fs',
    'grammar/reader.ts -> fs',
    'grammar/reader.ts ~> vscode-languageserver-types',
    'grammar/generate/reference.ts -> node:fs',
    'grammar/generate/main.ts -> server/workspace/files.ts',
    'server/clinical/stage.ts -> server/documents/letter.ts',
    'server/clinical/stage.ts -> server/workspace/cache.ts',
    'server/clinical/stage.ts -> chevrotain',
    'server/clinical/stage.ts -> node:path',
    'server/documents/letter.ts ~> server/features/hover.ts',
    'server/documents/letter.ts -> vscode-languageserver-types',
    'server/workspace/cache.ts -> server/features/hover.ts',
    'server/workspace/cache.ts ~> vscode-languageserver',
    'server/features/hover.ts -> server/connection.ts',
    'server/features/hover.ts -> server/cli/check.ts',
    'server/features/hover.ts ~> vscode-languageserver',
    'server/features/hover.ts -> vscode-languageserver-protocol',
    'server/features/hover.ts -> node:fs',
    'server/cli/check.ts -> server/features/hover.ts',
    'server/cli/check.ts -> server/main.ts',
    'server/cli/check.ts -> vscode-languageserver/node',
    'server/connection.ts -> vscode-languageclient/node',
    'server/stray.ts -> grammar/reader.ts',
    'server/main.ts -> tests/setup/build.ts',
    'client/node.ts ~> server/connection.ts',
    'client/node.ts -> grammar/reader.ts',
    'client/node.ts -> vscode-languageserver/node',
    'server/browser.ts -> node:fs',
  ])('%s', (text) => {
    expect(violations([edge(text)])).toHaveLength(1);
  });

  test('Node behind a browser entry, however deep', () => {
    const graph = [
      'server/browser.ts -> server/connection.ts',
      'server/connection.ts -> server/workspace/files.ts',
      'server/workspace/files.ts -> node:fs',
    ].map(edge);
    expect(violations(graph)).toEqual(['server/workspace/files.ts imports node:fs, and the browser reaches it']);
  });

  test.each([
    'grammar/reader.ts -> grammar/lexer.ts',
    'grammar/lexer.ts -> chevrotain',
    'grammar/generate/main.ts -> node:fs',
    'server/clinical/stage.ts -> grammar/values.ts',
    'server/documents/letter.ts -> server/clinical/stage.ts',
    'server/workspace/cache.ts -> server/documents/letter.ts',
    'server/features/hover.ts -> vscode-languageserver-types',
    'server/features/hover.ts ~> vscode-languageserver-protocol',
    'server/cli/check.ts -> node:fs',
    'server/cli/serve.ts -> server/main.ts',
    'server/main.ts -> vscode-languageserver/node',
    'server/connection.ts -> server/features/hover.ts',
    'client/node.ts -> vscode-languageclient/node',
  ])('%s is none', (text) => {
    expect(violations([edge(text)])).toEqual([]);
  });
});
