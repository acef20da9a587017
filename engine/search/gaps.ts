/**
 * An unknown stretch between two known states: the shortest turns that fit, proven up to a bound, else
 * some that fit.
 */
import type { Holding } from '../cube/holding.ts';
import { applyTurns, compose, held, invertState, sameState, type State } from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import {
  ANGLE_TO_CROSS,
  CYCLE_CORNERS,
  EDGES_CLOCKWISE,
  EDGES_COUNTER,
  LINE_TO_CROSS,
  TURN_CORNERS,
  topTurn,
  turnsOf,
} from './person/sequences.ts';
import { holdingsOn, regrip } from './person/hands.ts';
import { CENTRE_AT } from '../cube/holding.ts';
import { simplify } from '../notation/simplify.ts';
import { searchExactly } from './same-effect.ts';
import type { Search, SearchResult } from './step.ts';
import { solveCube } from './two-phase.ts';

/** Proofs up to here take a moment only. */
const PROVEN_TO = 11;

/**
 * Turns that lead from `before` to `after`, each as held; face turns and, if the holdings differ, the
 * rotation at the end. `optimal` speaks of the face turns.
 */
export function* fillGap(
  before: State,
  after: State,
  options: { readonly provenTo?: number; readonly budget?: number } = {},
): Search<SearchResult> {
  const way = between(before, after);
  const exact = yield* searchExactly(way, {
    maxTurns: options.provenTo ?? PROVEN_TO,
    compared: 50,
    ...(options.budget === undefined ? {} : { budget: options.budget }),
  });
  const result =
    exact.kind === 'found' || exact.kind === 'impossible'
      ? exact
      : yield* solveCube(way, { budget: options.budget ?? 500_000 });
  if (result.kind !== 'found') return result;
  return { ...result, turns: [...result.turns, ...regrip(before.holding, after.holding)] };
}

/** The state whose solution, in the same hands, leads from `before` to `after`. */
function between(before: State, after: State): State {
  const way = compose(invertState(held(after, 0)), held(before, 0));
  return held(way, before.holding);
}

const FAMILIAR: readonly (readonly Turn[])[] = [
  LINE_TO_CROSS,
  ANGLE_TO_CROSS,
  TURN_CORNERS,
  CYCLE_CORNERS,
  EDGES_CLOCKWISE,
  EDGES_COUNTER,
  ...[
    "U R U' R'",
    "U' L' U L",
    "R U R' U'",
    "R U' R'",
    "R U R'",
    "U R U' R' U' F' U F",
    "U' L' U L U F U' F'",
  ].map(turnsOf),
];

/**
 * Familiar sequences that fit a gap: held in one of the four ways with the same colour down, with a turn of
 * the top before and after, and done one to six times. The shortest first.
 */
export function* familiarFills(before: State, after: State): Search<Turn[][]> {
  const found = new Map<string, Turn[]>();
  const base = CENTRE_AT[before.holding][5];
  const holdings: Holding[] = holdingsOn(base, before.holding);
  let nodes = 0;
  for (const holding of holdings) {
    const way = regrip(before.holding, holding);
    const back = regrip(holding, after.holding);
    for (const sequence of FAMILIAR) {
      for (let times = 1; times <= 6; times++) {
        const body = Array.from({ length: times }, () => sequence).flat();
        for (let first = 0; first < 4; first++) {
          for (let last = 0; last < 4; last++) {
            const turns = [
              ...way,
              ...simplify([...topTurn(first), ...body, ...topTurn(last)]),
              ...back,
            ];
            nodes++;
            if (!sameState(applyTurns(before, turns), after)) continue;
            found.set(turns.join(' '), turns);
          }
        }
      }
      yield { nodes, depth: 1 };
    }
  }
  return [...found.values()].sort((a, b) => a.length - b.length);
}
