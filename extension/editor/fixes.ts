/** Fixes of findings as quick fixes. */
import * as vscode from 'vscode';
import type { Analyses } from './analyses.ts';
import { toEdits, toRange } from './convert.ts';

export class Fixes implements vscode.CodeActionProvider {
  static readonly kinds = [vscode.CodeActionKind.QuickFix];

  private readonly analyses: Analyses;

  constructor(analyses: Analyses) {
    this.analyses = analyses;
  }

  provideCodeActions(
    document: vscode.TextDocument,
    range: vscode.Range,
    context: vscode.CodeActionContext,
  ): vscode.CodeAction[] {
    const findings = this.analyses
      .of(document)
      .findings.filter(
        (finding) => finding.fixes.length > 0 && toRange(finding.range).intersection(range),
      );
    return findings.flatMap((finding) =>
      finding.fixes.map((fix, index) => {
        const action = new vscode.CodeAction(fix.title, vscode.CodeActionKind.QuickFix);
        action.edit = new vscode.WorkspaceEdit();
        action.edit.set(document.uri, toEdits(fix.edits));
        action.isPreferred = index === 0;
        action.diagnostics = context.diagnostics.filter(
          (diagnostic) =>
            diagnostic.code === finding.code && diagnostic.range.isEqual(toRange(finding.range)),
        );
        return action;
      }),
    );
  }
}
