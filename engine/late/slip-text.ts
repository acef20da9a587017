/** A slip of executed turns as edits of the text, and as a sentence in plain words. */
import { printTurn, type Turn } from '../cube/turn.ts';
import type { TextEdit } from '../document/finding.ts';
import { printTurns } from '../notation/print.ts';
import type { SlipEdit } from '../search/slips/edits.ts';
import type { Slip } from '../search/slips/find.ts';
import {
  leaveOut,
  placeName,
  rewrite,
  stretchName,
  writeAfter,
  writeBefore,
  type WrittenTurn,
} from './written.ts';

/**
 * Ways to make the edits in the text, the likeliest first: an insertion may stand behind the turn before
 * or in front of the next one, which may belong to other stages. None where a turn cannot be edited.
 */
export function slipAsText(
  lines: readonly string[],
  written: readonly WrittenTurn[],
  slip: Pick<Slip, 'edits'>,
): TextEdit[][] {
  let ways: TextEdit[][] = [[]];
  for (const edit of slip.edits) {
    const own = editAsText(lines, written, edit);
    ways = ways.flatMap((before) => own.map((more) => [...before, ...more]));
  }
  return ways;
}

function editAsText(
  lines: readonly string[],
  written: readonly WrittenTurn[],
  { index, remove, turns }: SlipEdit,
): TextEdit[][] {
  if (remove === 0) return insertions(written, index, turns);
  const removed = written.slice(index, index + remove);
  if (removed.some(({ literal }) => !literal)) return [];
  if (turns.length === 0) return [removed.map((turn) => leaveOut(lines, turn))];
  if (turns.length !== removed.length) return [];
  const changed = removed.flatMap((turn, i) =>
    turn.turn === turns[i] ? [] : [rewrite(turn, [turns[i]])],
  );
  return [changed];
}

function insertions(
  written: readonly WrittenTurn[],
  index: number,
  turns: readonly Turn[],
): TextEdit[][] {
  const before = written.at(index - 1);
  const next = written.at(index);
  const ways: TextEdit[][] = [];
  if (index > 0 && before?.literal === true) ways.push([writeAfter(before, turns)]);
  const sameSpot = index > 0 && before?.range.start.line === next?.range.start.line;
  if (index < written.length && next?.literal === true && (ways.length === 0 || !sameSpot)) {
    // What the scramble lacks at its end is not what the solve lacks at its beginning.
    if (index === 0 || before?.scramble === next.scramble) ways.push([writeBefore(next, turns)]);
  }
  return ways;
}

/** `U' instead of U, turn 31, line 14`. */
export function saySlip(written: readonly WrittenTurn[], slip: Pick<Slip, 'edits'>): string {
  const [first, second] = slip.edits;
  if (first.kind === 'other-holding' && second !== undefined) {
    const where = stretchName(written[first.index], written[second.index - 1]);
    return `${printTurn(first.turns[0])} before and ${printTurn(second.turns[0])} after ${where} (written in another holding)`;
  }
  return slip.edits.map((edit) => sayEdit(written, edit)).join(', and ');
}

function sayEdit(written: readonly WrittenTurn[], edit: SlipEdit): string {
  const { index, remove, turns, kind } = edit;
  const removed = written.slice(index, index + remove);
  if (remove === 0 && kind !== 'repeat-missing') {
    const before = index > 0 ? written[index - 1] : undefined;
    const text = printTurns(turns);
    if (before === undefined) return `${text} before everything, line ${lineOf(written, index)}`;
    return `${text} after ${printTurn(before.turn)}, ${placeName(before)}`;
  }
  switch (kind) {
    case 'mirrored-stretch':
      return `${stretchOf(removed)} for the other hand: ${printTurns(turns)}`;
    case 'inverted-stretch':
      return `${stretchOf(removed)} backwards: ${printTurns(turns)}`;
    case 'repeat-missing':
      return `${printTurns(turns)} once more, after ${placeName(written[index - 1])}`;
    case 'repeat-extra':
      return `${printTurns(removed.map(({ turn }) => turn))} once less, ${stretchOf(removed)}`;
    default: {
      const where = remove === 1 ? placeName(removed[0]) : stretchOf(removed);
      const old = printTurns(removed.map(({ turn }) => turn));
      return turns.length === 0
        ? `without ${old}, ${where}`
        : `${printTurns(turns)} instead of ${old}, ${where}`;
    }
  }
}

function stretchOf(turns: readonly WrittenTurn[]): string {
  return stretchName(turns[0], turns[turns.length - 1]);
}

function lineOf(written: readonly WrittenTurn[], index: number): number {
  return written[Math.min(index, written.length - 1)].range.start.line + 1;
}
