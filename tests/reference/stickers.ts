/**
 * The cube as permutations of 54 stickers, from geometry alone: nothing here comes from the engine,
 * so that a fault of the engine cannot hide itself.
 *
 * A sticker is the middle of a little square in space: on the face with normal `n`, at the cubie
 * `c` (each coordinate −1, 0, 1), x to the right, y up, z to the front. Stickers are numbered in
 * the order of their names for people: faces U L F R B D, rows and columns as in an unfolded net.
 */

type Vector = readonly [number, number, number];

interface Sticker {
  readonly normal: Vector;
  readonly cubie: Vector;
}

export const STICKERS = 54;

/** For each face its normal and the cubie of its first square, with steps to the next column and row. */
const FACE_FRAMES: readonly {
  readonly normal: Vector;
  readonly corner: Vector;
  readonly column: Vector;
  readonly row: Vector;
}[] = [
  // U: its upper row lies at the back.
  { normal: [0, 1, 0], corner: [-1, 1, -1], column: [1, 0, 0], row: [0, 0, 1] },
  // L: to the left of F in the net, so its left column lies at the back.
  { normal: [-1, 0, 0], corner: [-1, 1, -1], column: [0, 0, 1], row: [0, -1, 0] },
  { normal: [0, 0, 1], corner: [-1, 1, 1], column: [1, 0, 0], row: [0, -1, 0] },
  { normal: [1, 0, 0], corner: [1, 1, 1], column: [0, 0, -1], row: [0, -1, 0] },
  { normal: [0, 0, -1], corner: [1, 1, -1], column: [-1, 0, 0], row: [0, -1, 0] },
  // D: below F, so its upper row lies at the front.
  { normal: [0, -1, 0], corner: [-1, -1, 1], column: [1, 0, 0], row: [0, 0, -1] },
];

const along = (start: Vector, steps: number, step: Vector): Vector =>
  start.map((value, i) => value + steps * step[i]) as unknown as Vector;

const ALL: readonly Sticker[] = FACE_FRAMES.flatMap(({ normal, corner, column, row }) =>
  Array.from({ length: 9 }, (_, i) => ({
    normal,
    cubie: along(along(corner, i % 3, column), Math.floor(i / 3), row),
  })),
);

const key = ({ normal, cubie }: Sticker): string => [...normal, ...cubie].join(' ');
const NUMBER_OF: ReadonlyMap<string, number> = new Map(ALL.map((sticker, i) => [key(sticker), i]));

/** Quarter turns, clockwise as seen from the positive end of an axis (x: from the right). */
const QUARTER: readonly ((vector: Vector) => Vector)[] = [
  ([x, y, z]) => [x, z, -y],
  ([x, y, z]) => [-z, y, x],
  ([x, y, z]) => [y, -x, z],
];

/** Axis, layers that turn, and quarters (clockwise seen from the positive end) of each family. */
const FAMILIES: Readonly<
  Record<string, readonly [axis: number, layers: readonly number[], quarters: number]>
> = {
  R: [0, [1], 1],
  L: [0, [-1], 3],
  U: [1, [1], 1],
  D: [1, [-1], 3],
  F: [2, [1], 1],
  B: [2, [-1], 3],
  Rw: [0, [1, 0], 1],
  Lw: [0, [-1, 0], 3],
  Uw: [1, [1, 0], 1],
  Dw: [1, [-1, 0], 3],
  Fw: [2, [1, 0], 1],
  Bw: [2, [-1, 0], 3],
  // Slices: M as L, E as D, S as F.
  M: [0, [0], 3],
  E: [1, [0], 3],
  S: [2, [0], 1],
  x: [0, [-1, 0, 1], 1],
  y: [1, [-1, 0, 1], 1],
  z: [2, [-1, 0, 1], 1],
};

export const FAMILY_NAMES: readonly string[] = Object.keys(FAMILIES);

/** `result[i]`: where the sticker at place `i` goes by a quarter turn of the family. */
export function quarterTurn(family: string): number[] {
  const [axis, layers, quarters] = FAMILIES[family];
  return ALL.map((sticker, number) => {
    if (!layers.includes(sticker.cubie[axis])) return number;
    let { normal, cubie } = sticker;
    for (let i = 0; i < quarters; i++) {
      normal = QUARTER[axis](normal);
      cubie = QUARTER[axis](cubie);
    }
    // −0 and 0 print alike.
    const target = NUMBER_OF.get(key({ normal, cubie }));
    if (target === undefined) throw new Error(`${family} takes sticker ${number} nowhere`);
    return target;
  });
}

/** First `a`, then `b`. */
export function product(a: readonly number[], b: readonly number[]): number[] {
  return a.map((place) => b[place]);
}
