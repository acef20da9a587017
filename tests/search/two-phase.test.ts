import { describe, expect, test } from 'vitest';
import { SOLVED, applyTurns, isSolved } from '../../engine/cube/state.ts';
import { makeTurn } from '../../engine/cube/turn.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { complete, runWhile } from '../../engine/search/step.ts';
import { solveCube } from '../../engine/search/two-phase.ts';
import { tableBytes, twoPhaseTables } from '../../engine/search/two-phase-tables.ts';

describe('the whole cube', () => {
  test('uniformly random states are all solved, in any holding', () => {
    const random = makeRandom(17);
    for (let i = 0; i < 100; i++) {
      const state = { ...randomState(random), holding: random.below(24) };
      const result = complete(solveCube(state));
      if (result.kind !== 'found') throw new Error(result.kind);
      expect(isSolved(applyTurns(state, result.turns))).toBe(true);
      expect(result.turns.length).toBeLessThanOrEqual(24);
    }
  });

  test('more nodes never make an answer longer', () => {
    const random = makeRandom(18);
    for (let i = 0; i < 5; i++) {
      const state = randomState(random);
      const lengths = [0, 100_000, 1_000_000].map((budget) => {
        const result = complete(solveCube(state, { budget }));
        if (result.kind !== 'found') throw new Error(result.kind);
        expect(isSolved(applyTurns(state, result.turns))).toBe(true);
        return result.turns.length;
      });
      expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    }
  });

  test('a few turns are undone by as few, and that is proven', () => {
    // R U R′ U′ R′ F R2, seven turns that no shorter sequence equals.
    const [r, u, f] = ['R', 'U', 'F'] as const;
    const turns = [
      makeTurn(r, 1),
      makeTurn(u, 1),
      makeTurn(r, 3),
      makeTurn(u, 3),
      makeTurn(r, 3),
      makeTurn(f, 1),
      makeTurn(r, 2),
    ];
    const result = complete(solveCube(applyTurns(SOLVED, turns), { budget: 10_000_000 }));
    expect(result).toMatchObject({ kind: 'found', optimal: true });
    expect(result.kind === 'found' && result.turns).toHaveLength(7);
    expect(complete(solveCube(SOLVED))).toMatchObject({ kind: 'found', turns: [], optimal: true });
  });

  test('a twisted corner, a flipped edge, two swapped pieces: refused with the reason before any search', () => {
    const edges = Array.from(SOLVED.edges);
    const corners = Array.from(SOLVED.corners);
    const reasonFor = (state: typeof SOLVED): string[] => {
      const result = solveCube(state).next();
      if (!result.done || result.value.kind !== 'impossible') throw new Error('searched');
      return result.value.problems.map(({ kind }) => kind);
    };
    expect(
      reasonFor({
        ...SOLVED,
        corners: corners.map((code, slot) => (slot === 0 ? code + 1 : code)),
      }),
    ).toEqual(['twisted-corner']);
    expect(
      reasonFor({ ...SOLVED, edges: edges.map((code, slot) => (slot === 0 ? code ^ 1 : code)) }),
    ).toEqual(['flipped-edge']);
    expect(reasonFor({ ...SOLVED, edges: [edges[1], edges[0], ...edges.slice(2)] })).toEqual([
      'swapped-pieces',
    ]);
  });

  test('stopping takes the best so far, and each step visits at most 10,000 nodes', () => {
    const state = randomState(makeRandom(19));
    let steps = 0;
    let before = 0;
    const result = runWhile(solveCube(state, { budget: Infinity }), (progress) => {
      expect(progress.nodes - before).toBeLessThanOrEqual(10_000);
      before = progress.nodes;
      return ++steps < 40;
    });
    if (result.kind !== 'found') throw new Error(result.kind);
    expect(isSolved(applyTurns(state, result.turns))).toBe(true);
  });

  test('the tables stay below 20 MB, and the coordinates are all reached', () => {
    const tables = complete(twoPhaseTables());
    expect(tableBytes(tables)).toBeLessThan(20_000_000);
    for (const distances of [
      tables.twistMiddle,
      tables.flipMiddle,
      tables.twistFlip,
      tables.cornersMiddle,
      tables.edgesMiddle,
    ]) {
      expect(distances.includes(255)).toBe(false);
      expect(distances.filter((distance) => distance === 0)).toHaveLength(1);
    }
  });
});
