import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SOLVED, applyTurns, isSolved, sameState } from '../../engine/cube/state.ts';
import { FACE_TURNS } from '../../engine/cube/turn.ts';
import { goalsFor, LAYERS } from '../../engine/goals/methods.ts';
import { goalHolds } from '../../engine/goals/judge.ts';
import { invertTurns } from '../../engine/notation/transform.ts';
import { turnsOf } from '../../engine/search/person/sequences.ts';
import {
  findAlternatives,
  findShorter,
  findShorterOnGoals,
  searchExactly,
} from '../../engine/search/same-effect.ts';
import { complete } from '../../engine/search/step.ts';

test.each([
  ["R U R' U R U2 R'", 7],
  ["F R U R' U' F'", 6],
  ["R U R' U'", 4],
  ['R2 U2 R2 U2 R2 U2', 6],
  // A rotation at the end could be merged into a slice, but a slice counts as two.
  ["R L U2 R' L' x", 5],
])('%s has no shorter equal: proven', (text, count) => {
  expect(complete(findShorter(turnsOf(text)))).toEqual({
    kind: 'none',
    provenTo: count - 1,
    optimal: true,
  });
});

test.each([
  ["R L R'", 'L'],
  ["U R U' U R' U'", ''],
  ["R L' x' R' L x", ''],
])('%s is %s with what cancels taken out', (text, short) => {
  const result = complete(findShorter(turnsOf(text)));
  if (result.kind !== 'shorter') throw new Error(result.kind);
  expect(sameState(applyTurns(SOLVED, result.turns), applyTurns(SOLVED, turnsOf(short)))).toBe(
    true,
  );
  expect(result.optimal).toBe(true);
});

test('three times R U R′ U′ the long way round: six of them are nothing, five are one backwards', () => {
  const five = Array.from({ length: 5 }, () => "R U R' U'").join(' ');
  const result = complete(findShorter(turnsOf(five)));
  expect(result).toEqual({ kind: 'shorter', turns: turnsOf("U R U' R'"), optimal: true });
});

test('a shorter way does the same to every cube, holding included', () => {
  const anyTurns = fc.array(fc.integer({ min: 0, max: 53 }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(anyTurns, (turns) => {
      const result = complete(findShorter(turns, { provenTo: 8 }));
      if (result.kind === 'shorter') {
        expect(sameState(applyTurns(SOLVED, result.turns), applyTurns(SOLVED, turns))).toBe(true);
      }
    }),
    { numRuns: 60 },
  );
});

test('the shortest way back is never longer than the turns, and comes home', () => {
  const faceTurns = fc.array(fc.integer({ min: 0, max: FACE_TURNS - 1 }), { maxLength: 9 });
  fc.assert(
    fc.property(faceTurns, (turns) => {
      const state = applyTurns(SOLVED, turns);
      const result = complete(searchExactly(state));
      if (result.kind !== 'found') throw new Error(result.kind);
      expect(result.turns.length).toBeLessThanOrEqual(turns.length);
      expect(isSolved(applyTurns(state, result.turns))).toBe(true);
    }),
    { numRuns: 60 },
  );
});

test('up to the goals in play a sequence may be much shorter', () => {
  // A cross by a detour: only the cross is in play.
  const goals = goalsFor(LAYERS, 5).slice(0, 1);
  const solution = turnsOf("F2 U R U' R' U2 L U L' U");
  const state = applyTurns(SOLVED, invertTurns(solution));
  const result = complete(findShorterOnGoals(state, solution, goals));
  if (result.kind !== 'found') throw new Error(result.kind);
  expect(result.turns.length).toBeLessThan(solution.length);
  expect(goalHolds(goals[0], applyTurns(state, result.turns))).toBe(true);
});

test('other ways to do the same, the most comfortable first, each checked', () => {
  // Two turns that commute and a detour over the back: B U B′ U′ held otherwise is not the same effect.
  for (const text of ["R L' U2 R' L", "F R U R' U' F'", 'R2 U2 R2 U2 R2 U2']) {
    const turns = turnsOf(text);
    const { alternatives, complete: all } = complete(findAlternatives(turns));
    expect(all).toBe(true);
    for (const other of alternatives) {
      expect(sameState(applyTurns(SOLVED, other), applyTurns(SOLVED, turns))).toBe(true);
      expect(other).not.toEqual(turns);
    }
  }
  // R2 U2 three times is its own inverse's mirror: begun with U2 it is the same.
  const { alternatives } = complete(findAlternatives(turnsOf('R2 U2 R2 U2 R2 U2')));
  expect(alternatives).toContainEqual(turnsOf('U2 R2 U2 R2 U2 R2'));
});
