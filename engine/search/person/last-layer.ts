/**
 * The last layer with one sequence for each thing: a cross of the top's colour, the corners turned, the
 * corners arranged, the edges cycled. Each step looks for the holding in which its sequence works.
 */
import type { Holding } from '../../cube/holding.ts';
import type { PieceSet } from '../../cube/piece.ts';
import { applyTurns, held, type State } from '../../cube/state.ts';
import type { Turn } from '../../cube/turn.ts';
import { goalHolds } from '../../goals/judge.ts';
import type { Goal } from '../../goals/goal.ts';
import { B, F, L, R, U, colourShown, holdingsOn, sideShowing } from './hands.ts';
import { makeStep } from './make-step.ts';
import {
  ANGLE_TO_CROSS,
  CYCLE_CORNERS,
  EDGES_CLOCKWISE,
  EDGES_COUNTER,
  LINE_TO_CROSS,
  TURN_CORNERS,
  topTurn,
} from './sequences.ts';
import type { PersonStep, Reason } from './step.ts';

/** The sides in the order in which they follow each other clockwise as seen from above. */
const SIDES = [F, L, B, R];
const CORNERS_ROUND = SIDES.map((side, i) => [U, side, SIDES[(i + 1) % 4]]);

interface Recognised {
  readonly reason: Reason;
  readonly holding: Holding;
  readonly sequence: readonly Turn[];
  readonly quarters?: number;
}

/** The next step of a last-layer goal that does not hold yet; everything below is home. */
export function nextLastLayer(
  state: State,
  goal: Goal,
  base: number,
  top: number,
  guarded: PieceSet,
): PersonStep {
  const seen = recognise(state, goal.name, base, top);
  const plan = { stage: goal.name, arrives: false, guarded, ...seen };
  const step = makeStep(state, plan);
  return { ...step, arrives: goalHolds(goal, applyTurns(state, step.turns)) };
}

function recognise(state: State, stage: string, base: number, top: number): Recognised {
  const holdings = holdingsOn(base, state.holding);
  switch (stage) {
    case 'top cross':
      return recogniseEdges(state, holdings, top);
    case 'top face':
      return recogniseCorners(state, holdings, top);
    case 'top corners':
      return recogniseHeadlights(state, holdings);
    default:
      return recogniseFinishedSide(state, holdings);
  }
}

/** The sides whose top edge shows the top's colour upwards. */
function edgesUp(state: State, holding: Holding, top: number): number[] {
  return SIDES.filter((side) => sideShowing(state, holding, [U, side], top) === U);
}

function recogniseEdges(state: State, holdings: readonly Holding[], top: number): Recognised {
  const count = edgesUp(state, holdings[0], top).length;
  if (count === 0) return { reason: 'dot', holding: holdings[0], sequence: LINE_TO_CROSS };
  const line = holdings.find((holding) => {
    const up = edgesUp(state, holding, top);
    return up.includes(L) && up.includes(R);
  });
  if (line !== undefined) return { reason: 'line', holding: line, sequence: LINE_TO_CROSS };
  const angle = holdings.find((holding) => {
    const up = edgesUp(state, holding, top);
    return up.includes(F) && up.includes(R);
  });
  if (angle === undefined) throw new Error('a single top edge turned right');
  return { reason: 'angle', holding: angle, sequence: ANGLE_TO_CROSS };
}

function recogniseCorners(state: State, holdings: readonly Holding[], top: number): Recognised {
  const count = CORNERS_ROUND.filter(
    (faces) => sideShowing(state, holdings[0], faces, top) === U,
  ).length;
  const [reason, side]: [Reason, number] =
    count === 1
      ? ['one-corner-right', U]
      : count === 2
        ? ['two-corners-right', F]
        : ['no-corner-right', L];
  const holding = holdings.find((own) => sideShowing(state, own, [U, F, L], top) === side);
  if (holding === undefined) throw new Error('top corners that cannot be');
  return { reason, holding, sequence: TURN_CORNERS };
}

/** Whether both corners of a side of the top show the same colour on it. */
export function hasHeadlights(state: State, holding: Holding, side: number): boolean {
  const [left, right] = CORNERS_ROUND.filter((faces) => faces.includes(side));
  return colourShown(state, holding, left, side) === colourShown(state, holding, right, side);
}

function recogniseHeadlights(state: State, holdings: readonly Holding[]): Recognised {
  const holding = holdings.find((own) => hasHeadlights(state, own, B));
  return holding === undefined
    ? { reason: 'no-headlights', holding: holdings[0], sequence: CYCLE_CORNERS }
    : { reason: 'headlights', holding, sequence: CYCLE_CORNERS };
}

/** Whether the edge and the corners of a side of the top show one colour on it. */
export function isFinished(state: State, holding: Holding, side: number): boolean {
  const corner = CORNERS_ROUND.find((faces) => faces.includes(side)) ?? [];
  return (
    hasHeadlights(state, holding, side) &&
    colourShown(state, holding, corner, side) === colourShown(state, holding, [U, side], side)
  );
}

function recogniseFinishedSide(state: State, holdings: readonly Holding[]): Recognised {
  const finished = SIDES.filter((side) => isFinished(state, holdings[0], side)).length;
  if (finished === 4) return recogniseLastTurn(state, holdings[0]);
  const holding = holdings.find((own) => isFinished(state, own, B));
  if (holding === undefined) {
    return { reason: 'no-finished-side', holding: holdings[0], sequence: EDGES_CLOCKWISE };
  }
  const after = applyTurns(held(state, holding), EDGES_CLOCKWISE);
  return SIDES.every((side) => isFinished(after, holding, side))
    ? { reason: 'three-edges-clockwise', holding, sequence: EDGES_CLOCKWISE }
    : { reason: 'three-edges-counter-clockwise', holding, sequence: EDGES_COUNTER };
}

function recogniseLastTurn(state: State, holding: Holding): Recognised {
  for (let quarters = 1; quarters < 4; quarters++) {
    const sequence = topTurn(quarters);
    const after = applyTurns(held(state, holding), sequence);
    const front = colourShown(after, holding, [U, F], F);
    const below = colourShown(after, holding, [F, R], F);
    if (front === below) return { reason: 'last-turn', holding, sequence };
  }
  throw new Error('a last turn that is none');
}
