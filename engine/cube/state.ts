/**
 * States of the cube as immutable values, and the group they form.
 *
 * A state is kept relative to the centres: `corners[slot] = piece * 3 + twist` and
 * `edges[slot] = piece * 2 + flip`, where slots and pieces are named in the reference holding
 * (white up, green front), and apart from it how the cube is held. So a rotation only changes the
 * holding, every other turn is one or two face turns of the body, and a goal is a comparison of
 * fixed slots, whatever the holding.
 *
 * Twist `t`: the piece's U/D sticker lies at facelet `t` of the slot (order of `CORNER_FACELETS`:
 * 0 right, 1 turned clockwise, 2 counter-clockwise, seen from outside). Flip 1: the two stickers
 * are exchanged.
 *
 * A state is an effect, too: the one that leads from the solved cube to it. `compose(a, b)` is `a`,
 * then `b` as done with the hands.
 */
import {
  CENTRE_AT,
  COMPOSE_HOLDINGS,
  HOLDINGS,
  INVERSE_HOLDING,
  ROTATE,
  quarterTurn,
  type Holding,
} from './holding.ts';
import { MOTIONS, type Turn } from './turn.ts';
import { CORNERS, CORNER_FACELETS, EDGES, EDGE_FACELETS, NORMALS } from './vocabulary.ts';

export interface State {
  /** 8 values: piece * 3 + twist, by slot. */
  readonly corners: ArrayLike<number>;
  /** 12 values: piece * 2 + flip, by slot. */
  readonly edges: ArrayLike<number>;
  readonly holding: Holding;
}

export const SOLVED: State = {
  corners: Uint8Array.from(CORNERS, (_, piece) => piece * 3),
  edges: Uint8Array.from(EDGES, (_, piece) => piece * 2),
  holding: 0,
};

/** `MOD3[n] = n mod 3` for sums of two twists; the hot paths look it up. */
const MOD3 = [0, 1, 2, 0, 1, 2];

/** The slot that shares these faces, whatever their order; -1 if there is none. */
export function cornerSlot(faces: readonly number[]): number {
  return CORNER_FACELETS.findIndex(
    (slot) => faces.length === 3 && slot.every((face) => faces.includes(face)),
  );
}

export function edgeSlot(faces: readonly number[]): number {
  return EDGE_FACELETS.findIndex(
    (slot) => faces.length === 2 && slot.every((face) => faces.includes(face)),
  );
}

/** `FACE_TURN_CORNERS[face * 3 + amount - 1][slot]` = source slot * 3 + twist gained; edges alike. */
export const FACE_TURN_CORNERS: readonly Uint8Array[] = [];
export const FACE_TURN_EDGES: readonly Uint8Array[] = [];

/** A quarter turn of a face, read off the geometry: which slot each slot is filled from, and how turned. */
function quarterTables(face: number): { corners: Uint8Array; edges: Uint8Array } {
  const turned = NORMALS.map((normal) => {
    const [x, y, z] = quarterTurn(NORMALS[face], normal);
    return NORMALS.findIndex(([a, b, c]) => a === x && b === y && c === z);
  });
  const corners = Uint8Array.from(SOLVED.corners);
  CORNER_FACELETS.forEach((facelets, source) => {
    if (!facelets.includes(face)) return;
    const goesTo = facelets.map((facelet) => turned[facelet]);
    const slot = cornerSlot(goesTo);
    corners[slot] = source * 3 + CORNER_FACELETS[slot].indexOf(goesTo[0]);
  });
  const edges = Uint8Array.from(SOLVED.edges);
  EDGE_FACELETS.forEach((facelets, source) => {
    if (!facelets.includes(face)) return;
    const goesTo = facelets.map((facelet) => turned[facelet]);
    const slot = edgeSlot(goesTo);
    edges[slot] = source * 2 + EDGE_FACELETS[slot].indexOf(goesTo[0]);
  });
  return { corners, edges };
}

for (let face = 0; face < 6; face++) {
  const quarter = quarterTables(face);
  let { corners, edges } = quarter;
  for (let amount = 1; amount <= 3; amount++) {
    (FACE_TURN_CORNERS as Uint8Array[]).push(corners);
    (FACE_TURN_EDGES as Uint8Array[]).push(edges);
    corners = moveCorners(corners, quarter.corners);
    edges = moveEdges(edges, quarter.edges);
  }
}

function moveCorners(from: ArrayLike<number>, motion: ArrayLike<number>): Uint8Array {
  const result = new Uint8Array(8);
  for (let slot = 0; slot < 8; slot++) {
    const source = motion[slot];
    const piece = from[(source / 3) | 0];
    const twist = piece % 3;
    result[slot] = piece - twist + MOD3[twist + (source % 3)];
  }
  return result;
}

function moveEdges(from: ArrayLike<number>, motion: ArrayLike<number>): Uint8Array {
  const result = new Uint8Array(12);
  for (let slot = 0; slot < 12; slot++) {
    const source = motion[slot];
    result[slot] = from[source >> 1] ^ (source & 1);
  }
  return result;
}

/** The body turns that a turn amounts to, by holding: face turns 0…17, and the holding after. */
interface BodyMotion {
  readonly faceTurns: readonly number[];
  readonly holding: Holding;
}

const BODY_MOTIONS: readonly (readonly BodyMotion[])[] = Array.from(
  { length: HOLDINGS },
  (_, holding) =>
    MOTIONS.flatMap((motion) =>
      [1, 2, 3].map((amount) => ({
        faceTurns: motion.faces.map(
          ([face, sign]) => CENTRE_AT[holding][face] * 3 + (sign > 0 ? amount : 4 - amount) - 1,
        ),
        holding: motion.rotates ? ROTATE[holding][motion.axis * 4 + amount] : holding,
      })),
    ),
);

/** The face turns relative to the centres (0…17, as `face * 3 + amount - 1`) that `turn` does in this holding. */
export function bodyTurns(turn: Turn, holding: Holding): readonly number[] {
  return BODY_MOTIONS[holding][turn].faceTurns;
}

export function holdingAfter(turn: Turn, holding: Holding): Holding {
  return BODY_MOTIONS[holding][turn].holding;
}

export function applyTurn(state: State, turn: Turn): State {
  const motion = BODY_MOTIONS[state.holding][turn];
  let { corners, edges } = state;
  for (const faceTurn of motion.faceTurns) {
    corners = moveCorners(corners, FACE_TURN_CORNERS[faceTurn]);
    edges = moveEdges(edges, FACE_TURN_EDGES[faceTurn]);
  }
  return { corners, edges, holding: motion.holding };
}

export function applyTurns(state: State, turns: Iterable<Turn>): State {
  let result = state;
  for (const turn of turns) result = applyTurn(result, turn);
  return result;
}

/** Stickers of corners (slot * 3 + facelet) and edges (slot * 2 + facelet) as they are renamed by holding `h`. */
const CORNER_RENAMING: readonly Uint8Array[] = CENTRE_AT.map((map) =>
  Uint8Array.from({ length: 24 }, (_, sticker) => {
    const facelets = CORNER_FACELETS[(sticker / 3) | 0].map((face) => map[face]);
    const slot = cornerSlot(facelets);
    return slot * 3 + CORNER_FACELETS[slot].indexOf(facelets[sticker % 3]);
  }),
);
const EDGE_RENAMING: readonly Uint8Array[] = CENTRE_AT.map((map) =>
  Uint8Array.from({ length: 24 }, (_, sticker) => {
    const facelets = EDGE_FACELETS[sticker >> 1].map((face) => map[face]);
    const slot = edgeSlot(facelets);
    return slot * 2 + EDGE_FACELETS[slot].indexOf(facelets[sticker & 1]);
  }),
);

/**
 * The same arrangement with every face letter `f` read as `CENTRE_AT[holding][f]`: the effect of a
 * sequence done in the reference holding becomes its effect on the body when done held so.
 * The holding of `state` itself is kept.
 */
export function rename(state: State, holding: Holding): State {
  if (holding === 0) return state;
  const cornerNames = CORNER_RENAMING[holding];
  const edgeNames = EDGE_RENAMING[holding];
  const corners = new Uint8Array(8);
  for (let slot = 0; slot < 8; slot++) {
    const piece = state.corners[slot];
    const twist = piece % 3;
    const place = cornerNames[slot * 3];
    const sticker = cornerNames[piece - twist + MOD3[3 - twist]];
    const newTwist = MOD3[(place % 3) + 3 - (sticker % 3)];
    corners[(place / 3) | 0] = sticker - (sticker % 3) + newTwist;
  }
  const edges = new Uint8Array(12);
  for (let slot = 0; slot < 12; slot++) {
    const place = edgeNames[slot * 2];
    const sticker = edgeNames[state.edges[slot]];
    edges[place >> 1] = sticker ^ (place & 1);
  }
  return { corners, edges, holding: state.holding };
}

/** `a`, then what `b` does, with the hands where `a` left them. */
export function compose(a: State, b: State): State {
  const effect = rename(b, a.holding);
  return {
    corners: moveCorners(a.corners, effect.corners),
    edges: moveEdges(a.edges, effect.edges),
    holding: COMPOSE_HOLDINGS[a.holding][b.holding],
  };
}

/** The effect that undoes `effect`: `compose(e, invertState(e))` is solved in the reference holding. */
export function invertState(effect: State): State {
  const corners = new Uint8Array(8);
  for (let slot = 0; slot < 8; slot++) {
    const piece = effect.corners[slot];
    const twist = piece % 3;
    corners[(piece / 3) | 0] = slot * 3 + MOD3[3 - twist];
  }
  const edges = new Uint8Array(12);
  for (let slot = 0; slot < 12; slot++) {
    const piece = effect.edges[slot];
    edges[piece >> 1] = slot * 2 + (piece & 1);
  }
  const holding = INVERSE_HOLDING[effect.holding];
  return { ...rename({ corners, edges, holding: 0 }, holding), holding };
}

/** The effect repeated `times` times by squaring; `times` may be any whole number ≥ 0, as a bigint where it is large. */
export function power(effect: State, times: number | bigint): State {
  let result = SOLVED;
  let square = effect;
  for (let rest = BigInt(times); rest > 0n; rest >>= 1n) {
    if (rest & 1n) result = compose(result, square);
    square = compose(square, square);
  }
  return result;
}

export function sameArrangement(a: State, b: State): boolean {
  for (let slot = 0; slot < 8; slot++) if (a.corners[slot] !== b.corners[slot]) return false;
  for (let slot = 0; slot < 12; slot++) if (a.edges[slot] !== b.edges[slot]) return false;
  return true;
}

export function sameState(a: State, b: State): boolean {
  return a.holding === b.holding && sameArrangement(a, b);
}

/** All pieces at home relative to the centres, however the cube is held. */
export function isSolved(state: State): boolean {
  return sameArrangement(state, SOLVED);
}

/** The same cube held otherwise. */
export function held(state: State, holding: Holding): State {
  return { ...state, holding };
}
