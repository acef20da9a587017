/**
 * Whether a goal holds, and which pieces stand in the way.
 *
 * A cube is looked at piece by piece: `where[piece]` is the place of its first facelet, as
 * slot * 3 + twist for corners and slot * 2 + flip for edges (slots numbered within their kind). A
 * goal is compiled once into the set of allowed places of each piece, 24 bits each, one such table
 * for every turn of a layer or slice that it does not mind. Judging is then looking up bits.
 */
import {
  FIRST_CORNER,
  PIECES,
  faceletsOf,
  isCorner,
  piecesIn,
  type PieceSet,
} from '../cube/piece.ts';
import { FACE_TURN_CORNERS, FACE_TURN_EDGES, type State } from '../cube/state.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import type { Condition, Goal } from './goal.ts';

/** 20 places, by piece. */
export type Where = Uint8Array;

export function readWhere(state: State, into: Where = new Uint8Array(PIECES)): Where {
  for (let slot = 0; slot < 12; slot++) {
    const code = state.edges[slot];
    into[code >> 1] = slot * 2 + (code & 1);
  }
  for (let slot = 0; slot < 8; slot++) {
    const code = state.corners[slot];
    const twist = code % 3;
    into[FIRST_CORNER + (code - twist) / 3] = slot * 3 + twist;
  }
  return into;
}

/** `GOES[faceTurn][place]`: where a face turn (`face * 3 + amount - 1`) takes an edge's (0…23) or corner's (24…47) place. */
const GOES: readonly Uint8Array[] = FACE_TURN_CORNERS.map((corners, faceTurn) => {
  const edges = FACE_TURN_EDGES[faceTurn];
  const goes = new Uint8Array(48);
  for (let slot = 0; slot < 12; slot++) {
    const source = edges[slot];
    for (let flip = 0; flip < 2; flip++) {
      goes[(source >> 1) * 2 + flip] = slot * 2 + (flip ^ (source & 1));
    }
  }
  for (let slot = 0; slot < 8; slot++) {
    const gained = corners[slot] % 3;
    const source = (corners[slot] - gained) / 3;
    for (let twist = 0; twist < 3; twist++) {
      goes[24 + source * 3 + twist] = slot * 3 + ((twist + gained) % 3);
    }
  }
  return goes;
});

/** Turns a layer in place; for loops that own their buffer. */
export function moveWhere(where: Where, faceTurn: number): void {
  const goes = GOES[faceTurn];
  for (let piece = 0; piece < FIRST_CORNER; piece++) where[piece] = goes[where[piece]];
  for (let piece = FIRST_CORNER; piece < PIECES; piece++) where[piece] = goes[24 + where[piece]];
}

const ANYWHERE = 0xffffff;

/** What one choice of free turns demands: the pieces concerned and their allowed places. */
export interface Demand {
  readonly pieces: Uint8Array;
  /** By piece (20): bit `place` is set if the piece may be there. */
  readonly allowed: Int32Array;
}

interface ChoiceSets {
  readonly sets: readonly PieceSet[];
  readonly atLeast: number;
}

export interface CompiledGoal {
  readonly demands: readonly Demand[];
  readonly choice: ChoiceSets | undefined;
}

/** The places at which a piece meets a condition. */
function allowedPlaces(piece: number, condition: Condition): number {
  const size = isCorner(piece) ? 3 : 2;
  const home = isCorner(piece) ? piece - FIRST_CORNER : piece;
  if (condition.kind === 'placed') return 1 << (home * size);
  if (condition.kind === 'positioned') return ((1 << size) - 1) << (home * size);
  const own = faceletsOf(piece);
  let mask = 0;
  for (let place = 0; place < 24; place++) {
    const slot = Math.floor(place / size);
    const faces = faceletsOf(isCorner(piece) ? slot + FIRST_CORNER : slot);
    const faceOf = (facelet: number): number => faces[(facelet + (place % size)) % size];
    if (condition.kind === 'facing') {
      const facelet = own.indexOf(condition.colour);
      if (facelet >= 0 && faceOf(facelet) === condition.colour) mask |= 1 << place;
    } else {
      const wanted = leading(own, condition.up, condition.front);
      if (faceOf(own.indexOf(wanted)) === leading(faces, condition.up, condition.front))
        mask |= 1 << place;
    }
  }
  return mask;
}

/** The facelet of an edge by which its orientation is told. */
function leading(faces: readonly number[], up: number, front: number): number {
  const onAxis = (axis: number): number | undefined =>
    faces.find((face) => face === axis || face === OPPOSITE[axis]);
  return onAxis(up) ?? onAxis(front) ?? faces[0];
}

/** The face turns, done one after the other, that a goal does not mind: one list per choice. */
function freeTurns(upTo: number | undefined, slice: Goal['slice']): number[][] {
  let choices: number[][] = [[]];
  if (slice) {
    choices = choices.concat(
      [1, 2, 3]
        .filter((amount) => amount % slice.quarters === 0)
        .map((amount) => [slice.colour * 3 + amount - 1, OPPOSITE[slice.colour] * 3 + 3 - amount]),
    );
  }
  if (upTo === undefined) return choices;
  return choices.flatMap((before) => [
    before,
    ...[0, 1, 2].map((amount) => [...before, upTo * 3 + amount]),
  ]);
}

/** Restricted to `within`, if given. */
export function makeDemands(
  conditions: readonly Condition[],
  upTo: number | undefined,
  slice: Goal['slice'],
  within: PieceSet = -1,
): Demand[] {
  const atHome = new Int32Array(PIECES).fill(ANYWHERE);
  let concerned = 0;
  for (const condition of conditions) {
    for (const piece of piecesIn(condition.pieces & within)) {
      atHome[piece] &= allowedPlaces(piece, condition);
      concerned |= 1 << piece;
    }
  }
  const pieces = Uint8Array.from(piecesIn(concerned));
  return freeTurns(upTo, slice).map((turns) => {
    const allowed = new Int32Array(PIECES);
    for (const piece of pieces) {
      for (let place = 0; place < 24; place++) {
        let after = place;
        for (const turn of turns) after = GOES[turn][isCorner(piece) ? 24 + after : after];
        if ((atHome[piece] >> after) & 1) allowed[piece] |= 1 << place;
      }
    }
    return { pieces, allowed };
  });
}

const compiled = new WeakMap<Goal, CompiledGoal>();

export function compileGoal(goal: Goal): CompiledGoal {
  let result = compiled.get(goal);
  if (result === undefined) {
    result = { demands: makeDemands(goal.conditions, goal.upTo, goal.slice), choice: goal.choice };
    compiled.set(goal, result);
  }
  return result;
}

export function meets(where: Where, { pieces, allowed }: Demand): boolean {
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i];
    if (((allowed[piece] >> where[piece]) & 1) === 0) return false;
  }
  return true;
}

/** The pieces that do not meet a demand. */
export function failing(where: Where, { pieces, allowed }: Demand): PieceSet {
  let set = 0;
  for (const piece of pieces) if (((allowed[piece] >> where[piece]) & 1) === 0) set |= 1 << piece;
  return set;
}

export function isPlaced(where: Where, piece: number): boolean {
  return where[piece] === (piece < FIRST_CORNER ? piece * 2 : (piece - FIRST_CORNER) * 3);
}

/** The pieces of a set that are not in their own slots and turned right. */
export function notPlaced(where: Where, pieces: PieceSet): PieceSet {
  let set = 0;
  for (let piece = 0; piece < PIECES; piece++) {
    if ((pieces >> piece) & 1 && !isPlaced(where, piece)) set |= 1 << piece;
  }
  return set;
}

export function whereHolds(goal: Goal, where: Where): boolean {
  if (goal.anyOf) return goal.anyOf.some((alternative) => whereHolds(alternative, where));
  const { demands, choice } = compileGoal(goal);
  let met = false;
  for (let i = 0; i < demands.length && !met; i++) met = meets(where, demands[i]);
  if (!met || choice === undefined) return met;
  let count = 0;
  for (const set of choice.sets) if (notPlaced(where, set) === 0) count++;
  return count >= choice.atLeast;
}

function size(set: PieceSet): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count++;
  return count;
}

function fewest(sets: readonly PieceSet[]): PieceSet {
  return sets.reduce((best, set) => (size(set) < size(best) ? set : best));
}

export function whereMissing(goal: Goal, where: Where): PieceSet {
  if (goal.anyOf) return fewest(goal.anyOf.map((alternative) => whereMissing(alternative, where)));
  const { demands, choice } = compileGoal(goal);
  const missing = fewest(demands.map((demand) => failing(where, demand)));
  if (choice === undefined) return missing;
  const bySet = choice.sets.map((set) => notPlaced(where, set)).sort((a, b) => size(a) - size(b));
  return bySet.slice(0, choice.atLeast).reduce((all, set) => all | set, missing);
}

/** Whether a goal holds in a state, however the cube is held. */
export function goalHolds(goal: Goal, state: State): boolean {
  return whereHolds(goal, readWhere(state));
}

/**
 * The pieces that stand in the way of a goal; empty if it holds. Of the turns, sides and pairs that
 * a goal leaves open, those are taken that leave the fewest.
 */
export function goalMissing(goal: Goal, state: State): PieceSet {
  return whereMissing(goal, readWhere(state));
}

/** The pieces that a goal speaks of (of a goal with alternatives: of the first). */
export function goalPieces(goal: Goal): PieceSet {
  if (goal.anyOf) return goal.anyOf.length > 0 ? goalPieces(goal.anyOf[0]) : 0;
  const own = goal.conditions.reduce((set, condition) => set | condition.pieces, 0);
  return goal.choice ? goal.choice.sets.reduce((set, pair) => set | pair, own) : own;
}

/**
 * What is guarded once a goal is made: of several sides, those on which it holds; of several pairs,
 * those in place: `prefer` (pairs guarded already, or made first) before others.
 */
export function freezeGoal(goal: Goal, where: Where, prefer: readonly PieceSet[] = []): Goal {
  if (goal.anyOf) {
    const held = goal.anyOf.filter((alternative) => whereHolds(alternative, where));
    if (held.length === 0) return goal;
    const anyOf = held.map((alternative) => freezeGoal(alternative, where, prefer));
    return anyOf.length === 1 ? anyOf[0] : { ...goal, anyOf };
  }
  if (goal.choice === undefined) return goal;
  const made = goal.choice.sets.filter((set) => notPlaced(where, set) === 0);
  const rank = (set: PieceSet): number => {
    const at = prefer.indexOf(set);
    return at < 0 ? prefer.length : at;
  };
  made.sort((a, b) => rank(a) - rank(b));
  const pieces = made.slice(0, goal.choice.atLeast).reduce((all, set) => all | set, 0);
  const { choice: _choice, ...rest } = goal;
  return { ...rest, conditions: [...goal.conditions, { kind: 'placed', pieces }] };
}
