/**
 * Where the facelets of a cube lie in its picture.
 *
 * The picture is the unfolded net, half folded up: U, F and R make the cube; L, B and D, which
 * would be hidden, hang on it where the net has them (L left of F, B right of R, D below F) and are
 * opened outwards like doors, so far that all 54 stickers are seen.
 */
import { NET_AXES } from '../cube/facelets.ts';
import { FACES, NORMALS } from '../cube/vocabulary.ts';

type Vector = readonly [number, number, number];

/** A door: the face it hangs on, the hinge as a point and the direction away from it when opened flat. */
const DOORS: Readonly<Record<string, { readonly on: number; readonly away: Vector }>> = {
  L: { on: FACES.indexOf('F'), away: [-1, 0, 0] },
  B: { on: FACES.indexOf('R'), away: [0, 0, -1] },
  D: { on: FACES.indexOf('F'), away: [0, -1, 0] },
};

/** How far the doors are opened: a quarter would lay them flat into the face they hang on. */
const OPENING: Readonly<Record<string, number>> = { L: 1.22, B: 1.62, D: 1.2 };

/** The gap at a hinge, in stickers. */
const HINGE = 0.12;

/** From where the cube is looked at: turned to the left and tilted down, in radians; distance in stickers. */
const YAW = 0.66;
const PITCH = 0.54;
const DISTANCE = 15;

function add(a: Vector, b: Vector, times: number): Vector {
  return [a[0] + b[0] * times, a[1] + b[1] * times, a[2] + b[2] * times];
}

/** The point of a face at `right` and `down` of its centre, in stickers, with doors opened. */
export function pointOnFace(face: number, right: number, down: number): Vector {
  const [rightAxis, downAxis] = NET_AXES[face];
  const door = DOORS[FACES[face]];
  if (door === undefined)
    return add(add(scaled(NORMALS[face], 1.5), rightAxis, right), downAxis, down);
  const { on, away } = door;
  const outward = NORMALS[on];
  // Along the hinge the two faces agree; across it the door swings about the hinge.
  const across = right * dot(rightAxis, outward) + down * dot(downAxis, outward);
  const along = add(
    scaled(rightAxis, right - across * dot(rightAxis, outward)),
    downAxis,
    down - across * dot(downAxis, outward),
  );
  const hinge = add(add(scaled(outward, 1.5), away, 1.5 + HINGE), along, 1);
  const depth = 1.5 - across;
  const angle = OPENING[FACES[face]];
  return add(add(hinge, away, depth * Math.sin(angle)), outward, -depth * Math.cos(angle));
}

export function isDoor(face: number): boolean {
  return DOORS[FACES[face]] !== undefined;
}

function scaled(a: Vector, times: number): Vector {
  return [a[0] * times, a[1] * times, a[2] * times];
}

function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** In the plane of the picture, in stickers, y downwards, the cube's middle at 0, 0. */
export function project([x, y, z]: Vector): [number, number] {
  const across = x * Math.cos(YAW) - z * Math.sin(YAW);
  const near = x * Math.sin(YAW) + z * Math.cos(YAW);
  const up = y * Math.cos(PITCH) - near * Math.sin(PITCH);
  const depth = near * Math.cos(PITCH) + y * Math.sin(PITCH);
  const scale = DISTANCE / (DISTANCE - depth);
  return [across * scale, -up * scale];
}
