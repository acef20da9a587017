/**
 * Depth-first search to a fixed number of turns, bounded below by distance tables: the inner part of
 * iterative deepening (Korf 1985, IDA*). It can be interrupted after any number of nodes and goes
 * on where it stopped, which is why it keeps its own stack.
 */
import { FACE_TURNS } from '../cube/turn.ts';
import { firstPair, secondPair, type DistanceTable } from './distances.ts';
import { FOLLOWS, PAIRS } from './places.ts';

const MAX_TURNS = 30;

export class Descent {
  nodes = 0;
  /** The turns on the way to the present node; the first `length` count when a leaf is reported. */
  readonly path = new Uint8Array(MAX_TURNS);
  readonly #tables: readonly DistanceTable[];
  /** `[depth * groups + group]`. */
  readonly #first: Uint16Array;
  readonly #second: Uint16Array;
  /** The next of the allowed turns to try, by depth. */
  readonly #next = new Uint8Array(MAX_TURNS + 1);
  readonly #allowed: Uint8Array;
  #depth = 0;
  #length = 0;

  /** `allowed`: face turns of the body in the order in which they are to be tried. */
  constructor(
    tables: readonly DistanceTable[],
    places: ArrayLike<number>,
    allowed: readonly number[],
  ) {
    this.#tables = tables;
    this.#first = new Uint16Array((MAX_TURNS + 1) * tables.length);
    this.#second = new Uint16Array((MAX_TURNS + 1) * tables.length);
    this.#allowed = Uint8Array.from(allowed);
    tables.forEach((table, group) => {
      this.#first[group] = firstPair(table, places);
      this.#second[group] = secondPair(table, places);
    });
  }

  /** Lower bound on the turns from the start. */
  bound(): number {
    return this.#tables.reduce(
      (most, table, group) =>
        Math.max(most, table.distances[this.#first[group] * PAIRS + this.#second[group]]),
      0,
    );
  }

  /** Begins anew, with sequences of exactly `length` turns. */
  restart(length: number): void {
    this.#length = length;
    this.#depth = 0;
    this.#next[0] = 0;
  }

  /**
   * Goes on for at most `budget` nodes. `'leaf'`: the first `length` turns of `path` bring every group
   * to distance 0; call again to go on. `'pause'`: the budget is used. `'end'`: no more of this length.
   */
  advance(budget: number): 'leaf' | 'pause' | 'end' {
    // Imports read in the loop are kept in locals: some loaders make each access a call.
    const follows = FOLLOWS;
    const turns = FACE_TURNS;
    const pairs = PAIRS;
    const tables = this.#tables;
    const groups = tables.length;
    const first = this.#first;
    const second = this.#second;
    const next = this.#next;
    const path = this.path;
    const allowed = this.#allowed;
    const length = this.#length;
    let depth = this.#depth;
    let left = budget;
    if (length === 0) {
      this.#depth = -1;
      return depth === 0 && this.bound() === 0 ? 'leaf' : 'end';
    }
    while (depth >= 0) {
      if (left <= 0) {
        this.#depth = depth;
        this.nodes += budget;
        return 'pause';
      }
      if (depth === length || next[depth] === allowed.length) {
        depth--;
        continue;
      }
      const turn = allowed[next[depth]++];
      if (!follows[(depth === 0 ? turns : path[depth - 1]) * turns + turn]) continue;
      left--;
      const from = depth * groups;
      const rest = length - depth - 1;
      let group = 0;
      for (; group < groups; group++) {
        const table = tables[group];
        const a = table.first[first[from + group] * turns + turn];
        const b = table.second[second[from + group] * turns + turn];
        if (table.distances[a * pairs + b] > rest) break;
        first[from + groups + group] = a;
        second[from + groups + group] = b;
      }
      if (group < groups) continue;
      path[depth++] = turn;
      next[depth] = 0;
      if (depth === length) {
        this.#depth = depth;
        this.nodes += budget - left;
        return 'leaf';
      }
    }
    this.#depth = depth;
    this.nodes += budget - left;
    return 'end';
  }
}
