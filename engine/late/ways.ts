/**
 * Ways on from a state: the short one, found by search, and the person's, step by step. What is
 * called shortest is proven to be.
 */
import { ALL_PIECES } from '../cube/piece.ts';
import { sumProblems, type Problem } from '../cube/possible.ts';
import { applyTurns, isSolved, type State } from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import type { Goal } from '../goals/goal.ts';
import { goalHolds } from '../goals/judge.ts';
import { asFaceTurns } from '../notation/transform.ts';
import type { PersonStep } from '../search/person/step.ts';
import { solveAsPerson, type PersonSolve } from '../search/person/solve.ts';
import type { GoalSearchOptions } from '../search/goal-search.ts';
import { reachGoal } from '../search/reach.ts';
import { searchExactly } from '../search/same-effect.ts';
import type { Search } from '../search/step.ts';
import { solveCube } from '../search/two-phase.ts';

export interface Way {
  readonly kind: 'way';
  readonly turns: readonly Turn[];
  /** Proven that no fewer face turns reach the goal. */
  readonly optimal: boolean;
  /** Number of face turns of which it is proven that no fewer do it. */
  readonly atLeast: number | undefined;
}

export interface Refused {
  readonly kind: 'impossible';
  readonly problems: readonly Problem[];
}

export interface NoWay {
  readonly kind: 'none';
  /** So many turns, or fewer, are proven not to do it. */
  readonly bound: number;
}

/** Without a goal only `budget` counts; with one, only the others do. */
export interface WayOptions extends Pick<
  GoalSearchOptions,
  'maxTurns' | 'withoutLayer' | 'rightHanded'
> {
  /** Nodes for improving the whole-cube answer; some 40 million a second. */
  readonly budget?: number;
}

/** Proofs that no shorter way exists go up to here; they take 0.3 s at most. */
const PROVEN_TO = 10;
const DEFAULT_BUDGET = 8_000_000;

/**
 * Short face turns, in the state's holding, after which `goal` and all of `kept` hold; without a goal,
 * the cube is solved.
 */
export function* shortWay(
  state: State,
  goal: Goal | undefined,
  kept: readonly Goal[],
  options: WayOptions = {},
): Search<Way | Refused | NoWay> {
  const problems = sumProblems(state);
  if (problems.length > 0) return { kind: 'impossible', problems };
  return yield* goal === undefined || isWholeCube(goal)
    ? solveShort(state, options)
    : reachShort(state, goal, kept, options);
}

/** Whether a goal demands every piece in its place. */
export function isWholeCube({ conditions, upTo, anyOf }: Goal): boolean {
  const placed = conditions.reduce(
    (set, own) => (own.kind === 'placed' ? set | own.pieces : set),
    0,
  );
  return anyOf === undefined && upTo === undefined && placed === ALL_PIECES;
}

function* solveShort(state: State, options: WayOptions): Search<Way | Refused | NoWay> {
  const exact = yield* searchExactly(state, { maxTurns: PROVEN_TO, compared: 20 });
  if (exact.kind === 'impossible') return exact;
  if (exact.kind === 'found') {
    return { kind: 'way', turns: exact.turns, optimal: true, atLeast: exact.turns.length };
  }
  const result = yield* solveCube(state, { budget: options.budget ?? DEFAULT_BUDGET });
  if (result.kind === 'impossible') return result;
  if (result.kind !== 'found') return { kind: 'none', bound: result.bound };
  const { turns, optimal } = result;
  return { kind: 'way', turns, optimal, atLeast: optimal ? turns.length : exact.bound + 1 };
}

function* reachShort(
  state: State,
  goal: Goal,
  kept: readonly Goal[],
  { maxTurns, withoutLayer, rightHanded }: WayOptions,
): Search<Way | Refused | NoWay> {
  const result = yield* reachGoal(state, goal, kept, {
    ...(maxTurns === undefined ? {} : { maxTurns }),
    ...(withoutLayer === undefined ? {} : { withoutLayer }),
    ...(rightHanded === undefined ? {} : { rightHanded }),
  });
  if (result.kind === 'impossible') return result;
  if (result.kind !== 'found') return { kind: 'none', bound: result.bound };
  const { turns, optimal } = result;
  return { kind: 'way', turns, optimal, atLeast: optimal ? turns.length : undefined };
}

/** The goals before `index` that hold already, and so are to be kept. */
export function keptBefore(goals: readonly Goal[], index: number, state: State): Goal[] {
  return goals.slice(0, index).filter((goal) => goalHolds(goal, state));
}

/** The person's way until a goal of `layers` holds (its index), or the cube is solved. */
export function personWay(
  state: State,
  base: number,
  goal: Goal | undefined,
): PersonSolve | Refused {
  const whole = solveAsPerson(state, base);
  if (whole.kind === 'impossible' || goal === undefined) return whole;
  const steps: PersonStep[] = [];
  let now = state;
  for (const step of whole.steps) {
    if (goalHolds(goal, now)) break;
    steps.push(step);
    now = applyTurns(now, step.turns);
  }
  return { ...whole, steps };
}

/** Whether a way does what it says; every answer is replayed before it is given. */
export function leadsTo(state: State, turns: readonly Turn[], goal: Goal | undefined): boolean {
  const end = applyTurns(state, turns);
  return goal === undefined ? isSolved(end) : goalHolds(goal, end);
}

/** Face turns of a way. */
export function faceTurnCount(turns: readonly Turn[]): number {
  return asFaceTurns(turns).length;
}
