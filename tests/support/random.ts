/** States and turn sequences at random for properties (fast-check) and from a fixed seed. */
import fc from 'fast-check';
import { type State } from '../../engine/cube/state.ts';
import { isOdd } from '../../engine/cube/possible.ts';
import { TURNS, type Turn } from '../../engine/cube/turn.ts';

export const anyTurns = (maxLength = 40): fc.Arbitrary<Turn[]> =>
  fc.array(fc.integer({ min: 0, max: TURNS - 1 }), { maxLength });

const shuffled = (size: number): fc.Arbitrary<number[]> =>
  fc.shuffledSubarray(
    Array.from({ length: size }, (_, i) => i),
    { minLength: size, maxLength: size },
  );

/** Any state that turns can reach, put together from pieces and not by turns. */
export const anyState: fc.Arbitrary<State> = fc
  .record({
    corners: shuffled(8),
    edges: shuffled(12),
    twists: fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 7, maxLength: 7 }),
    flips: fc.array(fc.integer({ min: 0, max: 1 }), { minLength: 11, maxLength: 11 }),
    holding: fc.integer({ min: 0, max: 23 }),
  })
  .map(({ corners, edges, twists, flips, holding }) => {
    if (isOdd(corners) !== isOdd(edges)) [edges[0], edges[1]] = [edges[1], edges[0]];
    const sum = (values: number[]): number => values.reduce((a, b) => a + b, 0);
    const allTwists = [...twists, (21 - sum(twists)) % 3];
    const allFlips = [...flips, sum(flips) % 2];
    return {
      corners: Uint8Array.from(corners, (piece, slot) => piece * 3 + allTwists[slot]),
      edges: Uint8Array.from(edges, (piece, slot) => piece * 2 + allFlips[slot]),
      holding,
    };
  });

/** A reproducible stream of whole numbers from 0 to below `limit` (mulberry32). */
export function seeded(seed: number): (limit: number) => number {
  let state = seed >>> 0;
  return (limit) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * limit);
  };
}
