/**
 * The 54 facelets of a cube as it is held: `face * 9 + row * 3 + column`, faces in the order
 * U L F R B D, each row by row as it lies in an unfolded net (U above F, D below F, L F R B in a row).
 */
import { CENTRE_AT, FACE_OF } from './holding.ts';
import { FIRST_CORNER, PIECES, faceletsOf } from './piece.ts';
import type { State } from './state.ts';
import {
  COLOUR_INITIALS,
  CORNER_FACELETS,
  EDGE_FACELETS,
  type FACES,
  NORMALS,
} from './vocabulary.ts';

export const FACELETS = 54;

/** Directions in which rows and columns of each face run in the net: [to the right, downwards]. */
export const NET_AXES: readonly (readonly [
  readonly [number, number, number],
  readonly [number, number, number],
])[] = [
  [
    [1, 0, 0],
    [0, 0, 1],
  ],
  [
    [0, 0, 1],
    [0, -1, 0],
  ],
  [
    [1, 0, 0],
    [0, -1, 0],
  ],
  [
    [0, 0, -1],
    [0, -1, 0],
  ],
  [
    [-1, 0, 0],
    [0, -1, 0],
  ],
  [
    [1, 0, 0],
    [0, 0, -1],
  ],
];

/** The facelet of slot `slot` (as numbered in `piece.ts`, in the hands) that lies on `face`. */
export function faceletIndex(slot: number, face: number): number {
  return faceletAt(faceletsOf(slot), face);
}

/** The facelet on `face` of the slot that lies between `faces`. */
function faceletAt(faces: readonly number[], face: number): number {
  const [right, down] = NET_AXES[face];
  let column = 1;
  let row = 1;
  for (const other of faces) {
    column += dot(NORMALS[other], right);
    row += dot(NORMALS[other], down);
  }
  return face * 9 + row * 3 + column;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** For each facelet: the slot it belongs to (-1 for a centre) and its place in that slot's order of facelets. */
export const FACELET_SLOTS: readonly { readonly slot: number; readonly index: number }[] = (() => {
  const result = Array.from({ length: FACELETS }, () => ({ slot: -1, index: 0 }));
  for (let slot = 0; slot < PIECES; slot++) {
    faceletsOf(slot).forEach((face, index) => {
      result[faceletIndex(slot, face)] = { slot, index };
    });
  }
  return result;
})();

/** The colours (indices of `COLOURS`) of the 54 facelets as seen in the hands. */
export function colourFacelets(state: State): Uint8Array {
  const result = new Uint8Array(FACELETS);
  for (let face = 0; face < 6; face++) result[face * 9 + 4] = CENTRE_AT[state.holding][face];
  const faceOf = FACE_OF[state.holding];
  for (let slot = 0; slot < PIECES; slot++) {
    const corner = slot >= FIRST_CORNER;
    const code = corner ? state.corners[slot - FIRST_CORNER] : state.edges[slot];
    const own = corner ? CORNER_FACELETS[(code / 3) | 0] : EDGE_FACELETS[code >> 1];
    const turned = corner ? code % 3 : code & 1;
    const place = faceletsOf(slot);
    const inHands = place.map((face) => faceOf[face]);
    own.forEach((colour, index) => {
      const face = inHands[(index + turned) % own.length];
      result[faceletAt(inHands, face)] = colour;
    });
  }
  return result;
}

/** `{U: 'wwwwwwwww', L: …}`: each face row by row as in the net, by colour initials w y g b r o. */
export type Faces = Readonly<Record<(typeof FACES)[number], string>>;

export function makeFaces(state: State): Faces {
  const colours = colourFacelets(state);
  const entry = (face: number): string =>
    Array.from(colours.subarray(face * 9, face * 9 + 9), (colour) => COLOUR_INITIALS[colour]).join(
      '',
    );
  return { U: entry(0), L: entry(1), F: entry(2), R: entry(3), B: entry(4), D: entry(5) };
}

/**
 * Where the sticker on each facelet in the hands comes from when `effect` is done to a cube held in
 * the reference holding: `result[facelet] = source facelet`, centres included.
 */
export function faceletMotion(effect: State): Uint8Array {
  const result = new Uint8Array(FACELETS);
  const faceOf = FACE_OF[effect.holding];
  for (let face = 0; face < 6; face++)
    result[face * 9 + 4] = CENTRE_AT[effect.holding][face] * 9 + 4;
  for (let slot = 0; slot < PIECES; slot++) {
    const corner = slot >= FIRST_CORNER;
    const code = corner ? effect.corners[slot - FIRST_CORNER] : effect.edges[slot];
    const size = corner ? 3 : 2;
    const source = ((code / size) | 0) + (corner ? FIRST_CORNER : 0);
    const turned = code % size;
    const inHands = faceletsOf(slot).map((face) => faceOf[face]);
    faceletsOf(source).forEach((face, index) => {
      const target = inHands[(index + turned) % size];
      result[faceletAt(inHands, target)] = faceletIndex(source, face);
    });
  }
  return result;
}
