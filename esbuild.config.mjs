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

/**
 * Leaves a dynamic import to a bundle of its own, which is loaded when it is first needed.
 * @param {string} module as imported
 * @param {string} bundle beside the importing bundle in dist/
 * @returns {import('esbuild').Plugin}
 */
function apart(module, bundle) {
  return {
    name: `apart ${bundle}`,
    setup({ onResolve }) {
      onResolve({ filter: /./ }, ({ kind, path }) =>
        kind === 'dynamic-import' && path === module ? { path: bundle, external: true } : undefined,
      );
    },
  };
}

const TEXT = /(?:'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`[^`]*`)/.source;
/** What only explains, of the lexicon and of the rules: whole properties, which `dist/asked.js` and the references keep. */
const EXPLAINING = [
  {
    file: /grammar[\\/]lexicon[\\/][\w-]+\.ts$/,
    properties: [
      new RegExp(String.raw`^ {4}(?:technique|meaning|source|mark):\s+${TEXT},\n`, 'gm'),
      /^ {4}order: [\d.]+,\n/gm,
      /^ {2,4}\.\.\.(?:practice|memory),\n/gm,
      // In what several entries share.
      /(?<=\{ )\.\.\.(?:practice|memory), /g,
      new RegExp(String.raw`^ {2}(?:source|mark): ${TEXT},\n`, 'gm'),
    ],
  },
  {
    file: /server[\\/]clinical[\\/]rules[\\/][\w-]+\.ts$/,
    properties: [
      new RegExp(String.raw`^ {2}(?:name|scope|source|mark|what|why|instead):\s+${TEXT},\n`, 'gm'),
      /^ {2}\.\.\.(?:practice|memory),\n/gm,
      /^ {2}reads: (?:\[[^\]]*\]|Object[^\n]*),\n/gm,
      /^ {2}examples: \{(?: [^\n]* |[\s\S]*?^ {2})\},\n/gm,
    ],
  },
];

const LIST = /(?<=[:=(,]\s*)\[\s*'[^'\\|\n]*'(?:,\s*'[^'\\|\n]*')+,?\s*\](?=[\s,;)}])/g;
/**
 * Each list of words as one text that is parted once: two marks fewer a word. The types of the source have been checked before.
 * @param {string} source
 */
function packed(source) {
  const text = source.replace(LIST, (list) => {
    const words = [...list.matchAll(/'([^']*)'/g)].map(([, word]) => word);
    return `parted(${JSON.stringify(words.join('|'))})`;
  });
  return text === source ? source : `import { parted } from '${join(root, 'grammar/parted.ts')}';\n${text}`;
}

/**
 * Leaves what explains out of a bundle that never shows it: it would be a tenth of the server.
 * @type {import('esbuild').Plugin}
 */
const unexplained = {
  name: 'unexplained',
  setup({ onLoad }) {
    onLoad({ filter: /[\\/](?:grammar|server)[\\/].*\.ts$/ }, ({ path }) => {
      const kept = EXPLAINING.filter(({ file }) => file.test(path)).flatMap(({ properties }) => properties);
      const source = kept.reduce((text, each) => text.replace(each, ''), readFileSync(path, 'utf8'));
      return { contents: packed(source), loader: 'ts' };
    });
  },
};

/**
 * Parts of libraries that the server never runs, each with what stands in its place, or what is cut out. The tests load the libraries whole.
 * @type {{ file: RegExp, contents?: string, cut?: [RegExp, string] }[]}
 */
const NEVER_RUN = [
  // Chevrotain lexes the lines; its parser is not used, and is a tenth of a server.
  {
    file: /chevrotain[\\/]lib[\\/]src[\\/]parse[\\/]parser[\\/]parser\.js$/,
    contents: [
      'export class CstParser {}',
      'export class EmbeddedActionsParser {}',
      'export const EMPTY_ALT = () => () => {};',
      ...['ParserDefinitionErrorType', 'DEFAULT_PARSER_CONFIG', 'DEFAULT_RULE_CONFIG'].map(
        (name) => `export const ${name} = {};`,
      ),
    ].join('\n'),
  },
  // The lexer is built without its validations (a test builds it with them).
  {
    file: /chevrotain[\\/]lib[\\/]src[\\/]scan[\\/]lexer_public\.js$/,
    cut: [/this\.config\.skipValidations === false/g, 'false'],
  },
  // Message types of so many parameters: the server registers its methods by name.
  {
    file: /vscode-jsonrpc[\\/]lib[\\/]common[\\/]messages\.js$/,
    cut: [/^class (?:Request|Notification)Type\d [\s\S]*?^exports\.\w+ = \w+;\n/gm, ''],
  },
  // Every shape of the lexer names its first characters and whether it breaks lines, so that no pattern is analysed for them.
  {
    file: /chevrotain[\\/]lib[\\/]src[\\/]scan[\\/]reg_exp\.js$/,
    contents: [
      'export const failedOptimizationPrefixMsg = "";',
      'const never = () => { throw new Error("a shape names no first characters"); };',
      'export { never as canMatchCharCode, never as getOptimizedStartCodesIndices };',
    ].join('\n'),
  },
  {
    file: /chevrotain[\\/]lib[\\/]src[\\/]scan[\\/]reg_exp_parser\.js$/,
    contents:
      'export const getRegExpAst = () => { throw new Error("no pattern is analysed"); };\nexport const clearRegExpParserCache = () => undefined;',
  },
  {
    file: /@chevrotain[\\/]regexp-to-ast[\\/]lib[\\/]src[\\/]api\.js$/,
    contents: 'export class RegExpParser {}\nexport class BaseRegExpVisitor {}',
  },
  // Pipes, sockets and ports: the server speaks through its streams.
  {
    file: /vscode-jsonrpc[\\/]lib[\\/]node[\\/]main\.js$/,
    contents: [
      'const ril = require("./ril").default, api = require("../common/api");',
      'ril.install();',
      'exports.StreamMessageReader = class extends api.ReadableStreamMessageReader {',
      '  constructor(readable, encoding) { super(ril().stream.asReadableStream(readable), encoding); }',
      '};',
      'exports.StreamMessageWriter = class extends api.WriteableStreamMessageWriter {',
      '  constructor(writable, options) { super(ril().stream.asWritableStream(writable), options); }',
      '};',
      'exports.createMessageConnection = (reader, writer, logger = api.NullLogger, options) =>',
      '  api.createMessageConnection(reader, writer, logger, options);',
    ].join('\n'),
  },
  // A queue of messages in their order, which is what a map keeps; of the rest of it the connection uses nothing.
  {
    file: /vscode-jsonrpc[\\/]lib[\\/]common[\\/]linkedMap\.js$/,
    contents: [
      'exports.LinkedMap = class extends Map {',
      '  shift() { for (const [key, value] of this) { this.delete(key); return value; } }',
      '};',
    ].join('\n'),
  },
  // Names again, one by one, what its neighbours export.
  {
    file: /vscode-jsonrpc[\\/]lib[\\/]common[\\/]api\.js$/,
    contents: [
      'Object.assign(exports, require("./messages"), require("./disposable"), require("./events"), require("./cancellation"),',
      '  require("./messageReader"), require("./messageWriter"), require("./messageBuffer"), require("./connection"));',
      'exports.RAL = require("./ral").default;',
    ].join('\n'),
  },
];
/** @type {import('esbuild').Plugin} */
const lean = {
  name: 'lean',
  setup({ onLoad }) {
    onLoad({ filter: /(?:chevrotain|vscode-jsonrpc).*\.js$/ }, ({ path }) => {
      const found = NEVER_RUN.find(({ file }) => file.test(path));
      if (!found) return undefined;
      const { contents, cut: [what, by] = [/$^/, ''] } = found;
      return { contents: contents ?? readFileSync(path, 'utf8').replace(what, by), loader: 'js' };
    });
  },
};

/** One row a bundle: where it goes, where it starts, where it runs. */
export const bundles = [
  {
    out: 'server',
    from: 'server/main.ts',
    runs: {
      ...node,
      plugins: [
        apart('./features/clinic-note.ts', './clinic-note.js'),
        apart('./features/asked.ts', './asked.js'),
        unexplained,
        lean,
      ],
    },
  },
  { out: 'asked', from: 'server/features/asked.ts', runs: node },
  { out: 'clinic-note', from: 'server/features/clinic-note.ts', runs: node },
  { out: 'server-browser', from: 'server/browser.ts', runs: { ...browser, format: /** @type {const} */ ('iife') } },
  { out: 'client', from: 'client/node.ts', runs: node },
  { out: 'client-browser', from: 'client/browser.ts', runs: browser },
  { out: 'cli', from: 'server/cli/main.ts', runs: { ...node, banner: { js: '#!/usr/bin/env node' } } },
  { out: 'generate', from: 'grammar/generate/main.ts', runs: node },
];

/**
 * Builds every bundle into dist/. A bundle that fails is removed, so that nothing stale is ever run in its place.
 * @param {{ production?: boolean }} [options]
 * @returns {Promise<{ failed: string[] }>} the bundles with errors
 */
export async function build({ production = false } = {}) {
  const dist = join(root, 'dist');
  mkdirSync(dist, { recursive: true });
  // The root package is ESM; without this Node would read the CommonJS bundles as ESM.
  const manifest = join(dist, 'package.json');
  // A file that stands already is left alone: another process may be reading it.
  if (!existsSync(manifest)) writeFileSync(manifest, '{ "type": "commonjs" }\n');
  const results = await Promise.allSettled(bundles.map((row) => bundleOne(row, production)));
  const failed = bundles.filter((_, index) => results[index]?.status === 'rejected').map(({ out }) => out);
  for (const name of failed) rmSync(join(dist, `${name}.js`), { force: true });
  return { failed };
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
  const { failed } = await build({ production: process.argv.includes('--production') });
  for (const name of failed) console.error(`build: dist/${name}.js failed`);
  process.exitCode = failed.length > 0 ? 1 : 0;
}
