/**
 * The cube view: in the side bar, and on request as a tab beside the text. Both show the same and
 * are fed from here; a view that comes back from being hidden says `ready` and gets everything.
 */
import * as vscode from 'vscode';
import { fromCube, readMessage, type FromCube, type ToCube } from '../../webview/messages.ts';
import type { Analyses } from './analyses.ts';
import { makeBlockView, makePlaceView } from './block-view.ts';
import type { Focus, Focused } from './focus.ts';
import { makePage, viewOptions } from './page.ts';
import { readLooks, writeLooks } from './settings.ts';

export const CUBE_VIEW = 'turnlore.cube';
export const CUBE_PANEL = 'turnlore.cubePanel';

const NOTHING = 'Open a .moves file, and the cube at the cursor is shown here.';
const NO_BLOCK = 'There is no solve or sequence at the cursor.';

export class CubeView
  implements vscode.WebviewViewProvider, vscode.WebviewPanelSerializer, vscode.Disposable
{
  private readonly webviews = new Set<vscode.Webview>();
  /** The block that the views have, so that it is sent once per version. */
  private sent: { readonly analysis: object; readonly block: object } | undefined;
  private readonly parts: vscode.Disposable;

  private readonly extension: vscode.Uri;
  private readonly focus: Focus;
  private readonly ask: (question: string) => void;

  constructor(
    extension: vscode.Uri,
    focus: Focus,
    analyses: Analyses,
    ask: (question: string) => void,
  ) {
    this.extension = extension;
    this.focus = focus;
    this.ask = ask;
    this.parts = vscode.Disposable.from(
      focus.onDidChange((focused) => this.follow(focused)),
      analyses.onDidStart((document) => {
        if (document !== focus.current?.document) return;
        this.post({ kind: 'updating', uri: document.uri.toString(), version: document.version });
      }),
      vscode.workspace.onDidChangeConfiguration((change) => {
        if (change.affectsConfiguration('turnlore.cube'))
          this.post({ kind: 'looks', looks: readLooks() });
      }),
      vscode.window.registerWebviewViewProvider(CUBE_VIEW, this),
      vscode.window.registerWebviewPanelSerializer(CUBE_PANEL, this),
    );
  }

  resolveWebviewView(view: vscode.WebviewView): void {
    this.attach(view.webview, view.onDidDispose);
  }

  deserializeWebviewPanel(panel: vscode.WebviewPanel): Promise<void> {
    this.attach(panel.webview, panel.onDidDispose);
    return Promise.resolve();
  }

  /** Opens a tab with the cube beside the text. */
  openBeside(): void {
    const place = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
    const panel = vscode.window.createWebviewPanel(CUBE_PANEL, 'Cube', place);
    this.attach(panel.webview, panel.onDidDispose);
  }

  private attach(webview: vscode.Webview, onDidDispose: vscode.Event<void>): void {
    webview.options = viewOptions(this.extension);
    webview.onDidReceiveMessage((data: unknown) => {
      const message = readMessage(fromCube, data);
      if (message !== undefined) void this.receive(message, webview);
    });
    onDidDispose(() => this.webviews.delete(webview));
    webview.html = makePage('cube', webview, this.extension);
    this.webviews.add(webview);
  }

  private async receive(message: FromCube, webview: vscode.Webview): Promise<void> {
    switch (message.kind) {
      case 'ready':
        void webview.postMessage({ kind: 'looks', looks: readLooks() } satisfies ToCube);
        void webview.postMessage(describe(this.focus.current, true));
        return;
      case 'go': {
        const now = this.focus.current?.document;
        // A click on a strip of an earlier version would go to another turn than the one seen.
        if (now?.uri.toString() !== message.uri || now.version !== message.version) return;
        await this.focus.goTo(message.place);
        return;
      }
      case 'step':
        await this.focus.step(message.by);
        return;
      case 'looks':
        await writeLooks(message.looks);
        return;
      case 'ask':
        this.ask(message.question);
        return;
    }
  }

  private follow(focused: Focused | undefined): void {
    const block = focused?.block;
    const known =
      block !== undefined &&
      this.sent?.analysis === focused?.analysis &&
      this.sent?.block === block;
    this.sent =
      block === undefined || focused === undefined
        ? undefined
        : { analysis: focused.analysis, block };
    if (this.webviews.size > 0) this.post(describe(focused, !known));
  }

  private post(message: ToCube): void {
    for (const webview of this.webviews) void webview.postMessage(message);
  }

  dispose(): void {
    this.parts.dispose();
  }
}

function describe(focused: Focused | undefined, whole: boolean): ToCube {
  if (focused === undefined) return { kind: 'nothing', uri: '', reason: NOTHING };
  const { document, analysis, block } = focused;
  const about = { uri: document.uri.toString(), version: document.version };
  if (block === undefined) return { kind: 'nothing', uri: about.uri, reason: NO_BLOCK };
  const place = makePlaceView(analysis, block, focused.place);
  return whole
    ? { kind: 'block', ...about, block: makeBlockView(block), place }
    : { kind: 'place', ...about, place };
}
