/** Hints at line ends: counts, and the live claims of the stage at the cursor. */
import * as vscode from 'vscode';
import { inlayHints } from '../../../engine/document/features/index.ts';
import { LANGUAGE, type Analyses } from '../analyses.ts';
import { readLanguageSettings } from './settings.ts';

export class Hints implements vscode.InlayHintsProvider, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  private readonly parts: vscode.Disposable;
  private readonly analyses: Analyses;
  /** Document and line of the cursor for which the hints were made. */
  private shownFor = '';

  readonly onDidChangeInlayHints = this.changed.event;

  constructor(analyses: Analyses) {
    this.analyses = analyses;
    this.parts = vscode.Disposable.from(
      this.changed,
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
        if (textEditor.document.languageId !== LANGUAGE) return;
        const key = `${textEditor.document.uri.toString()} ${textEditor.selection.active.line}`;
        // Within a line the claim stays the same.
        if (key === this.shownFor) return;
        this.shownFor = key;
        this.changed.fire();
      }),
      vscode.workspace.onDidChangeConfiguration((change) => {
        if (change.affectsConfiguration('turnlore.inlayHints')) this.changed.fire();
      }),
    );
  }

  provideInlayHints(document: vscode.TextDocument, range: vscode.Range): vscode.InlayHint[] {
    const { counts, claims } = readLanguageSettings();
    const editor = vscode.window.activeTextEditor;
    const cursor = editor?.document === document ? editor.selection.active : undefined;
    const found = inlayHints(this.analyses.of(document), {
      counts,
      claims,
      lines: { first: range.start.line, last: range.end.line },
      ...(cursor ? { cursor } : {}),
    });
    return found.map(({ position, label, tooltip }) => {
      const place = new vscode.Position(position.line, position.character);
      const hint = new vscode.InlayHint(place, label);
      hint.paddingLeft = true;
      hint.tooltip = tooltip;
      return hint;
    });
  }

  dispose(): void {
    this.parts.dispose();
  }
}
