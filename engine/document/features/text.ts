/** Places, nodes and edits as all features need them. */
import type { Position, Range, Span } from '../../cube/place.ts';
import { isBracket, listsOf } from '../../notation/fold.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import type { TextEdit } from '../finding.ts';
import { executedBody, type Body, type LineContent } from '../read/index.ts';

export function rangeIn(line: number, { start, end }: Span): Range {
  return { start: { line, character: start }, end: { line, character: end } };
}

export function comparePositions(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}

/** Both ends included, as a cursor stands between characters. */
export function holds({ start, end }: Range, position: Position): boolean {
  return comparePositions(start, position) <= 0 && comparePositions(position, end) <= 0;
}

export function inSpan({ start, end }: Span, offset: number): boolean {
  return start <= offset && offset <= end;
}

/** The turns (or words) of a line, whether executed or not: scrambles included. */
export function bodyOf(content: LineContent): Body | undefined {
  const executed = executedBody(content);
  if (executed !== undefined) return executed;
  if (content.kind === 'scramble') return content.body;
  return content.kind === 'key' || content.kind === 'unknown-key' ? content.body : undefined;
}

/** The nodes of a line's turns, scrambles included; empty where there are none. */
export function nodesOf(content: LineContent): readonly SequenceNode[] {
  const body = bodyOf(content);
  return body?.kind === 'turns' ? body.turns.items : [];
}

/** All nodes in the order of the text, each before what lies in it. */
export function* everyNode(items: readonly SequenceNode[]): Generator<SequenceNode> {
  const stack: SequenceNode[] = items.toReversed();
  for (let node = stack.pop(); node !== undefined; node = stack.pop()) {
    yield node;
    if (!isBracket(node)) continue;
    for (const list of listsOf(node).toReversed())
      for (const inner of list.toReversed()) stack.push(inner);
  }
}

/** The nodes around an offset, from the outermost to the innermost. */
export function pathAt(items: readonly SequenceNode[], offset: number): SequenceNode[] {
  const path: SequenceNode[] = [];
  let list: readonly SequenceNode[] | undefined = items;
  while (list !== undefined) {
    // Where two nodes touch, the one that begins there is meant.
    const node: SequenceNode | undefined = list.findLast(({ span }) => inSpan(span, offset));
    if (node === undefined) break;
    path.push(node);
    list = isBracket(node)
      ? listsOf(node).find((inner) => inner.some(({ span }) => inSpan(span, offset)))
      : undefined;
  }
  return path;
}

/** The text after edits that do not overlap; lines joined by `\n`. */
export function edited(lines: readonly string[], edits: readonly TextEdit[]): string {
  const result = [...lines];
  const ordered = [...edits]
    .map((edit, index) => ({ edit, index }))
    .sort((a, b) => comparePositions(b.edit.range.start, a.edit.range.start) || b.index - a.index);
  for (const { edit } of ordered) {
    const { start, end } = edit.range;
    const text =
      result[start.line].slice(0, start.character) +
      edit.newText +
      result[end.line].slice(end.character);
    result.splice(start.line, end.line - start.line + 1, text);
  }
  return result.join('\n');
}

/** `1 turn`, `7 turns`, `3 edges`. */
export function counted(count: number, word: string): string {
  return `${String(count)} ${word}${count === 1 ? '' : 's'}`;
}

export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
