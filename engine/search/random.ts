/**
 * Seeded random numbers: xoshiro128** 1.1 by D. Blackman and S. Vigna (2018, public domain,
 * https://prng.di.unimi.it/xoshiro128starstar.c), its state filled from the seed by SplitMix32
 * steps. Repeatable on any machine; not for secrets.
 */
export interface Random {
  /** 32 random bits, 0…2³² − 1. */
  bits(): number;
  /** 0…n − 1, each equally likely; n from 1 to 2³². */
  below(n: number): number;
}

export function makeRandom(seed: number): Random {
  let mixed = Math.trunc(seed) >>> 0;
  // Seeds beyond 32 bits count as well.
  const high = Math.floor(Math.abs(Math.trunc(seed)) / 2 ** 32) >>> 0;
  const next = (): number => {
    mixed = (mixed + 0x9e3779b9) | 0;
    let z = mixed ^ high;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return (z ^ (z >>> 15)) >>> 0;
  };
  return fromWords([next(), next(), next(), next()]);
}

/** The generator with this state of four 32-bit words, not all 0. */
export function fromWords(words: readonly [number, number, number, number]): Random {
  let [a, b, c, d] = words;
  const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));
  const bits = (): number => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
  const below = (n: number): number => {
    // Numbers beyond the last full multiple of n are drawn again, else small results came more often.
    const limit = 2 ** 32 - (2 ** 32 % n);
    let drawn = bits();
    while (drawn >= limit) drawn = bits();
    return drawn % n;
  };
  return { bits, below };
}

/** Puts the items in a random order, each equally likely (Fisher and Yates), in the array given. */
export function shuffle<Item>(items: Item[], random: Random): Item[] {
  for (let last = items.length - 1; last > 0; last--) {
    const other = random.below(last + 1);
    [items[last], items[other]] = [items[other], items[last]];
  }
  return items;
}
