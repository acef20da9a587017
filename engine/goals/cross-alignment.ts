/** Near misses of goals that deserve a word of their own: a cross whose sides don't match, a last turn left out. */
import { ALL_EDGES, piecesWith } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import type { Goal } from './goal.ts';
import { makeDemands, meets, readWhere, whereHolds, moveWhere } from './judge.ts';

export type CrossAlignment =
  /** The cross is made. */
  | { readonly kind: 'aligned' }
  /** So many clockwise quarter turns of the base layer (1…3), as seen at it, make it. */
  | { readonly kind: 'offset'; readonly turns: number }
  /** All four edges lie in the base layer, its colour out, but not in the order of the centres. */
  | { readonly kind: 'order' }
  | { readonly kind: 'none' };

/** How the four edges of the base (a colour index) lie. */
export function crossAlignment(state: State, base: number): CrossAlignment {
  const where = readWhere(state);
  const pieces = piecesWith(base) & ALL_EDGES;
  const [facing] = makeDemands([{ kind: 'facing', pieces, colour: base }], undefined, undefined);
  if (!meets(where, facing)) return { kind: 'none' };
  const placed = makeDemands([{ kind: 'placed', pieces }], base, undefined);
  const turns = placed.findIndex((demand) => meets(where, demand));
  if (turns < 0) return { kind: 'order' };
  return turns === 0 ? { kind: 'aligned' } : { kind: 'offset', turns };
}

/**
 * The turn of the top layer, in clockwise quarters (1…3), that alone is missing for a goal;
 * undefined if none does it or the goal holds already.
 */
export function lastTurnMissing(goal: Goal, state: State, base: number): number | undefined {
  const where = readWhere(state);
  if (whereHolds(goal, where)) return undefined;
  for (let amount = 1; amount <= 3; amount++) {
    moveWhere(where, OPPOSITE[base] * 3);
    if (whereHolds(goal, where)) return amount;
  }
  return undefined;
}
