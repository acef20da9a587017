/** Folding. */
import * as vscode from 'vscode';
import { foldingRanges } from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';

export function folding(analyses: Analyses): vscode.FoldingRangeProvider {
  return {
    provideFoldingRanges: (document) =>
      foldingRanges(analyses.of(document)).map(
        ({ first, last, kind }) =>
          new vscode.FoldingRange(
            first,
            last,
            kind === 'comment' ? vscode.FoldingRangeKind.Comment : undefined,
          ),
      ),
  };
}
