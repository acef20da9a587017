/** Writes turns into the text, where they continue what the answer was about; undone like any edit. */
import * as vscode from 'vscode';
import type { AskedAt } from './conversation.ts';
import type { Focus } from './focus.ts';

export async function insertTurns(
  turns: string,
  asked: AskedAt | undefined,
  focus: Focus,
): Promise<void> {
  const now = focus.current;
  if (now === undefined) return;
  const { document } = now;
  // The turns were computed for one cube: that of the text and the place of the question.
  const fits = asked?.uri === document.uri.toString() && asked.version === document.version;
  if (!fits) {
    void vscode.window.showWarningMessage(
      'The text has changed since these turns were worked out; ask again, so that they fit the cube.',
    );
    return;
  }
  const position = placeForTurns(document, new vscode.Position(asked.line, asked.character));
  const line = document.lineAt(position.line).text;
  const before = position.character > 0 && !/\s/.test(line[position.character - 1]) ? ' ' : '';
  const after = position.character < line.length && !/\s/.test(line[position.character]) ? ' ' : '';
  const edit = new vscode.WorkspaceEdit();
  edit.insert(document.uri, position, before + turns + after);
  if (!(await vscode.workspace.applyEdit(edit))) return;
  const editor = await focus.reveal(document);
  const end = position.translate(0, before.length + turns.length);
  editor.selection = new vscode.Selection(end, end);
  editor.revealRange(new vscode.Range(end, end));
  focus.update(editor);
}

/** Behind the word at the position, so that no turn is torn apart; before a comment that follows. */
function placeForTurns(document: vscode.TextDocument, position: vscode.Position): vscode.Position {
  const line = document.lineAt(position.line).text;
  let at = position.character;
  while (at > 0 && at < line.length && /\S/.test(line[at]) && /\S/.test(line[at - 1])) at++;
  return new vscode.Position(position.line, at);
}
