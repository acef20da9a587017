import { describe, expect, test } from 'vitest';
import { SOLVED, applyTurns } from '../../engine/cube/state.ts';
import {
  EDGE_PATTERNS,
  ORIENTATION_CASES,
  PERMUTATION_CASES,
  lastLayerCase,
} from '../../engine/goals/cases.ts';
import { readSequence } from '../../engine/notation/read.ts';
import { invertTurns } from '../../engine/notation/transform.ts';
import type { Turn } from '../../engine/cube/turn.ts';

const turns = (text: string): Turn[] =>
  readSequence(text).items.flatMap((item) => (item.kind === 'turn' ? [item.turn] : []));
const YELLOW = 5;

describe('cases of the last layer (counts computed; 58 and 22 also stated in a published discussion)', () => {
  test('216 orientations are 58 cases: cross 8, dot 8, line 15, angle 27', () => {
    expect(ORIENTATION_CASES).toHaveLength(58);
    const byEdges = EDGE_PATTERNS.map((pattern) => {
      const own = ORIENTATION_CASES.filter(({ edges }) => edges === pattern);
      return [pattern, own.length, own.reduce((sum, { states }) => sum + states, 0)];
    });
    expect(byEdges).toEqual([
      ['dot', 8, 27],
      ['line', 15, 54],
      ['angle', 27, 108],
      ['cross', 8, 27],
    ]);
  });

  test('corners alone: 8 patterns of 27 states', () => {
    const cross = ORIENTATION_CASES.filter(({ edges }) => edges === 'cross');
    const chances = Object.fromEntries(cross.map(({ corners, states }) => [corners, states]));
    expect(chances).toEqual({ right: 1, S: 4, AS: 4, T: 4, U: 4, L: 4, H: 2, Pi: 4 });
  });

  test('288 permutations are 22 cases: corners right 48, adjacent 192, diagonal 48', () => {
    expect(PERMUTATION_CASES).toHaveLength(22);
    const sum = (swap: string): number =>
      PERMUTATION_CASES.filter(({ corners }) => corners === swap).reduce(
        (total, { states }) => total + states,
        0,
      );
    expect(['right', 'adjacent', 'diagonal'].map(sum)).toEqual([48, 192, 48]);
  });

  test('the letters: two of U, A, J, R, N, four of G, one of the others (common practice)', () => {
    const counts: Record<string, number> = {};
    for (const { letter } of PERMUTATION_CASES) counts[letter] = (counts[letter] ?? 0) + 1;
    expect(counts).toEqual({
      '': 1,
      A: 2,
      E: 1,
      F: 1,
      G: 4,
      H: 1,
      J: 2,
      N: 2,
      R: 2,
      T: 1,
      U: 2,
      V: 1,
      Y: 1,
      Z: 1,
    });
    const states = (letter: string): number[] =>
      PERMUTATION_CASES.filter((own) => own.letter === letter).map((own) => own.states);
    // In sixteenths of 288: symmetric cases come up less often.
    expect(states('H')).toEqual([4]);
    expect(states('Z')).toEqual([8]);
    expect(states('E')).toEqual([8]);
    expect(states('N')).toEqual([4, 4]);
    expect(states('T')).toEqual([16]);
  });

  test('a mirror image and an inverse are cases of the same letter, and twice either is the case itself', () => {
    const byKey = new Map(PERMUTATION_CASES.map((own) => [own.key, own]));
    for (const own of PERMUTATION_CASES) {
      expect(byKey.get(own.mirror)?.letter).toBe(own.letter);
      expect(byKey.get(own.inverse)?.letter).toBe(own.letter);
      expect(byKey.get(own.mirror)?.mirror).toBe(own.key);
      expect(byKey.get(own.inverse)?.inverse).toBe(own.key);
    }
  });
});

describe('a case is recognised on the cube, in any holding', () => {
  test.each([
    ["F R U R' U' F'", 'line'],
    ["Fw R U R' U' Fw'", 'angle'],
    ["F R U R' U' F' Fw R U R' U' Fw'", 'dot'],
    ["R U R' U R U2 R'", 'cross'],
  ])('what %s undoes shows %s', (text, edges) => {
    for (const rotation of ['', 'y', 'x2', "z' y"]) {
      const state = applyTurns(SOLVED, [...invertTurns(turns(text)), ...turns(rotation)]);
      expect(lastLayerCase(state, YELLOW)?.orientation.edges).toBe(edges);
    }
  });

  test("R U R' U R U2 R' leaves one corner right and turns three the same way, its inverse the other way", () => {
    const after = (list: Turn[]): string | undefined =>
      lastLayerCase(applyTurns(SOLVED, list), YELLOW)?.orientation.corners;
    const sequence = turns("R U R' U R U2 R'");
    expect([after(sequence), after(invertTurns(sequence))].sort()).toEqual(['AS', 'S']);
    expect(lastLayerCase(applyTurns(SOLVED, sequence), YELLOW)?.orientation.cornersRight).toBe(1);
  });

  test("R' F R' B2 R F' R' B2 R2 cycles three corners: A, headlights on one side only", () => {
    const own = lastLayerCase(applyTurns(SOLVED, turns("R' F R' B2 R F' R' B2 R2")), YELLOW);
    expect(own?.permutation).toMatchObject({ letter: 'A', corners: 'adjacent' });
    expect(own?.headlights).toHaveLength(1);
  });

  test("F2 U L R' F2 L' R U F2 cycles three edges: U, one side finished, all with headlights", () => {
    const own = lastLayerCase(applyTurns(SOLVED, turns("F2 U L R' F2 L' R U F2 U")), YELLOW);
    expect(own?.permutation).toMatchObject({ letter: 'U', corners: 'right' });
    expect(own?.headlights).toHaveLength(4);
    expect(own?.finished).toHaveLength(1);
  });

  test('with a base corner away there is no case', () => {
    expect(lastLayerCase(applyTurns(SOLVED, turns("R U R' U'")), YELLOW)).toBeUndefined();
    expect(lastLayerCase(SOLVED, YELLOW)?.permutation?.letter).toBe('');
  });
});
