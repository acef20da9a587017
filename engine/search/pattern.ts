/**
 * Goals as patterns: for each piece the places that are accepted, as a mask of 24 bits.
 *
 * A goal that is meant up to a turn of a layer or slice has an alternative for each such turn. A goal
 * that leaves open which pairs or which side has several patterns: each is searched by itself, as
 * its distances then say more.
 */
import { PIECES, piecesIn, setOf, type Piece, type PieceSet } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import type { Goal } from '../goals/goal.ts';
import { compileGoal } from '../goals/judge.ts';
import { PLACES, homeOf, placesOf } from './places.ts';

export const ANY_PLACE = (1 << PLACES) - 1;

/** One mask per piece; `ANY_PLACE` for pieces that the goal says nothing about. */
export type PlaceMasks = Int32Array;

export interface Pattern {
  /** At least one; the pattern is met if all pieces fit the masks of one of them. */
  readonly alternatives: readonly PlaceMasks[];
  /** The pieces that some alternative speaks of. */
  readonly pieces: PieceSet;
}

/** Whether all that fits `narrow` fits `wide`. */
function fitsInto(narrow: PlaceMasks, wide: PlaceMasks): boolean {
  return narrow.every((mask, piece) => (mask & ~wide[piece]) === 0);
}

function makePattern(alternatives: readonly PlaceMasks[]): Pattern {
  const possible = alternatives.filter((masks) => masks.every((mask) => mask !== 0));
  const needed = possible.filter(
    (masks, index) =>
      !possible.some(
        (other, j) =>
          j !== index && fitsInto(masks, other) && (j < index || !fitsInto(other, masks)),
      ),
  );
  const pieces: Piece[] = [];
  for (let piece = 0; piece < PIECES; piece++) {
    if (needed.some((masks) => masks[piece] !== ANY_PLACE)) pieces.push(piece);
  }
  return { alternatives: needed, pieces: setOf(pieces) };
}

/** The patterns of a goal: it holds where one of them is met. */
export function patternsOf(goal: Goal): Pattern[] {
  if (goal.anyOf) return withoutNarrower(goal.anyOf.flatMap(patternsOf));
  const { demands, choice } = compileGoal(goal);
  const pattern = makePattern(
    demands.map(({ pieces, allowed }) => {
      const masks = new Int32Array(PIECES).fill(ANY_PLACE);
      for (const piece of pieces) masks[piece] = allowed[piece];
      return masks;
    }),
  );
  if (choice === undefined) return [pattern];
  return choose(choice.sets, choice.atLeast).map((set) => both(pattern, placedPattern(set)));
}

/** All pieces of the set in their own slots and turned right. */
export function placedPattern(set: PieceSet): Pattern {
  const masks = new Int32Array(PIECES).fill(ANY_PLACE);
  for (const piece of piecesIn(set)) masks[piece] = 1 << homeOf(piece);
  return makePattern([masks]);
}

/** The unions of `count` of the sets. */
function choose(sets: readonly PieceSet[], count: number): PieceSet[] {
  if (count === 0) return [0];
  return sets.flatMap((set, index) =>
    choose(sets.slice(index + 1), count - 1).map((rest) => set | rest),
  );
}

/** Met where both are. */
function both(a: Pattern, b: Pattern): Pattern {
  return makePattern(
    a.alternatives.flatMap((masks) =>
      b.alternatives.map((other) => masks.map((mask, piece) => mask & other[piece])),
    ),
  );
}

/** The patterns of several goals at once: all of them hold where one of the patterns is met. */
export function patternsOfAll(goals: readonly Goal[]): Pattern[] {
  let patterns: Pattern[] = [makePattern([new Int32Array(PIECES).fill(ANY_PLACE)])];
  for (const goal of goals) {
    const own = patternsOf(goal);
    patterns = withoutNarrower(patterns.flatMap((a) => own.map((b) => both(a, b))));
  }
  return patterns;
}

/** Without those that cannot be met and those that are met only where another one is, too. */
function withoutNarrower(patterns: readonly Pattern[]): Pattern[] {
  const covers = (wide: Pattern, narrow: Pattern): boolean =>
    narrow.alternatives.every((masks) => wide.alternatives.some((other) => fitsInto(masks, other)));
  const possible = patterns.filter((pattern) => pattern.alternatives.length > 0);
  return possible.filter(
    (pattern, index) =>
      !possible.some(
        (other, j) =>
          j !== index && covers(other, pattern) && (j < index || !covers(pattern, other)),
      ),
  );
}

export function placesFit(places: ArrayLike<number>, pattern: Pattern): boolean {
  return pattern.alternatives.some((masks) => {
    for (let piece = 0; piece < PIECES; piece++) {
      if (!(masks[piece] & (1 << places[piece]))) return false;
    }
    return true;
  });
}

export function patternHolds(state: State, pattern: Pattern): boolean {
  return placesFit(placesOf(state), pattern);
}
