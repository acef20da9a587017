/**
 * Shorter ways: the shortest sequence with the same effect, proven, or the proof that there is none up
 * to a number of turns; and the shortest that does the same to the goals in play.
 */
import { sumProblems } from '../cube/possible.ts';
import { applyTurns, held, invertState, SOLVED, type State } from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import type { Goal } from '../goals/goal.ts';
import { goalHolds } from '../goals/judge.ts';
import { asFaceTurns } from '../notation/transform.ts';
import { simplify } from '../notation/simplify.ts';
import { comfortCost } from './comfort.ts';
import { ExactDescent } from './exact-descent.ts';
import { searchGoal, type GoalSearchOptions } from './goal-search.ts';
import { regrip } from './person/hands.ts';
import { STEP_NODES, type Search, type SearchResult } from './step.ts';
import { turnsInHands } from './places.ts';
import { twoPhaseTables } from './two-phase-tables.ts';

export interface ExactOptions {
  readonly maxTurns?: number;
  readonly budget?: number;
  /** How many answers of the same length are compared for comfort. */
  readonly compared?: number;
}

const DEFAULT_BUDGET = 20_000_000;

/** The shortest face turns, in the state's holding, that solve it; proven. */
export function* searchExactly(state: State, options: ExactOptions = {}): Search<SearchResult> {
  const { maxTurns = 20, budget = DEFAULT_BUDGET, compared = 1 } = options;
  const problems = sumProblems(state);
  if (problems.length > 0) return { kind: 'impossible', problems };
  const descent = new ExactDescent(yield* twoPhaseTables(), state);
  let reported = 0;
  for (let length = descent.bound(); length <= maxTurns; length++) {
    descent.restart(length);
    const found: Turn[][] = [];
    while (found.length < compared) {
      const outcome = descent.advance(Math.min(reported + STEP_NODES, budget) - descent.nodes);
      if (outcome === 'end') break;
      if (outcome === 'leaf') {
        found.push(turnsInHands(descent.path.slice(0, length), state.holding));
        continue;
      }
      reported = descent.nodes;
      const signal = yield { nodes: reported, depth: length };
      if (signal !== 'stop' && reported < budget) continue;
      if (found.length > 0) break;
      return { kind: 'out-of-budget', bound: length - 1, nodes: reported };
    }
    if (found.length > 0) {
      const turns = found.reduce((a, b) => (comfortCost(b) < comfortCost(a) ? b : a));
      return { kind: 'found', turns, optimal: true, nodes: descent.nodes };
    }
  }
  return { kind: 'exhausted', bound: maxTurns, nodes: descent.nodes };
}

export interface Alternatives {
  /** Sequences with the same effect, the most comfortable first; the given one is not among them. */
  readonly alternatives: readonly (readonly Turn[])[];
  /** False if the budget ended before all were seen. */
  readonly complete: boolean;
}

/** More than these are not collected. */
const MOST_ALTERNATIVES = 200;

/**
 * Other face turns with the same effect, at most `longer` turns longer than the shortest that was
 * found, by hand comfort. Sequences that only exchange turns that commute are one.
 */
export function* findAlternatives(
  turns: readonly Turn[],
  options: { readonly longer?: number; readonly budget?: number } = {},
): Search<Alternatives> {
  const { longer = 1, budget = 2_000_000 } = options;
  const effect = applyTurns(SOLVED, turns);
  const descent = new ExactDescent(yield* twoPhaseTables(), invertState(held(effect, 0)));
  const tail = regrip(0, effect.holding);
  const own = asFaceTurns(simplify(turns)).join(' ');
  const found: Turn[][] = [];
  let reported = 0;
  let last = asFaceTurns(turns).length;
  let ended = false;
  for (let length = descent.bound(); length <= last && !ended; length++) {
    descent.restart(length);
    for (;;) {
      const outcome = descent.advance(Math.min(reported + STEP_NODES, budget) - descent.nodes);
      if (outcome === 'end') break;
      if (outcome === 'leaf') {
        last = Math.min(last, length + longer);
        const body = Array.from(descent.path.subarray(0, length));
        if (body.join(' ') !== own) found.push([...body, ...tail]);
        ended = found.length === MOST_ALTERNATIVES;
        if (ended) break;
        continue;
      }
      reported = descent.nodes;
      ended = (yield { nodes: reported, depth: length }) === 'stop' || reported >= budget;
      if (ended) break;
    }
  }
  found.sort((a, b) => comfortCost(a) - comfortCost(b));
  return { alternatives: found, complete: !ended };
}

export type ShorterWay =
  /** Shorter; `optimal` if nothing shorter still does the same. */
  | { readonly kind: 'shorter'; readonly turns: readonly Turn[]; readonly optimal: boolean }
  /** No sequence of face turns of at most `provenTo` does the same; `optimal` if the given one is no longer than possible. */
  | { readonly kind: 'none'; readonly provenTo: number; readonly optimal: boolean };

/**
 * A shorter sequence with the same effect on every cube, the holding included, counted in face turns
 * (slices as two). Cancelling turns are taken out first; only then is there a search, up to `provenTo`.
 */
export function* findShorter(
  turns: readonly Turn[],
  options: { readonly provenTo?: number; readonly budget?: number } = {},
): Search<ShorterWay> {
  const { provenTo = 10, budget = DEFAULT_BUDGET } = options;
  const given = asFaceTurns(turns).length;
  // Merging may make a slice or wide turn of face turns and a rotation, which is no gain by this count.
  const simpler = simplify(turns);
  const merged = asFaceTurns(simpler).length < given ? simpler : turns;
  const count = asFaceTurns(merged).length;
  const effect = applyTurns(SOLVED, turns);
  const result = yield* searchExactly(held(invertState(held(effect, 0)), 0), {
    maxTurns: Math.min(count - 1, provenTo),
    budget,
    compared: 50,
  });
  if (result.kind === 'found') {
    // Solving the inverse does the effect, held as at the start; the rotations that were in it come last.
    const shorter = [...result.turns, ...regrip(0, effect.holding)];
    return { kind: 'shorter', turns: shorter, optimal: true };
  }
  const bound = result.kind === 'impossible' ? 0 : result.bound;
  const optimal = bound >= count - 1;
  if (count < given) return { kind: 'shorter', turns: merged, optimal };
  return { kind: 'none', provenTo: bound, optimal };
}

/** The shortest face turns from `state` after which all goals hold that hold after `turns`. */
export function findShorterOnGoals(
  state: State,
  turns: readonly Turn[],
  goals: readonly Goal[],
  options: GoalSearchOptions = {},
): Search<SearchResult> {
  const after = applyTurns(state, turns);
  const reached = goals.filter((goal) => goalHolds(goal, after));
  const last = reached.at(-1);
  if (last === undefined) throw new RangeError('no goal holds after these turns');
  const maxTurns = asFaceTurns(turns, state.holding).length;
  return searchGoal(state, last, reached.slice(0, -1), { maxTurns, ...options });
}
