/** Semantic tokens, anew whenever a text has been analysed. */
import * as vscode from 'vscode';
import {
  semanticTokens,
  TOKEN_MODIFIERS,
  TOKEN_TYPES,
} from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';

export const TOKEN_LEGEND = new vscode.SemanticTokensLegend([...TOKEN_TYPES], [...TOKEN_MODIFIERS]);

export function tokens(analyses: Analyses): vscode.DocumentSemanticTokensProvider {
  return {
    provideDocumentSemanticTokens(document) {
      const builder = new vscode.SemanticTokensBuilder(TOKEN_LEGEND);
      for (const { line, start, length, type, modifiers } of semanticTokens(
        analyses.of(document),
      )) {
        const bits = modifiers.reduce((all, one) => all | (1 << TOKEN_MODIFIERS.indexOf(one)), 0);
        builder.push(line, start, length, TOKEN_TYPES.indexOf(type), bits);
      }
      return builder.build();
    },
  };
}
