import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Refusal, type Run } from './command.ts';

/** `forefoot serve --stdio`: the very server that an editor starts, from its own bundle, so that the other commands start without it. */
export const serve: Run = async ({ stdio }) => {
  if (!stdio) throw new Refusal('serve needs --stdio; see forefoot help serve');
  const server = join(__dirname, 'server.js');
  if (!existsSync(server)) throw new Refusal('server.js is missing beside the command; install again');
  await import(pathToFileURL(server).href);
  // The server ends the process itself, when its editor says so or its input closes.
  return new Promise(() => undefined);
};
