/** Words of a line and their spans: the smallest tools of the reader. */
import type { Span } from '../../cube/place.ts';
import { isSpace } from '../../notation/letters.ts';
import type { Words } from './tree.ts';

/** The stretch from `start` to `end` without the blanks around it; if nothing is left, an empty span at its start. */
export function trimmed(text: string, start: number, end: number): Words {
  let first = start;
  let last = end;
  while (first < last && isSpace(text[first])) first++;
  while (last > first && isSpace(text[last - 1])) last--;
  if (first === last) return { text: '', span: { start, end: start } };
  return { text: text.slice(first, last), span: { start: first, end: last } };
}

/** For comparing names: lower case, single spaces. */
export function normalName(text: string): string {
  return text.trim().toLowerCase().replace(/\s+/g, ' ');
}

/** The text with the spans blanked out, so that offsets stay; spans in order, not overlapping. */
export function blanked(text: string, spans: readonly Span[]): string {
  if (spans.length === 0) return text;
  const parts: string[] = [];
  let at = 0;
  for (const { start, end } of spans) {
    parts.push(text.slice(at, start), ' '.repeat(end - start));
    at = end;
  }
  parts.push(text.slice(at));
  return parts.join('');
}

/** The non-blank stretches between separators, each trimmed; an empty item between two separators is kept. */
export function splitWords(words: Words, separator: RegExp): Words[] {
  const items: Words[] = [];
  let from = 0;
  const offset = words.span.start;
  const push = (end: number): void => {
    const item = trimmed(words.text, from, end);
    items.push({
      text: item.text,
      span: { start: item.span.start + offset, end: item.span.end + offset },
    });
  };
  for (const match of words.text.matchAll(separator)) {
    push(match.index);
    from = match.index + match[0].length;
  }
  push(words.text.length);
  return items;
}
