/** A sticker cube as it lies in the hands: faces by letters, pieces by colours, slots by letters. */
import { STICKERS, replay, type Cube } from '../naive/stickers.ts';

const LETTERS: Readonly<Record<string, string>> = {
  '0,1,0': 'U',
  '0,-1,0': 'D',
  '0,0,1': 'F',
  '0,0,-1': 'B',
  '1,0,0': 'R',
  '-1,0,0': 'L',
};

const LETTER_OF = STICKERS.map(({ facing }) => LETTERS[facing.join()]);
const CUBIE_OF = STICKERS.map(({ cubie }) => cubie.join());
const CENTRES = STICKERS.flatMap(({ cubie, facing }, i) =>
  cubie.join() === facing.join() ? [i] : [],
);

export const OPPOSITE: Readonly<Record<string, string>> = {
  white: 'yellow',
  yellow: 'white',
  green: 'blue',
  blue: 'green',
  red: 'orange',
  orange: 'red',
};

export function centreColour(cube: Cube, face: string): string {
  return cube[CENTRES.find((i) => LETTER_OF[i] === face)!];
}

export function faceOfCentre(cube: Cube, colour: string): string {
  return LETTER_OF[CENTRES.find((i) => cube[i] === colour)!];
}

/** U or D first, then F or B, then L or R. */
export function slotOf(faces: readonly string[]): string {
  return [...faces].sort((a, b) => 'UDFBLR'.indexOf(a) - 'UDFBLR'.indexOf(b)).join('');
}

/** The face on which each sticker of the piece with just these colours lies. */
export function facesOf(cube: Cube, piece: readonly string[]): Map<string, string> {
  const wanted = [...piece].sort().join();
  const byCubie = new Map<string, number[]>();
  CUBIE_OF.forEach((cubie, i) => byCubie.set(cubie, [...(byCubie.get(cubie) ?? []), i]));
  for (const own of byCubie.values()) {
    const colours = own.map((i) => cube[i]);
    if ([...colours].sort().join() === wanted) {
      return new Map(own.map((i) => [cube[i], LETTER_OF[i]]));
    }
  }
  throw new Error(`no piece ${piece.join('-')}`);
}

export function slotOfPiece(cube: Cube, piece: readonly string[]): string {
  return slotOf([...facesOf(cube, piece).values()]);
}

export function homeOfPiece(cube: Cube, piece: readonly string[]): string {
  return slotOf(piece.map((colour) => faceOfCentre(cube, colour)));
}

export function isHome(cube: Cube, piece: readonly string[]): boolean {
  return [...facesOf(cube, piece)].every(([colour, face]) => faceOfCentre(cube, colour) === face);
}

export function tokens(turns: string): string[] {
  return turns.split(/\s+/).filter((turn) => turn !== '');
}

export function after(cube: Cube, turns: string): Cube {
  return replay(cube, tokens(turns));
}
