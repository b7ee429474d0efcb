import { commands, type Disposable, window, workspace } from 'vscode';
import {
  type BaseLanguageClient,
  CloseAction,
  ErrorAction,
  ErrorCodes,
  type ErrorHandler,
  type LanguageClientOptions,
  ResponseError,
  RevealOutputChannelOn,
  State,
} from 'vscode-languageclient';
import type { Ask } from './protocol.ts';
import { restartPolicy } from './restarts.ts';
import type { RuleLinks } from './rule-links.ts';

export type Connect = (options: LanguageClientOptions) => BaseLanguageClient;

/** The language server, kept alive. */
export interface Server {
  readonly ask: Ask;
  /** Calls back whenever the server is ready to answer, after a restart too. */
  onReady(then: () => void): Disposable;
  restart(): Promise<void>;
  stop(): Promise<void>;
}

const restartCommand = 'forefoot.restartServer';
const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

async function sayStopped(): Promise<void> {
  const restart = 'Restart';
  const chosen = await window.showErrorMessage(
    'The Forefoot Notes server does not run, so notes are not checked or staged now. Your text is not affected.',
    restart,
  );
  if (chosen === restart) await commands.executeCommand(restartCommand);
}

/** Each failed start would show several messages; they go to the log, and a person is told once that it stays stopped. */
function sayLess(client: BaseLanguageClient): void {
  const error = client.error.bind(client);
  client.error = (message, data) => error(message, data, false);
}

/** A start that fails since the server has stopped leads to a restart. */
const isCausedByStop = (error: unknown): boolean =>
  error instanceof ResponseError && error.code === ErrorCodes.PendingResponseRejected;

/** Starts the server through `connect`, with the codes of its diagnostics leading to `rules`, and again when it stops: at growing intervals, and not for ever. */
export function startServer(connect: Connect, rules: RuleLinks): Server {
  const policy = restartPolicy();
  let leaving = false;
  const errorHandler: ErrorHandler = {
    error: () => ({ action: ErrorAction.Continue, handled: true }),
    async closed() {
      const delay = policy.afterStop(Date.now());
      if (delay !== undefined) await pause(delay);
      if (delay !== undefined && !leaving) return { action: CloseAction.Restart, handled: true };
      if (!leaving) void sayStopped();
      return { action: CloseAction.DoNotRestart, handled: true };
    },
  };
  const client = connect({
    documentSelector: [{ language: 'forefoot' }],
    errorHandler,
    initializationFailedHandler: () => false,
    initializationOptions: () => {
      const settings = workspace.getConfiguration('forefoot');
      return {
        today: settings.get('today', ''),
        convertDictation: settings.get('convertDictation', false),
        rulesPage: rules.page.toString(),
      };
    },
    middleware: {
      handleDiagnostics: (uri, diagnostics, next) => rules.show(uri, diagnostics, next),
    },
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    synchronize: { configurationSection: 'forefoot' },
  });
  sayLess(client);
  const start = (): Promise<void> =>
    client.start().catch((error: unknown) => {
      if (!isCausedByStop(error)) void sayStopped();
    });
  void start();

  return {
    async ask(method, params) {
      if (client.state === State.Stopped) return undefined;
      try {
        return await client.sendRequest(method, params);
      } catch (error) {
        client.debug(`${method} was not answered: ${String(error)}`);
        return undefined;
      }
    },
    onReady: (then) => client.onDidChangeState(({ newState }) => newState === State.Running && then()),
    async restart() {
      policy.forget();
      if (client.state === State.Running) await client.stop().catch(() => undefined);
      await start();
    },
    async stop() {
      leaving = true;
      if (client.state === State.Running) await client.stop();
    },
  };
}
