/** Formatting a text, or some of its lines. */
import type * as vscode from 'vscode';
import { format } from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';
import { toEdits } from '../convert.ts';

export function formatting(
  analyses: Analyses,
): vscode.DocumentFormattingEditProvider & vscode.DocumentRangeFormattingEditProvider {
  return {
    provideDocumentFormattingEdits: (document) => toEdits(format(analyses.of(document))),
    provideDocumentRangeFormattingEdits: (document, range) =>
      toEdits(
        format(analyses.of(document)).filter(
          ({ range: { start } }) => range.start.line <= start.line && start.line <= range.end.line,
        ),
      ),
  };
}
