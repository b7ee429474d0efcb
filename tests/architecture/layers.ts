import { isBuiltin } from 'node:module';
import type { Edge } from './graph.ts';

type Layer =
  | 'grammar'
  | 'generate'
  | 'clinical'
  | 'documents'
  | 'workspace'
  | 'features'
  | 'cli'
  | 'connection'
  | 'client';

interface LayerLaw {
  /** Matches the files of the layer; the first row that matches wins. */
  files: RegExp;
  may: Layer[];
  packages: string[];
  node: boolean;
}

const core = ['grammar', 'clinical', 'documents'] as const;

/** What each layer may import besides itself. What isn't listed is forbidden. */
const laws: Record<Layer, LayerLaw> = {
  // The generator's entry writes files; what it writes is made by pure functions beside it.
  generate: {
    files: /^grammar\/generate\/main\.ts$/,
    may: ['grammar', 'clinical', 'documents'],
    packages: [],
    node: true,
  },
  grammar: { files: /^grammar\//, may: [], packages: ['chevrotain'], node: false },
  clinical: { files: /^server\/clinical\//, may: ['grammar'], packages: ['fastest-levenshtein'], node: false },
  documents: {
    files: /^server\/documents\//,
    may: ['grammar', 'clinical'],
    packages: [],
    node: false,
  },
  workspace: {
    files: /^server\/workspace\//,
    may: [...core],
    packages: ['double-metaphone', 'fastest-levenshtein'],
    node: true,
  },
  features: {
    files: /^server\/features\//,
    may: [...core, 'workspace'],
    packages: ['vscode-languageserver-types', 'vscode-languageserver-protocol'],
    node: false,
  },
  cli: { files: /^server\/cli\//, may: [...core, 'workspace'], packages: [], node: true },
  connection: {
    files: /^server\/(connection|main|browser)\.ts$/,
    may: [...core, 'workspace', 'features', 'cli'],
    packages: [
      'vscode-jsonrpc',
      'vscode-languageserver',
      'vscode-languageserver-types',
      'vscode-languageserver-protocol',
    ],
    node: true,
  },
  client: {
    files: /^client\//,
    may: [],
    packages: ['vscode', 'vscode-languageclient', 'vscode-languageserver-types', 'vscode-languageserver-protocol'],
    node: true,
  },
};

/** Single imports that cross a border for a reason. */
const exceptions = new Set([
  // `forefoot serve` starts the very server that an editor starts.
  'server/cli/serve.ts server/main.ts',
]);

const layers = Object.keys(laws) as Layer[];
const layerOf = (file: string): Layer | undefined => layers.find((layer) => laws[layer].files.test(file));
const packageOf = (specifier: string): string => specifier.split('/')[0] ?? specifier;
const isFile = (target: string): boolean => /\.(ts|json)$/.test(target);

/** Every import that breaks the architecture, one sentence each; empty when the graph keeps it. */
export function violations(graph: Edge[]): string[] {
  return [...graph.flatMap(brokenLaw), ...nodeInBrowser(graph)];
}

function brokenLaw(edge: Edge): string[] {
  const layer = layerOf(edge.from);
  if (layer === undefined) return [`${edge.from} belongs to no layer`];
  const why = isFile(edge.to) ? forbiddenFile(layer, edge) : forbiddenPackage(layer, edge);
  return why === undefined ? [] : [`${edge.from} (${layer}) imports ${edge.to}: ${why}`];
}

function forbiddenFile(layer: Layer, { from, to }: Edge): string | undefined {
  const target = layerOf(to);
  if (target === undefined) return 'it belongs to no layer';
  const allowed = target === layer || laws[layer].may.includes(target) || exceptions.has(`${from} ${to}`);
  return allowed ? undefined : `${layer} may not import ${target}`;
}

function forbiddenPackage(layer: Layer, { to, kind }: Edge): string | undefined {
  if (isBuiltin(to)) return laws[layer].node ? undefined : `${layer} may not use Node`;
  const name = packageOf(to);
  if (!laws[layer].packages.includes(name)) return `${layer} may not use that package`;
  const typesOnly = layer === 'features' && name === 'vscode-languageserver-protocol';
  return typesOnly && kind === 'value' ? 'features may use its types only' : undefined;
}

/** What the browser entries reach at run time must not need Node. */
function nodeInBrowser(graph: Edge[]): string[] {
  const values = graph.filter(({ kind }) => kind === 'value');
  const reached = new Set(['server/browser.ts', 'client/browser.ts']);
  for (const file of reached) {
    for (const { from, to } of values) if (from === file && isFile(to)) reached.add(to);
  }
  return values
    .filter(({ from, to }) => reached.has(from) && isBuiltin(to))
    .map(({ from, to }) => `${from} imports ${to}, and the browser reaches it`);
}
