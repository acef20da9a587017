/** Which nodes of a line a selection means, and how other ones are written in their place. */
import type { Range } from '../../cube/place.ts';
import { isBracket, listsOf } from '../../notation/fold.ts';
import { printSequence } from '../../notation/print.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import type { Analysis } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import type { TurnsBody } from '../read/index.ts';
import { bodyOf, everyNode, inSpan, pathAt, rangeIn } from './text.ts';

export interface Chosen {
  readonly line: number;
  /** Siblings next to each other, at least one. */
  readonly nodes: readonly SequenceNode[];
  readonly range: Range;
  /** Of the line's scramble, which is not executed. */
  readonly scramble: boolean;
}

/**
 * The siblings that a selection touches; without a selection the bracket at the cursor, else all
 * turns of the line. Undefined where something between them is no turn and would be lost.
 */
export function chosenNodes(analysis: Analysis, { start, end }: Range): Chosen | undefined {
  if (start.line !== end.line) return undefined;
  const { line } = start;
  const { content } = analysis.tree.lines[line];
  const body = bodyOf(content);
  if (body?.kind !== 'turns' || body.turns.items.length === 0) return undefined;
  if (!inSpan(body.span, start.character) || !inSpan(body.span, end.character)) return undefined;
  const nodes =
    start.character === end.character
      ? atCursor(body, start.character)
      : touched(body.turns.items, start.character, end.character);
  if (nodes.length === 0) return undefined;
  const span = { start: nodes[0].span.start, end: nodes[nodes.length - 1].span.end };
  const inside = ({ start: from, end: to }: { start: number; end: number }): boolean =>
    from < span.end && span.start < to;
  if (body.ignored.some(inside)) return undefined;
  if (body.turns.marks.some(({ kind, span: at }) => kind !== 'spelling' && inside(at)))
    return undefined;
  for (const node of everyNode(nodes)) if (node.kind === 'unknown') return undefined;
  const scramble =
    content.kind === 'scramble' || (content.kind === 'key' && content.key === 'scramble');
  return { line, nodes, range: rangeIn(line, span), scramble };
}

function atCursor(body: TurnsBody, offset: number): readonly SequenceNode[] {
  const bracket = pathAt(body.turns.items, offset).findLast(isBracket);
  return bracket ? [bracket] : body.turns.items;
}

function touched(
  items: readonly SequenceNode[],
  start: number,
  end: number,
): readonly SequenceNode[] {
  let list = items;
  for (;;) {
    const nodes = list.filter(({ span }) => span.start < end && start < span.end);
    const only = nodes.length === 1 ? nodes[0] : undefined;
    if (only === undefined || !isBracket(only)) return nodes;
    const inner = listsOf(only).find(
      (one) => one.length > 0 && one[0].span.start <= start && end <= one[one.length - 1].span.end,
    );
    if (inner === undefined) return nodes;
    list = inner;
  }
}

/** The edit that writes other turns in place of those chosen; blanks keep them apart from their neighbours. */
export function writeInstead(
  { lines }: Analysis,
  { line, range }: Chosen,
  nodes: readonly SequenceNode[],
): TextEdit {
  const before = lines[line].slice(0, range.start.character);
  const after = lines[line].slice(range.end.character);
  const text = printSequence(nodes);
  const lead = before === '' || /[\s([,:：]$/.test(before) ? '' : ' ';
  const tail = after === '' || /^[\s)\],:]/.test(after) ? '' : ' ';
  return { range, newText: lead + text + tail };
}

export function hasGap(nodes: readonly SequenceNode[]): boolean {
  for (const node of everyNode(nodes)) if (node.kind === 'gap') return true;
  return false;
}
