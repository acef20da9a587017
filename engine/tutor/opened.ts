/** What turns that are not in the text do to goals: which parts are made, what opens and closes on the way. */
import { placedSet, type PieceSet } from '../cube/piece.ts';
import { applyTurn, type State } from '../cube/state.ts';
import { isRotation, printTurn, type Turn } from '../cube/turn.ts';
import type { Goal } from '../goals/goal.ts';
import {
  goalHolds,
  goalMissing,
  makeDemands,
  meets,
  notPlaced,
  readWhere,
} from '../goals/judge.ts';
import { printTurns } from '../notation/print.ts';
import type { LostInFact } from './facts.ts';
import { nameGoal, namePieces, type Scene } from './scene.ts';

/** The sets of pieces that a goal adds, and which of them are made; none where it is judged up to a turn. */
export function partsOf(
  goal: Goal,
  state: State,
): { all: readonly PieceSet[]; made: readonly PieceSet[] } {
  const where = readWhere(state);
  if (goal.choice)
    return {
      all: goal.choice.sets,
      made: goal.choice.sets.filter((set) => notPlaced(where, set) === 0),
    };
  if (goal.upTo !== undefined || goal.anyOf || goal.slice) return { all: [], made: [] };
  const isMade = (part: PieceSet): boolean =>
    meets(where, makeDemands(goal.conditions, undefined, undefined, part)[0]);
  return { all: goal.parts, made: goal.parts.filter(isMade) };
}

/** The pieces of a set that are home, turned right: a goal of colours on top may count others as made. */
export function homeOf(set: PieceSet, state: State): PieceSet {
  return set & placedSet(state);
}

/** Whether a goal asks of some pieces of the set only which colour they show on top. */
export function isFacing(goal: Goal, set: PieceSet): boolean {
  return goal.conditions.some((condition) => condition.kind === 'facing' && condition.pieces & set);
}

/** The goals that hold before the turns and are lost in them, for a moment or for good. */
export function openedBy(scene: Scene, turns: readonly Turn[]): LostInFact[] {
  const losses = scene.goals.flatMap((goal, index) =>
    goalHolds(goal, scene.state) ? (lostIn(scene, index, turns) ?? []) : [],
  );
  // Of goals that fared the same the most basic one is told.
  return losses.filter(
    (loss, i) =>
      !losses.slice(0, i).some((other) => other.at === loss.at && other.back === loss.back),
  );
}

function lostIn(scene: Scene, index: number, turns: readonly Turn[]): LostInFact | undefined {
  const goal = scene.goals[index];
  let { state } = scene;
  let at: number | undefined;
  let back: number | undefined;
  turns.forEach((turn, i) => {
    state = applyTurn(state, turn);
    const holds = goalHolds(goal, state);
    if (!holds && at === undefined) at = i + 1;
    // What is lost once more counts as lost until it comes back for good.
    if (!holds) back = undefined;
    else if (at !== undefined) back ??= i + 1;
  });
  if (at === undefined) return undefined;
  return {
    kind: 'lost-in',
    place: scene.place,
    ...nameGoal(scene.block.method, goal, scene.base),
    turns: printTurns(turns),
    at: numberOf(turns, at),
    atText: printTurn(turns[at - 1]),
    back: back === undefined ? undefined : numberOf(turns, back),
    backText: back === undefined ? undefined : printTurn(turns[back - 1]),
    missing: back === undefined ? namePieces(goalMissing(goal, state), scene.base) : [],
  };
}

/** People don't count rotations. */
function numberOf(turns: readonly Turn[], upTo: number): number {
  return turns.slice(0, upTo).filter((turn) => !isRotation(turn)).length;
}
