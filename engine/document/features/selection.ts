/** How a selection grows: turn, brackets around it, turns of the line, line, stage, block, text. */
import type { Position, Range } from '../../cube/place.ts';
import type { Analysis } from '../analysis.ts';
import { linesRange, sectionAt, sectionsOf } from './sections.ts';
import { bodyOf, comparePositions, inSpan, pathAt, rangeIn } from './text.ts';

/** From the narrowest to the whole text, each wider than the one before. */
export function selectionRanges(analysis: Analysis, position: Position): Range[] {
  const { line, character } = position;
  const { text, content } = analysis.tree.lines[line];
  const ranges: Range[] = [];
  const comment = 'comment' in content ? content.comment : undefined;
  if (comment !== undefined && character >= comment.mark.start) {
    const word = wordAt(text, character);
    if (word !== undefined) ranges.push(rangeIn(line, word));
    ranges.push(rangeIn(line, comment.span));
    ranges.push(rangeIn(line, { start: comment.mark.start, end: comment.span.end }));
  } else {
    const body = bodyOf(content);
    if (body !== undefined && inSpan(body.span, character)) {
      const path = body.kind === 'turns' ? pathAt(body.turns.items, character) : [];
      if (path.length === 0) {
        const word = wordAt(text, character);
        if (word !== undefined) ranges.push(rangeIn(line, word));
      }
      for (const node of path.toReversed()) ranges.push(rangeIn(line, node.span));
      ranges.push(rangeIn(line, body.span));
    } else {
      const word = wordAt(text, character);
      if (word !== undefined) ranges.push(rangeIn(line, word));
      if (content.kind === 'key' && inSpan(content.value.span, character))
        ranges.push(rangeIn(line, content.value.span));
    }
  }
  const start = text.length - text.trimStart().length;
  ranges.push(rangeIn(line, { start, end: Math.max(start, text.trimEnd().length) }));
  ranges.push(linesRange(analysis, line, line));
  const outer = analysis.blocks.find(
    ({ range }) => range.start.line <= line && line <= range.end.line,
  );
  const inner = analysis.blockAt(position);
  for (const block of inner === outer ? [inner] : [inner, outer]) {
    if (block === undefined) continue;
    const section = sectionAt(sectionsOf(analysis, block), line);
    if (section !== undefined) ranges.push(linesRange(analysis, section.first, section.last));
    ranges.push(block.range);
  }
  ranges.push(linesRange(analysis, 0, analysis.lines.length - 1));
  return growing(ranges, position);
}

/** Those that hold the position and take in the one before, without doubles. */
function growing(ranges: readonly Range[], position: Position): Range[] {
  const result: Range[] = [];
  for (const range of ranges) {
    const last = result.at(-1) ?? { start: position, end: position };
    const takesIn =
      comparePositions(range.start, last.start) <= 0 && comparePositions(last.end, range.end) <= 0;
    const same =
      comparePositions(range.start, last.start) === 0 &&
      comparePositions(range.end, last.end) === 0;
    if (takesIn && !same) result.push(range);
  }
  return result.length > 0 ? result : [{ start: position, end: position }];
}

function wordAt(text: string, at: number): { start: number; end: number } | undefined {
  let start = at;
  let end = at;
  while (start > 0 && /\S/.test(text[start - 1])) start--;
  while (end < text.length && /\S/.test(text[end])) end++;
  return start === end ? undefined : { start, end };
}
