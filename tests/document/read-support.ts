/** Shorthand for the tests of the reader. */
import type { Span } from '../../engine/cube/place.ts';
import { readDocument } from '../../engine/document/read/read.ts';
import type { LineContent } from '../../engine/document/read/tree.ts';
import type { SequenceNode } from '../../engine/notation/tree.ts';

export function contentsOf(text: string): LineContent[] {
  return readDocument(text).lines.map((line) => line.content);
}

export function contentOf(line: string): LineContent {
  return contentsOf(line)[0];
}

/** What is executed on a line, as written, in order; names and brackets as a whole. */
export function turnsOf(line: string): string[] {
  const content = contentOf(line);
  const body = content.kind === 'turns' ? content : 'body' in content ? content.body : undefined;
  if (body?.kind !== 'turns') return [];
  const executed = (node: SequenceNode): boolean => node.kind !== 'unknown';
  return body.turns.items.filter(executed).map((node) => slice(line, node.span));
}

export function slice(line: string, { start, end }: Span): string {
  return line.slice(start, end);
}

/** Every span in a content, found by its form. */
export function spansIn(content: unknown): Span[] {
  const spans: Span[] = [];
  const stack: unknown[] = [content];
  while (stack.length > 0) {
    const value = stack.pop();
    if (typeof value !== 'object' || value === null) continue;
    if ('start' in value && typeof value.start === 'number') spans.push(value as Span);
    else stack.push(...(Object.values(value) as unknown[]));
  }
  return spans;
}
