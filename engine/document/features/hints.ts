/** Hints at line ends: how many turns a line has, and how many it is so far; live claims apart. */
import type { Position } from '../../cube/place.ts';
import type { Analysis, Block } from '../analysis.ts';
import { liveClaims } from './live.ts';
import { allBlocks } from './sections.ts';
import { counted } from './text.ts';

export interface InlayHint {
  readonly position: Position;
  readonly label: string;
  readonly tooltip: string;
  readonly kind: 'count' | 'claim';
}

export interface HintOptions {
  readonly counts: boolean;
  readonly claims: boolean;
  readonly cursor?: Position;
  /** Lines from `first` to `last`; all without it. */
  readonly lines?: { readonly first: number; readonly last: number };
}

export function inlayHints(analysis: Analysis, options: HintOptions): InlayHint[] {
  const { first, last } = options.lines ?? { first: 0, last: Infinity };
  const hints: InlayHint[] = [];
  for (const block of allBlocks(analysis)) {
    const { start, end } = block.range;
    if (options.counts && start.line <= last && first <= end.line)
      hints.push(...countHints(analysis, block));
  }
  if (options.claims)
    for (const { position, text, reached } of liveClaims(analysis, options.cursor, options.lines))
      hints.push({
        position,
        label: reached ? `✓ ${text}` : text,
        tooltip: 'How far the goal of this stage is at the end of the line',
        kind: 'claim',
      });
  return hints.filter(({ position: { line } }) => first <= line && line <= last);
}

function countHints(analysis: Analysis, block: Block): InlayHint[] {
  const hints: InlayHint[] = [];
  const { length } = block.course;
  let all = 0;
  for (let turn = block.ownFrom; turn < length;) {
    const { line } = block.rangeOf(turn).start;
    let end = turn + 1;
    while (end < length && block.rangeOf(end).start.line === line) end++;
    const own = block.countsOf(turn, end).obtm;
    turn = end;
    // A repeat too long to be counted leaves nothing to be told of what follows.
    if (own === null) break;
    all += own;
    if (own === 0) continue;
    hints.push({
      position: { line, character: analysis.lines[line].length },
      label: own === all ? String(own) : `${String(own)} · ${String(all)}`,
      tooltip: `${counted(own, 'turn')} on this line, ${String(all)} so far (face and wide turns 1, slices 2)`,
      kind: 'count',
    });
  }
  return hints;
}
