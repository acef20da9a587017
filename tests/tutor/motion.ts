/** Where stickers go: the motion of a sequence, read off a cube whose stickers carry numbers. */
import { STICKERS, replay, type Cube } from '../naive/stickers.ts';
import { slotOf } from './hands.ts';

const LETTER: Readonly<Record<string, string>> = {
  '0,1,0': 'U',
  '0,-1,0': 'D',
  '0,0,1': 'F',
  '0,0,-1': 'B',
  '1,0,0': 'R',
  '-1,0,0': 'L',
};
/** Of each sticker: the face it lies on, and the slot (or centre) of its cubie. */
export const FACE = STICKERS.map(({ facing }) => LETTER[facing.join()]);
export const SLOT = STICKERS.map(({ cubie }) =>
  slotOf(
    cubie.flatMap((part, axis) => {
      if (part === 0) return [];
      const direction = [0, 0, 0];
      direction[axis] = part;
      return [LETTER[direction.join()]];
    }),
  ),
);

/** `result[i]`: where the sticker at `i` goes. The naive cube holds any strings, so each sticker can carry its number. */
export function targets(turns: readonly string[]): number[] {
  const numbered = STICKERS.map((_, i) => String(i)) as unknown as Cube;
  const result: number[] = [];
  replay(numbered, turns).forEach((from, to) => {
    result[Number(from)] = to;
  });
  return result;
}

export function orderOf(turns: readonly string[]): number {
  const goes = targets(turns);
  const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
  let order = 1;
  for (let i = 0; i < goes.length; i++) {
    let length = 1;
    for (let at = goes[i]; at !== i; at = goes[at]) length++;
    order = (order * length) / gcd(order, length);
  }
  return order;
}
