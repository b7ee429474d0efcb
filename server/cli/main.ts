import { readArguments } from './arguments.ts';
import { type ExitCode, Refusal } from './command.ts';
import { COMMANDS, explain, overview } from './commands.ts';
import { processTerminal, type Terminal } from './terminal.ts';

declare const FOREFOOT_VERSION: string;

async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const [name, ...rest] = args;
  if (name === undefined) throw new Refusal('a command is missing; see forefoot --help');
  if (name === '--version') return say(terminal, `${FOREFOOT_VERSION}\n`);
  if (name === '--help' || name === '-h') return say(terminal, overview());
  if (name === 'help') return say(terminal, rest[0] === undefined ? overview() : explain(commandOf(rest[0])));
  const command = commandOf(name);
  const invocation = readArguments(command, rest, new Date());
  if (invocation.help) return say(terminal, explain(command));
  return (await command.load())(invocation, terminal);
}

function commandOf(name: string) {
  const command = COMMANDS.find((each) => each.name === name);
  if (command) return command;
  const what = name.startsWith('-') ? 'option' : 'command';
  throw new Refusal(`unknown ${what} "${name}"; see forefoot --help`);
}

async function say(terminal: Terminal, text: string): Promise<ExitCode> {
  await terminal.write(text);
  return 0;
}

async function main(): Promise<void> {
  const terminal = processTerminal();
  try {
    process.exitCode = await run(process.argv.slice(2), terminal);
  } catch (error) {
    const message = error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
    terminal.complain(error instanceof Refusal ? message : `internal fault: ${message}`);
    process.exitCode = 2;
  }
}

void main();
