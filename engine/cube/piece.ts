/**
 * Pieces and slots: names, sets, where a piece is.
 *
 * A piece (and the slot it belongs to) is one number: edges 0…11 in the order of `EDGES`, corners
 * 12…19 in the order of `CORNERS`. A set of pieces is a bit mask over these numbers.
 */
import { CENTRE_AT, FACE_OF, type Holding } from './holding.ts';
import type { State } from './state.ts';
import {
  COLOURS,
  CORNER_FACELETS,
  EDGE_FACELETS,
  FACES,
  NORMALS,
  OPPOSITE,
  isClockwise,
  type Colour,
} from './vocabulary.ts';

export type Piece = number;
export type PieceSet = number;

export const PIECES = 20;
export const FIRST_CORNER = 12;
export const ALL_PIECES: PieceSet = (1 << PIECES) - 1;
export const ALL_EDGES: PieceSet = (1 << FIRST_CORNER) - 1;
export const ALL_CORNERS: PieceSet = ALL_PIECES & ~ALL_EDGES;

export function isCorner(piece: Piece): boolean {
  return piece >= FIRST_CORNER;
}

/** Faces of the piece's home slot (equally its colours), in the engine's order of facelets. */
export function faceletsOf(piece: Piece): readonly number[] {
  return isCorner(piece) ? CORNER_FACELETS[piece - FIRST_CORNER] : EDGE_FACELETS[piece];
}

/** The piece with these colours (or slot with these faces) in any order; undefined if there is none. */
export function pieceOf(colours: readonly number[]): Piece | undefined {
  if (new Set(colours).size !== colours.length) return undefined;
  for (let piece = 0; piece < PIECES; piece++) {
    const own = faceletsOf(piece);
    if (own.length === colours.length && own.every((colour) => colours.includes(colour)))
      return piece;
  }
  return undefined;
}

export function piecesIn(set: PieceSet): Piece[] {
  const result: Piece[] = [];
  for (let piece = 0; piece < PIECES; piece++) if (set & (1 << piece)) result.push(piece);
  return result;
}

export function setOf(pieces: Iterable<Piece>): PieceSet {
  let set = 0;
  for (const piece of pieces) set |= 1 << piece;
  return set;
}

/** The pieces of one layer: those that bear the colour. */
export function piecesWith(colour: number): PieceSet {
  let set = 0;
  for (let piece = 0; piece < PIECES; piece++)
    if (faceletsOf(piece).includes(colour)) set |= 1 << piece;
  return set;
}

/**
 * The colours of a piece in the order in which people say them: the base's or the top's colour
 * first, then as they lie from left to right when the base is down and one looks at its home slot.
 */
export function spokenColours(piece: Piece, base: number): Colour[] {
  const colours = [...faceletsOf(piece)];
  const first = colours.find((colour) => colour === base || colour === OPPOSITE[base]);
  const rest = colours.filter((colour) => colour !== first);
  if (rest.length === 2) {
    // Seen from outside with the base down, left to right is: base, left, right clockwise.
    if (!isClockwise(base, rest[0], rest[1])) rest.reverse();
  }
  return (first === undefined ? rest : [first, ...rest]).map((colour) => COLOURS[colour]);
}

/** `white-red`, `white-green-orange`: the name of a piece by its colours; `base` is a colour index (white by default). */
export function pieceName(piece: Piece, base = 0): string {
  return spokenColours(piece, base).join('-');
}

/** `white-red edge`, `white-green-orange corner`. */
export function pieceTitle(piece: Piece, base = 0): string {
  return `${pieceName(piece, base)} ${isCorner(piece) ? 'corner' : 'edge'}`;
}

/** The name of a slot of the body as it lies in the hands: `DF`, `DFR` (U/D, then F/B, then L/R). */
export function slotName(slot: Piece, holding: Holding): string {
  const rank = [0, 2, 1, 2, 1, 0];
  return faceletsOf(slot)
    .map((colour) => FACE_OF[holding][colour])
    .sort((a, b) => rank[a] - rank[b])
    .map((face) => FACES[face])
    .join('');
}

/** The slot of the body that lies at these faces in the hands; undefined if the faces share none. */
export function slotAt(faces: readonly number[], holding: Holding): Piece | undefined {
  return pieceOf(faces.map((face) => CENTRE_AT[holding][face]));
}

export interface Whereabouts {
  /** Slot of the body, numbered as the piece that belongs there. */
  readonly slot: Piece;
  /** Twist (0…2) or flip (0…1) as the engine counts it; 0 in the piece's own slot means turned right. */
  readonly turned: number;
}

export function whereIs(state: State, piece: Piece): Whereabouts {
  if (isCorner(piece)) {
    const wanted = piece - FIRST_CORNER;
    for (let slot = 0; slot < 8; slot++) {
      const found = state.corners[slot];
      if (((found / 3) | 0) === wanted) return { slot: slot + FIRST_CORNER, turned: found % 3 };
    }
  } else {
    for (let slot = 0; slot < 12; slot++) {
      const found = state.edges[slot];
      if (found >> 1 === piece) return { slot, turned: found & 1 };
    }
  }
  throw new Error(`a state without piece ${String(piece)}`);
}

/** The piece in a slot of the body. */
export function pieceAt(state: State, slot: Piece): Piece {
  return isCorner(slot)
    ? ((state.corners[slot - FIRST_CORNER] / 3) | 0) + FIRST_CORNER
    : state.edges[slot] >> 1;
}

/** The centre's face (of the body) on which the piece shows `colour`. */
export function faceShowing(state: State, piece: Piece, colour: number): number {
  const { slot, turned } = whereIs(state, piece);
  const own = faceletsOf(piece);
  const place = faceletsOf(slot);
  return place[(own.indexOf(colour) + turned) % own.length];
}

/** The pieces that are in their own slot and turned right. */
export function placedSet(state: State): PieceSet {
  let set = 0;
  for (let slot = 0; slot < 12; slot++) if (state.edges[slot] === slot * 2) set |= 1 << slot;
  for (let slot = 0; slot < 8; slot++)
    if (state.corners[slot] === slot * 3) set |= 1 << (slot + FIRST_CORNER);
  return set;
}

/** Direction from the middle of the cube to a slot, each part −1, 0 or 1. */
export function directionOf(slot: Piece): [number, number, number] {
  return faceletsOf(slot).reduce<[number, number, number]>(
    (sum, face) => [
      sum[0] + NORMALS[face][0],
      sum[1] + NORMALS[face][1],
      sum[2] + NORMALS[face][2],
    ],
    [0, 0, 0],
  );
}
