/**
 * The course of a block: its start and every executed turn, with the state at any place of it.
 *
 * Places count from 0 (before the first turn) to `length` (after the last). States are kept only at
 * every 32nd place and worked out from there, so that a hundred thousand turns stay small.
 */
import { applyTurn, compose, type State } from '../cube/state.ts';

/** What is no single turn: a repeat that is done as one step, or an unknown stretch. */
export type Jump =
  | { readonly kind: 'power'; readonly effect: State }
  | { readonly kind: 'gap'; readonly after: State | undefined };

/** In `codes`: look the step up in `jumps`. */
export const JUMP = -1;

const SPACING = 32;

export interface Course {
  readonly length: number;
  /** Turn codes, or `JUMP`, by index. */
  readonly codes: ArrayLike<number>;
  readonly jumps: ReadonlyMap<number, Jump>;
  /** The state at a place; undefined where it is unknown (no start, or after a gap). */
  stateAt(place: number): State | undefined;
}

export function makeCourse(
  start: State | undefined,
  codes: ArrayLike<number>,
  jumps: ReadonlyMap<number, Jump> = new Map(),
): Course {
  const kept: (State | undefined)[] = [start];
  let last: { place: number; state: State | undefined } = { place: 0, state: start };
  const step = (state: State | undefined, index: number): State | undefined => {
    const code = codes[index];
    if (code !== JUMP) return state && applyTurn(state, code);
    const jump = jumps.get(index);
    if (jump?.kind === 'gap') return jump.after;
    return state && jump && compose(state, jump.effect);
  };
  const stateAt = (place: number): State | undefined => {
    if (place < 0 || place > codes.length) throw new RangeError(`no place ${String(place)}`);
    if (last.place === place) return last.state;
    let from = Math.min(Math.floor(place / SPACING), kept.length - 1) * SPACING;
    let state = kept[from / SPACING];
    if (last.place < place && last.place > from) ({ place: from, state } = last);
    while (from < place) {
      state = step(state, from);
      from++;
      if (from === kept.length * SPACING) kept.push(state);
    }
    last = { place, state };
    return state;
  };
  return { length: codes.length, codes, jumps, stateAt };
}
