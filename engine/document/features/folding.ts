/** What can be folded: blocks, stages, nets, and comments that fill several lines. */
import type { Analysis } from '../analysis.ts';
import { allBlocks, headingLine, lastWritten, sectionsOf } from './sections.ts';

export interface Fold {
  readonly first: number;
  /** The last line that is hidden. */
  readonly last: number;
  readonly kind: 'block' | 'stage' | 'comment' | 'net';
}

export function foldingRanges(analysis: Analysis): Fold[] {
  const folds: Fold[] = [];
  for (const block of allBlocks(analysis)) {
    const first = headingLine(analysis, block);
    folds.push({ first, last: lastWritten(analysis, first, block.range.end.line), kind: 'block' });
    for (const { first, last } of sectionsOf(analysis, block))
      folds.push({ first, last, kind: 'stage' });
  }
  folds.push(...runs(analysis, 'comment'), ...runs(analysis, 'net'));
  const seen = new Set<number>();
  // One fold for each first line, the widest: editors show one arrow.
  return folds
    .filter(({ first, last }) => last > first)
    .sort((a, b) => a.first - b.first || b.last - a.last)
    .filter(({ first }) => {
      if (seen.has(first)) return false;
      seen.add(first);
      return true;
    });
}

function runs({ tree }: Analysis, kind: 'comment' | 'net'): Fold[] {
  const folds: Fold[] = [];
  const belongs = (line: number): boolean => {
    const content = tree.lines[line]?.content;
    if (kind === 'comment') return content?.kind === 'comment';
    return content?.kind === 'net-row' || (content?.kind === 'key' && content.key === 'start');
  };
  for (let line = 0; line < tree.lines.length; line++) {
    if (!belongs(line)) continue;
    const first = line;
    while (belongs(line + 1)) line++;
    if (line > first) folds.push({ first, last: line, kind });
  }
  return folds;
}
