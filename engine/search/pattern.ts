/**
 * Goals as patterns: for each piece the places that are accepted, as a mask of 24 bits. A goal that is
 * meant up to a turn of one layer has four alternatives, one for each turn of that layer.
 */
import {
  PIECES,
  faceletsOf,
  isCorner,
  piecesIn,
  setOf,
  type Piece,
  type PieceSet,
} from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import type { Condition, Goal } from '../goals/goal.ts';
import { PLACES, homeOf, movePlace, placesOf, slotOfPlace } from './places.ts';

export const ANY_PLACE = (1 << PLACES) - 1;

/** One mask per piece; `ANY_PLACE` for pieces that the goal says nothing about. */
export type PlaceMasks = Int32Array;

export interface Pattern {
  /** At least one; the pattern is met if all pieces fit the masks of one of them. */
  readonly alternatives: readonly PlaceMasks[];
  /** The pieces that some alternative speaks of. */
  readonly pieces: PieceSet;
}

function acceptedPlaces(condition: Condition, piece: Piece): number {
  const turns = isCorner(piece) ? 3 : 2;
  const home = homeOf(piece);
  switch (condition.kind) {
    case 'placed':
      return 1 << home;
    case 'positioned':
      return ((1 << turns) - 1) << home;
    case 'facing': {
      let mask = 0;
      const sticker = faceletsOf(piece).indexOf(condition.colour);
      for (let place = 0; place < PLACES; place++) {
        const faces = faceletsOf(slotOfPlace(piece, place));
        if (faces[(sticker + (place % turns)) % turns] === condition.colour) mask |= 1 << place;
      }
      return mask;
    }
  }
}

function makePattern(alternatives: readonly PlaceMasks[]): Pattern {
  const distinct = alternatives.filter(
    (masks, index) =>
      masks.every((mask) => mask !== 0) &&
      alternatives.findIndex((other) => other.every((mask, piece) => mask === masks[piece])) ===
        index,
  );
  const pieces: Piece[] = [];
  for (let piece = 0; piece < PIECES; piece++) {
    if (distinct.some((masks) => masks[piece] !== ANY_PLACE)) pieces.push(piece);
  }
  return { alternatives: distinct, pieces: setOf(pieces) };
}

export function patternOf(goal: Goal): Pattern {
  const masks = new Int32Array(PIECES).fill(ANY_PLACE);
  for (const condition of goal.conditions) {
    for (const piece of piecesIn(condition.pieces))
      masks[piece] &= acceptedPlaces(condition, piece);
  }
  if (goal.upTo === undefined) return makePattern([masks]);
  const alternatives = [masks];
  for (let amount = 1; amount <= 3; amount++) {
    const turn = goal.upTo * 3 + amount - 1;
    alternatives.push(masks.map((mask, piece) => placesBefore(mask, piece, turn)));
  }
  return makePattern(alternatives);
}

/** The places from which `turn` leads into the mask. */
function placesBefore(mask: number, piece: Piece, turn: number): number {
  let result = 0;
  for (let place = 0; place < PLACES; place++) {
    if (mask & (1 << movePlace(piece, place, turn))) result |= 1 << place;
  }
  return result;
}

/** Met where all the patterns are met. */
export function allOf(patterns: readonly Pattern[]): Pattern {
  let alternatives: PlaceMasks[] = [new Int32Array(PIECES).fill(ANY_PLACE)];
  for (const pattern of patterns) {
    alternatives = alternatives.flatMap((masks) =>
      pattern.alternatives.map((other) => masks.map((mask, piece) => mask & other[piece])),
    );
  }
  return makePattern(alternatives);
}

export function placesFit(places: ArrayLike<number>, pattern: Pattern): boolean {
  return pattern.alternatives.some((masks) => {
    for (let piece = 0; piece < PIECES; piece++)
      if (!(masks[piece] & (1 << places[piece]))) return false;
    return true;
  });
}

export function patternHolds(state: State, pattern: Pattern): boolean {
  return placesFit(placesOf(state), pattern);
}
