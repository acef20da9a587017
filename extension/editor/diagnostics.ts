/** Findings as the editor's diagnostics, a moment after the last keystroke. */
import * as vscode from 'vscode';
import type { Finding, Severity } from '../../engine/document/finding.ts';
import type { Analyses } from './analyses.ts';
import { toRange } from './convert.ts';

/** Milliseconds of rest before squiggles change, so that they don't flicker within a word. */
const PAUSE = 120;

/** A text that is no solve at all may bring up thousands; these are shown, the rest counted. */
const SHOWN = 200;

const SEVERITY: Readonly<Record<Exclude<Severity, 'off'>, vscode.DiagnosticSeverity>> = {
  error: vscode.DiagnosticSeverity.Error,
  warning: vscode.DiagnosticSeverity.Warning,
  information: vscode.DiagnosticSeverity.Information,
};

export class Diagnostics implements vscode.Disposable {
  private readonly collection = vscode.languages.createDiagnosticCollection('turnlore');
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();
  private readonly parts: vscode.Disposable;

  private readonly analyses: Analyses;

  constructor(analyses: Analyses) {
    this.analyses = analyses;
    this.parts = vscode.Disposable.from(
      this.collection,
      analyses.onDidChange((document) => this.schedule(document)),
      analyses.onDidClose((document) => {
        clearTimeout(this.waiting.get(document.uri.toString()));
        this.collection.delete(document.uri);
      }),
    );
  }

  private schedule(document: vscode.TextDocument): void {
    const key = document.uri.toString();
    clearTimeout(this.waiting.get(key));
    const publish = (): void => {
      this.waiting.delete(key);
      if (!document.isClosed)
        this.collection.set(
          document.uri,
          makeDiagnostics(document, this.analyses.of(document).findings),
        );
    };
    if (this.collection.has(document.uri)) this.waiting.set(key, setTimeout(publish, PAUSE));
    else publish();
  }

  dispose(): void {
    for (const timer of this.waiting.values()) clearTimeout(timer);
    this.parts.dispose();
  }
}

function makeDiagnostics(
  document: vscode.TextDocument,
  findings: readonly Finding[],
): vscode.Diagnostic[] {
  const shown = findings.filter((finding) => finding.severity !== 'off');
  const made = shown.slice(0, SHOWN).map((finding) => makeDiagnostic(document, finding));
  if (shown.length > SHOWN) {
    const rest = `${shown.length - SHOWN} more findings are not shown.`;
    made.push(
      new vscode.Diagnostic(
        toRange(shown[SHOWN].range),
        rest,
        vscode.DiagnosticSeverity.Information,
      ),
    );
  }
  return made;
}

export function makeDiagnostic(document: vscode.TextDocument, finding: Finding): vscode.Diagnostic {
  const severity = finding.severity === 'off' ? 'information' : finding.severity;
  const made = new vscode.Diagnostic(toRange(finding.range), finding.message, SEVERITY[severity]);
  made.source = 'Turnlore';
  made.code = finding.code;
  made.relatedInformation = finding.related.map(
    (place) =>
      new vscode.DiagnosticRelatedInformation(
        new vscode.Location(document.uri, toRange(place.range)),
        place.message,
      ),
  );
  return made;
}
