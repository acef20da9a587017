/** The tutor view: shows the conversation, passes questions on, goes to turns and inserts them. */
import * as vscode from 'vscode';
import {
  entrySchema,
  fromTutor,
  readMessage,
  type Entry,
  type FromTutor,
  type ToTutor,
} from '../../webview/messages.ts';
import { placeWords } from './block-view.ts';
import type { Conversation } from './conversation.ts';
import type { Focus, Focused } from './focus.ts';
import { insertTurns } from './insert.ts';
import { makePage, viewOptions } from './page.ts';
import { readLooks } from './settings.ts';

export const TUTOR_VIEW = 'turnlore.tutor';

export class TutorView implements vscode.WebviewViewProvider, vscode.Disposable {
  private webview: vscode.Webview | undefined;
  private wantsFocus = false;
  private readonly parts: vscode.Disposable;

  private readonly extension: vscode.Uri;
  private readonly focus: Focus;
  private readonly conversation: Conversation;

  constructor(extension: vscode.Uri, focus: Focus, conversation: Conversation) {
    this.extension = extension;
    this.focus = focus;
    this.conversation = conversation;
    this.parts = vscode.Disposable.from(
      vscode.window.registerWebviewViewProvider(TUTOR_VIEW, this),
      focus.onDidChange((focused) => this.post(whereNow(focused))),
      conversation.onDidChange((entry) => {
        this.post(entry === undefined ? this.transcript() : { kind: 'entry', entry });
      }),
      vscode.workspace.onDidChangeConfiguration((change) => {
        if (change.affectsConfiguration('turnlore.cube'))
          this.post({ kind: 'looks', looks: readLooks() });
      }),
    );
  }

  resolveWebviewView(view: vscode.WebviewView): void {
    const { webview } = view;
    webview.options = viewOptions(this.extension);
    webview.onDidReceiveMessage((data: unknown) => {
      const message = readMessage(fromTutor, data);
      if (message !== undefined) void this.receive(message);
    });
    view.onDidDispose(() => {
      if (this.webview === webview) this.webview = undefined;
    });
    webview.html = makePage('tutor', webview, this.extension);
    this.webview = webview;
  }

  /** Opens the view with the keyboard in the question. */
  async show(): Promise<void> {
    this.wantsFocus = true;
    await vscode.commands.executeCommand(`${TUTOR_VIEW}.focus`);
    this.post({ kind: 'focus' });
  }

  /** Opens the view and asks; the keyboard stays where it is. */
  async ask(question: string): Promise<void> {
    await vscode.commands.executeCommand(`${TUTOR_VIEW}.open`, { preserveFocus: true });
    await this.conversation.ask(question);
  }

  private async receive(message: FromTutor): Promise<void> {
    switch (message.kind) {
      case 'ready':
        this.post({ kind: 'looks', looks: readLooks() });
        this.post(this.transcript());
        this.post(whereNow(this.focus.current));
        if (this.wantsFocus) this.post({ kind: 'focus' });
        this.wantsFocus = false;
        return;
      case 'ask':
        await this.conversation.ask(message.question);
        return;
      case 'goTo':
        await this.goTo(message.uri, message.version, message.turn);
        return;
      case 'insert':
        await this.insert(message.id);
        return;
      case 'clear':
        this.conversation.clear();
        return;
    }
  }

  private async goTo(uri: string, version: number, turn: number): Promise<void> {
    const document = await vscode.workspace.openTextDocument(vscode.Uri.parse(uri));
    const editor = await vscode.window.showTextDocument(document);
    this.focus.update(editor);
    if (document.version !== version) {
      void vscode.window.showInformationMessage(
        'The text has changed since, so the turn may be another one now.',
      );
    }
    await this.focus.goTo(turn + 1);
  }

  /** Writes the turns of an answer (of the latest that has some, without `id`) into the text. */
  async insert(id?: number): Promise<void> {
    const entry =
      id === undefined ? this.conversation.latestWithTurns() : this.conversation.entry(id);
    const turns = entry?.answer?.turns;
    if (entry === undefined || turns === undefined) {
      void vscode.window.showInformationMessage('The tutor has not proposed any turns yet.');
      return;
    }
    await insertTurns(turns, this.conversation.askedAt(entry.id), this.focus);
  }

  private transcript(): ToTutor {
    return { kind: 'transcript', entries: [...this.conversation.all()] };
  }

  private post(message: ToTutor): void {
    void this.webview?.postMessage(message);
  }

  dispose(): void {
    this.parts.dispose();
  }
}

function whereNow(focused: Focused | undefined): ToTutor {
  if (focused === undefined) {
    return { kind: 'where', where: 'Open a .moves file to ask about it.', canAsk: false };
  }
  const { block, place } = focused;
  if (block === undefined) return { kind: 'where', where: 'No solve at the cursor.', canAsk: true };
  const of = block.title === '' ? '' : ` · ${block.title}`;
  return { kind: 'where', where: `About the cube, ${placeWords(block, place)}${of}`, canAsk: true };
}

/** What was stored, without whatever does not read as an entry (any more). */
export function readEntries(data: unknown): Entry[] {
  if (!Array.isArray(data)) return [];
  return data.flatMap((item: unknown) => readMessage(entrySchema, item) ?? []);
}
