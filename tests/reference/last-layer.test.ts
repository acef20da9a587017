/**
 * Counts of the last layer. All were computed before by independent programs; 62,208, 3,916, 1,212,
 * 58 and 22 are also stated in a published discussion credited to B. Helmstetter.
 */
import { describe, expect, test } from 'vitest';
import { invertState, type State } from '../../engine/cube/state.ts';
import {
  HOME,
  RIGHT,
  lastLayerStates,
  mirrored,
  nameOf,
  turnedVariants,
  turningOf,
} from '../support/last-layer.ts';

const ALL = lastLayerStates();

/** States that `kin` makes of each other are one case; for each case its members among `states`. */
function casesOf(
  states: readonly State[],
  name: (state: State) => string,
  kin: (state: State) => State[],
): State[][] {
  const left = new Map(states.map((state) => [name(state), state]));
  const cases: State[][] = [];
  for (const [first, state] of left) {
    const members = new Map([[first, state]]);
    for (const member of members.values()) {
      for (const other of kin(member)) {
        const found = left.get(name(other));
        if (found !== undefined) members.set(name(other), found);
      }
    }
    for (const member of members.keys()) left.delete(member);
    cases.push([...members.values()]);
  }
  return cases;
}

const afterTopTurns = (state: State): State[] => turnedVariants(state, false);
const beforeAndAfter = (state: State): State[] => turnedVariants(state, true);

describe('the last layer', () => {
  test('has 62,208 states', () => {
    expect(ALL).toHaveLength(62_208);
    expect(new Set(ALL.map(nameOf)).size).toBe(62_208);
  });

  test('3,916 of them differ by more than turns of the top before and after', () => {
    const cases = casesOf(ALL, nameOf, beforeAndAfter);
    expect(cases).toHaveLength(3916);
    const representatives = cases.map(([first]) => first);
    const caseOf = new Map(cases.flatMap((members, i) => members.map((m) => [nameOf(m), i])));
    const related = (state: State): State[] =>
      [mirrored(state), invertState(state)].map(
        (other) => representatives[caseOf.get(nameOf(other)) ?? -1],
      );
    // 1,212 with mirror images and inverses taken as the same, too.
    expect(casesOf(representatives, nameOf, related)).toHaveLength(1212);
  });
});

describe('orientation', () => {
  const byTurning = new Map(ALL.map((state) => [turningOf(state), state]));
  const cases = casesOf([...byTurning.values()], turningOf, afterTopTurns);

  test('216 ways, 58 cases when the top may be turned first', () => {
    expect(byTurning.size).toBe(216);
    expect(cases).toHaveLength(58);
  });

  test('edges: cross 27 ways in 8 cases, dot 27 in 8, line 54 in 15, angle 108 in 27', () => {
    const shape = (state: State): string => {
      const right = [0, 1, 2, 3].filter((slot) => (state.edges[slot] & 1) === 0);
      if (right.length === 4) return 'cross';
      if (right.length === 0) return 'dot';
      return right[1] - right[0] === 2 ? 'line' : 'angle';
    };
    const counted = ['cross', 'dot', 'line', 'angle'].map((name) => {
      const own = cases.filter(([first]) => shape(first) === name);
      return [name, own.flat().length, own.length];
    });
    expect(counted).toEqual([
      ['cross', 27, 8],
      ['dot', 27, 8],
      ['line', 54, 15],
      ['angle', 108, 27],
    ]);
    // Edge orientation alone: 4 cases with chances 1/8, 1/8, 1/4 and 1/2.
    const edgesAlone = casesOf(
      lastLayerStates({ twists: RIGHT }),
      (state) => turningOf(state),
      afterTopTurns,
    );
    const ways = edgesAlone.map((members) => [shape(members[0]), members.length]);
    expect(Object.fromEntries(ways)).toEqual({ cross: 1, dot: 1, line: 2, angle: 4 });
    expect(ways).toHaveLength(4);
  });

  test('corners alone: 27 ways, 8 cases', () => {
    const states = lastLayerStates({ flips: RIGHT });
    expect(new Set(states.map(turningOf)).size).toBe(27);
    expect(casesOf(states, turningOf, afterTopTurns)).toHaveLength(8);
  });
});

describe('permutation', () => {
  const states = lastLayerStates({ twists: RIGHT, flips: RIGHT });

  test('288 states, 22 cases when the top may be turned before and after', () => {
    expect(states).toHaveLength(288);
    expect(casesOf(states, nameOf, beforeAndAfter)).toHaveLength(22);
  });

  test('corners: arranged 48 of 288, two neighbours to swap 192, two diagonal ones 48', () => {
    const turns = (order: number[]): string[] =>
      order.map((_, i) => order.map((_, k) => order[(i + k) % 4]).join(''));
    const kinds = { arranged: [0, 1, 2, 3], neighbours: [1, 0, 2, 3], diagonal: [2, 1, 0, 3] };
    const counts = { arranged: 0, neighbours: 0, diagonal: 0 };
    for (const state of states) {
      const variants = turnedVariants(state, true).map((v) =>
        [0, 1, 2, 3].map((slot) => (v.corners[slot] / 3) | 0).join(''),
      );
      const kind = (Object.keys(kinds) as (keyof typeof kinds)[]).find((name) =>
        turns(kinds[name]).some((order) => variants.includes(order)),
      );
      if (kind !== undefined) counts[kind]++;
    }
    expect(counts).toEqual({ arranged: 48, neighbours: 192, diagonal: 48 });
  });

  test('with the corners home, 12 arrangements of the edges', () => {
    expect(lastLayerStates({ twists: RIGHT, flips: RIGHT, cornerPieces: HOME })).toHaveLength(12);
  });
});
