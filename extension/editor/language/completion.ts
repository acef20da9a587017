/** Completion. */
import * as vscode from 'vscode';
import { completionsAt, type Completion } from '../../../engine/document/features/index.ts';
import type { Analyses } from '../analyses.ts';
import { toRange } from '../convert.ts';
import { movesFiles, relativeName } from './files.ts';

/** `:` for values of keys; a space would interrupt people who type turns. */
export const COMPLETION_TRIGGERS = ['@', ':'];

const KINDS: Readonly<Record<Completion['kind'], vscode.CompletionItemKind>> = {
  key: vscode.CompletionItemKind.Keyword,
  stage: vscode.CompletionItemKind.Event,
  sequence: vscode.CompletionItemKind.Function,
  turns: vscode.CompletionItemKind.Value,
  goal: vscode.CompletionItemKind.Constant,
  method: vscode.CompletionItemKind.Interface,
  colour: vscode.CompletionItemKind.Color,
  piece: vscode.CompletionItemKind.Unit,
  slot: vscode.CompletionItemKind.Field,
  file: vscode.CompletionItemKind.File,
};

export function completion(analyses: Analyses): vscode.CompletionItemProvider {
  return {
    async provideCompletionItems(document, position, token, { triggerCharacter }) {
      const before = document.lineAt(position).text.slice(0, position.character);
      const files = /^\s*use\s*[:：]/i.test(before)
        ? (await movesFiles()).map((uri) => relativeName(document.uri, uri))
        : [];
      if (token.isCancellationRequested) return [];
      const items = completionsAt(analyses.of(document), position, { files });
      return items
        .filter(({ kind }) => triggerCharacter !== ':' || (kind !== 'turns' && kind !== 'key'))
        .map(toItem);
    },
  };
}

function toItem(completion: Completion): vscode.CompletionItem {
  const { label, kind, insert, range, detail, documentation, sort } = completion;
  const item = new vscode.CompletionItem({ label, description: detail }, KINDS[kind]);
  item.insertText = insert;
  item.filterText = label;
  item.range = toRange(range);
  item.sortText = sort;
  item.detail = detail;
  if (documentation !== undefined) item.documentation = documentation;
  return item;
}
