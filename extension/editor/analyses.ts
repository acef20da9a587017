/**
 * The analysis of each open document, made once per version and shared by every feature.
 *
 * Texts of ordinary size are analysed in the very event that changed them, so that no view can show
 * anything older; longer ones wait for a pause in typing, and `onDidStart` says that they do.
 */
import * as vscode from 'vscode';
import type { Analysis, AnalysisOptions } from '../../engine/document/analysis.ts';
import { analyse } from '../../engine/document/analyse.ts';
import { Imports } from './imports.ts';
import { readSeverities } from './settings.ts';

export const LANGUAGE = 'moves';

/** Characters up to which a text is analysed at once. */
const AT_ONCE = 150_000;
const PAUSE = 200;

interface Made {
  readonly version: number;
  readonly analysis: Analysis;
}

export class Analyses implements vscode.Disposable {
  private readonly made = new Map<string, Made>();
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();
  private readonly imports = new Imports();
  private readonly started = new vscode.EventEmitter<vscode.TextDocument>();
  private readonly changed = new vscode.EventEmitter<vscode.TextDocument>();
  private readonly closed = new vscode.EventEmitter<vscode.TextDocument>();
  private readonly parts: vscode.Disposable;

  /** The text has changed and its analysis will follow after a pause. */
  readonly onDidStart = this.started.event;
  /** A document has an analysis of its present version. */
  readonly onDidChange = this.changed.event;
  readonly onDidClose = this.closed.event;

  constructor() {
    this.parts = vscode.Disposable.from(
      this.imports,
      vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        if (contentChanges.length > 0) this.schedule(document);
      }),
      vscode.workspace.onDidOpenTextDocument((document) => this.schedule(document)),
      vscode.workspace.onDidCloseTextDocument((document) => this.forget(document)),
      vscode.workspace.onDidChangeConfiguration((change) => {
        if (change.affectsConfiguration('turnlore.severities')) this.renew();
      }),
      this.imports.onDidChange(() => this.renew()),
    );
  }

  /** The analysis of the document as it now is. */
  of(document: vscode.TextDocument): Analysis {
    const key = document.uri.toString();
    const old = this.made.get(key);
    if (old?.version === document.version) return old.analysis;
    const analysis = analyse(document.getText(), this.options(document), old?.analysis);
    this.made.set(key, { version: document.version, analysis });
    return analysis;
  }

  /** Whether the text is waiting for a pause in typing before it is analysed. */
  isWaiting(document: vscode.TextDocument): boolean {
    return this.waiting.has(document.uri.toString());
  }

  options(document: vscode.TextDocument): AnalysisOptions {
    return { severities: readSeverities(), imports: this.imports.for(document) };
  }

  /** Analyses what is open already; to be called once everybody listens. */
  start(): void {
    for (const document of vscode.workspace.textDocuments) this.schedule(document);
  }

  private schedule(document: vscode.TextDocument): void {
    if (document.languageId !== LANGUAGE) return;
    const key = document.uri.toString();
    clearTimeout(this.waiting.get(key));
    this.waiting.delete(key);
    const fresh = !this.made.has(key);
    if (fresh || document.getText().length <= AT_ONCE) {
      this.of(document);
      this.changed.fire(document);
      return;
    }
    this.started.fire(document);
    const timer = setTimeout(() => {
      this.waiting.delete(key);
      this.of(document);
      this.changed.fire(document);
    }, PAUSE);
    this.waiting.set(key, timer);
  }

  private forget(document: vscode.TextDocument): void {
    const key = document.uri.toString();
    clearTimeout(this.waiting.get(key));
    this.waiting.delete(key);
    if (this.made.delete(key)) this.closed.fire(document);
  }

  /** Everything anew, because something outside the texts has changed. */
  private renew(): void {
    this.made.clear();
    this.start();
  }

  dispose(): void {
    for (const timer of this.waiting.values()) clearTimeout(timer);
    for (const part of [this.parts, this.started, this.changed, this.closed]) part.dispose();
  }
}
