/**
 * Uniformly random states, whole or restricted by a pattern, by rejection: pieces that the pattern fixes
 * are put home, the others drawn freely, and the draw is repeated until it fits. So every fitting
 * state is equally likely, by construction and not by many random turns.
 */
import {
  ALL_CORNERS,
  ALL_EDGES,
  FIRST_CORNER,
  PIECES,
  piecesIn,
  type Piece,
} from '../cube/piece.ts';
import { isOdd } from '../cube/possible.ts';
import type { State } from '../cube/state.ts';
import { ANY_PLACE, placesFit, type Pattern, type PlaceMasks } from './pattern.ts';
import { homeOf, placesOf, slotOfPlace } from './places.ts';
import { shuffle, type Random } from './random.ts';

const MOST_TRIES = 4_000_000;

/** Draws states, each of the possible ones equally likely; undefined if none was found. */
export type StateSource = (random: Random) => State | undefined;

const anyState = makeDraw(new Int32Array(PIECES).fill(ANY_PLACE));

/** One of the 43,252,003,274,489,856,000 states, each equally likely; held white up, green in front. */
export function randomState(random: Random): State {
  const state = anyState(random);
  if (state === undefined) throw new Error('no state drawn');
  return state;
}

/**
 * States that meet one of the patterns, each such state equally likely.
 * The alternatives must have equally many states, as those of one goal have: they are images of each
 * other under a turn of a layer or of the whole cube. Overlaps are weighed out.
 */
export function statesIn(patterns: readonly Pattern[]): StateSource {
  const all = patterns
    .flatMap((pattern) => pattern.alternatives)
    .map((masks) => ({ draw: makeDraw(masks), pattern: { alternatives: [masks], pieces: 0 } }));
  return (random) => {
    if (all.length === 0) return undefined;
    for (;;) {
      const state = all[random.below(all.length)].draw(random);
      if (state === undefined) return undefined;
      const places = placesOf(state);
      const fitting = all.filter(({ pattern }) => placesFit(places, pattern)).length;
      // A state in several alternatives would be drawn more often.
      if (random.below(fitting) === 0) return state;
    }
  };
}

/** The free pieces of a kind and the slots they share. */
interface Kind {
  readonly pieces: readonly Piece[];
  readonly slots: Piece[];
  readonly turns: 2 | 3;
  /** Sum of the turns of the fixed pieces. */
  readonly sum: number;
  /** By index in `pieces`: the most turns that any slot allows it. */
  readonly most: readonly number[];
}

function makeDraw(masks: PlaceMasks): StateSource {
  const places = new Uint8Array(PIECES);
  const edges = makeKind(masks, places, 2);
  const corners = makeKind(masks, places, 3);
  const unfit = [edges, corners].some(({ pieces, slots }) => pieces.length !== slots.length);
  const fixed = edges.pieces.length + corners.pieces.length === 0;
  return (random) => {
    // Two pieces fixed in one slot leave a slot without a piece: nothing fits.
    if (unfit) return undefined;
    for (let tries = 0; tries < (fixed ? 1 : MOST_TRIES); tries++) {
      if (!drawKind(edges, places, masks, random)) continue;
      if (!drawKind(corners, places, masks, random)) continue;
      const state = stateOfPlaces(places);
      if (parityFits(state)) return state;
    }
    return undefined;
  };
}

/** Puts the fixed pieces of a kind into `places` and tells the others. */
function makeKind(masks: PlaceMasks, places: Uint8Array, turns: 2 | 3): Kind {
  const all = turns === 2 ? piecesIn(ALL_EDGES) : piecesIn(ALL_CORNERS);
  const taken = new Set<Piece>();
  const free: Piece[] = [];
  let sum = 0;
  for (const piece of all) {
    const bits = masks[piece];
    if (bits !== 0 && (bits & (bits - 1)) === 0) {
      places[piece] = 31 - Math.clz32(bits);
      taken.add(slotOfPlace(piece, places[piece]));
      sum += places[piece] % turns;
    } else free.push(piece);
  }
  const slots = all.filter((slot) => !taken.has(slot));
  // The last piece must take the turn that is left over; let it be the one that minds least.
  free.sort((a, b) => bitCount(masks[a]) - bitCount(masks[b]));
  const most = free.map((piece) =>
    Math.max(...slots.map((slot) => bitCount(allowedIn(masks[piece], slot, turns)))),
  );
  return { pieces: free, slots, turns, sum, most };
}

/** The allowed turns of a piece in a slot, as bits. */
function allowedIn(mask: number, slot: Piece, turns: number): number {
  return (mask >> homeOf(slot)) & ((1 << turns) - 1);
}

function bitCount(bits: number): number {
  let count = 0;
  for (let rest = bits; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/** Draws slots and turns for the free pieces of a kind; the last turn is what the sum demands. */
function drawKind(kind: Kind, places: Uint8Array, masks: PlaceMasks, random: Random): boolean {
  const { pieces, slots, turns } = kind;
  shuffle(slots, random);
  let sum = kind.sum;
  for (let i = 0; i < pieces.length; i++) {
    const allowed = allowedIn(masks[pieces[i]], slots[i], turns);
    let turned = (turns - (sum % turns)) % turns;
    if (i < pieces.length - 1) {
      // Slots that allow fewer turns must come up as much more rarely.
      let chosen = random.below(kind.most[i]);
      turned = 0;
      while (turned < turns && (!((allowed >> turned) & 1) || chosen-- > 0)) turned++;
    }
    if (turned === turns || !((allowed >> turned) & 1)) return false;
    sum += turned;
    places[pieces[i]] = homeOf(slots[i]) + turned;
  }
  return sum % turns === 0;
}

function stateOfPlaces(places: ArrayLike<number>): State {
  const edges = new Uint8Array(12);
  const corners = new Uint8Array(8);
  for (let piece = 0; piece < FIRST_CORNER; piece++) {
    edges[places[piece] >> 1] = piece * 2 + (places[piece] & 1);
  }
  for (let piece = FIRST_CORNER; piece < PIECES; piece++) {
    corners[(places[piece] / 3) | 0] = (piece - FIRST_CORNER) * 3 + (places[piece] % 3);
  }
  return { edges, corners, holding: 0 };
}

function parityFits(state: State): boolean {
  return (
    isOdd(Array.from(state.corners, (code) => (code / 3) | 0)) ===
    isOdd(Array.from(state.edges, (code) => code >> 1))
  );
}
