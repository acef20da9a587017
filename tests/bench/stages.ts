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
import { practiceStates } from '../../engine/search/practice.ts';
import { complete } from '../../engine/search/step.ts';
import { quantile, time, type Figure } from './measure.ts';

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
  const each = states.map((state) => time(() => shortestCross(table, state, random.below(6))));
  const what = 'a shortest cross after it, any base, 99 of 100';
  yield { what, value: quantile(each, 0.99), unit: 'ms', bound: 0.1 };
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
  let worst = 0;
  for (const state of slotStates()) {
    worst = Math.max(
      worst,
      time(() => complete(searchGoal(state, all))),
    );
  }
  yield {
    what: 'one slot, three kept: worst of all 150, proven',
    value: worst,
    unit: 'ms',
    bound: 10,
  };
  // With fewer kept there are too many states to try all: the others are made at random.
  const random = makeRandom(2);
  for (const kept of [[1, 2], [1, 3], [2, 3], [1], [2], [3], []]) {
    const goal = pairsGoal([0, ...kept]);
    complete(searchGoal(moved, goal));
    const draw = practiceStates([pairsGoal(kept)]);
    const times = Array.from({ length: 300 }, () => {
      const state = draw(random) ?? SOLVED;
      return time(() => complete(searchGoal(state, goal)));
    });
    const what = `one slot, ${String(kept.length)} kept: worst of 300 random states, proven`;
    yield { what, value: Math.max(...times), unit: 'ms', bound: 10 };
  }
}
