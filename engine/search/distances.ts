/**
 * Distances by exhaustive search: for up to four pieces, the number of face turns from each of their
 * places (24⁴ = 331,776 entries, not all of them possible) to the nearest accepted one.
 *
 * Exact for a goal of up to four pieces, a lower bound for any goal that contains them. One byte per
 * entry; a table takes some 15 ms to build.
 */
import { isCorner, type Piece } from '../cube/piece.ts';
import { FACE_TURNS } from '../cube/turn.ts';
import { PAIRS, PLACES, pairMovesOf, slotOfPlace } from './places.ts';
import { STEP_NODES, type Search } from './step.ts';

export const GROUP_SIZE = 4;
export const UNREACHED = 255;

export interface DistanceTable {
  /** One to four pieces. */
  readonly pieces: readonly Piece[];
  /** By `pairIndex(places of the first two) * 576 + pairIndex(places of the others)`. */
  readonly distances: Uint8Array;
  /** `[pair * 18 + turn]`. */
  readonly first: Uint16Array;
  readonly second: Uint16Array;
}

/**
 * Builds a table. `accepted` holds alternatives, each with one 24-bit mask of accepted places per
 * piece; a state is at distance 0 if it fits one of the alternatives.
 */
export function* buildDistances(
  pieces: readonly Piece[],
  accepted: readonly (readonly number[])[],
): Search<DistanceTable> {
  const first = pairMovesOf(pieces[0], pieces[1]);
  const second = pairMovesOf(pieces[2], pieces[3]);
  const distances = new Uint8Array(PAIRS * PAIRS).fill(UNREACHED);
  const queue = new Int32Array(PAIRS * PAIRS);
  let tail = 0;
  for (const masks of accepted) tail = addStarts(pieces, masks, distances, queue, tail);
  let head = 0;
  while (head < tail) {
    // An entry costs 18 look-ups, so a step of table building is counted in turns tried.
    const end = Math.min(tail, head + Math.ceil(STEP_NODES / 4));
    tail = expand(distances, queue, head, end, tail, first, second);
    head = end;
    yield { nodes: head, depth: distances[queue[head - 1]] };
  }
  return { pieces, distances, first, second };
}

/** Marks all accepted combinations in which no two pieces share a slot. */
function addStarts(
  pieces: readonly Piece[],
  masks: readonly number[],
  distances: Uint8Array,
  queue: Int32Array,
  tail: number,
): number {
  const options = Array.from({ length: GROUP_SIZE }, (_, i) => {
    const places: number[] = [];
    if (i >= pieces.length) places.push(0);
    else
      for (let place = 0; place < PLACES; place++) if (masks[i] & (1 << place)) places.push(place);
    return places;
  });
  const clash = (i: number, a: number, j: number, b: number): boolean =>
    j < pieces.length &&
    isCorner(pieces[i]) === isCorner(pieces[j]) &&
    slotOfPlace(pieces[i], a) === slotOfPlace(pieces[j], b);
  for (const a of options[0]) {
    for (const b of options[1]) {
      if (clash(0, a, 1, b)) continue;
      for (const c of options[2]) {
        if (clash(0, a, 2, c) || clash(1, b, 2, c)) continue;
        for (const d of options[3]) {
          if (clash(0, a, 3, d) || clash(1, b, 3, d) || clash(2, c, 3, d)) continue;
          const index = (a * PLACES + b) * PAIRS + c * PLACES + d;
          if (distances[index] === UNREACHED) {
            distances[index] = 0;
            queue[tail++] = index;
          }
        }
      }
    }
  }
  return tail;
}

function expand(
  distances: Uint8Array,
  queue: Int32Array,
  head: number,
  end: number,
  tail: number,
  first: Uint16Array,
  second: Uint16Array,
): number {
  const turns = FACE_TURNS;
  const pairs = PAIRS;
  for (; head < end; head++) {
    const index = queue[head];
    const next = distances[index] + 1;
    const pair = (index / pairs) | 0;
    const from1 = pair * turns;
    const from2 = (index - pair * pairs) * turns;
    for (let turn = 0; turn < turns; turn++) {
      const reached = first[from1 + turn] * pairs + second[from2 + turn];
      if (distances[reached] === UNREACHED) {
        distances[reached] = next;
        queue[tail++] = reached;
      }
    }
  }
  return tail;
}

/** Index of the places of the first two pieces, and of the other two. */
export function firstPair(table: DistanceTable, places: ArrayLike<number>): number {
  return pairIndex(table.pieces[0], table.pieces[1], places);
}

export function secondPair(table: DistanceTable, places: ArrayLike<number>): number {
  return pairIndex(table.pieces[2], table.pieces[3], places);
}

function pairIndex(a: Piece | undefined, b: Piece | undefined, places: ArrayLike<number>): number {
  return (a === undefined ? 0 : places[a]) * PLACES + (b === undefined ? 0 : places[b]);
}

export function distanceIn(table: DistanceTable, places: ArrayLike<number>): number {
  return table.distances[firstPair(table, places) * PAIRS + secondPair(table, places)];
}

/** How many states of the table's pieces lie at each distance. */
export function countDistances(table: DistanceTable): number[] {
  const counts: number[] = [];
  for (const distance of table.distances) {
    if (distance !== UNREACHED) counts[distance] = (counts[distance] ?? 0) + 1;
  }
  return counts;
}
