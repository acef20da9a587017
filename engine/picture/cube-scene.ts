/** The picture of a state: the half-folded net of `camera.ts` with the stickers of `sticker.ts`. */
import { NET_AXES, FACELET_SLOTS, colourFacelets } from '../cube/facelets.ts';
import { quarterTurn, CENTRE_AT } from '../cube/holding.ts';
import { pieceAt, slotAt, type PieceSet } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import { MOTIONS, amountOf, familyOf, printTurn, type Turn } from '../cube/turn.ts';
import { COLOURS, COLOUR_INITIALS, FACES, NORMALS, OPPOSITE } from '../cube/vocabulary.ts';
import { isDoor, pointOnFace, project } from './camera.ts';
import type { Scene, Shape } from './scene.ts';
import { stickerOutline } from './sticker.ts';

export interface CubeOptions {
  /** Width of the picture in its own units; 320 by default. */
  readonly width?: number;
  /** Colour initials on the stickers. */
  readonly letters?: boolean;
  /** Pieces to be marked, so that a sentence can point at them. */
  readonly marked?: PieceSet;
  /** Arrows for the turn that comes next. */
  readonly arrow?: Turn | undefined;
  /** Points per bend of an outline: 1 for small pictures, more for large ones. */
  readonly bends?: number;
}

/** Left, top, right and bottom of everything that can be drawn, in stickers. */
const FRAME = (() => {
  const points = FACES.flatMap((_, face) => bodyOutline(face));
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs) - 0.1,
    top: Math.min(...ys) - 0.1,
    right: Math.max(...xs) + 0.1,
    bottom: Math.max(...ys) + 0.1,
  };
})();

/** Height of a picture of this width. */
export function cubeHeight(width: number): number {
  return (width * (FRAME.bottom - FRAME.top)) / (FRAME.right - FRAME.left);
}

/** Doors first, so that the cube covers them where they meet. */
const DRAWN_FACES = [1, 4, 5, 0, 2, 3];

export function cubeScene(state: State, options: CubeOptions = {}): Scene {
  const width = options.width ?? 320;
  const scale = width / (FRAME.right - FRAME.left);
  const place = (points: readonly (readonly [number, number])[]): number[] =>
    points.flatMap(([x, y]) => [(x - FRAME.left) * scale, (y - FRAME.top) * scale]);
  const colours = colourFacelets(state);
  const bends = options.bends ?? 3;
  const bodies: Shape[] = [];
  const stickers: Shape[] = [];
  const marks: Shape[] = [];
  const letters: Shape[] = [];
  for (const face of DRAWN_FACES) {
    const door = isDoor(face) ? ' door' : '';
    bodies.push({ kind: 'area', className: `body${door}`, points: place(bodyOutline(face)) });
    for (let facelet = face * 9; facelet < face * 9 + 9; facelet++) {
      const colour = COLOURS[colours[facelet]];
      const points = place(faceletOutline(facelet, bends));
      const title = `${colour}, ${FACES[face]}`;
      stickers.push({
        kind: 'area',
        className: `sticker ${colour}${door}`,
        points,
        facelet,
        title,
      });
      if (options.marked !== undefined && options.marked & pieceBit(state, facelet)) {
        marks.push(
          { kind: 'area', className: 'mark-under', points },
          { kind: 'area', className: 'mark', points },
        );
      }
      if (options.letters) {
        const [row, column] = rowAndColumn(facelet);
        const at = place([project(pointOnFace(face, column - 1, row - 1))]);
        const text = COLOUR_INITIALS[colours[facelet]].toUpperCase();
        letters.push({ kind: 'text', className: `letter on-${colour}${door}`, points: at, text });
      }
    }
  }
  const arrows = options.arrow === undefined ? [] : turnArrows(options.arrow, place);
  return {
    width,
    height: cubeHeight(width),
    shapes: [...bodies, ...stickers, ...marks, ...letters, ...arrows],
    label: describeState(state),
  };
}

/** The rim of a face, its outer corners cut a little. */
function bodyOutline(face: number): [number, number][] {
  const half = 1.53;
  const cut = 0.22;
  const points: [number, number][] = [
    [-half + cut, -half],
    [half - cut, -half],
    [half, -half + cut],
    [half, half - cut],
    [half - cut, half],
    [-half + cut, half],
    [-half, half - cut],
    [-half, -half + cut],
  ];
  const square: [number, number][] = [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ];
  return (isDoor(face) ? points : square).map(([right, down]) =>
    project(pointOnFace(face, right, down)),
  );
}

function rowAndColumn(facelet: number): [number, number] {
  return [Math.floor((facelet % 9) / 3), facelet % 3];
}

function faceletOutline(facelet: number, bends: number): [number, number][] {
  const [row, column] = rowAndColumn(facelet);
  const face = Math.floor(facelet / 9);
  return stickerOutline(row, column, bends).map(([right, down]) =>
    project(pointOnFace(face, column - 1 + right, row - 1 + down)),
  );
}

/** The bit of the piece whose sticker lies on this facelet; 0 for a centre. */
function pieceBit(state: State, facelet: number): PieceSet {
  const { slot } = FACELET_SLOTS[facelet];
  if (slot < 0) return 0;
  // Facelets name slots as they lie in the hands, states as they lie on the body.
  const body = slotAt(SLOT_FACES[slot], state.holding);
  return body === undefined ? 0 : 1 << pieceAt(state, body);
}

/** Faces in the hands that share a slot. */
const SLOT_FACES: readonly (readonly number[])[] = (() => {
  const result: number[][] = Array.from({ length: 20 }, () => []);
  FACELET_SLOTS.forEach(({ slot }, facelet) => {
    if (slot >= 0) result[slot].push(Math.floor(facelet / 9));
  });
  return result;
})();

type Placing = (points: readonly (readonly [number, number])[]) => number[];

/**
 * Arrows along the layers that a turn moves, on F for turns about x and y, on U for those about z:
 * one per layer, so that a wide turn shows two and a rotation three. A half turn has two heads.
 */
function turnArrows(turn: Turn, place: Placing): Shape[] {
  const motion = MOTIONS[familyOf(turn)];
  const axis = NORMALS[motion.axis];
  const about = axis.findIndex((value) => value !== 0);
  const face = FACES.indexOf(about === 2 ? 'U' : 'F');
  const forward = quarterTurn(axis, [NORMALS[face][0], NORMALS[face][1], NORMALS[face][2]]);
  const sign = amountOf(turn) === 3 ? -1 : 1;
  const [rightAxis, downAxis] = NET_AXES[face];
  const along: [number, number] = [dot(forward, rightAxis) * sign, dot(forward, downAxis) * sign];
  const title = printTurn(turn);
  return movedLayers(turn).flatMap((layer) => {
    const side: [number, number] = [dot(axis, rightAxis) * layer, dot(axis, downAxis) * layer];
    const at = (forwards: number, sideways: number): [number, number] =>
      project(
        pointOnFace(
          face,
          side[0] + along[0] * forwards + along[1] * sideways,
          side[1] + along[1] * forwards + along[0] * sideways,
        ),
      );
    return [
      {
        kind: 'area',
        className: 'arrow',
        points: place(ARROW[amountOf(turn)].map(([f, s]) => at(f, s))),
        title,
      },
    ];
  });
}

/** An arrow by amount, as [forwards, sideways]: with one head for a quarter, with a second one behind it for a half turn. */
const ARROW: Readonly<Record<number, readonly (readonly [number, number])[]>> = (() => {
  const quarter: [number, number][] = [
    [1.38, 0],
    [0.72, 0.3],
    [0.82, 0.1],
    [-1.2, 0.1],
    [-1.3, 0],
    [-1.2, -0.1],
    [0.82, -0.1],
    [0.72, -0.3],
  ];
  const half: [number, number][] = [
    [1.38, 0],
    [0.72, 0.3],
    [0.82, 0.12],
    [0.1, 0.3],
    [0.2, 0.1],
    [-1.2, 0.1],
    [-1.3, 0],
    [-1.2, -0.1],
    [0.2, -0.1],
    [0.1, -0.3],
    [0.82, -0.12],
    [0.72, -0.3],
  ];
  return { 1: quarter, 2: half, 3: quarter };
})();

/** Which layers (1 the outer one at the axis face, 0 the middle, −1 the far one) a turn moves. */
function movedLayers(turn: Turn): number[] {
  switch (MOTIONS[familyOf(turn)].kind) {
    case 'face':
      return [1];
    case 'wide':
      return [1, 0];
    case 'slice':
      return [0];
    case 'rotation':
      return [1, 0, -1];
  }
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** `Cube held white up, green in front. U white white …`: the whole state in words. */
export function describeState(state: State): string {
  const centres = CENTRE_AT[state.holding];
  const colours = colourFacelets(state);
  const faces = FACES.map((name, face) => {
    const own = [...colours.subarray(face * 9, face * 9 + 9)];
    const rows = [0, 3, 6].map((row) =>
      own
        .slice(row, row + 3)
        .map((colour) => COLOURS[colour])
        .join(' '),
    );
    const whole = own.every((colour) => colour === own[0]);
    return `${name}: ${whole ? `all ${COLOURS[own[0]]}` : rows.join(', ')}`;
  });
  const down = COLOURS[OPPOSITE[centres[0]]];
  return `The cube, held ${COLOURS[centres[0]]} up, ${COLOURS[centres[2]]} in front, ${down} down. ${faces.join('. ')}.`;
}
