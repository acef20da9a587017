/**
 * Places: where one piece is and how it is turned, as one number 0…23 (edges `slot * 2 + flip`,
 * corners `slot * 3 + twist`). Following a few pieces through a turn is a look-up for each, which
 * is what every search does; only the pieces of a goal need to be followed.
 *
 * Turns here are the 18 face turns of the body, `face * 3 + amount - 1`, whatever the holding.
 */
import { FACE_OF, type Holding } from '../cube/holding.ts';
import { FIRST_CORNER, PIECES, isCorner, type Piece } from '../cube/piece.ts';
import { FACE_TURN_CORNERS, FACE_TURN_EDGES, type State } from '../cube/state.ts';
import { FACE_TURNS, type Turn } from '../cube/turn.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';

export const PLACES = 24;
export const PAIRS = PLACES * PLACES;

/** `EDGE_MOVES[place * 18 + turn]`: the place after the turn. */
export const EDGE_MOVES = new Uint8Array(PLACES * FACE_TURNS);
export const CORNER_MOVES = new Uint8Array(PLACES * FACE_TURNS);

for (let turn = 0; turn < FACE_TURNS; turn++) {
  for (let slot = 0; slot < 12; slot++) {
    const source = FACE_TURN_EDGES[turn][slot];
    for (let flip = 0; flip < 2; flip++) {
      EDGE_MOVES[((source & ~1) + flip) * FACE_TURNS + turn] = slot * 2 + (flip ^ (source & 1));
    }
  }
  for (let slot = 0; slot < 8; slot++) {
    const source = FACE_TURN_CORNERS[turn][slot];
    const gained = source % 3;
    for (let twist = 0; twist < 3; twist++) {
      CORNER_MOVES[(source - gained + twist) * FACE_TURNS + turn] =
        slot * 3 + ((twist + gained) % 3);
    }
  }
}

/** Moves of a piece; a missing piece stays at place 0, so that groups of fewer pieces need no code of their own. */
function movesOf(piece: Piece | undefined): Uint8Array {
  if (piece === undefined) return NO_MOVES;
  return isCorner(piece) ? CORNER_MOVES : EDGE_MOVES;
}
const NO_MOVES = new Uint8Array(PLACES * FACE_TURNS);

const pairMoves = new Map<string, Uint16Array>();

/** `[(place1 * 24 + place2) * 18 + turn]`: both places after the turn, by the kinds of the two pieces. */
export function pairMovesOf(first: Piece | undefined, second: Piece | undefined): Uint16Array {
  const kind = (piece: Piece | undefined): string =>
    piece === undefined ? '-' : isCorner(piece) ? 'c' : 'e';
  const key = kind(first) + kind(second);
  const known = pairMoves.get(key);
  if (known) return known;
  const a = movesOf(first);
  const b = movesOf(second);
  const made = new Uint16Array(PAIRS * FACE_TURNS);
  let at = 0;
  for (let place1 = 0; place1 < PLACES; place1++) {
    for (let place2 = 0; place2 < PLACES; place2++) {
      for (let turn = 0; turn < FACE_TURNS; turn++) {
        made[at++] = a[place1 * FACE_TURNS + turn] * PLACES + b[place2 * FACE_TURNS + turn];
      }
    }
  }
  pairMoves.set(key, made);
  return made;
}

/** The place of each of the 20 pieces. */
export function placesOf(state: State): Uint8Array {
  const places = new Uint8Array(PIECES);
  for (let slot = 0; slot < 12; slot++) {
    const found = state.edges[slot];
    places[found >> 1] = slot * 2 + (found & 1);
  }
  for (let slot = 0; slot < 8; slot++) {
    const found = state.corners[slot];
    places[FIRST_CORNER + ((found / 3) | 0)] = slot * 3 + (found % 3);
  }
  return places;
}

export function homeOf(piece: Piece): number {
  return isCorner(piece) ? (piece - FIRST_CORNER) * 3 : piece * 2;
}

/** The slot (numbered as the piece that belongs there) of a piece's place. */
export function slotOfPlace(piece: Piece, place: number): Piece {
  return isCorner(piece) ? ((place / 3) | 0) + FIRST_CORNER : place >> 1;
}

export function movePlace(piece: Piece, place: number, turn: number): number {
  return (isCorner(piece) ? CORNER_MOVES : EDGE_MOVES)[place * FACE_TURNS + turn];
}

/** Moves all 20 places, in the given buffer. */
export function movePlaces(places: Uint8Array, turn: number): void {
  for (let piece = 0; piece < FIRST_CORNER; piece++)
    places[piece] = EDGE_MOVES[places[piece] * FACE_TURNS + turn];
  for (let piece = FIRST_CORNER; piece < PIECES; piece++) {
    places[piece] = CORNER_MOVES[places[piece] * FACE_TURNS + turn];
  }
}

/** Face turns of the body as the turns that a person makes who holds the cube so. */
export function turnsInHands(bodyTurns: ArrayLike<number>, holding: Holding): Turn[] {
  return Array.from(bodyTurns, (turn) => FACE_OF[holding][(turn / 3) | 0] * 3 + (turn % 3));
}

/**
 * `FOLLOWS[last * 18 + turn]`: 1 if `turn` may follow `last`. The same face twice is one turn, and of
 * two opposite faces, which commute, the order of their indices is kept; so each sequence of turns
 * is tried in one spelling only. `last` 18 stands for the beginning.
 */
export const FOLLOWS = new Uint8Array((FACE_TURNS + 1) * FACE_TURNS).fill(1);
for (let last = 0; last < FACE_TURNS; last++) {
  for (let turn = 0; turn < FACE_TURNS; turn++) {
    const before = (last / 3) | 0;
    const face = (turn / 3) | 0;
    if (before === face || (OPPOSITE[face] === before && face < before))
      FOLLOWS[last * FACE_TURNS + turn] = 0;
  }
}
