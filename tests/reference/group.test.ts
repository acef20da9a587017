/** Published counts of the group against enumeration with the engine's own turns. */
import { describe, expect, test } from 'vitest';
import { describeEffect, effectOrder } from '../../engine/cube/effect.ts';
import { isOdd } from '../../engine/cube/possible.ts';
import { SOLVED, applyTurn, applyTurns, sameState, type State } from '../../engine/cube/state.ts';
import { FACE_TURNS, amountOf, type Turn } from '../../engine/cube/turn.ts';
import { CORNERS, EDGES } from '../../engine/cube/vocabulary.ts';
import { after, turns } from '../support/turns.ts';
import { partitions } from '../support/numbers.ts';

/** How many states lie at each distance from the solved cube, up to `depth`. */
function distances(allowed: readonly Turn[], depth: number): number[] {
  const key = ({ corners, edges }: State): string =>
    String.fromCharCode(...Array.from(corners), ...Array.from(edges));
  const counts = [1];
  let before = new Set<string>();
  let layer = new Map([[key(SOLVED), SOLVED]]);
  for (let distance = 1; distance <= depth; distance++) {
    const next = new Map<string, State>();
    for (const state of layer.values()) {
      for (const turn of allowed) {
        const reached = applyTurn(state, turn);
        const name = key(reached);
        // One turn changes the distance by one at most, so two layers back are enough to know.
        if (!before.has(name) && !layer.has(name)) next.set(name, reached);
      }
    }
    counts.push(next.size);
    before = new Set(layer.keys());
    layer = next;
  }
  return counts;
}

const faceTurns = Array.from({ length: FACE_TURNS }, (_, turn) => turn);

describe('positions by distance', () => {
  // OEIS A080602; Rokicki, Kociemba, Davidson, Dethridge, SIAM J. Discrete Math. 27 (2013), recalled.
  test('by face turns: 1, 18, 243, 3240, 43239, 574908', () => {
    expect(distances(faceTurns, 5)).toEqual([1, 18, 243, 3240, 43239, 574908]);
  });

  // OEIS A080583. One turn changes the parity, so a layer is never reached from itself.
  test('by quarter turns: 1, 12, 114, 1068, 10011, 93840', () => {
    const quarters = faceTurns.filter((turn) => amountOf(turn) !== 2);
    expect(distances(quarters, 5)).toEqual([1, 12, 114, 1068, 10011, 93840]);
  });
});

describe('orders of sequences', () => {
  // Computed with GAP and SymPy; R U = 105 and the maximum 1260 are in Singmaster 1981, recalled.
  test.each([
    ['R U', 105],
    ["R U'", 63],
    ["R U R' U'", 6],
    ["R U R' U R U2 R'", 6],
    ["R U2 D' B D'", 1260],
    ['R2 U2', 6],
    ["F R U R' U' F'", 6],
    ['R U F', 80],
    ['R2 U', 30],
    ["M' U", 8],
    ['M2 U2', 4],
    ["M' U M U", 6],
    ['r U', 120],
    ["r U R' U'", 12],
    ['M E', 12],
    ['M E S', 4],
    ['R y', 1260],
    ["R' D' R D", 6],
    ["R U R' F'", 6],
  ])('%s: %i', (text, order) => {
    expect(effectOrder(after(text))).toBe(order);
    let state = SOLVED;
    for (let times = 1; times < order; times++) {
      state = applyTurns(state, turns(text));
      expect(sameState(state, SOLVED)).toBe(false);
    }
    expect(sameState(applyTurns(state, turns(text)), SOLVED)).toBe(true);
  });

  // OEIS A338883; Singmaster's Notes, 1981, recalled.
  test('elements have 73 different orders, the largest 1260', () => {
    const found = new Set<number>();
    for (const corners of partitions(CORNERS.length)) {
      for (const edges of partitions(EDGES.length)) {
        for (const effect of effectsWithCycles(corners, edges)) found.add(effectOrder(effect));
      }
    }
    expect(found.size).toBe(73);
    expect(Math.max(...found)).toBe(1260);
  });
});

/** Effects with these cycle lengths, one for each way in which cycles of each kind may return turned or not. */
function effectsWithCycles(corners: readonly number[], edges: readonly number[]): State[] {
  const cycle = (lengths: readonly number[]): number[] => {
    let start = 0;
    return lengths.flatMap((length) => {
      const first = start;
      start += length;
      return Array.from({ length }, (_, i) => first + ((i + 1) % length));
    });
  };
  const cornerPieces = cycle(corners);
  const edgePieces = cycle(edges);
  if (isOdd(cornerPieces) !== isOdd(edgePieces)) return [];
  const result: State[] = [];
  for (const twists of turnings(corners, 3)) {
    for (const flips of turnings(edges, 2)) {
      const place = (
        pieces: readonly number[],
        turned: readonly number[],
        size: number,
      ): Uint8Array => Uint8Array.from(pieces, (piece, slot) => piece * size + turned[slot]);
      result.push({
        corners: place(cornerPieces, twists, 3),
        edges: place(edgePieces, flips, 2),
        holding: 0,
      });
    }
  }
  return result;
}

/** All ways to turn the first piece of each cycle whose sum no turn forbids, as turnings by slot. */
function turnings(lengths: readonly number[], size: number): number[][] {
  const result: number[][] = [];
  const ways = size ** lengths.length;
  const seen = new Set<string>();
  for (let way = 0; way < ways; way++) {
    const turned = lengths.map((_, i) => Math.floor(way / size ** i) % size);
    if (turned.reduce((a, b) => a + b, 0) % size !== 0) continue;
    // Only which lengths return turned matters for the order.
    const name = lengths
      .map((length, i) => `${length}:${turned[i] > 0}`)
      .sort()
      .join();
    if (seen.has(name)) continue;
    seen.add(name);
    result.push(lengths.flatMap((length, i) => [turned[i], ...Array<number>(length - 1).fill(0)]));
  }
  return result;
}

describe('well-known sequences', () => {
  // Singmaster 1981, recalled.
  test("U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2 flips all twelve edges and nothing else", () => {
    const text = "U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2";
    const effect = describeEffect(after(text));
    expect(effect.flips).toEqual(EDGES);
    expect(effect).toMatchObject({ corners: [], edges: [], centres: [], twists: [], order: 2 });
    expect(turns(text)).toHaveLength(20);
    expect(turns(text).reduce((sum, turn) => sum + (amountOf(turn) === 2 ? 2 : 1), 0)).toBe(28);
  });

  // Computed.
  test("(R U R' U')3 leaves every edge alone and swaps two pairs of corners", () => {
    const effect = describeEffect(after("R U R' U' R U R' U' R U R' U'"));
    expect(effect).toMatchObject({ edges: [], flips: [], twists: [], centres: [] });
    expect(effect.corners.map(({ stickers }) => stickers.length)).toEqual([2, 2]);
  });
});
