/**
 * Something to practise: states in which all goals before a given one hold and the rest is uniformly
 * random, random-state scrambles as WCA Regulation 4b3 wants them, and scrambles that lead to a
 * given state.
 */
import { ALL_PIECES, piecesWith } from '../cube/piece.ts';
import { SOLVED, applyTurn, held, sameArrangement, type State } from '../cube/state.ts';
import { FACE_TURNS, type Turn } from '../cube/turn.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { lastLayerCase, type LastLayerCase } from '../goals/cases.ts';
import type { Goal } from '../goals/goal.ts';
import { invertTurns } from '../notation/transform.ts';
import { patternsOfAll } from './pattern.ts';
import type { Random } from './random.ts';
import { randomState, statesIn, type StateSource } from './random-state.ts';
import type { Search } from './step.ts';
import { solveCube } from './two-phase.ts';

/** Long enough that scrambles don't tell much, short enough to be found at once. */
const ENOUGH = 21;

export interface Practice {
  /** Held white up, green in front. */
  readonly state: State;
  /** Face turns that lead there from the solved cube, white up and green in front (4d1). */
  readonly scramble: readonly Turn[];
}

/**
 * States in which all of `before` hold, each such state equally likely. The source gives undefined if
 * there is none (or so few among the draws that none was found).
 */
export function practiceStates(before: readonly Goal[]): StateSource {
  return before.length === 0 ? randomState : statesIn(patternsOfAll(before));
}

/** The goals of a method that come before the one of this name; undefined if it has none of this name. */
export function goalsBefore(goals: readonly Goal[], name: string): readonly Goal[] | undefined {
  const at = goals.findIndex((goal) => goal.name.toLowerCase() === name.trim().toLowerCase());
  return at < 0 ? undefined : goals.slice(0, at);
}

/** As many of them as asked for, each with a scramble; fewer only if there are none. */
export function makePractice(
  before: readonly Goal[],
  random: Random,
  count: number,
): Search<Practice[]> {
  return practiceFrom(practiceStates(before), random, count);
}

/** As many states of a source as asked for, each with a scramble; fewer only if there are none. */
export function* practiceFrom(
  draw: StateSource,
  random: Random,
  count: number,
): Search<Practice[]> {
  const result: Practice[] = [];
  for (let i = 0; i < count; i++) {
    const state = draw(random);
    if (state === undefined) break;
    result.push({ state, scramble: yield* scrambleTo(state) });
  }
  return result;
}

/** Cases of the last layer that come up once in a thousand draws are still found. */
const MOST_DRAWS = 20_000;

/**
 * States whose last layer is a case that `wanted` accepts, each such state equally likely; everything
 * below is home. `turned`: only states with all top pieces turned right (for permutation cases).
 */
export function caseStates(
  base: number,
  turned: boolean,
  wanted: (own: LastLayerCase) => boolean,
): StateSource {
  const top = OPPOSITE[base];
  const pieces = piecesWith(top);
  const draw = practiceStates([
    {
      name: 'last layer',
      conditions: [
        { kind: 'placed', pieces: ALL_PIECES & ~pieces },
        ...(turned ? [{ kind: 'facing', pieces, colour: top } as const] : []),
      ],
      upTo: undefined,
      parts: [],
    },
  ]);
  return (random) => {
    for (let draws = 0; draws < MOST_DRAWS; draws++) {
      const state = draw(random);
      const own = state && lastLayerCase(state, base);
      if (own && wanted(own)) return state;
    }
    return undefined;
  };
}

/** A random-state scramble: all states that need at least two turns, each equally likely (4b3). */
export function* randomScramble(random: Random): Search<Practice> {
  let state = randomState(random);
  while (needsFewerThanTwo(state)) state = randomState(random);
  return { state, scramble: yield* scrambleTo(state) };
}

function needsFewerThanTwo(state: State): boolean {
  if (sameArrangement(state, SOLVED)) return true;
  for (let turn = 0; turn < FACE_TURNS; turn++) {
    if (sameArrangement(applyTurn(state, turn), SOLVED)) return true;
  }
  return false;
}

/** Face turns that lead from the solved cube, white up and green in front, to the state. */
export function* scrambleTo(state: State): Search<Turn[]> {
  const result = yield* solveCube(held(state, 0), { enough: ENOUGH, budget: 200_000 });
  if (result.kind !== 'found') throw new Error(`no way to a drawn state: ${result.kind}`);
  return invertTurns(result.turns);
}
