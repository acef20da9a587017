/**
 * Coordinates of the two-phase search, as published by Kociemba after Thistlethwaite's chain of
 * subgroups (1981): numbers that tell apart the cosets in which a phase moves.
 *
 * - twist 0…2186: how the first seven corners are turned; flip 0…2047: the first eleven edges
 * - four edges 0…11879: where four labelled edges are, whatever their flips, as
 *   `set of slots * 24 + order`; the sets are ranked so that those within slots 0…7 come first
 * - corner order 0…40319
 */
import { FACE_TURN_CORNERS, FACE_TURN_EDGES, type State } from '../cube/state.ts';
import { STEP_NODES, type Search } from './step.ts';

export const TWISTS = 2187;
export const FLIPS = 2048;
export const SLOT_SETS = 495;
export const FOURS = SLOT_SETS * 24;
export const CORNER_ORDERS = 40_320;
/** The set of slots FR FL BR BL, the last in rank: all middle edges in the middle layer. */
export const MIDDLE_SET = SLOT_SETS - 1;

export const UP_EDGES = [0, 1, 2, 3];
export const DOWN_EDGES = [4, 5, 6, 7];
export const MIDDLE_EDGES = [8, 9, 10, 11];

export function twistOf(corners: ArrayLike<number>): number {
  let twist = 0;
  for (let slot = 0; slot < 7; slot++) twist = twist * 3 + (corners[slot] % 3);
  return twist;
}

export function flipOf(edges: ArrayLike<number>): number {
  let flip = 0;
  for (let slot = 0; slot < 11; slot++) flip = flip * 2 + (edges[slot] & 1);
  return flip;
}

/** Rank of the order of the corners (Lehmer code); 0 in order. */
export function cornerOrderOf(corners: ArrayLike<number>): number {
  let rank = 0;
  for (let slot = 0; slot < 7; slot++) {
    const piece = (corners[slot] / 3) | 0;
    let smaller = 0;
    for (let later = slot + 1; later < 8; later++)
      if (((corners[later] / 3) | 0) < piece) smaller++;
    rank = rank * (8 - slot) + smaller;
  }
  return rank;
}

/** `FOUR_SLOTS[index * 4 + i]`: slot of the i-th of the four edges; `FOUR_INDEX[slots as digits of 12]`. */
export const FOUR_SLOTS = new Uint8Array(FOURS * 4);
const FOUR_INDEX = new Uint16Array(12 ** 4);
fillFours();

function fillFours(): void {
  const orders = permutationsOfFour();
  let set = 0;
  // Ranked by the largest slot first, so that sets within the lower slots come before all others.
  for (let d = 3; d < 12; d++) {
    for (let c = 2; c < d; c++) {
      for (let b = 1; b < c; b++) {
        for (let a = 0; a < b; a++) {
          const slots = [a, b, c, d];
          orders.forEach((order, rank) => {
            const index = set * 24 + rank;
            order.forEach((place, i) => {
              FOUR_SLOTS[index * 4 + i] = slots[place];
            });
            FOUR_INDEX[fourCode(FOUR_SLOTS, index * 4)] = index;
          });
          set++;
        }
      }
    }
  }
}

function permutationsOfFour(): number[][] {
  const all: number[][] = [];
  for (let a = 0; a < 4; a++) {
    for (let b = 0; b < 4; b++) {
      for (let c = 0; c < 4; c++) {
        if (new Set([a, b, c]).size === 3) all.push([a, b, c, 6 - a - b - c]);
      }
    }
  }
  return all;
}

function fourCode(slots: ArrayLike<number>, at: number): number {
  return ((slots[at] * 12 + slots[at + 1]) * 12 + slots[at + 2]) * 12 + slots[at + 3];
}

export function fourOf(edges: ArrayLike<number>, pieces: readonly number[]): number {
  const slots = pieces.map((piece) => {
    let slot = 0;
    while (edges[slot] >> 1 !== piece) slot++;
    return slot;
  });
  return FOUR_INDEX[fourCode(slots, 0)];
}

/** `[coordinate * 18 + turn]` for the quarter turns given by `quarter`, half and reversed turns by repeating. */
function* withPowers(
  size: number,
  quarter: (coordinate: number, face: number) => number,
): Search<Uint16Array> {
  const moves = new Uint16Array(size * 18);
  for (let face = 0; face < 6; face++) {
    for (let from = 0; from < size; from++) {
      moves[from * 18 + face * 3] = quarter(from, face);
      if (from % STEP_NODES === STEP_NODES - 1) yield { nodes: from + 1, depth: face };
    }
    for (let from = 0; from < size; from++) {
      const half = moves[moves[from * 18 + face * 3] * 18 + face * 3];
      moves[from * 18 + face * 3 + 1] = half;
      moves[from * 18 + face * 3 + 2] = moves[half * 18 + face * 3];
    }
    yield { nodes: size, depth: face };
  }
  return moves;
}

export function makeTwistMoves(): Search<Uint16Array> {
  const twists = new Uint8Array(8);
  const turned = new Uint8Array(8);
  return withPowers(TWISTS, (coordinate, face) => {
    let rest = coordinate;
    let sum = 0;
    for (let slot = 6; slot >= 0; slot--) {
      twists[slot] = rest % 3;
      sum += twists[slot];
      rest = (rest / 3) | 0;
    }
    twists[7] = (3 - (sum % 3)) % 3;
    const motion = FACE_TURN_CORNERS[face * 3];
    for (let slot = 0; slot < 8; slot++) {
      turned[slot] = (twists[(motion[slot] / 3) | 0] + (motion[slot] % 3)) % 3;
    }
    return twistOf(turned);
  });
}

export function makeFlipMoves(): Search<Uint16Array> {
  const flips = new Uint8Array(12);
  const turned = new Uint8Array(12);
  return withPowers(FLIPS, (coordinate, face) => {
    let parity = 0;
    for (let slot = 0; slot < 11; slot++) {
      flips[slot] = (coordinate >> (10 - slot)) & 1;
      parity ^= flips[slot];
    }
    flips[11] = parity;
    const motion = FACE_TURN_EDGES[face * 3];
    for (let slot = 0; slot < 12; slot++)
      turned[slot] = flips[motion[slot] >> 1] ^ (motion[slot] & 1);
    return flipOf(turned);
  });
}

export function makeFourMoves(): Search<Uint16Array> {
  const target = FACE_TURN_EDGES.map((motion) => {
    const goes = new Uint8Array(12);
    for (let slot = 0; slot < 12; slot++) goes[motion[slot] >> 1] = slot;
    return goes;
  });
  return withPowers(FOURS, (coordinate, face) => {
    const goes = target[face * 3];
    const at = coordinate * 4;
    return FOUR_INDEX[
      ((goes[FOUR_SLOTS[at]] * 12 + goes[FOUR_SLOTS[at + 1]]) * 12 + goes[FOUR_SLOTS[at + 2]]) *
        12 +
        goes[FOUR_SLOTS[at + 3]]
    ];
  });
}

export function makeCornerMoves(): Search<Uint16Array> {
  const corners = new Uint8Array(8);
  const turned = new Uint8Array(8);
  return withPowers(CORNER_ORDERS, (coordinate, face) => {
    unrankCorners(coordinate, corners);
    const motion = FACE_TURN_CORNERS[face * 3];
    for (let slot = 0; slot < 8; slot++) turned[slot] = corners[(motion[slot] / 3) | 0];
    return cornerOrderOf(turned);
  });
}

/** Fills in the order of the corners with this rank, all untwisted. */
function unrankCorners(rank: number, corners: Uint8Array): void {
  let rest = rank;
  for (let slot = 7; slot >= 0; slot--) {
    const digit = slot === 7 ? 0 : rest % (8 - slot);
    if (slot < 7) rest = (rest / (8 - slot)) | 0;
    corners[slot] = digit;
    for (let later = slot + 1; later < 8; later++) if (corners[later] >= digit) corners[later]++;
  }
  for (let slot = 0; slot < 8; slot++) corners[slot] *= 3;
}

export interface PhaseOne {
  readonly twist: number;
  readonly flip: number;
  readonly middle: number;
  readonly up: number;
  readonly down: number;
  readonly corners: number;
}

export function coordinatesOf(state: State): PhaseOne {
  return {
    twist: twistOf(state.corners),
    flip: flipOf(state.edges),
    middle: fourOf(state.edges, MIDDLE_EDGES),
    up: fourOf(state.edges, UP_EDGES),
    down: fourOf(state.edges, DOWN_EDGES),
    corners: cornerOrderOf(state.corners),
  };
}
