/**
 * Late fixes in the editor: searched in the worker for each block that has something to explain, a
 * moment after the typing rests, kept for as long as the block's text stays as it is, and offered as
 * quick fixes beside those that the analysis found.
 */
import * as vscode from 'vscode';
import type { Analysis, Block } from '../../engine/document/analysis.ts';
import { lateBlocks, type LateFinding } from '../../engine/late/wanted.ts';
import type { Analyses } from './analyses.ts';
import { toEdits, toRange } from './convert.ts';
import type { WorkerClient } from './worker.ts';

/** Milliseconds of rest before a search begins. */
const PAUSE = 400;
/** Blocks of a text that are searched; one with more faults has others than slips. */
const MOST = 8;
/** Longer texts are searched only on request: each trial of a fix reads them anew. */
const LONGEST = 150_000;

interface Kept {
  /** Ends once the search has. */
  readonly result: Promise<readonly LateFinding[]>;
  readonly cancel: vscode.CancellationTokenSource;
  /** The line at which the block began when it was searched. */
  readonly line: number;
}

export class LateFixes implements vscode.CodeActionProvider, vscode.Disposable {
  static readonly kinds = [vscode.CodeActionKind.QuickFix];

  /** By address of the document, then by what the result depends on. */
  private readonly kept = new Map<string, Map<string, Kept>>();
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();
  private readonly analyses: Analyses;
  private readonly worker: WorkerClient;
  private readonly parts: vscode.Disposable;

  constructor(analyses: Analyses, worker: WorkerClient) {
    this.analyses = analyses;
    this.worker = worker;
    this.parts = vscode.Disposable.from(
      analyses.onDidChange((document) => this.schedule(document)),
      analyses.onDidClose((document) => this.forget(document)),
    );
  }

  async provideCodeActions(
    document: vscode.TextDocument,
    range: vscode.Range,
    context: vscode.CodeActionContext,
    token: vscode.CancellationToken,
  ): Promise<vscode.CodeAction[]> {
    if (document.getText().length > LONGEST) return [];
    const { version } = document;
    const analysis = this.analyses.of(document);
    const actions: vscode.CodeAction[] = [];
    for (const block of lateBlocks(analysis).slice(0, MOST)) {
      if (toRange(block.range).intersection(range) === undefined) continue;
      const { result, line } = this.searched(document, analysis, block);
      const findings = await result;
      if (token.isCancellationRequested || document.version !== version) return [];
      for (const finding of findings) {
        const own = moved(finding, block.line - line);
        if (toRange(own.range).intersection(range) === undefined) continue;
        actions.push(...own.fixes.map((fix) => makeAction(document, own, fix, context)));
      }
    }
    return actions;
  }

  private schedule(document: vscode.TextDocument): void {
    const key = document.uri.toString();
    clearTimeout(this.waiting.get(key));
    this.waiting.set(
      key,
      setTimeout(() => {
        this.waiting.delete(key);
        if (!document.isClosed && document.getText().length <= LONGEST) this.update(document);
      }, PAUSE),
    );
  }

  /** Drops what belongs to blocks that are no longer so, and starts what is missing. */
  private update(document: vscode.TextDocument): void {
    const analysis = this.analyses.of(document);
    const blocks = lateBlocks(analysis).slice(0, MOST);
    const wanted = new Set(blocks.map((block) => this.keyOf(document, analysis, block)));
    for (const [key, kept] of this.kept.get(document.uri.toString()) ?? []) {
      if (wanted.has(key)) continue;
      kept.cancel.cancel();
      this.kept.get(document.uri.toString())?.delete(key);
    }
    for (const block of blocks) this.searched(document, analysis, block);
  }

  private searched(document: vscode.TextDocument, analysis: Analysis, block: Block): Kept {
    const address = document.uri.toString();
    const byKey = this.kept.get(address) ?? new Map<string, Kept>();
    this.kept.set(address, byKey);
    const key = this.keyOf(document, analysis, block);
    const known = byKey.get(key);
    if (known) return known;
    const cancel = new vscode.CancellationTokenSource();
    const task = { kind: 'late', line: block.line } as const;
    const options = this.analyses.options(document);
    const result = this.worker
      .search({ kind: 'search', text: document.getText(), options, task }, cancel.token)
      .then((reply) => (reply.kind === 'late' ? reply.findings : []))
      .catch(() => {
        // Called off or failed (the log tells): the next one who asks starts it anew.
        byKey.delete(key);
        return [];
      });
    const kept = { result, cancel, line: block.line };
    byKey.set(key, kept);
    return kept;
  }

  /** Everything that the result depends on: the block, what stands outside of solves, the options. */
  private keyOf(document: vscode.TextDocument, analysis: Analysis, block: Block): string {
    const { lines, blocks } = analysis;
    const own = lines.slice(block.range.start.line, block.range.end.line + 1);
    const solves = blocks.filter(({ kind }) => kind === 'solve');
    const outside = lines.filter(
      (_, line) => !solves.some(({ range }) => line >= range.start.line && line <= range.end.line),
    );
    // An aside begins with the cube of the solve around it.
    const around = blocks.find(({ asides }) => asides.includes(block));
    const main =
      around === undefined ? [] : lines.slice(around.range.start.line, block.range.start.line);
    return JSON.stringify([own, outside, main, this.analyses.options(document)]);
  }

  private forget(document: vscode.TextDocument): void {
    const key = document.uri.toString();
    clearTimeout(this.waiting.get(key));
    for (const { cancel } of this.kept.get(key)?.values() ?? []) cancel.cancel();
    this.kept.delete(key);
  }

  dispose(): void {
    for (const timer of this.waiting.values()) clearTimeout(timer);
    for (const byKey of this.kept.values())
      for (const { cancel } of byKey.values()) cancel.cancel();
    this.parts.dispose();
  }
}

/** The same with the block begun so many lines further down. */
function moved(finding: LateFinding, by: number): LateFinding {
  if (by === 0) return finding;
  const shift = ({ start, end }: LateFinding['range']): LateFinding['range'] => ({
    start: { line: start.line + by, character: start.character },
    end: { line: end.line + by, character: end.character },
  });
  return {
    code: finding.code,
    range: shift(finding.range),
    fixes: finding.fixes.map(({ title, edits }) => ({
      title,
      edits: edits.map(({ range, newText }) => ({ range: shift(range), newText })),
    })),
  };
}

function makeAction(
  document: vscode.TextDocument,
  finding: LateFinding,
  fix: LateFinding['fixes'][number],
  context: vscode.CodeActionContext,
): vscode.CodeAction {
  const action = new vscode.CodeAction(fix.title, vscode.CodeActionKind.QuickFix);
  action.edit = new vscode.WorkspaceEdit();
  action.edit.set(document.uri, toEdits(fix.edits));
  action.diagnostics = context.diagnostics.filter(
    (diagnostic) =>
      diagnostic.code === finding.code && diagnostic.range.isEqual(toRange(finding.range)),
  );
  return action;
}
