/**
 * A cube as an unfolded net of colour initials: nine rows, U above F, then L F R B side by side,
 * D below F, each face as `facelets.ts` numbers it. What is read here is only *parsed*: 54 colours,
 * whether or not a cube can look so. `possible.ts` is the door to a state.
 *
 *         www
 *         www
 *         www
 *     ooo ggg rrr bbb
 *     …
 *
 * Spaces and bars between letters don't matter, nor does upper case; coloured squares, as they are
 * pasted from messages, are read as well. A single row of 54 letters is not read: the orders of
 * faces in use differ, and a wrong guess would give another cube without a word.
 */
import { FACELETS } from './facelets.ts';
import type { Span } from './place.ts';
import { COLOUR_INITIALS } from './vocabulary.ts';

/** 54 colours (indices of `COLOURS`) in the order of the facelets; maybe impossible. */
export interface Net {
  readonly kind: 'net';
  readonly colours: Uint8Array;
}

/** `row` is an index into the lines given, `span` lies in that line. */
export type NetProblem =
  | {
      readonly kind: 'unknown-colour';
      readonly row: number;
      readonly span: Span;
      readonly text: string;
    }
  | {
      readonly kind: 'row-length';
      readonly row: number;
      readonly span: Span;
      readonly found: number;
      readonly wanted: number;
    }
  /** Too few rows (then `row` is the last one there is) or too many (the first that is too much). */
  | {
      readonly kind: 'row-count';
      readonly row: number;
      readonly span: Span;
      readonly found: number;
    };

export interface NetFailure {
  readonly kind: 'bad-net';
  /** In the order of the text, at least one. */
  readonly problems: readonly NetProblem[];
}

export const NET_ROWS = 9;

const SQUARES = ['⬜', '🟧', '🟩', '🟥', '🟦', '🟨'];
/** Also the mark that asks for the coloured form of a symbol. */
const SEPARATOR = /[\s|,]|\ufe0f/u;

/** Faces that a row of the net runs through, from left to right. */
const ROW_FACES: readonly (readonly number[])[] = [[0], [1, 2, 3, 4], [5]];

interface Cell {
  readonly text: string;
  readonly span: Span;
}

function cellsOf(line: string): Cell[] {
  const cells: Cell[] = [];
  let at = 0;
  for (const text of line) {
    if (!SEPARATOR.test(text)) cells.push({ text, span: { start: at, end: at + text.length } });
    at += text.length;
  }
  return cells;
}

function colourOf(text: string): number {
  const initial = COLOUR_INITIALS.indexOf(text.toLowerCase() as (typeof COLOUR_INITIALS)[number]);
  return initial >= 0 ? initial : SQUARES.indexOf(text);
}

/** Whether a line can be meant as a row of a net: three or more cells, at least two thirds of them colours. */
export function looksLikeNetRow(line: string): boolean {
  const cells = cellsOf(line);
  const colours = cells.filter(({ text }) => colourOf(text) >= 0).length;
  return cells.length >= 3 && cells.length <= 24 && colours * 3 >= cells.length * 2;
}

/** Reads a net; blank lines between rows are passed over. The inverse of `printNet`. */
export function readNet(lines: readonly string[]): Net | NetFailure {
  const rows = lines
    .map((line, row) => ({ row, cells: cellsOf(line) }))
    .filter(({ cells }) => cells.length > 0);
  const problems: NetProblem[] = [];
  const colours = new Uint8Array(FACELETS);
  rows.slice(0, NET_ROWS).forEach(({ row, cells }, index) => {
    const faces = ROW_FACES[Math.floor(index / 3)];
    const wanted = faces.length * 3;
    if (cells.length !== wanted) {
      const span = { start: cells[0].span.start, end: cells[cells.length - 1].span.end };
      problems.push({ kind: 'row-length', row, span, found: cells.length, wanted });
    }
    cells.forEach(({ text, span }, column) => {
      const colour = colourOf(text);
      if (colour < 0) problems.push({ kind: 'unknown-colour', row, span, text });
      else if (column < wanted) {
        colours[faces[Math.floor(column / 3)] * 9 + (index % 3) * 3 + (column % 3)] = colour;
      }
    });
  });
  if (rows.length !== NET_ROWS) {
    const row = rows.length > NET_ROWS ? rows[NET_ROWS].row : Math.max(0, lines.length - 1);
    const span = { start: 0, end: lines.length === 0 ? 0 : lines[row].length };
    problems.push({ kind: 'row-count', row, span, found: rows.length });
  }
  return problems.length > 0 ? { kind: 'bad-net', problems } : { kind: 'net', colours };
}

/** Nine lines, the faces of the middle ones set apart by a space; `colours` as in `Net`. */
export function printNet(colours: ArrayLike<number>): string[] {
  const lines: string[] = [];
  for (let index = 0; index < NET_ROWS; index++) {
    const parts = ROW_FACES[Math.floor(index / 3)].map((face) =>
      [0, 1, 2]
        .map((column) => COLOUR_INITIALS[colours[face * 9 + (index % 3) * 3 + column]])
        .join(''),
    );
    lines.push(parts.length === 1 ? `    ${parts[0]}` : parts.join(' '));
  }
  return lines;
}
