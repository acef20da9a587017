/**
 * The words of the cube: faces, colours, slots. Every union type derives from one of these
 * constant arrays, and every index in the engine is a place in one of them.
 *
 * Faces come in the order of an unfolded net (U above F, then L F R B in a row, D below); colour
 * `i` is the colour of the centre at face `i` when white is up and green in front. A piece and the
 * slot it belongs to share their index.
 */

export const FACES = ['U', 'L', 'F', 'R', 'B', 'D'] as const;
export type Face = (typeof FACES)[number];

export const COLOURS = ['white', 'orange', 'green', 'red', 'blue', 'yellow'] as const;
export type Colour = (typeof COLOURS)[number];

export const COLOUR_INITIALS = ['w', 'o', 'g', 'r', 'b', 'y'] as const;

/** Index of the face (or colour) opposite to each: white–yellow, orange–red, green–blue. */
export const OPPOSITE: readonly number[] = [5, 3, 4, 1, 2, 0];

export const EDGES = [
  'UF',
  'UR',
  'UB',
  'UL',
  'DF',
  'DR',
  'DB',
  'DL',
  'FR',
  'FL',
  'BR',
  'BL',
] as const;
export type Edge = (typeof EDGES)[number];

export const CORNERS = ['UFR', 'UFL', 'UBL', 'UBR', 'DFR', 'DFL', 'DBL', 'DBR'] as const;
export type Corner = (typeof CORNERS)[number];

/** Face index of a letter; the letters of this project are always upper case here. */
export function faceIndex(letter: string): number {
  return FACES.indexOf(letter as Face);
}

export function colourIndex(name: string): number {
  return COLOURS.indexOf(name as Colour);
}

/** Outward normals of the faces: x to the right, y up, z to the front. */
export const NORMALS: readonly (readonly [number, number, number])[] = [
  [0, 1, 0],
  [-1, 0, 0],
  [0, 0, 1],
  [1, 0, 0],
  [0, 0, -1],
  [0, -1, 0],
];

/**
 * The facelets of each corner slot as face indices: the U or D facelet first, then clockwise as
 * seen from outside. The twist of a corner counts in this order.
 */
export const CORNER_FACELETS: readonly (readonly [number, number, number])[] = CORNERS.map(
  (name) => {
    const [first, second, third] = [...name].map(faceIndex) as [number, number, number];
    return isClockwise(first, second, third) ? [first, second, third] : [first, third, second];
  },
);

/** The facelets of each edge slot as face indices: U or D first, else F or B. */
export const EDGE_FACELETS: readonly (readonly [number, number])[] = EDGES.map(
  (name) => [...name].map(faceIndex) as [number, number],
);

/**
 * Whether three mutually adjacent faces follow each other clockwise around their corner, seen from
 * outside (the triple product of their normals is then negative in this right-handed frame).
 */
export function isClockwise(a: number, b: number, c: number): boolean {
  const [ax, ay, az] = NORMALS[a];
  const [bx, by, bz] = NORMALS[b];
  const [cx, cy, cz] = NORMALS[c];
  return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx) < 0;
}
