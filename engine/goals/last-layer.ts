/**
 * The last layer as it is seen in the hands: what lies where around the top, and which of the cases it
 * is. Sides are counted clockwise as seen from above, front, left, back, right; corner `i` lies
 * between side `i` and the next one.
 */
import { colourFacelets } from '../cube/facelets.ts';
import type { State } from '../cube/state.ts';
import { FACES } from '../cube/vocabulary.ts';

/** Indices of `FACES`: front, left, back, right. */
export const ROUND: readonly number[] = ['F', 'L', 'B', 'R'].map((face) =>
  FACES.findIndex((other) => other === face),
);
const U = 0;
/** Facelets of the top: edges beside each side, corners from front-left on. */
const TOP_EDGES = [7, 3, 1, 5];
const TOP_CORNERS = [6, 0, 2, 8];

export interface TopLayer {
  /** By side: 1 if the edge does not show the top's colour up. */
  readonly flips: readonly number[];
  /** By corner: 0 right; 1 shows the top's colour on its own side, 2 on the next (clockwise) one. */
  readonly twists: readonly number[];
  /** By place: where the piece belongs, relative to the centres. Undefined unless all are turned right. */
  readonly edges: readonly number[] | undefined;
  readonly corners: readonly number[] | undefined;
}

/** Reads the top layer as it is held; the layers below must be at home, base down. */
export function readTopLayer(state: State): TopLayer {
  const colours = colourFacelets(state);
  const at = (face: number, index: number): number => colours[face * 9 + index];
  const top = at(U, 4);
  const flips = TOP_EDGES.map((index) => (at(U, index) === top ? 0 : 1));
  const twists = TOP_CORNERS.map((index, i) => {
    if (at(U, index) === top) return 0;
    return at(ROUND[i], 0) === top ? 1 : 2;
  });
  const turned = flips.every((flip) => flip === 0) && twists.every((twist) => twist === 0);
  if (!turned) return { flips, twists, edges: undefined, corners: undefined };
  const centres = ROUND.map((face) => at(face, 4));
  return {
    flips,
    twists,
    edges: ROUND.map((face) => centres.indexOf(at(face, 1))),
    corners: ROUND.map((face) => centres.indexOf(at(face, 0))),
  };
}

export function shifted(values: readonly number[], by: number): number[] {
  return values.map((_, i) => values[(i + by) % 4]);
}

/** Sides on which both corners show the same colour, as indices of `ROUND`. */
export function headlights(corners: readonly number[]): number[] {
  // The corner before a side shows on it the colour of the side after its own home.
  return [0, 1, 2, 3].filter((side) => corners[side] === (corners[(side + 3) % 4] + 1) % 4);
}

/** Sides on which the edge agrees with both corners. */
export function finishedSides(corners: readonly number[], edges: readonly number[]): number[] {
  return headlights(corners).filter((side) => edges[side] === corners[side]);
}
