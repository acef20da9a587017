/**
 * A way to a goal in any case: proven shortest where the stage search ends within its budget, else
 * part by part or by the whole-cube search, whichever is shorter, and then not called shortest.
 */
import { placedSet, type PieceSet } from '../cube/piece.ts';
import { sumProblems } from '../cube/possible.ts';
import { applyTurns, type State } from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import type { Goal } from '../goals/goal.ts';
import { simplify } from '../notation/simplify.ts';
import { searchGoal, searchPatterns, type GoalSearchOptions } from './goal-search.ts';
import { placedPattern } from './pattern.ts';
import type { Search, SearchResult } from './step.ts';
import { solveCube } from './two-phase.ts';

/** Nodes for the proof, for each part, and for the whole cube; some 50 ms each. */
const DEFAULT_BUDGET = 500_000;

/**
 * Face turns, in the state's holding, after which `goal` and all of `kept` hold. Restricted to some
 * faces, or to at most so many turns, there may be no answer within the budget.
 */
export function* reachGoal(
  state: State,
  goal: Goal,
  kept: readonly Goal[] = [],
  options: GoalSearchOptions = {},
): Search<SearchResult> {
  const problems = sumProblems(state);
  if (problems.length > 0) return { kind: 'impossible', problems };
  const budget = options.budget ?? DEFAULT_BUDGET;
  const direct = yield* searchGoal(state, goal, kept, { ...options, budget });
  if (direct.kind !== 'out-of-budget') return direct;
  const restricted = options.faces ?? options.withoutLayer;
  const parts = yield* reachByParts(state, goal, kept, { ...options, budget });
  // All goals hold on the solved cube, so solving it reaches any of them.
  const whole = restricted === undefined ? yield* solveCube(state, { budget }) : undefined;
  let turns = parts;
  if (whole?.kind === 'found' && (!turns || whole.turns.length < turns.length)) turns = whole.turns;
  if (!turns || turns.length > (options.maxTurns ?? Infinity)) return direct;
  return { kind: 'found', turns, optimal: false, nodes: direct.nodes };
}

/** One part after the other, the next always the one that is nearest; undefined if that does not apply or ends nowhere. */
function* reachByParts(
  state: State,
  goal: Goal,
  kept: readonly Goal[],
  options: GoalSearchOptions,
): Search<readonly Turn[] | undefined> {
  const plain = (own: Goal): boolean =>
    own.anyOf === undefined &&
    own.choice === undefined &&
    own.slice === undefined &&
    own.upTo === undefined &&
    own.conditions.every(({ kind }) => kind === 'placed');
  if (goal.parts.length < 2 || ![goal, ...kept].every(plain)) return undefined;
  const piecesOf = (own: Goal): PieceSet =>
    own.conditions.reduce((set, { pieces }) => set | pieces, 0);
  const wanted = piecesOf(goal);
  let made = kept.reduce((set, own) => set | piecesOf(own), 0);
  const before = wanted & ~goal.parts.reduce((set, part) => set | part, 0);
  made |= before & placedSet(state);
  const turns: Turn[] = [];
  let now = state;
  let left = goal.parts.filter((part) => (part & ~made) !== 0);
  while (left.length > 0) {
    const patterns = left.map((part) => placedPattern(made | before | part));
    const result = yield* searchPatterns(now, patterns, options);
    if (result.kind !== 'found') return undefined;
    turns.push(...result.turns);
    now = applyTurns(now, result.turns);
    made |= wanted & placedSet(now);
    left = left.filter((part) => (part & ~made) !== 0);
  }
  return simplify(turns);
}
