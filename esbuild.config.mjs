import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';

const root = dirname(fileURLToPath(import.meta.url));
const version = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).version;

/** Constants that source may `declare const`; the tests define the same ones. */
export const constants = { FOREFOOT_VERSION: JSON.stringify(version) };

/** @type {import('esbuild').BuildOptions} */
const node = { platform: 'node', target: 'node20', format: 'cjs' };
/** @type {import('esbuild').BuildOptions} */
const browser = { platform: 'browser', target: 'es2022', format: 'cjs' };

/** One row a bundle: where it goes, where it starts, where it runs. */
export const bundles = [
  { out: 'server', from: 'server/main.ts', runs: node },
  { out: 'server-browser', from: 'server/browser.ts', runs: { ...browser, format: /** @type {const} */ ('iife') } },
  { out: 'client', from: 'client/node.ts', runs: node },
  { out: 'client-browser', from: 'client/browser.ts', runs: browser },
  { out: 'cli', from: 'server/cli/main.ts', runs: { ...node, banner: { js: '#!/usr/bin/env node' } } },
  { out: 'generate', from: 'grammar/generate/main.ts', runs: node },
];

/**
 * Builds every bundle into dist/. A bundle that fails is removed, so that nothing stale is ever run in its place.
 * @param {{ production?: boolean }} [options]
 * @returns {Promise<{ absent: string[], failed: string[] }>} bundles without an entry file yet, and those with errors
 */
export async function build({ production = false } = {}) {
  const dist = join(root, 'dist');
  mkdirSync(dist, { recursive: true });
  // The root package is ESM; without this Node would read the CommonJS bundles as ESM.
  writeFileSync(join(dist, 'package.json'), '{ "type": "commonjs" }\n');
  const present = bundles.filter(({ from }) => existsSync(join(root, from)));
  const absent = bundles.filter((row) => !present.includes(row)).map(({ out }) => out);
  const results = await Promise.allSettled(present.map((row) => bundleOne(row, production)));
  const failed = present.filter((_, index) => results[index]?.status === 'rejected').map(({ out }) => out);
  for (const name of [...absent, ...failed]) rmSync(join(dist, `${name}.js`), { force: true });
  return { absent, failed };
}

/**
 * @param {(typeof bundles)[number]} row
 * @param {boolean} production
 */
function bundleOne({ out, from, runs }, production) {
  return bundle({
    ...runs,
    absWorkingDir: root,
    entryPoints: [from],
    outfile: `dist/${out}.js`,
    bundle: true,
    external: ['vscode'],
    define: constants,
    minify: production,
    legalComments: 'none',
    logLevel: 'warning',
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { absent, failed } = await build({ production: process.argv.includes('--production') });
  for (const name of absent) console.error(`build: dist/${name}.js skipped: its entry file does not exist yet`);
  for (const name of failed) console.error(`build: dist/${name}.js failed`);
  process.exitCode = failed.length > 0 ? 1 : 0;
}
