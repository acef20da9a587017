/** Parts of reading that need no state of the reader: open brackets, counts, and how a count is spelled. */
import type { Span } from '../cube/place.ts';
import { isDigit } from './letters.ts';
import type { ConjugateNode, SequenceNode } from './tree.ts';

export type Repeatable = Extract<SequenceNode, { readonly times: bigint }>;

/** What stands between two separators of a bracket. */
interface Part extends Span {
  readonly items: readonly SequenceNode[];
}

/** An open bracket, or (`''`) the stretch itself. */
export interface Frame {
  readonly bracket: '' | '(' | '[';
  readonly start: number;
  /** Finished parts between commas, each a list of parts between colons. */
  readonly commas: Part[][];
  colons: Part[];
  items: SequenceNode[];
  partStart: number;
  /** Missing in the text; found when its partner was. */
  readonly supplied?: true;
}

/** Round brackets have no parts; they share these, as there may be very many of them. */
const NO_COMMAS: Part[][] = [];
const NO_COLONS: Part[] = [];

export function makeFrame(bracket: Frame['bracket'], start: number): Frame {
  const partStart = start + bracket.length;
  return bracket === '['
    ? { bracket, start, commas: [], colons: [], items: [], partStart }
    : { bracket, start, commas: NO_COMMAS, colons: NO_COLONS, items: [], partStart };
}

export function finishColon(frame: Frame, end: number): void {
  frame.colons.push({ start: frame.partStart, end, items: frame.items });
  frame.items = [];
}

/** `A: B: C` is `A: (B: C)`; there are at least two parts. */
export function conjugateOf(parts: readonly Part[]): ConjugateNode {
  const last = parts[parts.length - 1];
  const end = last.items.at(-1)?.span.end ?? last.end;
  let core = last.items;
  for (let i = parts.length - 2; ; i--) {
    const { items: setup, start } = parts[i];
    const span = { start: setup.at(0)?.span.start ?? start, end };
    const node: ConjugateNode = { kind: 'conjugate', span, setup, core, times: 1n };
    if (i === 0) return node;
    core = [node];
  }
}

export function conjugateItems(parts: readonly Part[]): readonly SequenceNode[] {
  return parts.length > 1 ? [conjugateOf(parts)] : parts[0].items;
}

/**
 * Whether a `]` comes when no bracket is open: the text before it lacks a `[`, in which commas and
 * colons have a meaning, so it has to be known before these are read.
 */
export function lacksSquare(text: string, start: number, end: number): boolean {
  const open: string[] = [];
  let squares = 0;
  for (let at = start; at < end; at++) {
    const character = text[at];
    if (character === '(') open.push(character);
    else if (character === '[') {
      open.push(character);
      squares++;
    } else if (character === ')') {
      const rounds = open.length - squares;
      if (rounds > 0) while (open.pop() !== '(') squares--;
    } else if (character === ']') {
      if (open.length === 0) return true;
      if (squares > 0) {
        while (open.pop() !== '[');
        squares--;
      }
    }
  }
  return false;
}

export function digitsEnd(text: string, from: number, end: number): number {
  let at = from;
  while (at < end && isDigit(text[at])) at++;
  return at;
}

/** `x3`, `×3`, `*3`, `^3`, `^-1` at `from`. */
export function readTimes(
  text: string,
  from: number,
  end: number,
): { readonly count: bigint; readonly end: number } | undefined {
  if (from >= end || !'xX×✕✖*^'.includes(text[from])) return undefined;
  const negative = text[from] === '^' && from + 1 < end && '-−'.includes(text[from + 1]);
  const digits = from + (negative ? 2 : 1);
  const after = digitsEnd(text, digits, end);
  if (after === digits) return undefined;
  const count = BigInt(text.slice(digits, after));
  return { count: negative ? -count : count, end: after };
}

/** `3`, `'`, `3'` or nothing: how a count stands behind its bracket. */
export function printTimes(times: bigint): string {
  const magnitude = times < 0n ? -times : times;
  return (magnitude === 1n ? '' : String(magnitude)) + (times < 0n ? "'" : '');
}

/**
 * The edit that spells `times` behind `node` (which has no count yet, at most a prime) up to `end`.
 * It is kept small, so that edits of nested brackets do not overlap.
 */
export function respell(
  node: Repeatable,
  times: bigint,
  end: number,
): { span: Span; newText: string } {
  if (node.kind === 'name') {
    return {
      span: { start: node.span.start, end },
      newText: `(@${node.name})${printTimes(times)}`,
    };
  }
  const start = node.span.end - (node.times < 0n ? 1 : 0);
  return { span: { start, end }, newText: printTimes(times) };
}
