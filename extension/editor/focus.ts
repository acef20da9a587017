/**
 * The place that every view speaks of: the block and the turn at the cursor of the last `.moves`
 * editor used.
 *
 * A cursor cannot say which pass of a repeated group is meant. So a place chosen by stepping or by
 * a click is remembered beside the cursor, for as long as neither text nor cursor changes.
 */
import * as vscode from 'vscode';
import type { Analysis, Block } from '../../engine/document/analysis.ts';
import { LANGUAGE, type Analyses } from './analyses.ts';
import { toPosition } from './convert.ts';

export interface Focused {
  readonly document: vscode.TextDocument;
  readonly analysis: Analysis;
  readonly block: Block | undefined;
  /** 0 before the first turn of the block, up to its length. */
  readonly place: number;
  readonly position: vscode.Position;
}

interface Chosen {
  readonly document: vscode.TextDocument;
  readonly version: number;
  readonly position: vscode.Position;
  readonly place: number;
}

export type StepBy = 'back' | 'forward' | 'start' | 'end';

export class Focus implements vscode.Disposable {
  private focused: Focused | undefined;
  private chosen: Chosen | undefined;
  private readonly changed = new vscode.EventEmitter<Focused | undefined>();
  private readonly parts: vscode.Disposable;

  readonly onDidChange = this.changed.event;

  private readonly analyses: Analyses;

  constructor(analyses: Analyses) {
    this.analyses = analyses;
    this.parts = vscode.Disposable.from(
      this.changed,
      vscode.window.onDidChangeActiveTextEditor(() => this.update()),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
        if (textEditor === vscode.window.activeTextEditor || this.isOf(textEditor))
          this.update(textEditor);
      }),
      analyses.onDidChange((document) => {
        const editor = this.editor();
        if (editor?.document === document) this.update(editor);
      }),
      analyses.onDidClose((document) => {
        if (this.focused?.document === document) this.set(undefined);
      }),
    );
  }

  get current(): Focused | undefined {
    return this.focused;
  }

  /** Looks at the editors anew. */
  update(from = vscode.window.activeTextEditor): void {
    const editor = from?.document.languageId === LANGUAGE ? from : this.editor();
    if (editor === undefined) {
      if (this.focused?.document.isClosed === true) this.set(undefined);
      return;
    }
    const { document } = editor;
    // A long text is analysed once the typing rests; the views are told then.
    if (this.analyses.isWaiting(document)) return;
    const position = editor.selection.active;
    const analysis = this.analyses.of(document);
    const block = analysis.blockAt(position);
    const place = this.chosenAt(document, position) ?? block?.placeAt(position) ?? 0;
    this.set({ document, analysis, block, place, position });
  }

  /** Moves the cursor to a place of the current block. */
  async goTo(place: number): Promise<void> {
    const now = this.focused;
    if (now?.block === undefined || now.block.course.length === 0) return;
    const { block, document } = now;
    const target = Math.max(0, Math.min(place, block.course.length));
    const at = target === 0 ? block.rangeOf(0).start : block.rangeOf(target - 1).end;
    const position = toPosition(at);
    this.chosen = { document, version: document.version, position, place: target };
    const editor = await this.reveal(document);
    editor.selection = new vscode.Selection(position, position);
    editor.revealRange(
      new vscode.Range(position, position),
      vscode.TextEditorRevealType.InCenterIfOutsideViewport,
    );
    this.update(editor);
  }

  async step(by: StepBy): Promise<void> {
    const now = this.focused;
    if (now?.block === undefined) return;
    const { place, block } = now;
    const target = { back: place - 1, forward: place + 1, start: 0, end: block.course.length }[by];
    await this.goTo(target);
  }

  /** The editor that shows the document, opened again if it was closed; the keyboard stays where it is. */
  async reveal(document: vscode.TextDocument): Promise<vscode.TextEditor> {
    const shown = vscode.window.visibleTextEditors.find((editor) => editor.document === document);
    return shown ?? (await vscode.window.showTextDocument(document, { preserveFocus: true }));
  }

  private chosenAt(document: vscode.TextDocument, position: vscode.Position): number | undefined {
    const { chosen } = this;
    const same =
      chosen?.document === document &&
      chosen.version === document.version &&
      chosen.position.isEqual(position);
    if (!same) this.chosen = undefined;
    return same ? chosen.place : undefined;
  }

  private editor(): vscode.TextEditor | undefined {
    const active = vscode.window.activeTextEditor;
    if (active?.document.languageId === LANGUAGE) return active;
    return (
      vscode.window.visibleTextEditors.find((editor) => this.isOf(editor)) ??
      vscode.window.visibleTextEditors.find((editor) => editor.document.languageId === LANGUAGE)
    );
  }

  private isOf(editor: vscode.TextEditor): boolean {
    return editor.document === this.focused?.document;
  }

  private set(focused: Focused | undefined): void {
    this.focused = focused;
    this.changed.fire(focused);
  }

  dispose(): void {
    this.parts.dispose();
  }
}
