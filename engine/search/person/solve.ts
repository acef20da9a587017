/**
 * The person's way: a solve by `layers` as a beginner would do it, piece by piece, with the common
 * sequences, from the present holding.
 */
import { sumProblems, type Problem } from '../../cube/possible.ts';
import { applyTurns, isSolved, type State } from '../../cube/state.ts';
import { OPPOSITE } from '../../cube/vocabulary.ts';
import type { Goal } from '../../goals/goal.ts';
import { goalHolds, goalPieces } from '../../goals/judge.ts';
import { LAYERS, goalsFor } from '../../goals/methods.ts';
import { nextInsert } from './first-layers.ts';
import { nextLastLayer } from './last-layer.ts';
import type { PersonStep } from './step.ts';

/** Stages of `layers` that are made piece by piece. */
const BY_PIECE = ['cross', 'corners', 'middle'];

const goals = Array.from({ length: 6 }, (_, base) => goalsFor(LAYERS, base));

/** The next step on the way to the solved cube; undefined if it is solved. */
export function nextStep(state: State, base: number): PersonStep | undefined {
  const own = goals[base];
  const index = own.findIndex((goal) => !goalHolds(goal, state));
  return index < 0 ? undefined : stepFor(state, own, index, base);
}

function stepFor(state: State, own: readonly Goal[], index: number, base: number): PersonStep {
  const goal = own[index];
  if (!BY_PIECE.includes(goal.name)) {
    const guarded = goalPieces(own[BY_PIECE.length - 1]);
    return nextLastLayer(state, goal, base, OPPOSITE[base], guarded);
  }
  const before = index === 0 ? 0 : goalPieces(own[index - 1]);
  const pieces = goalPieces(goal) & ~before;
  const step = nextInsert(state, goal.name, base, pieces, before);
  if (step === undefined) throw new Error(`nothing to do for ${goal.name}`);
  return step;
}

export interface PersonSolve {
  readonly kind: 'solve';
  readonly start: State;
  /** Colour index. */
  readonly base: number;
  readonly steps: readonly PersonStep[];
}

/** More steps than any state needs; a solve that does not end is a bug. */
const MOST_STEPS = 80;

/** The whole solve. An impossible state is refused with its reasons. */
export function solveAsPerson(
  start: State,
  base: number,
): PersonSolve | { readonly kind: 'impossible'; readonly problems: readonly Problem[] } {
  const problems = sumProblems(start);
  if (problems.length > 0) return { kind: 'impossible', problems };
  const steps: PersonStep[] = [];
  let state = start;
  for (;;) {
    const step = nextStep(state, base);
    if (step === undefined) break;
    if (steps.length === MOST_STEPS) throw new Error('a solve that does not end');
    steps.push(step);
    state = applyTurns(state, step.turns);
  }
  if (!isSolved(state)) throw new Error('a solve that ends unsolved');
  return { kind: 'solve', start, base, steps };
}
