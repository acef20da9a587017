/**
 * Reading the values of keys. Each reader returns what it read, every item with its span in the
 * line, or `bad` with the reason and the place; whether names mean anything is settled later.
 */
import type { Span } from '../../cube/place.ts';
import type { Words } from './tree.ts';
import { splitWords } from './words.ts';

export const BAD_REASONS = [
  'empty',
  'empty-item',
  'no-colour',
  'no-holding',
  'holding-open',
  'holding-clash',
  'no-time',
  'no-number',
  'no-slot',
  'no-sticker',
  'sticker-twice',
  'sticker-kinds',
  'no-cycle',
] as const;
export type BadReason = (typeof BAD_REASONS)[number];

export interface BadValue {
  readonly kind: 'bad';
  readonly reason: BadReason;
  /** The text it speaks of; the whole value where no part is to blame. */
  readonly text: string;
  readonly span: Span;
}

export function bad(reason: BadReason, { text, span }: Words): BadValue {
  return { kind: 'bad', reason, text, span };
}

export interface TimeValue {
  readonly kind: 'time';
  readonly seconds: number;
  readonly span: Span;
}

const CLOCK =
  /^(?:(?:(\d{1,2}):)?(\d{1,3}):)?(\d{1,6}(?:[.,]\d{1,6})?)\s*(?:s|secs?|seconds?|")?\.?$/i;
const MINUTES =
  /^(\d{1,4})\s*(?:m|min|minutes?)\.?\s*(?:(\d{1,2}(?:[.,]\d{1,6})?)\s*(?:s|secs?|seconds?)?)?\.?$/i;

/** `1:14.2`, `74.2`, `74,2 s`, `1 min 14 s`. */
export function readTime(value: Words): TimeValue | BadValue {
  const clock = CLOCK.exec(value.text);
  const match = clock ?? MINUTES.exec(value.text);
  if (match === null) return bad(value.text === '' ? 'empty' : 'no-time', value);
  const number = (text: string | undefined): number => Number((text ?? '0').replace(',', '.'));
  const seconds =
    clock === null
      ? 60 * number(match[1]) + number(match[2])
      : 3600 * number(match[1]) + 60 * number(match[2]) + number(match[3]);
  return { kind: 'time', seconds, span: value.span };
}

export interface OrderValue {
  readonly kind: 'order';
  readonly order: number;
  readonly span: Span;
}

export function readOrder(value: Words): OrderValue | BadValue {
  if (value.text === '') return bad('empty', value);
  const order = /^\d{1,15}$/.test(value.text) ? Number(value.text) : 0;
  return order > 0 ? { kind: 'order', order, span: value.span } : bad('no-number', value);
}

export interface ListValue {
  readonly kind: 'list';
  readonly items: readonly Words[];
}

/** Names of goals, as in `keeps: cross, corners` and `check: cross and corners`. */
export function readList(value: Words): ListValue | BadValue {
  if (value.text === '') return bad('empty', value);
  const items = splitWords(value, /[,;&+/]|\sand\s/gi);
  const empty = items.findIndex((item) => item.text === '');
  // A comma at the end is no mistake worth a finding.
  if (empty === items.length - 1 && items.length > 1) items.pop();
  else if (empty !== -1) return bad('empty-item', value);
  return { kind: 'list', items };
}

export interface OpensValue {
  readonly kind: 'opens';
  readonly items: readonly { readonly goal: Words; readonly until: Words | undefined }[];
}

/** `opens: cross until 4th pair, corners`. */
export function readOpens(value: Words): OpensValue | BadValue {
  const list = readList(value);
  if (list.kind === 'bad') return list;
  const items = [];
  for (const item of list.items) {
    const [goal, until] = splitWords(item, /(?:^|\s)(?:until|till)(?:\s|$)/gi);
    if (goal.text === '' || until?.text === '') return bad('empty-item', item);
    items.push({ goal, until });
  }
  return { kind: 'opens', items };
}

export type MethodValue =
  | { readonly kind: 'method-use'; readonly name: Words }
  | { readonly kind: 'method'; readonly name: Words; readonly stages: readonly Words[] };

/** `CFOP` uses a method, `mine = cross, left block, solved` makes one. */
export function readMethod(value: Words): MethodValue | BadValue {
  if (value.text === '') return bad('empty', value);
  const halves = cutAtEquals(value);
  if (halves === undefined) return { kind: 'method-use', name: value };
  const [name, right] = halves;
  if (name.text === '' || right.text === '') return bad('empty-item', value);
  const stages = splitWords(right, /[,;]/g);
  if (stages.at(-1)?.text === '' && stages.length > 1) stages.pop();
  if (stages.some((stage) => stage.text === '')) return bad('empty-item', right);
  return { kind: 'method', name, stages };
}

/** The two sides of the first `=`. */
export function cutAtEquals(value: Words): readonly [Words, Words] | undefined {
  const at = value.text.indexOf('=');
  if (at === -1) return undefined;
  const [left] = splitWords({ text: value.text.slice(0, at), span: value.span }, /$^/g);
  const from = value.span.start + at + 1;
  const [right] = splitWords(
    { text: value.text.slice(at + 1), span: { start: from, end: value.span.end } },
    /$^/g,
  );
  return [left, right];
}

export interface UseValue {
  readonly kind: 'use';
  readonly file: Words;
}

/** `use: other.moves`, perhaps in quotation marks. */
export function readUse(value: Words): UseValue | BadValue {
  const { text, span } = value;
  const quoted = text.length > 1 && /^(["'`]).*\1$/.test(text);
  const file = quoted
    ? { text: text.slice(1, -1), span: { start: span.start + 1, end: span.end - 1 } }
    : value;
  return file.text.trim() === '' ? bad('empty', value) : { kind: 'use', file };
}
