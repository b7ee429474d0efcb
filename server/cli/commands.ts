import type { Command, OptionName } from './command.ts';

const PATHS = [
  'PATH is a note, a folder (every .forefoot file below it), a pattern such as "clinic/**/*.forefoot", or - for',
  'standard input.',
];

/** Every command, one row each. */
export const COMMANDS: readonly Command[] = [
  {
    name: 'check',
    usage: 'PATH... [--complete] [--format text|json] [--settings FILE] [--today DATE]',
    summary: 'Report what is dangerous, contradictory, unread or missing in notes',
    help: [
      ...PATHS,
      'The red flags of a note come first, then its other reports in the order of the lines.',
      'JSON is one array of {file, line, column, endLine, endColumn, severity, code, message, source, mark}; lines and',
      'columns count from 1, columns in UTF-16 units; the end column is the one after the last character. Source and mark',
      'are those of the rule; a report of the reader itself has none. "forefoot rule CODE" explains a code.',
      'Exit 0: clean, or hints only. 1: a warning or an error. 2: something could not be read; the rest is checked.',
    ],
    options: ['complete', 'format', 'settings', 'today'],
    paths: 'some',
    load: async () => (await import('./check.ts')).check,
  },
  {
    name: 'stage',
    usage: 'PATH... [--why] [--scales] [--format text|json] [--settings FILE] [--today DATE]',
    summary: 'Compute the stage and the next step of each lesser ray, with their evidence',
    help: [
      ...PATHS,
      '--why tells the argument in sentences: gates, what decides, what supports or questions it, what is missing and what',
      'it would change. In JSON it is the field argument of each record.',
      '--scales adds what the predislocation stages and the crossover gradings say of each ray, each apart from the stage,',
      'or which findings they lack. In JSON it is the field scales of each record.',
      'JSON is one array with a record for each visit, side and lesser ray that the visit examines.',
      'Computed, as decision support: local protocol and a licensed clinician decide.',
      'Exit 0: done. 2: something could not be read; the rest is staged.',
    ],
    options: ['why', 'scales', 'format', 'settings', 'today'],
    paths: 'some',
    load: async () => (await import('./stage.ts')).stage,
  },
  {
    name: 'differential',
    usage: 'PATH... [--visit DATE] [--format text|json] [--settings FILE] [--today DATE]',
    summary: 'Weigh what may explain each complaint of a visit: for, against, not examined, what would tell',
    help: [
      ...PATHS,
      'Takes the newest visit of each note, or those of DATE. What must not be missed comes first; then the conditions',
      'that most findings argue for. Findings are counted, never weighed, and silence never argues against anything.',
      'JSON is one array with a record for each visit: {file, date, kind, redFlags, caution, sites}.',
      'Computed, as decision support: local protocol and a licensed clinician decide.',
      'Exit 0: done. 2: something could not be read, or has no such visit; the rest is weighed.',
    ],
    options: ['visit', 'format', 'settings', 'today'],
    paths: 'some',
    load: async () => (await import('./differential.ts')).differential,
  },
  {
    name: 'write',
    usage: 'PATH [--visit DATE] [--filed] [--settings FILE] [--today DATE]',
    summary: 'Write the clinic note of one visit as prose, the newest if none is named',
    help: [
      'PATH is one note, or - for standard input.',
      'What was stated comes first; what is computed stands below a line, marked, until the clinician accepts it.',
      '--filed leaves the computed part out.',
      'Exit 0: written. 2: the note could not be read, or has no such visit.',
    ],
    options: ['visit', 'filed', 'settings', 'today'],
    paths: 'one',
    load: async () => (await import('./write.ts')).write,
  },
  {
    name: 'format',
    usage: 'PATH... [--dictated] [--check] [--settings FILE]',
    summary: 'Write notes in canonical words, single spaces and aligned columns, without changing what they say',
    help: [
      ...PATHS,
      'Files are changed in place, each whole or not at all; standard input is formatted to standard output.',
      'Quotes, comments and whatever was not read with certainty keep their text.',
      '--dictated first turns dictated lines into typed lines. What was read still says the same; what more the words may',
      'mean stands on lines that are proposed, with the words that were said, and counts for nothing until it is confirmed.',
      'Exit 0: done. 1: --check found a file that would change. 2: something could not be read or written.',
    ],
    options: ['check', 'dictated', 'settings'],
    paths: 'some',
    load: async () => (await import('./format.ts')).format,
  },
  {
    name: 'rule',
    usage: '[CODE] [--format text|json]',
    summary: 'Explain the code of a report: what, why, what to do instead, examples, source',
    help: [
      'Without a code it lists every code. The same pages, with the tables of the engine, stand in server/RULES.md.',
      'JSON is one array of {code, name, severity, what, why, instead, examples, fixes, source, mark, citation}.',
      'Exit 0: explained. 2: no report has that code.',
    ],
    options: ['format'],
    paths: 'code',
    load: async () => (await import('./rule.ts')).rule,
  },
  {
    name: 'serve',
    usage: '--stdio',
    summary: 'Run the language server for an editor',
    help: ['Speaks the Language Server Protocol over standard input and output until the editor ends it.'],
    options: ['stdio'],
    paths: 'none',
    load: async () => (await import('./serve.ts')).serve,
  },
];

export const OPTIONS: Readonly<Record<OptionName, { type: 'string' | 'boolean'; says: string }>> = {
  format: { type: 'string', says: '--format text|json  text for people (the default), JSON for programs' },
  today: { type: 'string', says: '--today DATE        count from this day, such as 2026-05-04, instead of the clock' },
  visit: { type: 'string', says: '--visit DATE        the visit of this day' },
  filed: { type: 'boolean', says: '--filed             only what was stated: the form that is filed' },
  settings: {
    type: 'string',
    says: '--settings FILE     settings of the clinic, instead of the nearest .forefoot.json at or above each note',
  },
  why: { type: 'boolean', says: '--why               the argument for each stage, in sentences' },
  scales: { type: 'boolean', says: '--scales            the other published scales beside each stage' },
  complete: { type: 'boolean', says: '--complete          ask every visit for the steps that its purpose needs' },
  check: { type: 'boolean', says: '--check             change nothing; name the files that would change' },
  dictated: { type: 'boolean', says: '--dictated          turn dictated lines into typed lines first' },
  stdio: { type: 'boolean', says: '--stdio             over standard input and output, the only way there is' },
};

/** What `forefoot --help` prints. */
export function overview(): string {
  const rows = COMMANDS.map(({ name, summary }) => `  ${name.padEnd(14)}${summary}`);
  return [
    'Forefoot Notes: a plain-text shorthand for forefoot examinations, checked, staged and written as prose.',
    '',
    'Usage: forefoot COMMAND [PATH...] [OPTIONS]',
    '',
    ...rows,
    `  ${'help'.padEnd(14)}Explain a command: forefoot help check`,
    '',
    'forefoot --help, forefoot --version',
    '',
  ].join('\n');
}

/** What `forefoot help COMMAND` prints. */
export function explain({ name, usage, summary, help, options }: Command): string {
  const rows = options.map((option) => `  ${OPTIONS[option].says}`);
  return [`Usage: forefoot ${name} ${usage}`, '', `${summary}.`, '', ...help, '', ...rows, ''].join('\n');
}
