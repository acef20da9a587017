/**
 * First phase: all sequences of exactly so many face turns that turn all pieces right and bring the
 * middle edges into the middle layer. Interruptible, with a stack of its own.
 */
import type { PhaseOne } from './coordinates.ts';
import { MIDDLE_SET } from './coordinates.ts';
import { FOLLOWS } from './places.ts';
import type { TwoPhaseTables } from './two-phase-tables.ts';

const MAX_TURNS = 24;

export class FirstPhase {
  nodes = 0;
  readonly path = new Uint8Array(MAX_TURNS + 1);
  /** Coordinates of the leaf for the second phase, after `settle`. */
  corners = 0;
  up = 0;
  down = 0;
  middle = 0;
  readonly #tables: TwoPhaseTables;
  readonly #twist = new Uint16Array(MAX_TURNS + 1);
  readonly #flip = new Uint16Array(MAX_TURNS + 1);
  readonly #set = new Uint16Array(MAX_TURNS + 1);
  readonly #next = new Uint8Array(MAX_TURNS + 1);
  readonly #start: PhaseOne;
  #depth = 0;
  #length = 0;

  constructor(tables: TwoPhaseTables, start: PhaseOne) {
    this.#tables = tables;
    this.#start = start;
    this.#twist[0] = start.twist;
    this.#flip[0] = start.flip;
    this.#set[0] = (start.middle / 24) | 0;
  }

  bound(): number {
    const { twistMiddle, flipMiddle, twistFlip } = this.#tables;
    return Math.max(
      twistMiddle[this.#set[0] * 2187 + this.#twist[0]],
      flipMiddle[this.#set[0] * 2048 + this.#flip[0]],
      twistFlip[this.#flip[0] * 2187 + this.#twist[0]],
    );
  }

  restart(length: number): void {
    this.#length = length;
    this.#depth = 0;
    this.#next[0] = 0;
  }

  /** As `Descent.advance`. */
  advance(budget: number): 'leaf' | 'pause' | 'end' {
    const { twist, flip, middleSet, twistMiddle, flipMiddle, twistFlip } = this.#tables;
    const follows = FOLLOWS;
    const twists = this.#twist;
    const flips = this.#flip;
    const sets = this.#set;
    const next = this.#next;
    const path = this.path;
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
      if (depth === length || next[depth] === 18) {
        depth--;
        continue;
      }
      const turn = next[depth]++;
      if (!follows[(depth === 0 ? 18 : path[depth - 1]) * 18 + turn]) continue;
      left--;
      const rest = length - depth - 1;
      const set = middleSet[sets[depth] * 18 + turn];
      const t = twist[twists[depth] * 18 + turn];
      if (twistMiddle[set * 2187 + t] > rest) continue;
      const f = flip[flips[depth] * 18 + turn];
      if (flipMiddle[set * 2048 + f] > rest) continue;
      if (twistFlip[f * 2187 + t] > rest) continue;
      path[depth++] = turn;
      if (depth === length) {
        this.#depth = depth;
        this.nodes += budget - left;
        return 'leaf';
      }
      twists[depth] = t;
      flips[depth] = f;
      sets[depth] = set;
      next[depth] = 0;
    }
    this.#depth = depth;
    this.nodes += budget - left;
    return 'end';
  }

  /** Works out the coordinates of the second phase at a leaf. */
  settle(): void {
    const { corners, four } = this.#tables;
    let { corners: order, up, down, middle } = this.#start;
    for (let i = 0; i < this.#length; i++) {
      const turn = this.path[i];
      order = corners[order * 18 + turn];
      up = four[up * 18 + turn];
      down = four[down * 18 + turn];
      middle = four[middle * 18 + turn];
    }
    this.corners = order;
    this.up = up;
    this.down = down;
    this.middle = middle - MIDDLE_SET * 24;
  }
}
