/** The states along a sequence and what the rest of it does, so that an edit is tried by composing, not by replaying. */
import {
  applyTurn,
  applyTurns,
  compose,
  invertState,
  rename,
  type State,
} from '../../cube/state.ts';
import { HOLDINGS, COMPOSE_HOLDINGS, INVERSE_HOLDING } from '../../cube/holding.ts';
import type { Turn } from '../../cube/turn.ts';
import type { SlipEdit } from './edits.ts';

export class SlipCourse {
  readonly turns: readonly Turn[];
  /** State at each place, 0 … length. */
  readonly before: readonly State[];
  /** What undoes all turns from each place on. */
  readonly #undone: readonly State[];
  /** By place * 24 + holding: the arrangement from which the rest solves the cube. */
  readonly #wanted: (State | undefined)[] = [];

  constructor(start: State, turns: readonly Turn[]) {
    this.turns = turns;
    const before = [start];
    for (const turn of turns) before.push(applyTurn(before[before.length - 1], turn));
    this.before = before;
    // What is left of the turns is (start · first turns)⁻¹ · end.
    const end = invertState(before[before.length - 1]);
    this.#undone = before.map((state) => compose(end, state));
  }

  get end(): State {
    return this.before[this.before.length - 1];
  }

  /** The state right after an edit, at the place where the written turns go on. */
  afterEdit(edit: SlipEdit): State {
    return applyTurns(this.before[edit.index], edit.turns);
  }

  /** Whether the turns from `place` on solve this state, in whatever holding it ends. */
  isSolvedBy(state: State, place: number): boolean {
    const key = place * HOLDINGS + state.holding;
    let wanted = this.#wanted[key];
    if (!wanted) {
      // state · rest = a solved cube in some holding h, so state = that cube · rest⁻¹.
      const undone = this.#undone[place];
      const final = COMPOSE_HOLDINGS[state.holding][INVERSE_HOLDING[undone.holding]];
      wanted = rename(undone, final);
      this.#wanted[key] = wanted;
    }
    for (let slot = 0; slot < 8; slot++)
      if (state.corners[slot] !== wanted.corners[slot]) return false;
    for (let slot = 0; slot < 12; slot++)
      if (state.edges[slot] !== wanted.edges[slot]) return false;
    return true;
  }

  /** The effect of all turns from `place` on. */
  rest(place: number): State {
    return invertState(this.#undone[place]);
  }
}
