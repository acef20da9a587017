/** The longest step of every kind of search: cancel waits for one step at most. */
import { SOLVED, applyTurns } from '../../engine/cube/state.ts';
import { LAYERS, goalsFor } from '../../engine/goals/methods.ts';
import { fillGap } from '../../engine/search/gaps.ts';
import { makePractice } from '../../engine/search/practice.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { reachGoal } from '../../engine/search/reach.ts';
import { findAlternatives, findShorter } from '../../engine/search/same-effect.ts';
import { findSlips } from '../../engine/search/slips/find.ts';
import { findStray } from '../../engine/search/strays.ts';
import type { Search } from '../../engine/search/step.ts';
import { solveCube } from '../../engine/search/two-phase.ts';
import { longestStep, type Figure } from './measure.ts';

export function* measureCancel(): Generator<Figure> {
  const random = makeRandom(20);
  const state = randomState(random);
  const turns = (count: number): number[] => Array.from({ length: count }, () => random.below(18));
  const goals = goalsFor(LAYERS, 5);
  const searches: readonly (readonly [what: string, search: () => Search<unknown>])[] = [
    ['to a goal (corners of the base, from anywhere)', () => reachGoal(state, goals[1])],
    ['the whole cube', () => solveCube(state, { budget: 1_000_000 })],
    ['a shorter way', () => findShorter(turns(14), { provenTo: 12 })],
    ['other ways', () => findAlternatives(turns(10))],
    ['a gap', () => fillGap(SOLVED, state)],
    ['slips of 60 turns', () => findSlips(state, turns(60))],
    ['slips of 1,000 turns', () => findSlips(state, turns(1000), { pairs: false })],
    ['a stray', () => findStray(SOLVED, turns(60), applyTurns(state, turns(3)), 30)],
    ['practice', () => makePractice(goals.slice(0, 4), random, 5)],
  ];
  for (const [what, search] of searches) {
    // The best of three: whatever else runs on the machine would be measured, too.
    const value = Math.min(...[1, 2, 3].map(() => longestStep(search())));
    yield { what: `longest step: ${what}`, value, unit: 'ms', bound: 20 };
  }
}
