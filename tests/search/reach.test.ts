import { describe, expect, test } from 'vitest';
import { SOLVED, applyTurns, sameArrangement, sameState } from '../../engine/cube/state.ts';
import { freezeGoal, goalHolds, readWhere } from '../../engine/goals/judge.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { METHODS, goalsFor } from '../../engine/goals/methods.ts';
import { familiarFills, fillGap } from '../../engine/search/gaps.ts';
import { turnsOf } from '../../engine/search/person/sequences.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { reachGoal } from '../../engine/search/reach.ts';
import { complete } from '../../engine/search/step.ts';
import { findStray } from '../../engine/search/strays.ts';

test('every stage of every method is reached from a random state, one after the other', () => {
  const random = makeRandom(31);
  for (const method of METHODS) {
    let state = { ...randomState(random), holding: random.below(24) };
    const kept: Goal[] = [];
    for (const goal of goalsFor(method, random.below(6))) {
      const result = complete(reachGoal(state, goal, kept, { budget: 100_000 }));
      if (result.kind !== 'found') throw new Error(`${method.name}, ${goal.name}: ${result.kind}`);
      state = applyTurns(state, result.turns);
      expect(goalHolds(goal, state), `${method.name}: ${goal.name}`).toBe(true);
      for (const other of kept) expect(goalHolds(other, state)).toBe(true);
      kept.push(freezeGoal(goal, readWhere(state)));
    }
  }
}, 30_000);

describe('an unknown stretch between two known states', () => {
  test("R U R' F2 between two states is found again, proven shortest", () => {
    const before = applyTurns(SOLVED, turnsOf("x2 F' D R2 U y L"));
    const after = applyTurns(before, turnsOf("R U R' F2"));
    const result = complete(fillGap(before, after));
    expect(result).toMatchObject({ kind: 'found', optimal: true });
    expect(result.kind === 'found' && result.turns.length).toBe(4);
  });

  test('if the holding changes, the rotation comes last', () => {
    const before = applyTurns(SOLVED, turnsOf("F' D R2"));
    const after = applyTurns(before, turnsOf("R y U'"));
    const result = complete(fillGap(before, after));
    if (result.kind !== 'found') throw new Error(result.kind);
    expect(sameState(applyTurns(before, result.turns), after)).toBe(true);
  });

  test('a long stretch is filled without the claim that it is shortest', () => {
    const random = makeRandom(5);
    const [before, after] = [randomState(random), randomState(random)];
    const result = complete(fillGap(before, after, { budget: 50_000 }));
    if (result.kind !== 'found') throw new Error(result.kind);
    expect(result.optimal).toBe(false);
    expect(sameState(applyTurns(before, result.turns), after)).toBe(true);
  });

  test('familiar turns that fit: the sequence for a line, held by y', () => {
    const before = applyTurns(SOLVED, turnsOf("R U2 R' D"));
    const after = applyTurns(before, turnsOf("y U F R U R' U' F'"));
    const fills = complete(familiarFills(before, after));
    expect(fills).toContainEqual(turnsOf("y U F R U R' U' F'"));
    for (const turns of fills) expect(sameState(applyTurns(before, turns), after)).toBe(true);
  });
});

describe("a learner's cube beside the solve", () => {
  const turns = turnsOf("F' D R2 D' U R U' R' y U' L' U L U R U' R' U' F' U F");
  const start = applyTurns(SOLVED, turnsOf("R2 U' F D2 L' B R' U2 F' D L2 U"));

  test('some turns behind: the place is named, however the cube is held', () => {
    const cube = applyTurns(start, [...turns.slice(0, 9), ...turnsOf('x y')]);
    const stray = complete(findStray(start, turns, cube, 14));
    // A rotation is turn 9, so the cube looks the same before and after it.
    expect(stray.places).toEqual([9, 8]);
  });

  test('R′ made instead of R: the slip is named, and the way back', () => {
    const made = [...turns.slice(0, 5), ...turnsOf("R'"), ...turns.slice(6, 12)];
    const cube = applyTurns(start, made);
    const stray = complete(findStray(start, turns, cube, 12));
    expect(stray.places).toEqual([]);
    expect(stray.slips[0]).toMatchObject({ place: 12, edit: { index: 5, kind: 'reversed' } });
    const there = applyTurns(cube, stray.back?.turns ?? []);
    expect(sameArrangement(there, applyTurns(start, turns.slice(0, 12)))).toBe(true);
  });
});
