/**
 * Turn counts by metric. OBTM is WCA Regulations 12a5 (face and wide turns 1, rotations 0), where
 * slices, which 12a5 leaves open, count 2; ETM is 12a6 (every turn 1, rotations too). STM and QTM
 * are common practice: slices 1; quarter turns, with M 2 and M2 4.
 */
import { amountOf, turnKind, TURNS, type Turn } from '../cube/turn.ts';

/** Null above 2^53 − 1. */
export interface Counts {
  readonly obtm: number | null;
  readonly etm: number | null;
  readonly stm: number | null;
  readonly qtm: number | null;
}

/** Counts while they are added up: exact up to 2^53 − 1, infinite above. */
export interface Tally {
  readonly obtm: number;
  readonly etm: number;
  readonly stm: number;
  readonly qtm: number;
}

export const NO_TURNS: Tally = { obtm: 0, etm: 0, stm: 0, qtm: 0 };

const TALLIES: readonly Tally[] = Array.from({ length: TURNS }, (_, turn) => {
  const kind = turnKind(turn);
  const quarters = amountOf(turn) === 2 ? 2 : 1;
  if (kind === 'rotation') return { obtm: 0, etm: 1, stm: 0, qtm: 0 };
  if (kind === 'slice') return { obtm: 2, etm: 1, stm: 1, qtm: 2 * quarters };
  return { obtm: 1, etm: 1, stm: 1, qtm: quarters };
});

export function tallyTurn(turn: Turn): Tally {
  return TALLIES[turn];
}

/** A sum or product of whole numbers, infinite where it is no safe integer any more. */
export function safe(value: number): number {
  return value > Number.MAX_SAFE_INTEGER ? Infinity : value;
}

/** `times` (≥ 0, possibly infinite) as often; nothing, however often, stays nothing. */
export function multiply(value: number, times: number): number {
  return value === 0 || times === 0 ? 0 : safe(value * times);
}

export function addTallies(a: Tally, b: Tally): Tally {
  return {
    obtm: safe(a.obtm + b.obtm),
    etm: safe(a.etm + b.etm),
    stm: safe(a.stm + b.stm),
    qtm: safe(a.qtm + b.qtm),
  };
}

export function multiplyTally(tally: Tally, times: number): Tally {
  return {
    obtm: multiply(tally.obtm, times),
    etm: multiply(tally.etm, times),
    stm: multiply(tally.stm, times),
    qtm: multiply(tally.qtm, times),
  };
}

export function countsOf(tally: Tally): Counts {
  const known = (value: number): number | null => (Number.isFinite(value) ? value : null);
  return {
    obtm: known(tally.obtm),
    etm: known(tally.etm),
    stm: known(tally.stm),
    qtm: known(tally.qtm),
  };
}

/**
 * Counts of executed turns from `first` to before `end`. `tallyOfJump` tells those of a step that
 * is no single turn (by its index); without it such steps count nothing.
 */
export function countTurns(
  codes: ArrayLike<number>,
  tallyOfJump: (index: number) => Tally = () => NO_TURNS,
  first = 0,
  end = codes.length,
): Counts {
  let tally = NO_TURNS;
  for (let index = first; index < end; index++) {
    const code = codes[index];
    tally = addTallies(tally, code < 0 ? tallyOfJump(index) : TALLIES[code]);
  }
  return countsOf(tally);
}
