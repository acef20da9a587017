/**
 * Turns: 18 families (six faces, six wide turns of two layers, three slices, three rotations) by
 * three amounts. A turn is one number, `family * 3 + amount - 1` with amount 1 (clockwise), 2 or 3
 * (counter-clockwise), so that tables can be indexed by it.
 *
 * Face turns, `w` turns and rotations are those of WCA Regulations, Article 12a (12a1, 12a2, 12a4:
 * x as R, y as U, z as F). M follows L, E follows D, S follows F; lower-case letters for wide turns
 * are common practice.
 */
import { FACES, OPPOSITE, faceIndex } from './vocabulary.ts';

export type Turn = number;

export const FAMILIES = [
  ...FACES,
  'Uw',
  'Lw',
  'Fw',
  'Rw',
  'Bw',
  'Dw',
  'M',
  'E',
  'S',
  'x',
  'y',
  'z',
] as const;
export type Family = (typeof FAMILIES)[number];

export const TURNS = FAMILIES.length * 3;
export const FACE_TURNS = 18;

export type TurnKind = 'face' | 'wide' | 'slice' | 'rotation';

interface FamilyMotion {
  readonly kind: TurnKind;
  /** The face as seen at which the turn is clockwise. */
  readonly axis: number;
  /** Outer faces turned in the hands: face, and +1 with or −1 against the family's direction. */
  readonly faces: readonly (readonly [face: number, sign: 1 | -1])[];
  /** Whether the centres, and so the whole frame of reference, go along. */
  readonly rotates: boolean;
}

/**
 * A turn that moves the centres is a rotation of the whole cube and outer turns that take the
 * other layers back: Uw = y D, M = x' R L', E = y' U D', S = z F' B.
 */
export const MOTIONS: readonly FamilyMotion[] = FAMILIES.map((family) => {
  const slice = { M: 'L', E: 'D', S: 'F' }[family as string];
  const rotation = { x: 'R', y: 'U', z: 'F' }[family as string];
  const axis = faceIndex(slice ?? rotation ?? family.charAt(0));
  const opposite = OPPOSITE[axis];
  if (slice !== undefined) {
    return {
      kind: 'slice',
      axis,
      faces: [
        [axis, -1],
        [opposite, 1],
      ],
      rotates: true,
    };
  }
  if (rotation !== undefined) return { kind: 'rotation', axis, faces: [], rotates: true };
  if (family.endsWith('w')) return { kind: 'wide', axis, faces: [[opposite, 1]], rotates: true };
  return { kind: 'face', axis, faces: [[axis, 1]], rotates: false };
});

export function familyOf(turn: Turn): number {
  return (turn / 3) | 0;
}

/** 1 clockwise, 2 half, 3 counter-clockwise. */
export function amountOf(turn: Turn): number {
  return (turn % 3) + 1;
}

export function makeTurn(family: Family | number, amount: number): Turn {
  const index = typeof family === 'number' ? family : FAMILIES.indexOf(family);
  return index * 3 + (((amount % 4) + 4) % 4) - 1;
}

export function turnKind(turn: Turn): TurnKind {
  return MOTIONS[familyOf(turn)].kind;
}

export function isRotation(turn: Turn): boolean {
  return turn >= 45;
}

export function invertTurn(turn: Turn): Turn {
  return turn - (turn % 3) + (2 - (turn % 3));
}

/** Canonical spelling: `R`, `R2`, `R'`, `Rw`, `M'`, `x2`. */
export function printTurn(turn: Turn): string {
  return FAMILIES[familyOf(turn)] + ['', '2', "'"][turn % 3];
}
