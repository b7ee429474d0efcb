import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { settingsSchema } from '../../server/clinical/settings-schema.ts';
import { rulesDocument } from '../../server/documents/rules-document.ts';
import { settingsRows } from '../../server/documents/settings-text.ts';
import { type Output, outputs, staleOutputs } from './outputs.ts';

const schema = (): Output => ({
  path: 'grammar/generated/forefoot-settings.schema.json',
  text: `${JSON.stringify(settingsSchema(), null, 2)}\n`,
});

const rules = (): Output => ({ path: 'server/RULES.md', text: rulesDocument() });

const usage = 'usage: npm run generate [-- --check], from the root of the repository';

/** Writes the generated files that are stale; with `--check` only names them, and fails if there are any. */
function main(options: readonly string[]): number {
  const unknown = options.find((option) => option !== '--check');
  if (unknown !== undefined || !existsSync('grammar/lexicon')) {
    console.error(unknown === undefined ? usage : `unknown option ${unknown}; ${usage}`);
    return 2;
  }
  const stale = staleOutputs([...outputs(settingsRows()), schema(), rules()], (path) =>
    existsSync(path) ? readFileSync(path, 'utf8') : undefined,
  );
  if (options.includes('--check')) {
    for (const { path } of stale) console.error(`${path} is stale: run npm run generate`);
    return stale.length > 0 ? 1 : 0;
  }
  for (const { path, text } of stale) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    console.log(`wrote ${path}`);
  }
  return 0;
}

process.exitCode = main(process.argv.slice(2));
