/**
 * The turns of a block as they stand in the text: which can be edited where they stand, and what
 * people call them. Edits of executed turns become edits of the text here; whether these do what is
 * wanted is always checked afterwards by analysing the edited text.
 */
import type { Position, Range } from '../cube/place.ts';
import { isRotation, printTurn, type Turn } from '../cube/turn.ts';
import type { Block } from '../document/analysis.ts';
import type { TextEdit } from '../document/finding.ts';
import { execute, JUMP } from '../notation/execute.ts';
import { readSequence } from '../notation/read.ts';

export interface WrittenTurn {
  readonly turn: Turn;
  readonly range: Range;
  /** Its text is that turn and nothing else, and is executed once. */
  readonly literal: boolean;
  /** From 1, rotations not counted (a rotation has the number of the turn before it). */
  readonly number: number;
  readonly scramble: boolean;
}

export function isBefore(a: Position, b: Position): boolean {
  return a.line < b.line || (a.line === b.line && a.character < b.character);
}

/** Undefined if a step of the block is no single turn (an unknown stretch, a repeat done by powers). */
export function writtenTurns(
  lines: readonly string[],
  block: Block,
  first = 0,
  end = block.course.length,
): WrittenTurn[] | undefined {
  const { codes } = block.course;
  const result: WrittenTurn[] = [];
  for (let index = first; index < end; index++) {
    if (codes[index] === JUMP) return undefined;
    result.push({
      turn: codes[index],
      range: block.rangeOf(index),
      literal: true,
      number: block.numberOf(index),
      scramble: false,
    });
  }
  // What stands before an aside is of the line that it branches off from, and not its to change.
  const own = (range: Range): boolean => !isBefore(range.start, block.range.start);
  return markLiteral(lines, result, own);
}

/** The turns of the block's scramble; undefined if there is none that can be read as single turns. */
export function scrambleTurns(lines: readonly string[], block: Block): WrittenTurn[] | undefined {
  const { scramble } = block;
  if (block.startFrom !== 'scramble' || scramble === undefined) return undefined;
  const { start, end } = scramble.range;
  const tree = readSequence(lines[start.line], start.character, end.character);
  const execution = execute(tree.items, { resolve: () => undefined, limit: 1_000 });
  if (execution.jumps.size > 0 || execution.unresolved.length > 0) return undefined;
  let number = 0;
  const result = execution.codes.map((turn, index): WrittenTurn => {
    if (!isRotation(turn)) number++;
    const at = (character: number): Position => ({ line: start.line, character });
    const range = { start: at(execution.starts[index]), end: at(execution.ends[index]) };
    return { turn, range, literal: true, number, scramble: true };
  });
  return markLiteral(lines, result, () => true);
}

function markLiteral(
  lines: readonly string[],
  turns: readonly WrittenTurn[],
  own: (range: Range) => boolean,
): WrittenTurn[] {
  const keyOf = ({ range: { start } }: WrittenTurn): string => `${start.line}:${start.character}`;
  const times = new Map<string, number>();
  for (const turn of turns) times.set(keyOf(turn), (times.get(keyOf(turn)) ?? 0) + 1);
  return turns.map((written) => ({
    ...written,
    literal:
      times.get(keyOf(written)) === 1 &&
      own(written.range) &&
      readSingle(textAt(lines, written.range)) === written.turn,
  }));
}

/** The turn that a text is; undefined if it is anything else. */
export function readSingle(text: string): Turn | undefined {
  const { items } = readSequence(text);
  return items.length === 1 && items[0].kind === 'turn' ? items[0].turn : undefined;
}

/** The text of a range within one line. */
export function textAt(lines: readonly string[], { start, end }: Range): string {
  return lines[start.line].slice(start.character, end.character);
}

/** The text with edits made that do not overlap. */
export function editLines(lines: readonly string[], edits: readonly TextEdit[]): string {
  const result = [...lines];
  const order = edits
    .map((edit, index) => ({ ...edit, index }))
    .sort((a, b) => {
      if (isBefore(a.range.start, b.range.start)) return 1;
      return isBefore(b.range.start, a.range.start) ? -1 : b.index - a.index;
    });
  for (const { range, newText } of order) {
    const { start, end } = range;
    const joined =
      result[start.line].slice(0, start.character) +
      newText +
      result[end.line].slice(end.character);
    result.splice(start.line, end.line - start.line + 1, joined);
  }
  return result.join('\n');
}

/** Replaces the text of a turn. */
export function rewrite({ range }: WrittenTurn, turns: readonly Turn[]): TextEdit {
  return { range, newText: turns.map(printTurn).join(' ') };
}

/** Takes the text of a turn out, together with the space that would be left over. */
export function leaveOut(lines: readonly string[], { range }: WrittenTurn): TextEdit {
  const line = lines[range.start.line];
  const { start, end } = range;
  const after = /^[ \t]+/.exec(line.slice(end.character))?.[0].length ?? 0;
  const more = line.slice(end.character + after);
  const between = /(?:^|[ \t([])$/.test(line.slice(0, start.character));
  // Before a comment the space stays, so that columns of comments keep their look as far as can be.
  const taken = between && more !== '' && !/^[)\]/#;,:]/.test(more) ? after : 0;
  return {
    range: { start, end: { line: end.line, character: end.character + taken } },
    newText: '',
  };
}

/** Writes turns behind a turn. */
export function writeAfter({ range }: WrittenTurn, turns: readonly Turn[]): TextEdit {
  return {
    range: { start: range.end, end: range.end },
    newText: ` ${turns.map(printTurn).join(' ')}`,
  };
}

/** Writes turns in front of a turn. */
export function writeBefore({ range }: WrittenTurn, turns: readonly Turn[]): TextEdit {
  return {
    range: { start: range.start, end: range.start },
    newText: `${turns.map(printTurn).join(' ')} `,
  };
}

/** `turn 31, line 14`; a rotation, having no number, is told by the turn before it. */
export function placeName(written: WrittenTurn): string {
  const { number, turn, range, scramble } = written;
  const line = `line ${range.start.line + 1}`;
  const of = scramble ? ' of the scramble' : '';
  if (!isRotation(turn)) return `turn ${number}${of}, ${line}`;
  return number === 0 ? `before turn 1${of}, ${line}` : `after turn ${number}${of}, ${line}`;
}

/** `turns 12–19, lines 8–9`. */
export function stretchName(first: WrittenTurn, last: WrittenTurn): string {
  const lines = [first.range.start.line + 1, last.range.start.line + 1];
  const from = Math.min(last.number, first.number + (isRotation(first.turn) ? 1 : 0));
  const numbers = from === last.number ? `turn ${from}` : `turns ${from}–${last.number}`;
  const of = first.scramble ? ' of the scramble' : '';
  return `${numbers}${of}, ${lines[0] === lines[1] ? `line ${lines[0]}` : `lines ${lines[0]}–${lines[1]}`}`;
}
