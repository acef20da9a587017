/**
 * Tables of the two-phase search: what each turn does to a coordinate, and exact distances for pairs
 * of coordinates as lower bounds. Built once (some 0.7 s, 12 MB) and kept in memory; a cache on disk
 * would save little and could go wrong.
 */
import {
  CORNER_ORDERS,
  FLIPS,
  FOUR_SLOTS,
  MIDDLE_SET,
  SLOT_SETS,
  TWISTS,
  makeCornerMoves,
  makeFlipMoves,
  makeFourMoves,
  makeTwistMoves,
} from './coordinates.ts';
import type { Search } from './step.ts';

/** Turns that keep all corners and edges turned right and the middle edges in the middle: U D free, the sides by halves. */
export const SECOND_TURNS: readonly number[] = [0, 1, 2, 15, 16, 17, 4, 7, 10, 13];
export const EDGE_ORDERS = 70 * 24 * 24;
const MIDDLE_ORDERS = 24;

export interface TwoPhaseTables {
  /** First phase, `[coordinate * 18 + turn]`. */
  readonly twist: Uint16Array;
  readonly flip: Uint16Array;
  /** Sets of slots of the middle edges. */
  readonly middleSet: Uint16Array;
  readonly four: Uint16Array;
  readonly corners: Uint16Array;
  /** Distances `[set * 2187 + twist]`, `[set * 2048 + flip]`, `[flip * 2187 + twist]`. */
  readonly twistMiddle: Uint8Array;
  readonly flipMiddle: Uint8Array;
  readonly twistFlip: Uint8Array;
  /** Second phase, `[coordinate * 10 + index in SECOND_TURNS]`. */
  readonly cornersSecond: Uint16Array;
  readonly edgesSecond: Uint16Array;
  readonly middleSecond: Uint16Array;
  /** Distances `[coordinate * 24 + order of the middle edges]`. */
  readonly cornersMiddle: Uint8Array;
  readonly edgesMiddle: Uint8Array;
}

let kept: TwoPhaseTables | undefined;

export function* twoPhaseTables(): Search<TwoPhaseTables> {
  kept ??= yield* buildTables();
  return kept;
}

export function dropTwoPhaseTables(): void {
  kept = undefined;
}

export function tableBytes(tables: TwoPhaseTables): number {
  const all = Object.values(tables) as (Uint8Array | Uint16Array)[];
  return all.reduce((sum, table) => sum + table.byteLength, 0);
}

function* buildTables(): Search<TwoPhaseTables> {
  const twist = yield* makeTwistMoves();
  const flip = yield* makeFlipMoves();
  const four = yield* makeFourMoves();
  const corners = yield* makeCornerMoves();
  const middleSet = new Uint16Array(SLOT_SETS * 18);
  for (let set = 0; set < SLOT_SETS; set++) {
    for (let turn = 0; turn < 18; turn++) {
      middleSet[set * 18 + turn] = (four[set * 24 * 18 + turn] / 24) | 0;
    }
  }
  const cornersSecond = second(corners, CORNER_ORDERS, 0);
  const middleSecond = second(four, MIDDLE_ORDERS, MIDDLE_SET * 24);
  const edgesSecond = makeEdgeMoves(four);
  yield { nodes: EDGE_ORDERS, depth: 0 };
  const all = 18;
  const halves = SECOND_TURNS.length;
  return {
    twist,
    flip,
    middleSet,
    four,
    corners,
    twistMiddle: yield* pairDistances(middleSet, SLOT_SETS, MIDDLE_SET, twist, TWISTS, all),
    flipMiddle: yield* pairDistances(middleSet, SLOT_SETS, MIDDLE_SET, flip, FLIPS, all),
    twistFlip: yield* pairDistances(flip, FLIPS, 0, twist, TWISTS, all),
    cornersSecond,
    edgesSecond,
    middleSecond,
    cornersMiddle: yield* pairDistances(
      cornersSecond,
      CORNER_ORDERS,
      0,
      middleSecond,
      MIDDLE_ORDERS,
      halves,
    ),
    edgesMiddle: yield* pairDistances(
      edgesSecond,
      EDGE_ORDERS,
      0,
      middleSecond,
      MIDDLE_ORDERS,
      halves,
    ),
  };
}

/** The part of a table for the turns of the second phase, from `offset` on and counted from there. */
function second(moves: Uint16Array, size: number, offset: number): Uint16Array {
  const turns = SECOND_TURNS;
  const result = new Uint16Array(size * turns.length);
  let at = 0;
  for (let from = 0; from < size; from++) {
    for (const turn of turns) result[at++] = moves[(from + offset) * 18 + turn] - offset;
  }
  return result;
}

/** The eight edges of top and bottom: `four edges of the top * 24 + order of those of the bottom`. */
function makeEdgeMoves(four: Uint16Array): Uint16Array {
  const turns = SECOND_TURNS;
  const slots = FOUR_SLOTS;
  const setOfSlots = new Uint16Array(256);
  const slotBits = (index: number): number =>
    (1 << slots[index]) |
    (1 << slots[index + 1]) |
    (1 << slots[index + 2]) |
    (1 << slots[index + 3]);
  for (let set = 0; set < 70; set++) setOfSlots[slotBits(set * 96)] = set;
  const result = new Uint16Array(EDGE_ORDERS * turns.length);
  for (let up = 0; up < 70 * 24; up++) {
    const downSet = setOfSlots[255 & ~slotBits(up * 4)];
    for (let order = 0; order < 24; order++) {
      const down = downSet * 24 + order;
      let at = (up * 24 + order) * turns.length;
      for (const turn of turns)
        result[at++] = four[up * 18 + turn] * 24 + (four[down * 18 + turn] % 24);
    }
  }
  return result;
}

const CHUNK = 2_500;

/** Distances `[a * sizeB + b]` from (`startA`, 0), where index 0 of b is its start, by breadth-first search. */
function* pairDistances(
  movesA: Uint16Array,
  sizeA: number,
  startA: number,
  movesB: Uint16Array,
  sizeB: number,
  turns: number,
): Search<Uint8Array> {
  const distances = new Uint8Array(sizeA * sizeB).fill(255);
  const queue = new Int32Array(sizeA * sizeB);
  queue[0] = startA * sizeB;
  distances[queue[0]] = 0;
  let head = 0;
  let tail = 1;
  while (head < tail) {
    const end = Math.min(tail, head + CHUNK);
    tail = expandPairs(distances, queue, head, end, tail, movesA, movesB, sizeB, turns);
    head = end;
    yield { nodes: head, depth: distances[queue[head - 1]] };
  }
  return distances;
}

function expandPairs(
  distances: Uint8Array,
  queue: Int32Array,
  head: number,
  end: number,
  tail: number,
  movesA: Uint16Array,
  movesB: Uint16Array,
  sizeB: number,
  turns: number,
): number {
  for (; head < end; head++) {
    const index = queue[head];
    const next = distances[index] + 1;
    const a = (index / sizeB) | 0;
    const fromA = a * turns;
    const fromB = (index - a * sizeB) * turns;
    for (let turn = 0; turn < turns; turn++) {
      const reached = movesA[fromA + turn] * sizeB + movesB[fromB + turn];
      if (distances[reached] === 255) {
        distances[reached] = next;
        queue[tail++] = reached;
      }
    }
  }
  return tail;
}
