import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build, type Plugin } from 'esbuild';

/** One import: `from` is a source file, `to` a source file or the specifier of a package or Node builtin. */
export interface Edge {
  from: string;
  to: string;
  kind: 'value' | 'type';
}

/** Every TypeScript file of the product, relative to the root. */
export function sourceFiles(): string[] {
  return ['grammar', 'server', 'client'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .map((name) => join(folder, name))
      .filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts')),
  );
}

/** The bundler drops type imports before it resolves them; as plain imports they stay in its graph. */
const typesMadeVisible: Plugin = {
  name: 'types-made-visible',
  setup({ onLoad }) {
    onLoad({ filter: /\.ts$/ }, ({ path }) => ({
      loader: 'ts',
      contents: withVisibleTypes(readFileSync(path, 'utf8')),
    }));
  },
};

export function withVisibleTypes(source: string): string {
  return source
    .replace(/\bimport type (?=[\w{*])/g, 'import ')
    .replace(/\bexport type (?=[{*])/g, 'export ')
    .replace(/^import \w+ from ('[^']+')/gm, 'import $1')
    .replace(/^import (?:\w+, )?(?:\{[^}]*\}|\* as \w+) from ('[^']+')/gm, 'import $1');
}

async function imports(files: string[], plugins: Plugin[]): Promise<Map<string, Omit<Edge, 'kind'>>> {
  const { metafile } = await build({
    entryPoints: files,
    plugins,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    outdir: 'dist/graph',
    write: false,
    metafile: true,
    logLevel: 'silent',
    treeShaking: false,
  });
  const edges = Object.entries(metafile.inputs).flatMap(([from, input]) =>
    input.imports.map(({ path }) => ({ from, to: path })),
  );
  return new Map(edges.map((edge) => [`${edge.from} ${edge.to}`, edge]));
}

/** The import graph as the bundler sees it, type imports included. */
export async function importGraph(files: string[]): Promise<Edge[]> {
  const values = await imports(files, []);
  const all = await imports(files, [typesMadeVisible]);
  return [...new Map([...all, ...values])].map(([key, edge]) => ({
    ...edge,
    kind: values.has(key) ? 'value' : 'type',
  }));
}
