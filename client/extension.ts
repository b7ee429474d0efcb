import { commands, type ExtensionContext, Uri, workspace } from 'vscode';
import { convertDictation } from './convert-dictation.ts';
import { convertWhenLeft } from './convert-when-left.ts';
import { noteView } from './note-view.ts';
import { RuleLinks } from './rule-links.ts';
import { type Connect, type Server, startServer } from './server-life.ts';
import { stageStatus } from './stage-status.ts';

/** The links into the reference of the rules, which the package holds beside the server. */
function ruleLinks(extension: Uri): RuleLinks {
  const page = Uri.joinPath(extension, 'server', 'RULES.md');
  return new RuleLinks(page, async () => new TextDecoder().decode(await workspace.fs.readFile(page)));
}

/** What the desktop and the browser share: the server, the clinic note beside the editor, the stage in the status bar. */
export function activateWith(context: ExtensionContext, connect: Connect): Server {
  const server = startServer(connect, ruleLinks(context.extensionUri));
  const note = noteView({ ask: server.ask, media: Uri.joinPath(context.extensionUri, 'client', 'media') });
  const stage = stageStatus(server.ask, note.isFocused);
  context.subscriptions.push(
    note,
    stage,
    server.onReady(() => {
      note.refresh();
      stage.refresh();
    }),
    commands.registerCommand('forefoot.showNote', note.show),
    commands.registerCommand('forefoot.copyNote', note.copy),
    commands.registerCommand('forefoot.convertDictation', () => convertDictation(server.ask)),
    commands.registerCommand('forefoot.restartServer', server.restart),
    ...convertWhenLeft(server.ask),
  );
  return server;
}
