/** What must be seen on the stickers for each situation that a person recognises. */
import type { CueFact, PieceName } from '../../engine/tutor/facts.ts';
import { STICKERS, type Cube } from '../naive/stickers.ts';
import {
  OPPOSITE,
  after,
  faceOfCentre,
  facesOf,
  homeOfPiece,
  isHome,
  slotOfPiece,
} from './hands.ts';

const SIDES = ['green', 'red', 'blue', 'orange', 'white', 'yellow'];

export function cueHolds(
  cue: CueFact['cue'],
  cube: Cube,
  piece: PieceName | undefined,
  base: string,
): boolean {
  const top = OPPOSITE[base];
  const topFace = faceOfCentre(cube, top);
  const baseFace = faceOfCentre(cube, base);
  if (piece === undefined) return lastLayerCue(cue, cube, top);
  const slot = slotOfPiece(cube, piece);
  const inTop = slot.includes(topFace);
  const inBase = slot.includes(baseFace);
  const shown = facesOf(cube, piece).get(base);
  const atHome = slot === homeOfPiece(cube, piece);
  switch (cue) {
    case 'base-up-above-home':
    case 'base-up':
      return inTop && shown === topFace;
    case 'base-aside-above-home':
    case 'base-to-the-side':
      return inTop && shown !== topFace;
    case 'beside-home':
      return [...'UDLRFB']
        .flatMap((face) => [face, `${face}'`])
        .some((turn) => isHome(after(cube, turn), piece));
    case 'edge-stuck-in-middle':
      return !inTop && !inBase;
    case 'edge-in-wrong-base-slot':
      return inBase && !atHome;
    case 'edge-turned-in-base':
      return inBase && shown !== baseFace;
    case 'corner-turned-in-slot':
    case 'edge-turned-in-middle':
      return atHome && !isHome(cube, piece);
    case 'corner-in-wrong-slot':
      return inBase && !atHome;
    case 'edge-in-wrong-middle-slot':
      return !inTop && !inBase && !atHome;
    case 'edge-goes-right':
    case 'edge-goes-left':
      return inTop && goesTo(cube, piece, top) === cue.slice('edge-goes-'.length);
    default:
      return false;
  }
}

/** Seen with the base down and the edge's side colour in front: a clockwise turn of the top takes what is in front to the left. */
function goesTo(cube: Cube, piece: PieceName, top: string): string {
  const shown = facesOf(cube, piece);
  const side = piece.find((colour) => shown.get(colour) !== faceOfCentre(cube, top))!;
  const other = piece.find((colour) => colour !== side)!;
  const turnedTop = after(solvedLike(cube), faceOfCentre(cube, top));
  const left = facesOf(turnedTop, [top, side]).get(side);
  return left === faceOfCentre(cube, other) ? 'left' : 'right';
}

/** A solved cube held as this one. */
function solvedLike(cube: Cube): Cube {
  const centres = new Map<string, string>();
  STICKERS.forEach(({ cubie, facing }, i) => {
    if (cubie.join() === facing.join()) centres.set(facing.join(), cube[i]);
  });
  return STICKERS.map(({ facing }) => centres.get(facing.join())!);
}

function lastLayerCue(cue: CueFact['cue'], cube: Cube, top: string): boolean {
  const topFace = faceOfCentre(cube, top);
  const sides = SIDES.filter((colour) => colour !== top && colour !== OPPOSITE[top]).map((colour) =>
    faceOfCentre(cube, colour),
  );
  /** What each piece of the top layer shows on a side: corners, then the edge. */
  const onSide = (face: string): { corners: string[]; edge: string } => {
    const corners: string[] = [];
    let edge = '';
    STICKERS.forEach(({ cubie, facing }, i) => {
      if (letterOf(facing) !== face || !lettersOf(cubie).includes(topFace)) return;
      const size = cubie.filter((part) => part !== 0).length;
      if (size === 3) corners.push(cube[i]);
      if (size === 2) edge = cube[i];
    });
    return { corners, edge };
  };
  const agree = (face: string): boolean => new Set(onSide(face).corners).size === 1;
  const finished = (face: string): boolean =>
    agree(face) && onSide(face).corners[0] === onSide(face).edge;
  const count = (size: number): number =>
    STICKERS.filter(
      ({ cubie, facing }, i) =>
        letterOf(facing) === topFace &&
        cubie.filter((part) => part !== 0).length === size &&
        cube[i] === top,
    ).length;
  switch (cue) {
    case 'dot':
      return count(2) === 0;
    case 'line':
    case 'angle':
      return count(2) === 2;
    case 'no-corner-right':
      return count(3) === 0;
    case 'one-corner-right':
      return count(3) === 1;
    case 'two-corners-right':
      return count(3) === 2;
    case 'headlights':
      return sides.some(agree);
    case 'no-headlights':
      return !sides.some(agree);
    case 'no-finished-side':
      return !sides.some(finished);
    case 'three-edges-clockwise':
    case 'three-edges-counter-clockwise':
      return sides.filter(finished).length === 1 && sides.every(agree);
    case 'last-turn':
      return sides.every(finished);
    default:
      return false;
  }
}

const NAMES: Readonly<Record<string, string>> = {
  '0,1,0': 'U',
  '0,-1,0': 'D',
  '0,0,1': 'F',
  '0,0,-1': 'B',
  '1,0,0': 'R',
  '-1,0,0': 'L',
};

function letterOf(facing: readonly number[]): string {
  return NAMES[facing.join()];
}

function lettersOf(cubie: readonly number[]): string[] {
  return cubie.flatMap((part, axis) => {
    if (part === 0) return [];
    const direction = [0, 0, 0];
    direction[axis] = part;
    return [letterOf(direction)];
  });
}
