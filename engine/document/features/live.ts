/**
 * Live claims: at the end of a stage's last line of turns, how far its goal is and what is lent, as
 * in `3 of 4 edges; white-orange out since turn 12`; a stage that is reached says so.
 */
import type { Position } from '../../cube/place.ts';
import { pieceName } from '../../cube/piece.ts';
import type { Analysis, Block } from '../analysis.ts';
import { progressAt, type Progress } from './progress.ts';
import { allBlocks, sectionAt, sectionsOf } from './sections.ts';
import { counted, listed } from './text.ts';

export interface LiveClaim {
  /** The end of the line. */
  readonly position: Position;
  readonly text: string;
  readonly goal: string;
  readonly reached: boolean;
}

/** Pieces that are named before the rest is counted. */
const NAMED = 3;

/**
 * Of the stage at the cursor, up to the end of its line; of a block without the cursor, of its last
 * stage as long as that is not reached.
 */
export function liveClaims(
  analysis: Analysis,
  cursor?: Position,
  lines: { readonly first: number; readonly last: number } = { first: 0, last: Infinity },
): LiveClaim[] {
  const current = cursor && analysis.blockAt(cursor);
  return allBlocks(analysis).flatMap((block) => {
    if (block.range.start.line > lines.last || block.range.end.line < lines.first) return [];
    const sections = sectionsOf(analysis, block);
    const here = cursor && current === block ? sectionAt(sections, cursor.line) : undefined;
    const stage = here?.stage ?? block.timeline.stages.length - 1;
    if (stage < 0) return [];
    const { first, end, stepEnds, goal } = block.timeline.stages[stage];
    if (first === end) return [];
    let place = end;
    if (here !== undefined && cursor !== undefined) {
      // The line that is being written, or the last one above the cursor.
      const atLineEnd = block.placeAt({ line: cursor.line, character: Infinity });
      place = stepEnds.findLast((step) => step <= Math.max(atLineEnd, first + 1)) ?? end;
    }
    const progress = progressAt(block, stage, place);
    if (progress === undefined || (here === undefined && progress.reached)) return [];
    const { line } = block.rangeOf(place - 1).end;
    const name = block.timeline.goals[goal].name;
    return [
      {
        position: { line, character: analysis.lines[line].length },
        text: sayProgress(block, name, progress),
        goal: name,
        reached: progress.reached,
      },
    ];
  });
}

export function sayProgress(block: Block, goal: string, progress: Progress): string {
  if (progress.reached) return `${goal} reached`;
  const { done, wanted, unit, lent } = progress;
  const part = wanted === 0 ? `${goal} not reached` : `${String(done)} of ${counted(wanted, unit)}`;
  if (lent.length === 0) return part;
  const groups = new Map<number, string[]>();
  for (const { piece, since } of lent) {
    const names = groups.get(since) ?? [];
    groups.set(since, names);
    names.push(pieceName(piece, block.base));
  }
  const said: string[] = [];
  let named = 0;
  for (const [since, names] of groups) {
    if (named > 0 && named + names.length > NAMED) break;
    const shown = names.slice(0, NAMED);
    named += shown.length;
    said.push(`${listed(shown)} out since turn ${String(block.numberOf(since))}`);
  }
  const rest = lent.length - named;
  return [part, ...said, ...(rest > 0 ? [`${String(rest)} more out`] : [])].join('; ');
}
