// One peer in a process of its own: `node peer.mjs json|yaml folder visits`. Prints its figures as JSON.
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { now } from './editor.mjs';
import { median } from './statistics.mjs';
import { asJson, asYaml, digitOffset, schema } from './transcribe.mjs';

const [kind = '', folder = '', count = '1000'] = process.argv.slice(2);
const load = createRequire(join(folder, 'package.json'));
const { TextDocument } = load('vscode-languageserver-textdocument');
const uri = `file:///bench/note.${kind}`;
const schemaUri = 'file:///bench/note.schema.json';

const PEERS = {
  json() {
    const service = load('vscode-json-languageservice').getLanguageService({});
    service.configure({ validate: true, schemas: [{ fileMatch: ['*'], uri: schemaUri, schema: schema() }] });
    return (document) => service.doValidation(document, service.parseJSONDocument(document));
  },
  yaml() {
    const { getLanguageService } = load('yaml-language-server');
    const service = getLanguageService({
      schemaRequestService: async () => JSON.stringify(schema()),
      workspaceContext: { resolveRelativePath: (path) => path },
    });
    const schemas = [{ fileMatch: ['*'], uri: schemaUri, schema: schema() }];
    service.configure({ validate: true, hover: false, completion: false, format: false, customTags: [], schemas });
    return (document) => service.doValidation(document, false);
  },
};

const text = kind === 'json' ? asJson(Number(count)) : asYaml(Number(count));
const check = PEERS[kind]();
const document = TextDocument.create(uri, kind, 1, text);
const timed = async () => {
  const start = now();
  const found = await check(document);
  return { took: now() - start, found: found.length };
};
const full = await timed();
const at = digitOffset(text);
const edits = [];
let seen = 0;
for (const [index, digit] of ['9', 'x', '8', 'x', '7', 'x', '2'].entries()) {
  const range = { start: document.positionAt(at), end: document.positionAt(at + 1) };
  TextDocument.update(document, [{ range, text: digit }], index + 2);
  const { took, found } = await timed();
  edits.push(took);
  if (found > 0) seen++;
}
console.log(
  JSON.stringify({
    bytes: text.length,
    full: full.took,
    edit: median(edits),
    // A schema that did not reach the service would find nothing wrong with a letter in place of a grade.
    checks: full.found === 0 && seen === 3,
    resident: process.memoryUsage().rss / 1024 / 1024,
  }),
);
