/** Refactorings under a selection: of turns within a line, or of several whole lines. */
import type { Range } from '../../cube/place.ts';
import type { Analysis } from '../analysis.ts';
import { lineRefactorings } from './refactor-lines.ts';
import { nodeRefactorings, type Refactoring } from './refactor.ts';

export function refactorings(analysis: Analysis, selection: Range): Refactoring[] {
  return selection.start.line === selection.end.line
    ? nodeRefactorings(analysis, selection)
    : lineRefactorings(analysis, selection);
}
