/**
 * A cube as 54 coloured stickers in space, moved by turning coordinates: slow, plain, and without a
 * line of the engine, so that it can bear witness against it.
 *
 * x points to the right, y up, z to the front. A sticker is its cubie's coordinates and the
 * direction it faces.
 */

type Vector = readonly [number, number, number];

interface Sticker {
  readonly cubie: Vector;
  readonly facing: Vector;
}

const RANGE = [-1, 0, 1];

/** All 54, in no order that the engine knows. */
export const STICKERS: readonly Sticker[] = RANGE.flatMap((x) =>
  RANGE.flatMap((y) =>
    RANGE.flatMap((z) => {
      const cubie: Vector = [x, y, z];
      return [0, 1, 2]
        .filter((axis) => cubie[axis] !== 0)
        .map((axis): Sticker => {
          const facing: [number, number, number] = [0, 0, 0];
          facing[axis] = cubie[axis];
          return { cubie, facing };
        });
    }),
  ),
);

/** Colours by sticker. */
export type Cube = readonly string[];

const SCHEME: Readonly<Record<string, string>> = {
  '0,1,0': 'white',
  '0,-1,0': 'yellow',
  '0,0,1': 'green',
  '0,0,-1': 'blue',
  '1,0,0': 'red',
  '-1,0,0': 'orange',
};

export const SOLVED_CUBE: Cube = STICKERS.map(({ facing }) => SCHEME[facing.join()]);

/** A quarter turn clockwise as seen from the right, from above, from the front. */
const QUARTERS: Readonly<Record<string, (v: Vector) => Vector>> = {
  x: ([x, y, z]) => [x, z, 0 - y],
  y: ([x, y, z]) => [0 - z, y, x],
  z: ([x, y, z]) => [y, 0 - x, z],
};

/** Axis, quarters that one stroke amounts to on that axis, and the layers that go along. */
const FAMILIES: Readonly<Record<string, readonly [string, number, readonly number[]]>> = {
  R: ['x', 1, [1]],
  L: ['x', 3, [-1]],
  U: ['y', 1, [1]],
  D: ['y', 3, [-1]],
  F: ['z', 1, [1]],
  B: ['z', 3, [-1]],
  Rw: ['x', 1, [0, 1]],
  Lw: ['x', 3, [-1, 0]],
  Uw: ['y', 1, [0, 1]],
  Dw: ['y', 3, [-1, 0]],
  Fw: ['z', 1, [0, 1]],
  Bw: ['z', 3, [-1, 0]],
  M: ['x', 3, [0]],
  E: ['y', 3, [0]],
  S: ['z', 1, [0]],
  x: ['x', 1, RANGE],
  y: ['y', 1, RANGE],
  z: ['z', 1, RANGE],
};

const AMOUNTS: Readonly<Record<string, number>> = { '': 1, '2': 2, "'": 3 };

function indexOf(cubie: Vector, facing: Vector): number {
  return STICKERS.findIndex(
    (s) => s.cubie.join() === cubie.join() && s.facing.join() === facing.join(),
  );
}

const motions = new Map<string, readonly number[]>();

/** Where each sticker goes. */
function motion(axis: string, quarters: number, layers: readonly number[]): readonly number[] {
  const key = `${axis}${String(quarters)}:${layers.join()}`;
  let result = motions.get(key);
  if (result === undefined) {
    const along = 'xyz'.indexOf(axis);
    result = STICKERS.map((sticker) => {
      if (!layers.includes(sticker.cubie[along])) return indexOf(sticker.cubie, sticker.facing);
      let { cubie, facing } = sticker;
      for (let i = 0; i < quarters; i++)
        [cubie, facing] = [QUARTERS[axis](cubie), QUARTERS[axis](facing)];
      return indexOf(cubie, facing);
    });
    motions.set(key, result);
  }
  return result;
}

function move(cube: Cube, goes: readonly number[]): Cube {
  const result = [...cube];
  goes.forEach((to, from) => {
    result[to] = cube[from];
  });
  return result;
}

/** `R`, `Uw2`, `M'`, `y`. */
export function turned(cube: Cube, turn: string): Cube {
  const amount = AMOUNTS[turn.replace(/^[A-Za-z]+/, '')];
  const [axis, strokes, layers] = FAMILIES[turn.replace(/[2']+$/, '')];
  return move(cube, motion(axis, (strokes * amount) % 4, layers));
}

export function replay(cube: Cube, turns: readonly string[]): Cube {
  return turns.reduce(turned, cube);
}

const CENTRES = STICKERS.flatMap(({ cubie, facing }, sticker) =>
  cubie.join() === facing.join() ? [sticker] : [],
);

/** The direction of the centre of this colour. */
function directionOf(cube: Cube, colour: string): Vector {
  const centre = CENTRES.find((sticker) => cube[sticker] === colour);
  if (centre === undefined) throw new Error(`no centre is ${colour}`);
  return STICKERS[centre].facing;
}

/** The layer (or, with layer 0, the slice) on the axis of a centre turned by quarters, clockwise as seen at that centre. */
export function layerTurned(cube: Cube, colour: string, quarters: number, slice = false): Cube {
  const direction = directionOf(cube, colour);
  const along = direction.findIndex((part) => part !== 0);
  const sense = direction[along];
  const amount = (((sense * quarters) % 4) + 4) % 4;
  return move(cube, motion('xyz'[along], amount, [slice ? 0 : sense]));
}

export interface PlacedSticker {
  readonly colour: string;
  /** Colour of the centre on the face where it lies. */
  readonly on: string;
}

/** For each cubie but the centres: its stickers, and for each of these the centre on the same face. */
const CUBIES: readonly (readonly { readonly sticker: number; readonly centre: number }[])[] =
  (() => {
    const result = new Map<string, { sticker: number; centre: number }[]>();
    STICKERS.forEach(({ cubie, facing }, sticker) => {
      const own = result.get(cubie.join()) ?? [];
      own.push({ sticker, centre: indexOf(facing, facing) });
      result.set(cubie.join(), own);
    });
    return [...result.values()].filter((own) => own.length > 1);
  })();

/** The pieces by name (colours in alphabetical order, `green-red`), each with its stickers. */
export function readPieces(cube: Cube): Map<string, PlacedSticker[]> {
  return new Map(
    CUBIES.map((own) => [
      nameOf(own.map(({ sticker }) => cube[sticker])),
      own.map(({ sticker, centre }) => ({ colour: cube[sticker], on: cube[centre] })),
    ]),
  );
}

export function nameOf(colours: readonly string[]): string {
  return [...colours].sort().join('-');
}

/** All piece names with so many stickers that bear the colours given. */
export function piecesBearing(stickers: 2 | 3, ...colours: string[]): string[] {
  return [...readPieces(SOLVED_CUBE).keys()].filter((name) => {
    const own = name.split('-');
    return own.length === stickers && colours.every((colour) => own.includes(colour));
  });
}
