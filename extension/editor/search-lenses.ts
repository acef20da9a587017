/** Searches that can be started from the text itself, above the line that they are about. */
import * as vscode from 'vscode';
import { gapsOf } from '../../engine/late/gaps.ts';
import { explainable, lateBlocks } from '../../engine/late/wanted.ts';
import type { Analyses } from './analyses.ts';

export class SearchLenses implements vscode.CodeLensProvider, vscode.Disposable {
  private readonly changed = new vscode.EventEmitter<void>();
  readonly onDidChangeCodeLenses = this.changed.event;
  private readonly analyses: Analyses;
  private readonly listening: vscode.Disposable;

  constructor(analyses: Analyses) {
    this.analyses = analyses;
    this.listening = analyses.onDidChange(() => this.changed.fire());
  }

  provideCodeLenses(document: vscode.TextDocument): vscode.CodeLens[] {
    const analysis = this.analyses.of(document);
    const lenses: vscode.CodeLens[] = [];
    const lens = (line: number, character: number, title: string, command: string): void => {
      const place = { line, character };
      const at = new vscode.Range(line, character, line, character);
      lenses.push(new vscode.CodeLens(at, { title, command, arguments: [place] }));
    };
    for (const block of lateBlocks(analysis)) {
      const { line } = explainable(analysis, block)[0].range.start;
      lens(line, 0, 'Find the slip', 'turnlore.findSlip');
    }
    for (const block of analysis.blocks.flatMap((own) => [own, ...own.asides])) {
      for (const gap of gapsOf(block)) {
        const { line, character } = block.rangeOf(gap).start;
        lens(line, character, 'Fill the gap', 'turnlore.fillGap');
      }
    }
    return lenses;
  }

  dispose(): void {
    this.listening.dispose();
    this.changed.dispose();
  }
}
