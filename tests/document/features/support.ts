/** Texts with a cursor, and what an edit does to them. */
import { analyse } from '../../../engine/document/analyse.ts';
import { JUMP } from '../../../engine/goals/course.ts';
import type { Analysis } from '../../../engine/document/analysis.ts';
import type { Position, Range } from '../../../engine/cube/place.ts';

/** A text in which `|` stands for the cursor; two of them select what is between. */
export function withCursor(marked: string): { text: string; selection: Range; position: Position } {
  const [first, second = first, more] = marked
    .split('|')
    .reduce<number[]>((places, part, index, parts) => {
      if (index < parts.length - 1) places.push((places.at(-1) ?? 0) + part.length);
      return places;
    }, []);
  if (first === undefined || more !== undefined) throw new Error(`one or two cursors in ${marked}`);
  const text = marked.replaceAll('|', '');
  const at = (offset: number): Position => {
    const before = text.slice(0, offset).split('\n');
    return { line: before.length - 1, character: before[before.length - 1].length };
  };
  return { text, selection: { start: at(first), end: at(second) }, position: at(first) };
}

/** What ranges cut out of a text, a line break as `⏎`. */
export function cutOut({ lines }: Analysis, { start, end }: Range): string {
  const part = lines.slice(start.line, end.line + 1);
  part[part.length - 1] = part[part.length - 1].slice(0, end.character);
  part[0] = part[0].slice(start.character);
  return part.join('⏎');
}

/** All executed turns of a text, block by block, and what its stages came to. */
export function executed(text: string): string[] {
  return analyse(text).blocks.map((block) => {
    // What is no single turn reads as it is written, and may be spelt anew.
    const turns = Array.from(block.course.codes, (code, turn) =>
      code === JUMP ? 'jump' : block.textOf(turn),
    );
    const stages = block.timeline.stages.map(({ goal, first, end }) => `${goal} ${first}-${end}`);
    return `${block.kind} ${turns.join(' ')} | ${stages.join(', ')} | ${block.solved}`;
  });
}
