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

/** The first stage with turns after a turn that belongs to none. */
function nextStage(stages: readonly StageSpan[], turn: number): StageSpan | undefined {
  return stages.find(({ first, end }) => first > turn && end > first);
}

export function kindOfBreak(raw: RawBreak, { stages, held, length, finished }: Ending): BreakKind {
  const stage = stageOfTurn(stages, raw.turn);
  const next = stage === undefined ? nextStage(stages, raw.turn) : undefined;
  const end = stage === undefined ? (next?.first ?? length) : stages[stage].end;
  if (raw.restoredAt !== undefined) return raw.restoredAt < end ? 'passing' : 'carried';
  if (stage === undefined) return next === undefined && !finished ? 'open' : 'lasting';
  if (stage < stages.length - 1) return 'lasting';
  return held[stages[stage].goal][end] === 1 ? 'lasting' : 'open';
}

/** `opens:` as places: breaks of `goal` from `first` on are wanted if mended by `deadline`. */
interface Announced {
  readonly goal: number;
  readonly first: number;
  /** Undefined if the goal until which it is announced is never reached: then the break may stay. */
  readonly deadline: number | undefined;
}

function announcedBreaks({ stages, held }: Ending): Announced[] {
  return stages.flatMap(({ first, end, opens }) =>
    opens.map(({ goal, until }) => {
      if (until === undefined) return { goal, first, deadline: end };
      const reached = held[until].indexOf(1, first + 1);
      return { goal, first, deadline: reached < 0 ? undefined : reached };
    }),
  );
}

/** Whether the author announced the break with `opens:`. */
function isWanted(raw: RawBreak, announced: readonly Announced[]): boolean {
  return announced.some(({ goal, first, deadline }) => {
    if (goal !== raw.goal || raw.turn < first) return false;
    if (deadline === undefined) return true;
    return raw.turn < deadline && raw.restoredAt !== undefined && raw.restoredAt < deadline;
  });
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
  const announced = announcedBreaks(ending);
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
      wanted: isWanted(one, announced),
      stage: stageOfTurn(ending.stages, one.turn),
    });
  }
  return result;
}
