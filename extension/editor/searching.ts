/** Everything in the editor that searches, put together. */
import * as vscode from 'vscode';
import { LANGUAGE, type Analyses } from './analyses.ts';
import type { Focus } from './focus.ts';
import { SearchLenses } from './search-lenses.ts';
import { LateFixes } from './searches-late.ts';
import { registerSearches } from './searches.ts';
import type { WorkerClient } from './worker.ts';

export function registerSearching(parts: {
  readonly analyses: Analyses;
  readonly focus: Focus;
  readonly worker: WorkerClient;
}): { dispose(): unknown }[] {
  const lenses = new SearchLenses(parts.analyses);
  const late = new LateFixes(parts.analyses, parts.worker);
  return [
    lenses,
    late,
    registerSearches(parts),
    vscode.languages.registerCodeLensProvider(LANGUAGE, lenses),
    vscode.languages.registerCodeActionsProvider(LANGUAGE, late, {
      providedCodeActionKinds: LateFixes.kinds,
    }),
  ];
}
