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
  return stages.map((stage, index) => {
    const first = starts[index];
    const next = starts.find((line, other) => other > index && line > first);
    const end =
      stage.how === 'closing label'
        ? stage.range.end.line
        : Math.max(first, (next ?? block.range.end.line + 1) - 1);
    return {
      ...stage,
      stage: index,
      name: timeline.goals[stage.goal].name,
      first,
      last: lastWritten(analysis, first, end),
    };
  });
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
