/** Texts of other files that a document names with `use:`, kept as they are now. */
import * as vscode from 'vscode';
import { usedFiles } from '../../engine/document/analyse.ts';

/** Longer files are not read as a side effect of opening another one. */
const LARGEST = 1_000_000;

export class Imports implements vscode.Disposable {
  /** By address: the text, or undefined while it is being read or cannot be. */
  private readonly texts = new Map<string, string | undefined>();
  private readonly changed = new vscode.EventEmitter<void>();
  private readonly watcher = vscode.workspace.createFileSystemWatcher('**/*.moves');
  private readonly parts: vscode.Disposable;

  readonly onDidChange = this.changed.event;

  constructor() {
    const refresh = (uri: vscode.Uri): void => {
      if (this.texts.has(uri.toString())) void this.read(uri);
    };
    this.parts = vscode.Disposable.from(
      this.watcher,
      this.watcher.onDidChange(refresh),
      this.watcher.onDidCreate(refresh),
      this.watcher.onDidDelete(refresh),
      vscode.workspace.onDidSaveTextDocument((document) => refresh(document.uri)),
      this.changed,
    );
  }

  /** What is known of the files that the document uses; the rest is fetched and announced. */
  for(document: vscode.TextDocument): Record<string, string> {
    const found: Record<string, string> = {};
    const text = document.getText();
    // Reading a text twice is dear for long ones; few use others.
    if (!/\buse\s*[:：]/i.test(text)) return found;
    for (const name of usedFiles(text)) {
      const uri = vscode.Uri.joinPath(document.uri, '..', name);
      const key = uri.toString();
      const known = this.texts.get(key);
      if (known !== undefined) found[name] = known;
      else if (!this.texts.has(key)) {
        this.texts.set(key, undefined);
        void this.read(uri);
      }
    }
    return found;
  }

  private async read(uri: vscode.Uri): Promise<void> {
    const key = uri.toString();
    let text: string | undefined;
    try {
      const bytes = await vscode.workspace.fs.readFile(uri);
      if (bytes.length <= LARGEST) text = new TextDecoder().decode(bytes);
    } catch {
      // There is no such file (yet): the analysis says so at the name.
    }
    if (this.texts.get(key) === text) return;
    this.texts.set(key, text);
    this.changed.fire();
  }

  dispose(): void {
    this.parts.dispose();
  }
}
