/**
 * Pairs of edits by meeting in the middle. An edit at one place changes the whole sequence by one
 * factor: with `e = (state after the edit) · (state at the same place as written)⁻¹`, the edited
 * sequence ends at `e · end`. Two edits, the first before the second, end at `e₁ · e₂ · end`; that is
 * a solved cube in holding h if `e₂ = e₁⁻¹ · h · end⁻¹`. So all factors go into one table, and each
 * edit asks it for its partners: thousands of look-ups instead of millions of pairs.
 */
import { HOLDINGS, COMPOSE_HOLDINGS, INVERSE_HOLDING } from '../../cube/holding.ts';
import { SOLVED, compose, held, invertState, sameState, type State } from '../../cube/state.ts';
import { STEP_STATES, type Search } from '../step.ts';
import type { SlipCourse } from './course.ts';
import type { SlipEdit } from './edits.ts';
import { FactorTable } from './factor-table.ts';

/** More pairs than this are not collected: then no pair explains much. */
const MOST_PAIRS = 2_000;

/** Pairs of disjoint edits, in the order of their places, after which the course ends solved. */
export function* pairsThatSolve(
  course: SlipCourse,
  edits: readonly SlipEdit[],
): Search<(readonly [SlipEdit, SlipEdit])[]> {
  const back = course.before.map(invertState);
  const factors: State[] = [];
  const table = new FactorTable(edits.length);
  const holdings = new Set<number>();
  for (let i = 0; i < edits.length; i++) {
    const edit = edits[i];
    const factor = compose(course.afterEdit(edit), back[edit.index + edit.remove]);
    factors.push(factor);
    holdings.add(factor.holding);
    table.add(factor, i);
    if (i % STEP_STATES === STEP_STATES - 1) yield { nodes: i + 1, depth: 1 };
  }
  const end = back[back.length - 1];
  const goals = Array.from({ length: HOLDINGS }, (_, holding) =>
    compose(held(SOLVED, holding), end),
  );
  const pairs: [SlipEdit, SlipEdit][] = [];
  let nodes = edits.length;
  let reported = nodes;
  for (let i = 0; i < edits.length && pairs.length < MOST_PAIRS; i++) {
    const first = edits[i];
    const inverse = invertState(factors[i]);
    const after = first.index + first.remove;
    for (const holding of holdings) {
      // The final holding in which the partner's factor has this holding.
      const own = COMPOSE_HOLDINGS[INVERSE_HOLDING[inverse.holding]][holding];
      const final = COMPOSE_HOLDINGS[own][INVERSE_HOLDING[end.holding]];
      const wanted = compose(inverse, goals[final]);
      nodes++;
      for (let j = table.find(wanted); j >= 0; j = table.next(j)) {
        const second = edits[j];
        if (j <= i || second.index < after || !sameState(factors[j], wanted)) continue;
        pairs.push([first, second]);
      }
    }
    if (nodes - reported >= STEP_STATES) {
      reported = nodes;
      const signal = yield { nodes, depth: 2 };
      if (signal === 'stop') break;
    }
  }
  return pairs;
}
