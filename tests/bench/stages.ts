/** Cross and one slot: tables cold, then the worst case. */
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import { setOf } from '../../engine/cube/piece.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { crossTable, shortestCross } from '../../engine/search/cross.ts';
import { searchGoal } from '../../engine/search/goal-search.ts';
import { turnsOf } from '../../engine/search/person/sequences.ts';
import { placesOf } from '../../engine/search/places.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { complete } from '../../engine/search/step.ts';
import { time, type Figure } from './measure.ts';

export function* measureCross(): Generator<Figure> {
  yield {
    what: 'cross table, cold',
    value: time(() => complete(crossTable())),
    unit: 'ms',
    bound: 40,
  };
  const table = complete(crossTable());
  const random = makeRandom(1);
  const states = Array.from({ length: 1000 }, () => randomState(random));
  // Once to warm up, as the first calls run uncompiled.
  for (const state of states) shortestCross(table, state, random.below(6));
  const each = time(() => {
    for (const state of states) shortestCross(table, state, random.below(6));
  });
  yield {
    what: 'a shortest cross after it, mean of 1,000, any base',
    value: each / 1000,
    unit: 'ms',
    bound: 0.1,
  };
}

const PAIRS = [
  [12, 8],
  [13, 9],
  [14, 11],
  [15, 10],
];

/** Cross and these pairs, white as the base. */
function pairsGoal(pairs: readonly number[]): Goal {
  const pieces = setOf([0, 1, 2, 3, ...pairs.flatMap((pair) => PAIRS[pair])]);
  return { name: 'pairs', conditions: [{ kind: 'placed', pieces }], upTo: undefined, parts: [] };
}

/** All arrangements of the first pair (corner 12, edge 8) that leave cross and other slots alone. */
function slotStates(): State[] {
  const makers = ['D', "R' D R", "R' D' R", "F D F'", "F D' F'"].map(turnsOf);
  const key = (state: State): string => {
    const places = placesOf(state);
    return `${String(places[12])} ${String(places[8])}`;
  };
  const states = new Map([[key(SOLVED), SOLVED]]);
  for (const state of states.values()) {
    for (const maker of makers) {
      const next = applyTurns(state, maker);
      if (!states.has(key(next))) states.set(key(next), next);
    }
  }
  return [...states.values()];
}

export function* measureSlot(): Generator<Figure> {
  const all = pairsGoal([0, 1, 2, 3]);
  const moved = applyTurns(SOLVED, turnsOf('R'));
  yield {
    what: 'one slot, three kept: tables cold',
    value: time(() => complete(searchGoal(moved, all))),
    unit: 'ms',
    bound: 150,
  };
  for (const kept of [[0, 1, 2, 3], [0, 1, 2], [0, 2, 3], [0, 1], [0, 2], [0, 3], [0]]) {
    const goal = pairsGoal(kept);
    complete(searchGoal(moved, goal));
    let worst = 0;
    for (const state of slotStates()) {
      worst = Math.max(
        worst,
        time(() => complete(searchGoal(state, goal))),
      );
    }
    const what = `one slot, ${String(kept.length - 1)} kept: worst of 150, proven shortest`;
    yield { what, value: worst, unit: 'ms', bound: 10 };
  }
}
