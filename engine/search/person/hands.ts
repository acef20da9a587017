/**
 * The cube as it lies in the hands: holdings with the base down, the rotations between holdings, and
 * what shows on which side.
 */
import { CENTRE_AT, FACE_OF, HOLDINGS, type Holding } from '../../cube/holding.ts';
import { faceShowing, faceletsOf, pieceAt, slotAt, type Piece } from '../../cube/piece.ts';
import { holdingAfter, type State } from '../../cube/state.ts';
import { TURNS, isRotation, type Turn } from '../../cube/turn.ts';

/** Faces in the hands, as indices of `FACES`. */
export const [U, L, F, R, B, D] = [0, 1, 2, 3, 4, 5];

const ROTATIONS: readonly Turn[] = Array.from({ length: TURNS }, (_, turn) => turn).filter(
  isRotation,
);

/** `[from * 24 + to]`: the fewest rotations, quarter turns about the vertical axis preferred. */
const REGRIPS: readonly (readonly Turn[])[] = Array.from({ length: HOLDINGS }, (_, from) => {
  const found: (readonly Turn[] | undefined)[] = Array.from({ length: HOLDINGS }, () => undefined);
  found[from] = [];
  // y before x and z, single rotations before two.
  const order = [...ROTATIONS.slice(3, 6), ...ROTATIONS.slice(0, 3), ...ROTATIONS.slice(6)];
  const queue = [from];
  for (const holding of queue) {
    for (const turn of order) {
      const next = holdingAfter(turn, holding);
      if (found[next]) continue;
      found[next] = [...(found[holding] ?? []), turn];
      queue.push(next);
    }
  }
  return found.map((turns) => turns ?? []);
}).flat();

export function regrip(from: Holding, to: Holding): readonly Turn[] {
  return REGRIPS[from * HOLDINGS + to];
}

/** The four holdings with this colour down, those with the shortest regrip first. */
export function holdingsOn(base: number, from: Holding): Holding[] {
  return CENTRE_AT.map((_, holding) => holding)
    .filter((holding) => CENTRE_AT[holding][D] === base)
    .sort((a, b) => regrip(from, a).length - regrip(from, b).length || a - b);
}

/** The face in the hands on which the piece in the slot at `faces` (in the hands) shows `colour`; -1 if it does not. */
export function sideShowing(
  state: State,
  holding: Holding,
  faces: readonly number[],
  colour: number,
): number {
  const piece = pieceIn(state, holding, faces);
  if (!faceletsOf(piece).includes(colour)) return -1;
  return FACE_OF[holding][faceShowing(state, piece, colour)];
}

export function pieceIn(state: State, holding: Holding, faces: readonly number[]): Piece {
  const slot = slotAt(faces, holding);
  if (slot === undefined) throw new RangeError(`no slot at ${faces.join(' ')}`);
  return pieceAt(state, slot);
}

/** The colour (index) that shows on `side` of the slot at `faces`, both in the hands. */
export function colourShown(
  state: State,
  holding: Holding,
  faces: readonly number[],
  side: number,
): number {
  const colours = faceletsOf(pieceIn(state, holding, faces));
  const shown = colours.find((colour) => sideShowing(state, holding, faces, colour) === side);
  if (shown === undefined) throw new RangeError(`no colour at ${faces.join(' ')}`);
  return shown;
}
