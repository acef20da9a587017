/**
 * How far a goal is at a place of the course: which of its parts are in place, and which of its
 * pieces were in place before and are lent. Where the goal allows turns of a layer, the reading is
 * taken in which most parts fit.
 */
import { piecesIn, isCorner, type Piece, type PieceSet } from '../../cube/piece.ts';
import type { Goal } from '../../goals/goal.ts';
import {
  goalHolds,
  makeDemands,
  readWhere,
  whereMissing,
  type Demand,
  type Where,
} from '../../goals/judge.ts';
import type { Block } from '../analysis.ts';

export interface Lent {
  readonly piece: Piece;
  /** The turn that took it out last. */
  readonly since: number;
}

export interface Progress {
  readonly reached: boolean;
  /** Parts in place, and how many the goal wants. */
  readonly done: number;
  readonly wanted: number;
  /** `edge`, `corner`, `pair` or `piece`. */
  readonly unit: string;
  readonly lent: readonly Lent[];
}

interface Measure {
  readonly goal: Goal;
  readonly demands: readonly Demand[];
  readonly parts: readonly PieceSet[];
  readonly wanted: number;
}

const MEASURES = new WeakMap<Goal, readonly Measure[]>();

function measuresOf(goal: Goal): readonly Measure[] {
  let measures = MEASURES.get(goal);
  if (measures === undefined) {
    measures = (goal.anyOf ?? [goal]).map((one) => {
      const chosen = (one.choice?.sets ?? []).map((pieces) => ({
        kind: 'placed' as const,
        pieces,
      }));
      return {
        goal: one,
        demands: makeDemands([...one.conditions, ...chosen], one.upTo ?? one.partsUpTo, one.slice),
        parts: one.choice?.sets ?? one.parts,
        wanted: one.choice?.atLeast ?? one.parts.length,
      };
    });
    MEASURES.set(goal, measures);
  }
  return measures;
}

function fits(where: Where, { allowed }: Demand, pieces: PieceSet): boolean {
  return piecesIn(pieces).every((piece) => ((allowed[piece] >> where[piece]) & 1) === 1);
}

interface Reading extends Measure {
  readonly demand: Demand;
  readonly done: readonly PieceSet[];
  readonly kept: number;
}

/** The reading of a goal in which most parts fit, then most pieces. */
function bestReading(goal: Goal, where: Where): Reading {
  let best: Reading | undefined;
  for (const measure of measuresOf(goal)) {
    for (const demand of measure.demands) {
      const done = measure.parts.filter((part) => fits(where, demand, part));
      const kept = Array.from(demand.pieces).filter((piece) =>
        fits(where, demand, 1 << piece),
      ).length;
      if (
        best === undefined ||
        done.length > best.done.length ||
        (done.length === best.done.length && kept > best.kept)
      )
        best = { ...measure, demand, done, kept };
    }
  }
  if (best === undefined) throw new Error(`goal ${goal.name} demands nothing`);
  return best;
}

/** How many parts of a goal are in place, for comparing two places, and what its parts are. */
export function partsInPlace(goal: Goal, where: Where): { done: number; unit: string } {
  const { done, parts } = bestReading(goal, where);
  return { done: done.length, unit: unitOf(parts) };
}

/** The parts that come into place, and that go out of it, between two places; read as the later one allows. */
export function partChanges(
  goal: Goal,
  before: Where,
  after: Where,
): { readonly into: readonly PieceSet[]; readonly out: readonly PieceSet[] } {
  const { demand, parts, done } = bestReading(goal, after);
  const was = parts.filter((part) => fits(before, demand, part));
  return {
    into: done.filter((part) => !was.includes(part)),
    out: was.filter((part) => !done.includes(part)),
  };
}

/** The goal of a stage at a place within or right after it; undefined where the state is unknown. */
export function progressAt(block: Block, stage: number, place: number): Progress | undefined {
  const { timeline, course } = block;
  const span = timeline.stages[stage];
  const goal = timeline.goals[span.goal];
  const state = course.stateAt(place);
  if (state === undefined) return undefined;
  const reading = bestReading(goal, readWhere(state));
  const { demand, parts, wanted, done } = reading;
  const watched = new Set<Piece>();
  // What was in place when the stage began or when one of its lines ended may be lent later.
  for (const end of [span.first, ...span.stepEnds.filter((other) => other <= place)]) {
    const then = course.stateAt(end);
    if (then === undefined) continue;
    const where = readWhere(then);
    const choice = reading.goal.choice;
    const optional = choice?.sets.reduce((all, set) => all | set, 0) ?? 0;
    for (const piece of demand.pieces) {
      if (!fits(where, demand, 1 << piece)) continue;
      const set =
        (optional >> piece) & 1 ? choice?.sets.find((one) => (one >> piece) & 1) : 1 << piece;
      // Of a pair that need not be made, one piece at home by itself is nothing that is kept.
      if (set !== undefined && fits(where, demand, set)) watched.add(piece);
    }
  }
  const now = readWhere(state);
  // What earlier stages made and guard, and what is missing of it.
  timeline.outcomes.slice(0, span.goal).forEach(({ guardedFrom }, index) => {
    if (guardedFrom === undefined || guardedFrom > place) return;
    for (const piece of piecesIn(whereMissing(timeline.judged[index], now))) watched.add(piece);
  });
  const reached = goalHolds(goal, state);
  const lent = reached
    ? []
    : [...watched]
        .filter((piece) => !fits(now, demand, 1 << piece))
        .map((piece) => ({ piece, since: outSince(block, demand, piece, place) }))
        .sort((a, b) => a.since - b.since || a.piece - b.piece);
  return {
    reached,
    done: reached ? wanted : Math.min(done.length, wanted),
    wanted,
    unit: unitOf(parts),
    lent,
  };
}

/** The turn that took a piece out of place for the last time before a place where it is out. */
function outSince(block: Block, demand: Demand, piece: Piece, place: number): number {
  for (let before = place - 1; before > 0; before--) {
    const state = block.course.stateAt(before);
    if (state === undefined || fits(readWhere(state), demand, 1 << piece)) return before;
  }
  return 0;
}

/** What parts are: `edge`, `corner`, `pair`, or `piece` where they differ. */
export function unitOf(parts: readonly PieceSet[]): string {
  const pieces = parts.map(piecesIn);
  if (pieces.length === 0 || pieces.some((list) => list.length !== 1))
    return pieces.length > 0 && pieces.every((list) => list.length === 2) ? 'pair' : 'piece';
  const corners = pieces.filter(([piece]) => isCorner(piece)).length;
  return corners === 0 ? 'edge' : corners === pieces.length ? 'corner' : 'piece';
}
