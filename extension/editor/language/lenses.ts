/** Lenses above stages and sequences; those that ask move the cursor to the end of what they speak of. */
import * as vscode from 'vscode';
import { lenses as lensesOf, type Lens } from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';
import { toRange } from '../convert.ts';
import { readLanguageSettings } from './settings.ts';

export const ASK_AT = 'turnlore.language.askAt';

export function lenses(analyses: Analyses): vscode.CodeLensProvider {
  return {
    provideCodeLenses(document) {
      if (!readLanguageSettings().lenses) return [];
      return lensesOf(analyses.of(document)).map(
        (lens) => new vscode.CodeLens(toRange(lens.range), commandOf(document, lens)),
      );
    },
  };
}

function commandOf(document: vscode.TextDocument, lens: Lens): vscode.Command {
  const { title, asks, line, question } = lens;
  if (!asks) return { title, command: '' };
  return { title, command: ASK_AT, arguments: [document.uri, line, question] };
}

/** Which command asks a question of a lens; the others let the person ask. */
function askingCommand(question: unknown): string {
  if (question === 'What next?') return 'turnlore.whatNext';
  return typeof question === 'string' ? 'turnlore.whyBreak' : 'turnlore.ask';
}

export function registerAskAt(): vscode.Disposable {
  return vscode.commands.registerCommand(
    ASK_AT,
    async (uri: unknown, line: unknown, question: unknown) => {
      if (!(uri instanceof vscode.Uri) || typeof line !== 'number') return;
      const document = await vscode.workspace.openTextDocument(uri);
      const editor = await vscode.window.showTextDocument(document);
      const end = document.lineAt(Math.min(line, document.lineCount - 1)).range.end;
      editor.selection = new vscode.Selection(end, end);
      await vscode.commands.executeCommand(askingCommand(question));
    },
  );
}
