/** The case of the last layer as JSON. */
import type { State } from '../../engine/cube/state.ts';
import { lastLayerCase, ORIENTATIONS, PERMUTATIONS } from '../../engine/goals/cases.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { regrip } from '../../engine/search/person/hands.ts';
import type { LastLayerJson } from './json.ts';

/** Undefined unless everything below the last layer is home, or where nothing is left to do. */
export function lastLayerOf(state: State, base: number): LastLayerJson | undefined {
  const found = lastLayerCase(state, base);
  if (found === undefined) return undefined;
  const { orientation, permutation, holding } = found;
  return {
    edges: orientation.edges,
    corners: orientation.corners,
    cornersRight: orientation.cornersRight,
    chance: orientation.states / ORIENTATIONS,
    ...(permutation === undefined
      ? {}
      : {
          permutation: {
            letter: permutation.letter,
            corners: permutation.corners,
            chance: permutation.states / PERMUTATIONS,
          },
        }),
    hold: printTurns(regrip(state.holding, holding)),
  };
}
