/** All ways to write `total` as a sum of positive whole numbers, the greatest first in each. */
export function partitions(total: number, greatest = total): number[][] {
  if (total === 0) return [[]];
  const result: number[][] = [];
  for (let first = Math.min(total, greatest); first >= 1; first--) {
    for (const rest of partitions(total - first, first)) result.push([first, ...rest]);
  }
  return result;
}

/** All orders of some things. */
export function permutations<T>(things: readonly T[]): T[][] {
  if (things.length === 0) return [[]];
  return things.flatMap((first, i) =>
    permutations([...things.slice(0, i), ...things.slice(i + 1)]).map((rest) => [first, ...rest]),
  );
}

/** All lists of `length` digits from 0 to below `base`. */
export function digits(length: number, base: number): number[][] {
  return Array.from({ length: base ** length }, (_, number) =>
    Array.from({ length }, (_, i) => Math.floor(number / base ** i) % base),
  );
}
