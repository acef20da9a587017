/**
 * Depth-first search for exactly the solved cube, bounded below by the distances of the first phase
 * along all three axes at once. Near the solved cube this prunes so well that lengths up to a dozen
 * are gone through in a moment. Interruptible, with a stack of its own.
 */
import { CENTRE_AT, ROTATE } from '../cube/holding.ts';

import { SOLVED, applyTurns, held, rename, sameArrangement, type State } from '../cube/state.ts';
import { coordinatesOf } from './coordinates.ts';
import { FOLLOWS } from './places.ts';
import type { TwoPhaseTables } from './two-phase-tables.ts';

const MAX_TURNS = 24;
const AXES = 3;

/** As it lies, tipped to the front (x) and to the side (z): each axis is up once. */
export const AXIS_RENAMINGS: readonly number[] = [0, ROTATE[0][3 * 4 + 1], ROTATE[0][2 * 4 + 1]];

/** `[axis * 18 + turn]`: the turn as it is called in the renamed cube. */
const RENAMED_TURNS = Uint8Array.from({ length: AXES * 18 }, (_, at) => {
  const turn = at % 18;
  return CENTRE_AT[AXIS_RENAMINGS[(at / 18) | 0]][(turn / 3) | 0] * 3 + (turn % 3);
});

export class ExactDescent {
  nodes = 0;
  readonly path = new Uint8Array(MAX_TURNS + 1);
  readonly #tables: TwoPhaseTables;
  readonly #start: State;
  /** `[depth * 3 + axis]`. */
  readonly #twist = new Uint16Array((MAX_TURNS + 1) * AXES);
  readonly #flip = new Uint16Array((MAX_TURNS + 1) * AXES);
  readonly #set = new Uint16Array((MAX_TURNS + 1) * AXES);
  readonly #next = new Uint8Array(MAX_TURNS + 1);
  #depth = 0;
  #length = 0;

  constructor(tables: TwoPhaseTables, start: State) {
    this.#tables = tables;
    this.#start = held(start, 0);
    AXIS_RENAMINGS.forEach((renaming, axis) => {
      const { twist, flip, middle } = coordinatesOf(rename(this.#start, renaming));
      this.#twist[axis] = twist;
      this.#flip[axis] = flip;
      this.#set[axis] = (middle / 24) | 0;
    });
  }

  /** Lower bound on the turns from the start. */
  bound(): number {
    let most = 0;
    for (let axis = 0; axis < AXES; axis++) {
      const set = this.#set[axis];
      const twist = this.#twist[axis];
      const flip = this.#flip[axis];
      most = Math.max(
        most,
        this.#tables.twistMiddle[set * 2187 + twist],
        this.#tables.flipMiddle[set * 2048 + flip],
        this.#tables.twistFlip[flip * 2187 + twist],
      );
    }
    return most;
  }

  restart(length: number): void {
    this.#length = length;
    this.#depth = 0;
    this.#next[0] = 0;
  }

  /** As `Descent.advance`, but a leaf is solved. */
  advance(budget: number): 'leaf' | 'pause' | 'end' {
    const { twist, flip, middleSet, twistMiddle, flipMiddle, twistFlip } = this.#tables;
    const follows = FOLLOWS;
    const renamed = RENAMED_TURNS;
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
      return depth === 0 && sameArrangement(this.#start, SOLVED) ? 'leaf' : 'end';
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
      const from = depth * 3;
      let axis = 0;
      for (; axis < 3; axis++) {
        const own = renamed[axis * 18 + turn];
        const set = middleSet[sets[from + axis] * 18 + own];
        const t = twist[twists[from + axis] * 18 + own];
        if (twistMiddle[set * 2187 + t] > rest) break;
        const f = flip[flips[from + axis] * 18 + own];
        if (flipMiddle[set * 2048 + f] > rest) break;
        if (twistFlip[f * 2187 + t] > rest) break;
        sets[from + 3 + axis] = set;
        twists[from + 3 + axis] = t;
        flips[from + 3 + axis] = f;
      }
      if (axis < 3) continue;
      path[depth++] = turn;
      next[depth] = 0;
      if (depth === length && this.#solves()) {
        this.#depth = depth;
        this.nodes += budget - left;
        return 'leaf';
      }
    }
    this.#depth = depth;
    this.nodes += budget - left;
    return 'end';
  }

  #solves(): boolean {
    return sameArrangement(applyTurns(this.#start, this.path.subarray(0, this.#length)), SOLVED);
  }
}
