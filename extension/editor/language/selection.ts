/** Growing and shrinking the selection. */
import * as vscode from 'vscode';
import { selectionRanges } from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';
import { toRange } from '../convert.ts';

export function selection(analyses: Analyses): vscode.SelectionRangeProvider {
  return {
    provideSelectionRanges: (document, positions) =>
      positions
        .map((position) =>
          selectionRanges(analyses.of(document), position)
            .toReversed()
            .map(toRange)
            .reduce<vscode.SelectionRange | undefined>(
              (outer, range) => new vscode.SelectionRange(range, outer),
              undefined,
            ),
        )
        .map(
          (range, index) =>
            range ??
            new vscode.SelectionRange(new vscode.Range(positions[index], positions[index])),
        ),
  };
}
