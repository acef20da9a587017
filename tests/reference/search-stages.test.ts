import { expect, test } from 'vitest';
import { ALL_EDGES, setOf } from '../../engine/cube/piece.ts';
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import { makeTurn } from '../../engine/cube/turn.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { crossTable } from '../../engine/search/cross.ts';
import { buildDistances, countDistances } from '../../engine/search/distances.ts';
import { searchGoal } from '../../engine/search/goal-search.ts';
import { EDGE_MOVES, homeOf, movePlace, placesOf } from '../../engine/search/places.ts';
import { complete } from '../../engine/search/step.ts';

const CROSS = [0, 1, 2, 3];
const home = CROSS.map((piece) => 1 << homeOf(piece));

test('190,080 crosses: 1, 15, 158, … 102 by face turns (a widely known table, recalled)', () => {
  const counts = countDistances(complete(crossTable()));
  expect(counts).toEqual([1, 15, 158, 1394, 9809, 46381, 97254, 34966, 102]);
  const states = counts.reduce((sum, count) => sum + count, 0);
  expect(states).toBe(190_080);
  const mean = counts.reduce((sum, count, distance) => sum + count * distance, 0) / states;
  expect(mean).toBeCloseTo(5.812058, 6);
});

test('the cross up to a turn of its layer: 4, 48, 440, … 16 (computed)', () => {
  const accepted = [0, 1, 2, 3].map((amount) =>
    CROSS.map(
      (piece) => 1 << (amount === 0 ? homeOf(piece) : movePlace(piece, homeOf(piece), amount - 1)),
    ),
  );
  expect(countDistances(complete(buildDistances(CROSS, accepted)))).toEqual([
    4, 48, 440, 3576, 21492, 74660, 81780, 8064, 16,
  ]);
});

test('crosses by quarter turns: 1, 10, 73, … 207 (computed)', () => {
  // A search of its own over sets of places, so that the metric is the only difference.
  const quarters = [0, 1, 2, 3, 4, 5].flatMap((face) => [face * 3, face * 3 + 2]);
  const seen = new Set<number>();
  const pack = (places: readonly number[]): number =>
    places.reduce((code, place) => code * 24 + place, 0);
  let frontier = [CROSS.map(homeOf)];
  seen.add(pack(frontier[0]));
  const counts: number[] = [];
  while (frontier.length > 0) {
    counts.push(frontier.length);
    const next: number[][] = [];
    for (const places of frontier) {
      for (const turn of quarters) {
        const moved = places.map((place) => EDGE_MOVES[place * 18 + turn]);
        const code = pack(moved);
        if (seen.has(code)) continue;
        seen.add(code);
        next.push(moved);
      }
    }
    frontier = next;
  }
  expect(counts).toEqual([1, 10, 73, 500, 3078, 15528, 57180, 91654, 21849, 207]);
});

test('one slot, the other three kept: 150 states, 1, 0, 0, 6, 10, 4, 27, 67, 32, 3 (computed)', () => {
  const slots = [...CROSS, 12, 13, 14, 15, 8, 9, 10, 11];
  const goal: Goal = {
    name: '4th pair',
    conditions: [{ kind: 'placed', pieces: setOf(slots) }],
    upTo: undefined,
    parts: [],
  };
  // All arrangements that leave the cross and three slots alone, made by inserts and turns of the last layer.
  const [r, ri] = [makeTurn('R', 1), makeTurn('R', 3)];
  const [f, fi] = [makeTurn('F', 1), makeTurn('F', 3)];
  const [d, di] = [makeTurn('D', 1), makeTurn('D', 3)];
  const makers = [[d], [ri, d, r], [ri, di, r], [f, d, fi], [f, di, fi]];
  const key = (state: State): string => {
    const places = placesOf(state);
    return `${String(places[12])} ${String(places[8])}`;
  };
  const states = new Map([[key(SOLVED), SOLVED]]);
  for (const state of states.values()) {
    for (const maker of makers) {
      const next = applyTurns(state, maker);
      if (!states.has(key(next))) states.set(key(next), next);
    }
  }
  expect(states.size).toBe(150);
  const counts = new Array<number>(10).fill(0);
  for (const state of states.values()) {
    const result = complete(searchGoal(state, goal));
    if (result.kind !== 'found') throw new Error(result.kind);
    expect(result.optimal).toBe(true);
    counts[result.turns.length]++;
    const after = placesOf(applyTurns(state, result.turns));
    for (const piece of slots) expect(after[piece]).toBe(homeOf(piece));
  }
  expect(counts).toEqual([1, 0, 0, 6, 10, 4, 27, 67, 32, 3]);
});

test('edges oriented: 2,048 patterns, 1, 2, 25, 202, 620, 900, 285, 13, if F and B quarter turns flip (computed)', () => {
  // Flips by slot, read off how a turn moves the places of all edges.
  const seen = new Set([0]);
  let frontier = [0];
  const counts: number[] = [];
  const edges = Array.from({ length: 12 }, (_, slot) => slot);
  expect(setOf(edges)).toBe(ALL_EDGES);
  while (frontier.length > 0) {
    counts.push(frontier.length);
    const next: number[] = [];
    for (const flips of frontier) {
      for (let turn = 0; turn < 18; turn++) {
        let moved = 0;
        for (const slot of edges) {
          const place = EDGE_MOVES[(slot * 2 + ((flips >> slot) & 1)) * 18 + turn];
          moved |= (place & 1) << (place >> 1);
        }
        if (seen.has(moved)) continue;
        seen.add(moved);
        next.push(moved);
      }
    }
    frontier = next;
  }
  expect(counts).toEqual([1, 2, 25, 202, 620, 900, 285, 13]);
});

test('a cross needs no search of its own: the stage search finds the same length', () => {
  const goal: Goal = {
    name: 'cross',
    conditions: [{ kind: 'placed', pieces: setOf(CROSS) }],
    upTo: undefined,
    parts: [],
  };
  const table = complete(crossTable());
  // R2 U' F D2 L' B R' U2 F' D L2 U, as in a header of a solve.
  const scramble = [10, 2, 6, 16, 5, 12, 11, 1, 8, 15, 4, 0];
  const state = applyTurns(SOLVED, scramble);
  const places = placesOf(state);
  const known = table.distances[(places[0] * 24 + places[1]) * 576 + places[2] * 24 + places[3]];
  const result = complete(searchGoal(state, goal));
  expect(result).toMatchObject({ kind: 'found', optimal: true });
  expect(result.kind === 'found' && result.turns.length).toBe(known);
  expect(home.length).toBe(4);
});
