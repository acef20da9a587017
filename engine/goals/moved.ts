/**
 * Which pieces a sentence names for a turn. Goals are judged relative to the centres; but after a
 * slice or wide turn the pieces that are off against the centres are those that stayed where they
 * were in the hands, and nobody would look for them. So the pieces that moved are named.
 */
import { FACE_OF } from '../cube/holding.ts';
import { PIECES, faceletsOf, pieceAt, piecesIn, type Piece, type PieceSet } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import { MOTIONS, familyOf, turnKind, type Turn } from '../cube/turn.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { JUMP, type Course } from './course.ts';
import type { Goal } from './goal.ts';
import { goalPieces } from './judge.ts';

/** The pieces that a turn moves in the hands; a rotation moves none against another. */
export function movedBy(state: State, turn: Turn): PieceSet {
  const kind = turnKind(turn);
  if (kind === 'rotation') return 0;
  const { axis } = MOTIONS[familyOf(turn)];
  const faceOf = FACE_OF[state.holding];
  let set = 0;
  for (let slot = 0; slot < PIECES; slot++) {
    const faces = faceletsOf(slot).map((face) => faceOf[face]);
    const isOuter = faces.includes(axis);
    const isMiddle = !isOuter && !faces.includes(OPPOSITE[axis]);
    if ((isOuter && kind !== 'slice') || (isMiddle && kind !== 'face'))
      set |= 1 << pieceAt(state, slot);
  }
  return set;
}

/** For a break of `goal` by `turn` that left `misplaced`: the goal's pieces to name in a sentence. */
export function piecesToName(
  course: Course,
  goal: Goal,
  turn: number,
  misplaced: readonly Piece[],
): readonly Piece[] {
  const code = course.codes[turn];
  const state = course.stateAt(turn);
  if (code === JUMP || state === undefined || turnKind(code) === 'face') return misplaced;
  const moved = piecesIn(goalPieces(goal) & movedBy(state, code));
  return moved.length === 0 ? misplaced : moved;
}
