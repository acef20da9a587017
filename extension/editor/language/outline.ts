/** The outline of a text. */
import * as vscode from 'vscode';
import { documentSymbols, type OutlineSymbol } from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';
import { toRange } from '../convert.ts';

const KINDS: Readonly<Record<OutlineSymbol['kind'], vscode.SymbolKind>> = {
  solve: vscode.SymbolKind.Module,
  sequence: vscode.SymbolKind.Function,
  aside: vscode.SymbolKind.Namespace,
  stage: vscode.SymbolKind.Event,
  goal: vscode.SymbolKind.Constant,
  method: vscode.SymbolKind.Interface,
};

export function outline(analyses: Analyses): vscode.DocumentSymbolProvider {
  return {
    provideDocumentSymbols: (document) => documentSymbols(analyses.of(document)).map(toSymbol),
  };
}

function toSymbol(symbol: OutlineSymbol): vscode.DocumentSymbol {
  const { name, detail, kind, range, selection, children } = symbol;
  const result = new vscode.DocumentSymbol(
    name,
    detail,
    KINDS[kind],
    toRange(range),
    toRange(selection),
  );
  result.children = children.map(toSymbol);
  return result;
}
