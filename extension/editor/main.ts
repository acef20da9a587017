/** Where the extension begins: everything is made here, and connected by what it is given. */
import * as vscode from 'vscode';
import { Analyses, LANGUAGE } from './analyses.ts';
import { registerCommands } from './commands.ts';
import { Conversation } from './conversation.ts';
import { CUBE_VIEW, CubeView } from './cube-view.ts';
import { Diagnostics } from './diagnostics.ts';
import { Fixes } from './fixes.ts';
import { Focus } from './focus.ts';
import { Hovers } from './hover.ts';
import { registerLanguage } from './language/index.ts';
import { registerSearching } from './searching.ts';
import { opensViews } from './settings.ts';
import { Status } from './status.ts';
import { TUTOR_VIEW, TutorView, readEntries } from './tutor-view.ts';
import { WorkerClient } from './worker.ts';

const VIEWS_OPENED = 'turnlore.viewsOpened';

export function activate(context: vscode.ExtensionContext): void {
  const log = vscode.window.createOutputChannel('Turnlore', { log: true });
  const analyses = new Analyses();
  const focus = new Focus(analyses);
  const worker = new WorkerClient(context.extensionUri, log);
  const conversation = new Conversation(
    context.workspaceState,
    analyses,
    focus,
    worker,
    readEntries,
  );
  const tutor = new TutorView(context.extensionUri, focus, conversation);
  const cube = new CubeView(
    context.extensionUri,
    focus,
    analyses,
    (question) => void tutor.ask(question),
  );
  context.subscriptions.push(
    log,
    analyses,
    focus,
    worker,
    conversation,
    tutor,
    cube,
    new Diagnostics(analyses),
    new Status(focus),
    registerCommands({ focus, cube, tutor, conversation }),
    ...registerSearching({ analyses, focus, worker }),
    vscode.languages.registerHoverProvider(LANGUAGE, new Hovers(analyses)),
    vscode.languages.registerCodeActionsProvider(LANGUAGE, new Fixes(analyses), {
      providedCodeActionKinds: Fixes.kinds,
    }),
    vscode.window.onDidChangeActiveTextEditor((editor) => void openViewsOnce(context, editor)),
  );
  registerLanguage(context, analyses);
  analyses.start();
  focus.update();
  void openViewsOnce(context, vscode.window.activeTextEditor);
}

/** With the first `.moves` file of a workspace the cube and the tutor open beside it, once; after that, people have them as they like. */
async function openViewsOnce(
  context: vscode.ExtensionContext,
  editor: vscode.TextEditor | undefined,
): Promise<void> {
  if (editor?.document.languageId !== LANGUAGE || !opensViews()) return;
  if (context.workspaceState.get(VIEWS_OPENED) === true) return;
  await context.workspaceState.update(VIEWS_OPENED, true);
  for (const view of [TUTOR_VIEW, CUBE_VIEW]) {
    await vscode.commands.executeCommand(`${view}.open`, { preserveFocus: true });
  }
}
