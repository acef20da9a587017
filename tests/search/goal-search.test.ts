import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ALL_CORNERS, ALL_EDGES, piecesWith } from '../../engine/cube/piece.ts';
import { SOLVED, applyTurns } from '../../engine/cube/state.ts';
import { FACE_TURNS, familyOf, makeTurn } from '../../engine/cube/turn.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import {
  crossDistance,
  crossTable,
  shortestCross,
  shortestCrosses,
} from '../../engine/search/cross.ts';
import { searchGoal } from '../../engine/search/goal-search.ts';
import { freezeGoal, goalHolds, readWhere } from '../../engine/goals/judge.ts';
import { goalsFor, METHODS } from '../../engine/goals/methods.ts';
import { complete } from '../../engine/search/step.ts';

const turns = fc.array(fc.integer({ min: 0, max: FACE_TURNS - 1 }), { maxLength: 30 });
const anyTurns = fc.array(fc.integer({ min: 0, max: 53 }), { maxLength: 30 });

function placed(name: string, pieces: number, upTo?: number): Goal {
  return { name, conditions: [{ kind: 'placed', pieces }], upTo, parts: [] };
}

describe('the shortest cross', () => {
  const table = complete(crossTable());

  test('makes the cross of any colour, however the cube is held', () => {
    fc.assert(
      fc.property(anyTurns, fc.integer({ min: 0, max: 5 }), (scramble, base) => {
        const state = applyTurns(SOLVED, scramble);
        const solution = shortestCross(table, state, base);
        expect(solution.length).toBe(crossDistance(table, state, base));
        const goal = placed('cross', piecesWith(base) & ALL_EDGES);
        expect(goalHolds(goal, applyTurns(state, solution))).toBe(true);
      }),
    );
  });

  test('after F the white cross has the one shortest answer F′; after F2 B2 there are two', () => {
    const turn = (face: 'F' | 'B', amount: number): number => makeTurn(face, amount);
    expect(shortestCrosses(table, applyTurns(SOLVED, [turn('F', 1)]), 0, 9)).toEqual([
      [turn('F', 3)],
    ]);
    expect(
      shortestCrosses(table, applyTurns(SOLVED, [turn('F', 2), turn('B', 2)]), 0, 9),
    ).toHaveLength(2);
  });
});

describe('stage search', () => {
  test('own goals of a few pieces are reached with the fewest turns', () => {
    fc.assert(
      fc.property(turns, fc.integer({ min: 1, max: (1 << 20) - 1 }), (scramble, some) => {
        let few = 0;
        for (let bit = 0, count = 0; bit < 20 && count < 3; bit++) {
          if (some & (1 << bit)) {
            few |= 1 << bit;
            count++;
          }
        }
        const state = applyTurns(SOLVED, scramble);
        const goal = placed('own', few);
        const result = complete(searchGoal(state, goal));
        if (result.kind !== 'found') throw new Error(result.kind);
        expect(goalHolds(goal, applyTurns(state, result.turns))).toBe(true);
        expect(result.turns.length).toBeLessThanOrEqual(Math.max(0, scramble.length));
      }),
      { numRuns: 20 },
    );
  });

  test('a bound that is too low is reported as a proof that there is nothing', () => {
    const state = applyTurns(SOLVED, [makeTurn('R', 1), makeTurn('U', 1), makeTurn('R', 3)]);
    const slot = placed('slot', (piecesWith(5) & ALL_EDGES) | (1 << 16) | (1 << 8));
    expect(complete(searchGoal(state, slot, [], { maxTurns: 2 }))).toMatchObject({
      kind: 'exhausted',
      bound: 2,
    });
    expect(complete(searchGoal(state, slot))).toMatchObject({ kind: 'found', optimal: true });
  });

  test('a budget that ends is no proof beyond the lengths that were searched', () => {
    // U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2 flips all edges.
    const names = "U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2".split(' ');
    const state = applyTurns(
      SOLVED,
      names.map((name) =>
        makeTurn(name.charAt(0) as 'U', name.endsWith('2') ? 2 : name.endsWith("'") ? 3 : 1),
      ),
    );
    const result = complete(
      searchGoal(state, placed('solved', (1 << 20) - 1), [], { budget: 30_000 }),
    );
    expect(result.kind).toBe('out-of-budget');
    expect(result.kind === 'out-of-budget' && result.bound).toBeLessThan(20);
  });

  test('a layer that must not be turned is left alone, and the hands may be limited to two faces', () => {
    // R U R' U' undone by R and U only.
    const state = applyTurns(SOLVED, [
      makeTurn('R', 1),
      makeTurn('U', 1),
      makeTurn('R', 3),
      makeTurn('U', 3),
    ]);
    const result = complete(
      searchGoal(state, placed('solved', (1 << 20) - 1), [], { faces: [0, 3] }),
    );
    expect(result).toMatchObject({
      kind: 'found',
      turns: [makeTurn('U', 1), makeTurn('R', 1), makeTurn('U', 3), makeTurn('R', 3)],
    });
    fc.assert(
      fc.property(turns, (scramble) => {
        const goal = placed('cross', piecesWith(5) & ALL_EDGES);
        const start = applyTurns(SOLVED, scramble);
        const free = complete(searchGoal(start, goal));
        const bound = complete(searchGoal(start, goal, [], { withoutLayer: 5, maxTurns: 12 }));
        if (free.kind !== 'found' || bound.kind !== 'found') throw new Error(bound.kind);
        expect(bound.turns.every((turn) => familyOf(turn) !== 5)).toBe(true);
        expect(bound.turns.length).toBeGreaterThanOrEqual(free.turns.length);
      }),
      { numRuns: 20 },
    );
  });

  test('the top corners of F R U R′ U′ F′ held three times are oriented in a bounded number of turns', () => {
    // A base on yellow: everything but the white layer is kept, the white stickers shall face up.
    const top = piecesWith(0);
    const goal: Goal = {
      name: 'top face',
      conditions: [
        { kind: 'placed', pieces: ((1 << 20) - 1) & ~top },
        { kind: 'facing', pieces: top, colour: 0 },
      ],
      upTo: undefined,
      parts: [],
    };
    const names = "R U R' U R U2 R'".split(' ');
    const sequence = names.map((name) =>
      makeTurn(name.charAt(0) as 'U', name.endsWith('2') ? 2 : name.endsWith("'") ? 3 : 1),
    );
    const state = applyTurns(SOLVED, sequence);
    const result = complete(searchGoal(state, goal, [], { maxTurns: 9 }));
    if (result.kind !== 'found') throw new Error(result.kind);
    expect(result.turns.length).toBe(7);
    expect(goalHolds(goal, applyTurns(state, result.turns))).toBe(true);
  });

  test('a goal up to a turn of the top needs no last turn', () => {
    const state = applyTurns(SOLVED, [makeTurn('U', 1)]);
    const corners = piecesWith(0) & ALL_CORNERS;
    expect(complete(searchGoal(state, placed('top corners', corners, 0)))).toMatchObject({
      kind: 'found',
      turns: [],
    });
    expect(complete(searchGoal(state, placed('solved', corners)))).toMatchObject({
      kind: 'found',
      turns: [makeTurn('U', 3)],
    });
  });

  test('a cube with one corner twisted is refused before any search, with the reason', () => {
    const corners = Array.from(SOLVED.corners, (code, slot) => (slot === 0 ? code + 1 : code));
    const first = searchGoal({ ...SOLVED, corners }, placed('solved', (1 << 20) - 1)).next();
    expect(first).toMatchObject({
      done: true,
      value: { kind: 'impossible', problems: [{ kind: 'twisted-corner' }] },
    });
  });

  test('each step visits at most 10,000 nodes', () => {
    const names = "U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2".split(' ');
    const state = applyTurns(
      SOLVED,
      names.map((name) =>
        makeTurn(name.charAt(0) as 'U', name.endsWith('2') ? 2 : name.endsWith("'") ? 3 : 1),
      ),
    );
    let before = 0;
    for (const progress of searchGoal(state, placed('solved', (1 << 20) - 1), [], {
      budget: 200_000,
    })) {
      expect(progress.nodes - before).toBeLessThanOrEqual(10_000);
      before = progress.nodes;
    }
  });

  test('the right-handed preference changes the turns, never their number', () => {
    fc.assert(
      fc.property(turns, (scramble) => {
        const goal = placed('cross', piecesWith(5) & ALL_EDGES);
        const state = applyTurns(SOLVED, scramble);
        const plain = complete(searchGoal(state, goal));
        const handy = complete(searchGoal(state, goal, [], { rightHanded: true }));
        if (plain.kind !== 'found' || handy.kind !== 'found') throw new Error(handy.kind);
        expect(handy.turns.length).toBe(plain.turns.length);
        expect(goalHolds(goal, applyTurns(state, handy.turns))).toBe(true);
      }),
      { numRuns: 20 },
    );
  });

  test('of every method, each stage is reached from the stage before and keeps what was reached', () => {
    // From the state after the earlier stages; a last layer longer than 8 turns may run out of budget.
    for (const method of METHODS) {
      let state = applyTurns(SOLVED, [10, 2, 6, 16, 5, 12, 11, 1, 8, 15, 4, 0]);
      const kept: Goal[] = [];
      for (const goal of goalsFor(method, 5)) {
        const result = complete(searchGoal(state, goal, kept, { budget: 300_000 }));
        if (result.kind !== 'found') break;
        state = applyTurns(state, result.turns);
        expect(goalHolds(goal, state), `${method.name}: ${goal.name}`).toBe(true);
        for (const other of kept) expect(goalHolds(other, state)).toBe(true);
        kept.push(freezeGoal(goal, readWhere(state)));
      }
      expect(kept.length, method.name).toBeGreaterThanOrEqual(
        method.name.startsWith('CFOP') ? 5 : 1,
      );
    }
  });
});
