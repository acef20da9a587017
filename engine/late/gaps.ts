/** Unknown stretches (`…`) that can be filled; apart from the search for what fills them. */
import type { Block } from '../document/analysis.ts';

/** The stretches between two known states, by their index among the block's turns. */
export function gapsOf(block: Block): number[] {
  const gaps: number[] = [];
  for (const [index, jump] of block.course.jumps) {
    if (jump.kind !== 'gap' || jump.after === undefined) continue;
    if (block.course.stateAt(index) !== undefined) gaps.push(index);
  }
  return gaps.sort((a, b) => a - b);
}
