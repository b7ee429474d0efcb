import { parseArgs } from 'node:util';
import { dayOf } from '../clinical/dates.ts';
import { type Command, type Invocation, Refusal } from './command.ts';
import { OPTIONS } from './commands.ts';

type Values = Readonly<Record<string, string | boolean | undefined>>;

/** Checks what follows the name of a command. Throws a refusal of one line. */
export function readArguments(command: Command, args: readonly string[], now: Date): Invocation & { help: boolean } {
  const { values, positionals } = parse(command, args);
  const help = values.help === true;
  const paths = help ? [] : checkedPaths(command, positionals);
  const visit = dateOf(values, 'visit');
  return {
    paths,
    format: formatOf(values),
    today: dateOf(values, 'today') ?? isoDay(now),
    ...(visit ? { visit } : {}),
    filed: values.filed === true,
    stdio: values.stdio === true,
    ...(typeof values.settings === 'string' ? { settings: values.settings } : {}),
    ...(values.complete === true ? { complete: true } : {}),
    ...(values.why === true ? { why: true } : {}),
    ...(values.scales === true ? { scales: true } : {}),
    ...(values.check === true ? { dryRun: true } : {}),
    ...(values.dictated === true ? { dictated: true } : {}),
    help,
  };
}

function parse(command: Command, args: readonly string[]): { values: Values; positionals: readonly string[] } {
  const known = command.options.map((name) => [name, { type: OPTIONS[name].type }] as const);
  const options = { ...Object.fromEntries(known), help: { type: 'boolean', short: 'h' } } as const;
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (error) {
    // Node's message goes on to explain its own rules; its first sentence names the option.
    const [first = 'these options are not understood'] = (error as Error).message.split(/\. |\n/);
    throw new Refusal(`${first.replace(/^./, (letter) => letter.toLowerCase())}; see forefoot help ${command.name}`);
  }
}

const COUNTS: Readonly<Record<Command['paths'], { from: number; to: number; takes: string }>> = {
  none: { from: 0, to: 0, takes: 'takes no path' },
  one: { from: 1, to: 1, takes: 'takes one note' },
  some: { from: 1, to: Number.POSITIVE_INFINITY, takes: 'needs a note, a folder or a pattern' },
  code: { from: 0, to: 1, takes: 'takes one code' },
};

function checkedPaths({ name, paths }: Command, given: readonly string[]): readonly string[] {
  const { from, to, takes } = COUNTS[paths];
  if (given.length >= from && given.length <= to) return given;
  throw new Refusal(`${name} ${takes}; see forefoot help ${name}`);
}

function formatOf({ format }: Values): 'text' | 'json' {
  if (format === undefined || format === 'text' || format === 'json') return format ?? 'text';
  throw new Refusal(`--format is text or json, not "${format}"`);
}

function dateOf(values: Values, name: 'today' | 'visit'): string | undefined {
  const value = values[name];
  if (value === undefined || (typeof value === 'string' && dayOf(value))) return value as string | undefined;
  throw new Refusal(`--${name} is a day such as 2026-05-04, not "${value}"`);
}

/** The day on the wall of the clinic, not in Greenwich. */
function isoDay(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
