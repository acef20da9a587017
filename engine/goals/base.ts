/**
 * Choosing the base colour of a solve that names none: by what was made, then by what was said, then
 * by what was begun, then by how the cube is held.
 */
import { CENTRE_AT, type Holding } from '../cube/holding.ts';
import type { PieceSet } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import { COLOURS } from '../cube/vocabulary.ts';
import type { Goal } from './goal.ts';
import { failing, makeDemands, readWhere, whereHolds, type Demand, type Where } from './judge.ts';
import { goalsFor, type Method } from './methods.ts';

export interface BaseQuestion {
  readonly method: Method;
  /**
   * The cube at the end of the method's first stage; if that is not written, of the first stage
   * that is; if there is none, of the text. Undefined if unknown.
   */
  readonly state: State | undefined;
  /** How the cube is held there, for a state that is unknown. */
  readonly holding: Holding;
  /** Colour index named with the first stage (`white cross`). */
  readonly named?: number | undefined;
  /** Colour index of the side for blocks, if one is declared. */
  readonly front?: number | undefined;
}

export interface BaseAnswer {
  /** Colour index. */
  readonly base: number;
  /** Nothing but the holding spoke for it. */
  readonly assumed: boolean;
}

const ENOUGH = 3;

export function chooseBase({ method, state, holding, named, front }: BaseQuestion): BaseAnswer {
  const down = CENTRE_AT[state?.holding ?? holding][5];
  const pick = (candidates: readonly number[]): number =>
    candidates.includes(down)
      ? down
      : named !== undefined && candidates.includes(named)
        ? named
        : candidates[0];
  const where = state && readWhere(state);
  const firstGoals = COLOURS.map((_, base) => goalsFor(method, base, front)[0]);
  if (where) {
    const made = COLOURS.map((_, base) => base).filter((base) =>
      whereHolds(firstGoals[base], where),
    );
    if (made.length > 0) return { base: pick(made), assumed: false };
  }
  if (named !== undefined) return { base: named, assumed: false };
  if (where) {
    const counts = firstGoals.map((goal, base) => placedOf(goal, base, where));
    const most = Math.max(...counts);
    if (most >= ENOUGH) {
      return {
        base: pick(counts.flatMap((count, base) => (count >= ENOUGH ? [base] : []))),
        assumed: false,
      };
    }
  }
  return { base: down, assumed: true };
}

/** How many of a goal's pieces are placed, counted up to one turn of the base layer. */
function placedOf(goal: Goal, base: number, where: Where): number {
  if (goal.anyOf)
    return Math.max(...goal.anyOf.map((alternative) => placedOf(alternative, base, where)));
  const { pieces, demands } = placedDemands(goal, base);
  return Math.max(...demands.map((demand) => sizeOf(pieces) - sizeOf(failing(where, demand))));
}

interface Placed {
  readonly pieces: PieceSet;
  readonly demands: readonly Demand[];
}

/** A goal belongs to one base; a text may be many solves. */
const PLACED = new WeakMap<Goal, Placed>();

function placedDemands(goal: Goal, base: number): Placed {
  let result = PLACED.get(goal);
  if (result === undefined) {
    const pieces = goal.conditions.reduce(
      (set, one) => (one.kind === 'placed' ? set | one.pieces : set),
      0,
    );
    result = { pieces, demands: makeDemands([{ kind: 'placed', pieces }], base, goal.slice) };
    PLACED.set(goal, result);
  }
  return result;
}

function sizeOf(set: PieceSet): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
}
