/** Puts a step together and reads off the state what happens in it. */
import type { Holding } from '../../cube/holding.ts';
import { placedSet, whereIs, type Piece, type PieceSet } from '../../cube/piece.ts';
import { applyTurn, applyTurns, type State } from '../../cube/state.ts';
import type { Turn } from '../../cube/turn.ts';
import { simplify } from '../../notation/simplify.ts';
import { regrip } from './hands.ts';
import { repeated, topTurn } from './sequences.ts';
import type { Disturbance, PersonStep, Reason } from './step.ts';

export interface StepPlan {
  readonly stage: string;
  readonly reason: Reason;
  readonly piece?: Piece;
  readonly arrives: boolean;
  readonly holding: Holding;
  /** Quarter turns of the top before the sequence. */
  readonly quarters?: number;
  readonly sequence: readonly Turn[];
  readonly times?: number;
  /** What was made before and must be at home again afterwards. */
  readonly guarded: PieceSet;
}

export function makeStep(state: State, plan: StepPlan): PersonStep {
  const { piece, sequence, times = 1 } = plan;
  const way = regrip(state.holding, plan.holding);
  const setup = topTurn(plan.quarters ?? 0);
  const turns = [...way, ...simplify([...setup, ...repeated({ sequence, times })])];
  const after = applyTurns(state, turns);
  return {
    stage: plan.stage,
    reason: plan.reason,
    piece,
    from: piece === undefined ? undefined : whereIs(state, piece),
    to: piece === undefined ? undefined : whereIs(after, piece),
    arrives: plan.arrives,
    holding: plan.holding,
    regrip: way,
    setup,
    sequence,
    times,
    turns,
    disturbs: disturbance(state, turns, plan.guarded),
  };
}

/** Follows the guarded pieces through the turns; all of them are at home before. */
function disturbance(
  start: State,
  turns: readonly Turn[],
  guarded: PieceSet,
): Disturbance | undefined {
  let pieces = 0;
  let from = -1;
  let restoredBy = -1;
  let state = start;
  turns.forEach((turn, index) => {
    state = applyTurn(state, turn);
    const away = guarded & ~placedSet(state);
    if (away === 0) return;
    if (from < 0) from = index;
    pieces |= away;
    restoredBy = index + 1;
  });
  if (restoredBy === turns.length && turns.length > 0) {
    throw new Error('a step that loses what was made');
  }
  return from < 0 ? undefined : { pieces, from, restoredBy };
}
