/** Places of the engine as places of the editor and back: the same numbers in other clothes. */
import * as vscode from 'vscode';
import type { Position, Range } from '../../engine/cube/place.ts';
import type { TextEdit } from '../../engine/document/finding.ts';

export function toRange({ start, end }: Range): vscode.Range {
  return new vscode.Range(start.line, start.character, end.line, end.character);
}

export function toPosition({ line, character }: Position): vscode.Position {
  return new vscode.Position(line, character);
}

export function toEdits(edits: readonly TextEdit[]): vscode.TextEdit[] {
  return edits.map((edit) => vscode.TextEdit.replace(toRange(edit.range), edit.newText));
}
