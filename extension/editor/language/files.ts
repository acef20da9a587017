/** The `.moves` files of the workspace with their texts, for names that reach across files. */
import * as vscode from 'vscode';
import type { Files } from '../../../engine/document/features/index.ts';
import { LANGUAGE } from '../analyses.ts';

const MOST_FILES = 500;
const LARGEST = 1_000_000;

export async function movesFiles(): Promise<vscode.Uri[]> {
  return vscode.workspace.findFiles('**/*.moves', undefined, MOST_FILES);
}

/** As `use:` would name it, from the folder of the file that uses it. */
export function relativeName(from: vscode.Uri, to: vscode.Uri): string {
  const here = from.path.split('/').slice(0, -1);
  const there = to.path.split('/');
  let same = 0;
  while (same < here.length && same < there.length - 1 && here[same] === there[same]) same++;
  return [...here.slice(same).map(() => '..'), ...there.slice(same)].join('/');
}

/** By path: open documents as they are now, the rest as they are on the disk. */
export async function readFiles(document: vscode.TextDocument): Promise<Files> {
  const texts: Record<string, string> = {};
  await Promise.all(
    (await movesFiles()).map(async (uri) => {
      try {
        const bytes = await vscode.workspace.fs.readFile(uri);
        if (bytes.length <= LARGEST) texts[uri.path] = new TextDecoder().decode(bytes);
      } catch {
        // Gone since it was listed: it has no names any more.
      }
    }),
  );
  for (const open of vscode.workspace.textDocuments)
    if (open.languageId === LANGUAGE && open.uri.scheme === document.uri.scheme)
      texts[open.uri.path] = open.getText();
  texts[document.uri.path] = document.getText();
  return texts;
}

export function uriOf(document: vscode.TextDocument, path: string): vscode.Uri {
  return document.uri.with({ path });
}
