/**
 * Second phase: from turned-right pieces to the solved cube with half turns of the sides and any turns
 * of top and bottom, the shortest first. Interruptible, with a stack of its own.
 */
import { FOLLOWS } from './places.ts';
import { SECOND_TURNS, type TwoPhaseTables } from './two-phase-tables.ts';

const MAX_TURNS = 19;
const TURNS = SECOND_TURNS.length;

/** `[last * 10 + index]`, by turn of the first phase (18: none) or of the second. */
const SECOND_FOLLOWS = Uint8Array.from({ length: 19 * TURNS }, (_, at) => {
  const last = (at / TURNS) | 0;
  return FOLLOWS[last * 18 + SECOND_TURNS[at % TURNS]];
});

export class SecondPhase {
  nodes = 0;
  /** Indices into `SECOND_TURNS`; the first `length` count once found. */
  readonly path = new Uint8Array(MAX_TURNS + 1);
  length = 0;
  readonly #tables: TwoPhaseTables;
  readonly #corners = new Uint16Array(MAX_TURNS + 1);
  readonly #edges = new Uint16Array(MAX_TURNS + 1);
  readonly #middle = new Uint16Array(MAX_TURNS + 1);
  readonly #next = new Uint8Array(MAX_TURNS + 1);
  #depth = 0;
  #longest = 0;
  #last = 18;

  constructor(tables: TwoPhaseTables) {
    this.#tables = tables;
  }

  /** Begins anew after the turn `last`; false if at most `longest` turns cannot do it. */
  start(corners: number, edges: number, middle: number, last: number, longest: number): boolean {
    const { cornersMiddle, edgesMiddle } = this.#tables;
    const bound = Math.max(cornersMiddle[corners * 24 + middle], edgesMiddle[edges * 24 + middle]);
    if (bound > longest) return false;
    this.#corners[0] = corners;
    this.#edges[0] = edges;
    this.#middle[0] = middle;
    this.#longest = longest;
    this.#last = last;
    this.length = bound;
    this.#depth = 0;
    this.#next[0] = 0;
    return true;
  }

  advance(budget: number): 'found' | 'pause' | 'end' {
    const { cornersSecond, edgesSecond, middleSecond, cornersMiddle, edgesMiddle } = this.#tables;
    const follows = SECOND_FOLLOWS;
    const second = SECOND_TURNS;
    const cornersAt = this.#corners;
    const edgesAt = this.#edges;
    const middleAt = this.#middle;
    const next = this.#next;
    const path = this.path;
    let left = budget;
    if (this.length === 0) return 'found';
    for (; this.length <= this.#longest; this.length++) {
      const length = this.length;
      let depth = this.#depth;
      while (depth >= 0) {
        if (left <= 0) {
          this.#depth = depth;
          this.nodes += budget;
          return 'pause';
        }
        if (next[depth] === TURNS) {
          depth--;
          continue;
        }
        const turn = next[depth]++;
        const last = depth === 0 ? this.#last : second[path[depth - 1]];
        if (!follows[last * TURNS + turn]) continue;
        left--;
        const rest = length - depth - 1;
        const middle = middleSecond[middleAt[depth] * TURNS + turn];
        const corners = cornersSecond[cornersAt[depth] * TURNS + turn];
        if (cornersMiddle[corners * 24 + middle] > rest) continue;
        const edges = edgesSecond[edgesAt[depth] * TURNS + turn];
        if (edgesMiddle[edges * 24 + middle] > rest) continue;
        path[depth++] = turn;
        if (depth === length) {
          this.nodes += budget - left;
          return 'found';
        }
        cornersAt[depth] = corners;
        edgesAt[depth] = edges;
        middleAt[depth] = middle;
        next[depth] = 0;
      }
      this.#depth = 0;
      next[0] = 0;
    }
    this.nodes += budget - left;
    return 'end';
  }
}
