/** Facts on what turns alone can and cannot do. */
import { sumProblems } from '../cube/possible.ts';
import type { Fact, FlawFact, SolvableFact } from './facts.ts';
import type { Flaw } from './intents.ts';
import type { Scene } from './scene.ts';

/**
 * Flips are even in number, twists add up to whole turns (two in opposite ways, three in one), and an
 * even permutation of corners goes with an even one of edges: two exchanged pieces alone cannot be.
 */
function isPossible({ what, count }: Flaw): boolean {
  switch (what) {
    case 'flipped':
      return count % 2 === 0;
    case 'twisted':
      return count !== 1;
    case 'swapped':
      return count !== 2 && count !== 1;
  }
}

export function gatherPossible(scene: Scene, flaw: Flaw | undefined): Fact[] {
  const { place, state } = scene;
  const problems = sumProblems(state).map(({ kind }) => kind as SolvableFact['problems'][number]);
  const solvable: SolvableFact = {
    kind: 'solvable',
    place,
    solvable: problems.length === 0,
    problems,
  };
  if (flaw === undefined) return [solvable];
  const fact: FlawFact = { kind: 'flaw', place, ...flaw, possible: isPossible(flaw) };
  return [fact, solvable];
}
