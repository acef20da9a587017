/** States found again by what they are. */
import type { State } from '../../cube/state.ts';

/** A hash table with chains; equal hashes must still be compared. */
export class FactorTable {
  readonly #heads = new Map<number, number>();
  readonly #next: Int32Array;

  constructor(size: number) {
    this.#next = new Int32Array(size).fill(-1);
  }

  add(factor: State, index: number): void {
    const hash = hashOf(factor);
    this.#next[index] = this.#heads.get(hash) ?? -1;
    this.#heads.set(hash, index);
  }

  /** Index of the last factor added that may be equal; -1 if there is none. */
  find(wanted: State): number {
    return this.#heads.get(hashOf(wanted)) ?? -1;
  }

  next(index: number): number {
    return this.#next[index];
  }
}

function hashOf(state: State): number {
  let hash = state.holding + 1;
  for (let slot = 0; slot < 8; slot++)
    hash = (Math.imul(hash, 0x9e3779b1) + state.corners[slot]) | 0;
  for (let slot = 0; slot < 12; slot++)
    hash = (Math.imul(hash, 0x85ebca6b) + state.edges[slot]) | 0;
  return hash;
}
