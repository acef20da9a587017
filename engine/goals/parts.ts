/**
 * Parts of the stage under way: a piece or pair of its goal that is in place at the end of a step
 * is guarded until the end of the stage, so that "the third edge knocks out the first, then puts it
 * back" can be told.
 *
 * A part is in place against the centres or, where the goal allows turns of a layer (a cross in the
 * making: turns of the base), up to such a turn together with the parts guarded before it. Of these
 * only those count that are still in place: a part is not knocked out by another's leaving.
 */
import { piecesIn, type PieceSet } from '../cube/piece.ts';
import type { Goal } from './goal.ts';
import { makeDemands, notPlaced, type Demand, type Where } from './judge.ts';
import type { Break } from './timeline-types.ts';

interface GuardedPart {
  readonly pieces: PieceSet;
  /** Set while it is out of place. */
  brokenBy: { readonly turn: number; readonly pieces: PieceSet } | undefined;
}

export interface PartWatch {
  readonly goal: Goal;
  readonly goalIndex: number;
  readonly stage: number;
  readonly demands: readonly Demand[];
  readonly open: PieceSet[];
  readonly guarded: GuardedPart[];
}

/** A text may open the same stage again and again. */
const demandsOf = new WeakMap<Goal, readonly Demand[]>();

function partDemands(goal: Goal): readonly Demand[] {
  let demands = demandsOf.get(goal);
  if (demands === undefined) {
    const chosen = (goal.choice?.sets ?? []).map((pieces) => ({ kind: 'placed' as const, pieces }));
    demands = makeDemands([...goal.conditions, ...chosen], goal.upTo ?? goal.partsUpTo, goal.slice);
    demandsOf.set(goal, demands);
  }
  return demands;
}

/** Watches the parts of a goal that are not guarded already as parts of an earlier one. */
export function watchParts(
  goal: Goal,
  goalIndex: number,
  stage: number,
  guardedSets: readonly PieceSet[],
): PartWatch {
  const open = goal.parts.filter((part) => !guardedSets.includes(part));
  return { goal, goalIndex, stage, demands: partDemands(goal), open, guarded: [] };
}

function fits(where: Where, { allowed }: Demand, pieces: PieceSet): boolean {
  for (let piece = 0, rest = pieces; rest !== 0; piece++, rest >>>= 1) {
    if (rest & 1 && ((allowed[piece] >> where[piece]) & 1) === 0) return false;
  }
  return true;
}

/** `before`: the pieces of the parts guarded before it that are in place themselves. */
function inPlace(watch: PartWatch, where: Where, part: PieceSet, before: PieceSet): boolean {
  if (fits(where, watch.demands[0], part)) return true;
  return watch.demands.some((demand) => fits(where, demand, part | before));
}

/** Judges the guarded parts after `turn`; adds to `breaks` those that came back. */
export function judgeParts(
  watch: PartWatch,
  where: Where,
  turn: number,
  brokenBy: number,
  breaks: Break[],
): void {
  let before = 0;
  for (const part of watch.guarded) {
    const isIn = inPlace(watch, where, part.pieces, before);
    if (isIn) before |= part.pieces;
    if (!isIn && part.brokenBy === undefined) {
      part.brokenBy = { turn: brokenBy, pieces: misplaced(watch, where, part.pieces) };
    } else if (isIn && part.brokenBy !== undefined) {
      breaks.push({
        goal: watch.goalIndex,
        kind: 'passing',
        turn: part.brokenBy.turn,
        pieces: piecesIn(part.brokenBy.pieces),
        restoredAt: turn,
        part: true,
        wanted: false,
        stage: watch.stage,
      });
      part.brokenBy = undefined;
    }
  }
}

/** Of a pair the pieces that are out of place; any other part is one piece. */
function misplaced(watch: PartWatch, where: Where, part: PieceSet): PieceSet {
  return watch.goal.choice ? notPlaced(where, part) : part;
}

/**
 * At the end of a step: what is in place now is guarded from here on. Where parts may be made up to
 * a turn, those that most others agree with come first.
 */
export function guardParts(watch: PartWatch, where: Where): void {
  let before = 0;
  for (const part of watch.guarded) if (part.brokenBy === undefined) before |= part.pieces;
  const agreeing = watch.demands
    .map((demand) => watch.open.filter((part) => fits(where, demand, part | before)))
    .reduce((best, parts) => (parts.length > best.length ? parts : best));
  const rest = watch.open.filter((part) => !agreeing.includes(part));
  for (const part of [...agreeing, ...rest]) {
    if (!inPlace(watch, where, part, before)) continue;
    watch.guarded.push({ pieces: part, brokenBy: undefined });
    watch.open.splice(watch.open.indexOf(part), 1);
    before |= part;
  }
}
