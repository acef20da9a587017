/** What the person has set of the language features, read with care. */
import * as vscode from 'vscode';

function isOn(name: string): boolean {
  return vscode.workspace.getConfiguration('turnlore').get<unknown>(name) !== false;
}

export function readLanguageSettings(): { counts: boolean; claims: boolean; lenses: boolean } {
  return {
    counts: isOn('inlayHints.counts'),
    claims: isOn('inlayHints.claims'),
    lenses: isOn('lenses'),
  };
}
