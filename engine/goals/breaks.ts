/** What became of each break: passing, carried, lasting or open, wanted or not, and which of them are told. */
import { piecesIn, type PieceSet } from '../cube/piece.ts';
import type { Break, BreakKind, StageSpan } from './timeline-types.ts';

/** A guarded goal that became false. */
export interface RawBreak {
  readonly goal: number;
  readonly turn: number;
  readonly pieces: PieceSet;
  /** Index of the turn that first made it true again. */
  readonly restoredAt: number | undefined;
}

export interface Ending {
  readonly stages: readonly StageSpan[];
  readonly held: readonly Uint8Array[];
  readonly length: number;
  /** Whether the method's last goal was reached and guarded. */
  readonly finished: boolean;
}

/** Index of the stage to which a turn belongs; undefined if to none. Stages are in the order of the text. */
export function stageOfTurn(stages: readonly StageSpan[], turn: number): number | undefined {
  let low = 0;
  let high = stages.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (stages[middle].end <= turn) low = middle + 1;
    else high = middle;
  }
  return low < stages.length && stages[low].first <= turn ? low : undefined;
}

export function kindOfBreak(raw: RawBreak, { stages, held, length, finished }: Ending): BreakKind {
  const stage = stageOfTurn(stages, raw.turn);
  const next = stages.find(({ first, end }) => first > raw.turn && end > first);
  const end = stage === undefined ? (next?.first ?? length) : stages[stage].end;
  if (raw.restoredAt !== undefined) return raw.restoredAt < end ? 'passing' : 'carried';
  if (stage === undefined) return next === undefined && !finished ? 'open' : 'lasting';
  if (stage < stages.length - 1) return 'lasting';
  return held[stages[stage].goal][end] === 1 ? 'lasting' : 'open';
}

/** Whether the author announced the break with `opens:`. */
function isWanted(raw: RawBreak, { stages, held, length }: Ending): boolean {
  return stages.some((stage) =>
    stage.opens.some(({ goal, until }) => {
      if (goal !== raw.goal || raw.turn < stage.first) return false;
      let deadline = stage.end;
      if (until !== undefined) {
        deadline = stage.first + 1;
        while (deadline <= length && held[until][deadline] !== 1) deadline++;
        if (deadline > length) return true;
      }
      return raw.turn < deadline && raw.restoredAt !== undefined && raw.restoredAt < deadline;
    }),
  );
}

const BADNESS: Readonly<Record<BreakKind, number>> = {
  passing: 0,
  open: 1,
  carried: 2,
  lasting: 3,
};

/**
 * One turn often breaks a goal and all that take it in. Told is the most basic goal, and a less
 * basic one only if it fared worse.
 */
export function tellBreaks(raw: readonly RawBreak[], ending: Ending): Break[] {
  const sorted = [...raw].sort((a, b) => a.turn - b.turn || a.goal - b.goal);
  const result: Break[] = [];
  let turn = -1;
  let worst = -1;
  for (const one of sorted) {
    if (one.turn !== turn) [turn, worst] = [one.turn, -1];
    const kind = kindOfBreak(one, ending);
    if (BADNESS[kind] <= worst) continue;
    worst = BADNESS[kind];
    result.push({
      goal: one.goal,
      kind,
      turn: one.turn,
      pieces: piecesIn(one.pieces),
      restoredAt: one.restoredAt,
      part: false,
      wanted: isWanted(one, ending),
      stage: stageOfTurn(ending.stages, one.turn),
    });
  }
  return result;
}
