/**
 * Stages as stretches of lines: what folds, what a selection grows to and what the outline lists. A
 * stage that a heading opens reaches to the next one; one that a label closes begins with its turns.
 */
import type { Range } from '../../cube/place.ts';
import type { Analysis, Block, WrittenStage } from '../analysis.ts';

export interface Section extends WrittenStage {
  /** Index among `timeline.stages`. */
  readonly stage: number;
  readonly name: string;
  /** First and last line; blank lines at the end are left out. */
  readonly first: number;
  readonly last: number;
}

export function sectionsOf(analysis: Analysis, block: Block): Section[] {
  const { stages, timeline } = block;
  const starts = stages.map(({ how, range }, index) => {
    const { first, end } = timeline.stages[index];
    if (how !== 'closing label' || end === first) return range.start.line;
    return Math.min(range.start.line, block.rangeOf(first).start.line);
  });
  return stages.flatMap((stage, index) => {
    // An aside goes on with the stages of the line that it branches off from; these lie elsewhere.
    if (stage.range.start.line < block.range.start.line) return [];
    const first = starts[index];
    let other = index + 1;
    while (other < starts.length && starts[other] <= first) other++;
    const end =
      stage.how === 'closing label'
        ? stage.range.end.line
        : Math.max(first, (starts[other] ?? block.range.end.line + 1) - 1);
    const name = timeline.goals[stage.goal].name;
    const last = lastWritten(analysis, first, end);
    return [{ ...stage, stage: index, name, first, last }];
  });
}

const HEADINGS = new WeakMap<Analysis, ReadonlyMap<number, number>>();

/** The line of a block's heading, below the keys of the file that are its own as well. */
export function headingLine(analysis: Analysis, block: Block): number {
  let headings = HEADINGS.get(analysis);
  if (headings === undefined) {
    headings = new Map(
      analysis.cut.blocks.map(({ first, heading }) => [first, heading ?? first] as const),
    );
    HEADINGS.set(analysis, headings);
  }
  const first = block.range.start.line;
  return headings.get(first) ?? first;
}

/** The section that holds a line; of several that do, the last to begin. */
export function sectionAt(sections: readonly Section[], line: number): Section | undefined {
  return sections.findLast(({ first, last }) => first <= line && line <= last);
}

/** The last line up to `end` that is not blank, but not before `first`. */
export function lastWritten(analysis: Analysis, first: number, end: number): number {
  let last = Math.min(end, analysis.lines.length - 1);
  while (last > first && analysis.lines[last].trim() === '') last--;
  return last;
}

export function linesRange({ lines }: Analysis, first: number, last: number): Range {
  return {
    start: { line: first, character: 0 },
    end: { line: last, character: lines[last].length },
  };
}

/** All blocks, asides behind the block that they lie in. */
export function allBlocks({ blocks }: Analysis): Block[] {
  return blocks.flatMap((block) => [block, ...block.asides]);
}
