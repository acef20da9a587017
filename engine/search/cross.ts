/**
 * The shortest cross, always proven: a table of all 190,080 arrangements of the four base edges.
 *
 * The table is built for white; another base is reached by renaming the colours, which is a
 * conjugation with a rotation of the whole cube and leaves lengths as they are.
 */
import { CENTRE_AT, FACE_OF, HOLDINGS, type Holding } from '../cube/holding.ts';
import { rename, type State } from '../cube/state.ts';
import { FACE_TURNS, type Turn } from '../cube/turn.ts';
import {
  buildDistances,
  distanceIn,
  firstPair,
  secondPair,
  type DistanceTable,
} from './distances.ts';
import { PAIRS, homeOf, placesOf, turnsInHands } from './places.ts';
import type { Search } from './step.ts';

/** Edges UF UR UB UL, all with a white sticker. */
const CROSS_EDGES = [0, 1, 2, 3];

let kept: DistanceTable | undefined;

/** The table, built at the first call (some 20 ms) and kept. */
export function* crossTable(): Search<DistanceTable> {
  kept ??= yield* buildDistances(CROSS_EDGES, [CROSS_EDGES.map((piece) => 1 << homeOf(piece))]);
  return kept;
}

/** A holding whose renaming makes this colour white. */
export function renamingToWhite(colour: number): Holding {
  for (let holding = 0; holding < HOLDINGS; holding++)
    if (CENTRE_AT[holding][colour] === 0) return holding;
  throw new RangeError(`no colour ${String(colour)}`);
}

/** Face turns to the nearest cross on `base` (a colour index). */
export function crossDistance(table: DistanceTable, state: State, base: number): number {
  return distanceIn(table, placesOf(rename(state, renamingToWhite(base))));
}

/** One shortest cross on `base`, as turns in the state's holding. */
export function shortestCross(table: DistanceTable, state: State, base: number): Turn[] {
  return shortestCrosses(table, state, base, 1)[0];
}

/** Up to `limit` different shortest crosses, in the order of the turns' numbers. */
export function shortestCrosses(
  table: DistanceTable,
  state: State,
  base: number,
  limit: number,
): Turn[][] {
  const renaming = renamingToWhite(base);
  const places = placesOf(rename(state, renaming));
  const found: Turn[][] = [];
  const path: number[] = [];
  const descend = (first: number, second: number): void => {
    const distance = table.distances[first * PAIRS + second];
    if (distance === 0) {
      const body = path.map((turn) => FACE_OF[renaming][(turn / 3) | 0] * 3 + (turn % 3));
      found.push(turnsInHands(body, state.holding));
      return;
    }
    for (let turn = 0; turn < FACE_TURNS && found.length < limit; turn++) {
      const nextFirst = table.first[first * FACE_TURNS + turn];
      const nextSecond = table.second[second * FACE_TURNS + turn];
      if (table.distances[nextFirst * PAIRS + nextSecond] !== distance - 1) continue;
      path.push(turn);
      descend(nextFirst, nextSecond);
      path.pop();
    }
  };
  descend(firstPair(table, places), secondPair(table, places));
  return found;
}
