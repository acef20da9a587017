import { describe, expect, test } from 'vitest';
import { FIRST_CORNER, whereIs } from '../../engine/cube/piece.ts';
import { sumProblems } from '../../engine/cube/possible.ts';
import { SOLVED, applyTurns, sameState, type State } from '../../engine/cube/state.ts';
import { lastLayerCase } from '../../engine/goals/cases.ts';
import { goalHolds } from '../../engine/goals/judge.ts';
import { METHODS, goalsFor } from '../../engine/goals/methods.ts';
import {
  caseStates,
  goalsBefore,
  makePractice,
  practiceStates,
  randomScramble,
} from '../../engine/search/practice.ts';
import { fromWords, makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { complete } from '../../engine/search/step.ts';

/** Sum of (seen − expected)² / expected over cells that should be equally full. */
function chiSquare(counts: readonly number[]): number {
  const expected = counts.reduce((sum, count) => sum + count, 0) / counts.length;
  return counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

function arrangement(state: State): string {
  return [...Array.from(state.edges), ...Array.from(state.corners)].join(' ');
}

function tally(keys: readonly (string | number | undefined)[]): number[] {
  const counts = new Map<string | number | undefined, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return [...counts.values()];
}

describe('random numbers', () => {
  test('xoshiro128** from the words 1, 2, 3, 4 gives the outputs of the reference code', () => {
    // Source: outputs of the authors' C code, as quoted in public ports of it.
    const random = fromWords([1, 2, 3, 4]);
    expect(Array.from({ length: 10 }, () => random.bits())).toEqual([
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597,
      4258142804,
    ]);
  });

  test('a seed repeats its numbers, another seed gives others', () => {
    const take = (seed: number): number[] => {
      const random = makeRandom(seed);
      return Array.from({ length: 8 }, () => random.below(1000));
    };
    expect(take(7)).toEqual(take(7));
    expect(take(7)).not.toEqual(take(8));
    expect(take(7)).not.toEqual(take(7 + 2 ** 32));
  });
});

describe('uniformly random states', () => {
  const random = makeRandom(20_240_501);
  const states = Array.from({ length: 12_000 }, () => randomState(random));

  test('all of them can be reached by turns', () => {
    for (const state of states) expect(sumProblems(state)).toEqual([]);
  });

  test('each piece is at each of its 24 places equally often (chi-square, 23 degrees, 0.001: 49.7)', () => {
    for (const piece of [0, 7, FIRST_CORNER, FIRST_CORNER + 7]) {
      const counts = tally(
        states.map((state) => {
          const { slot, turned } = whereIs(state, piece);
          return slot * 3 + turned;
        }),
      );
      expect(counts).toHaveLength(24);
      expect(chiSquare(counts)).toBeLessThan(49.7);
    }
  });
});

describe('practice states', () => {
  test('of every method and goal: all goals before hold', () => {
    const random = makeRandom(1);
    for (const method of METHODS) {
      const goals = goalsFor(method, 5);
      for (const [index, goal] of goals.entries()) {
        const draw = practiceStates(goals.slice(0, index));
        for (let i = 0; i < 3; i++) {
          const state = draw(random);
          if (state === undefined) throw new Error(`${method.name}: ${goal.name}`);
          for (const before of goals.slice(0, index)) expect(goalHolds(before, state)).toBe(true);
          expect(sumProblems(state)).toEqual([]);
        }
      }
    }
  });

  test('the 48 states before the last stage of layers come equally often (47 degrees, 0.001: 82.7)', () => {
    // Corners right up to a turn of the top: 4 turns, and half of the 24 orders of the edges with each.
    const before = goalsBefore(goalsFor(METHODS[0], 5), 'solved') ?? [];
    const random = makeRandom(99);
    const draw = practiceStates(before);
    const keys = Array.from({ length: 9600 }, () => {
      const state = draw(random);
      return state && arrangement(state);
    });
    const counts = tally(keys);
    expect(counts).toHaveLength(48);
    expect(chiSquare(counts)).toBeLessThan(82.7);
  });

  test('the 288 last layers that only have to be permuted come equally often (287 degrees, 0.001: 365)', () => {
    const cfop = METHODS.find((method) => method.name === 'CFOP') ?? METHODS[0];
    const before = goalsBefore(goalsFor(cfop, 0), 'PLL') ?? [];
    const random = makeRandom(5);
    const draw = practiceStates(before);
    const counts = tally(
      Array.from({ length: 14_400 }, () => {
        const state = draw(random);
        return state && arrangement(state);
      }),
    );
    expect(counts).toHaveLength(288);
    expect(chiSquare(counts)).toBeLessThan(365);
  });

  test('of the states with three pairs, none comes more often for having the fourth', () => {
    // With three of four pairs demanded, a state with all four fits four times; it must count once.
    const cfop = METHODS.find((method) => method.name === 'CFOP') ?? METHODS[0];
    const before = goalsBefore(goalsFor(cfop, 5), '4th pair') ?? [];
    const solvedPairs = goalsFor(cfop, 5)[4];
    const random = makeRandom(11);
    const draw = practiceStates(before);
    const draws = 20_000;
    let all = 0;
    for (let i = 0; i < draws; i++) {
      const state = draw(random);
      if (state && goalHolds(solvedPairs, state)) all++;
    }
    // Given three pairs, the fourth's corner has 5 slots * 3 turns and its edge 5 slots * 2 turns:
    // 149 of the 150 arrangements leave exactly three made, for each of four pairs to be missing.
    const expected = draws / (4 * 149 + 1);
    expect(Math.abs(all - expected)).toBeLessThan(5 * Math.sqrt(expected));
  });

  test('the scramble leads to the state from the solved cube, white up and green in front', () => {
    const random = makeRandom(3);
    const goals = goalsFor(METHODS[0], 5);
    for (const name of ['cross', 'middle', 'top face']) {
      const practice = complete(makePractice(goalsBefore(goals, name) ?? [], random, 1))[0];
      if (!practice) throw new Error(name);
      expect(sameState(applyTurns(SOLVED, practice.scramble), practice.state)).toBe(true);
    }
    const { state, scramble } = complete(randomScramble(random));
    expect(sameState(applyTurns(SOLVED, scramble), state)).toBe(true);
    expect(scramble.length).toBeGreaterThanOrEqual(2);
  });
});

describe('practice of particular cases', () => {
  test('only the case asked for, as often as its states are many', () => {
    const draw = caseStates(5, true, (own) => own.permutation?.letter === 'H');
    const random = makeRandom(21);
    const seen = new Set<string>();
    for (let i = 0; i < 60; i++) {
      const state = draw(random);
      if (!state) throw new Error('none drawn');
      expect(lastLayerCase(state, 5)?.permutation?.letter).toBe('H');
      seen.add(arrangement(state));
    }
    // H has four states, one for each turn of the top.
    expect(seen.size).toBe(4);
    const line = caseStates(5, false, (own) => own.orientation.edges === 'line');
    const state = line(random);
    expect(state && lastLayerCase(state, 5)?.orientation.edges).toBe('line');
  });
});
