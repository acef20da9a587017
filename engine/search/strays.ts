/**
 * A learner's cube that no longer looks like the solve's: the place in the solve where it would look so,
 * or else the single slip that explains it, and the way back.
 */
import { HOLDINGS, type Holding } from '../cube/holding.ts';
import {
  compose,
  held,
  invertState,
  sameArrangement,
  sameState,
  type State,
} from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import { fillGap } from './gaps.ts';
import { SlipCourse } from './slips/course.ts';
import { singleEdits, type SlipEdit } from './slips/edits.ts';
import { FactorTable } from './slips/factor-table.ts';
import { STEP_STATES, type Search } from './step.ts';

export interface StraySlip {
  /** What the learner did instead of what is written: the edit turns the text into it. */
  readonly edit: SlipEdit;
  /** The turns of the text that were done up to now. */
  readonly place: number;
}

export interface Stray {
  /** Places (turn counts) where the solve looks just so, however held. */
  readonly places: readonly number[];
  /** Single slips that explain the cube, the likeliest first; none are sought where a place fits. */
  readonly slips: readonly StraySlip[];
  /** Face turns from the cube to the solve at `place`, proven shortest if so marked. */
  readonly back:
    | { readonly place: number; readonly turns: readonly Turn[]; readonly optimal: boolean }
    | undefined;
}

/**
 * Compares `cube` (held as `expected`'s holding; only its arrangement counts) with the states of a solve
 * of `turns` from `start`. `expected` is the place where the learner believes to be.
 */
export function* findStray(
  start: State,
  turns: readonly Turn[],
  cube: State,
  expected: number,
): Search<Stray> {
  const course = new SlipCourse(start, turns);
  const places = course.before.flatMap((state, place) =>
    sameArrangement(state, cube) ? [place] : [],
  );
  const near = (a: number, b: number): number => Math.abs(a - expected) - Math.abs(b - expected);
  places.sort(near);
  if (places.length > 0) return { places, slips: [], back: undefined };
  const slips = yield* explain(course, cube, expected);
  const target = course.before[expected];
  const result = yield* fillGap(held(cube, target.holding), target);
  const back =
    result.kind === 'found'
      ? { place: expected, turns: result.turns, optimal: result.optimal }
      : undefined;
  return { places, slips, back };
}

/** An edit with factor `e` leads to `e · state at the place`: so the wanted factors are `cube · state⁻¹`, in any holding. */
function* explain(course: SlipCourse, cube: State, expected: number): Search<StraySlip[]> {
  const edits = singleEdits(course.turns);
  const table = new FactorTable(edits.length);
  const back = course.before.map(invertState);
  const factors: State[] = [];
  for (let i = 0; i < edits.length; i++) {
    const edit = edits[i];
    const factor = compose(course.afterEdit(edit), back[edit.index + edit.remove]);
    factors.push(factor);
    table.add(factor, i);
    if (i % STEP_STATES === STEP_STATES - 1) yield { nodes: i + 1, depth: 1 };
  }
  const found: StraySlip[] = [];
  for (let place = 0; place < back.length; place++) {
    if (place % 40 === 39) yield { nodes: edits.length + place * HOLDINGS, depth: 2 };
    for (let holding: Holding = 0; holding < HOLDINGS; holding++) {
      const wanted = compose(held(cube, holding), back[place]);
      for (let i = table.find(wanted); i >= 0; i = table.next(i)) {
        const edit = edits[i];
        if (edit.index + edit.remove > place || !sameState(factors[i], wanted)) continue;
        found.push({ edit, place });
      }
    }
  }
  return found.sort(
    (a, b) =>
      Math.abs(a.place - expected) - Math.abs(b.place - expected) || b.edit.weight - a.edit.weight,
  );
}
