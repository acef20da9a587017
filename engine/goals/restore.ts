/**
 * Which single change of a stage would have brought a lost goal back by the stage's end.
 *
 * All changes of one turn are tried by doing the rest of the stage again: some 70 per turn, each as
 * long as what remains, so a stage of 60 turns takes a few milliseconds.
 */
import type { Holding } from '../cube/holding.ts';
import { PIECES } from '../cube/piece.ts';
import { bodyTurns, holdingAfter } from '../cube/state.ts';
import { FACE_TURNS, TURNS, familyOf, invertTurn, isRotation, type Turn } from '../cube/turn.ts';
import { JUMP, type Course } from './course.ts';
import type { Goal } from './goal.ts';
import type { Timeline } from './timeline-types.ts';
import { isPlaced, moveWhere, readWhere, whereHolds, type Where } from './judge.ts';

export type RestoringChange =
  /** `turn` done at a place (as many turns of the course before it). */
  | { readonly kind: 'insert'; readonly at: number; readonly turn: Turn }
  /** `turn` instead of the turn with index `at`. */
  | { readonly kind: 'replace'; readonly at: number; readonly turn: Turn }
  | { readonly kind: 'remove'; readonly at: number };

/** How plain a change is, the plainest first. */
const INVERSE_OF_OPENING = 0;
const OTHER_AMOUNT = 1;
/** Plainer than writing its inverse beside it. */
const LEFT_OUT = 2;
const ANY_OTHER = 3;
/** The opening turn itself is more often meant than not. */
const AT_OPENING = 0.5;

/** A goal that the text wants to hold at a place. */
export interface Aim {
  readonly goal: Goal;
  readonly place: number;
}

/** What stages written from a stage's end on want to hold at theirs. */
export function aimsFrom(timeline: Pick<Timeline, 'goals' | 'stages'>, place: number): Aim[] {
  return timeline.stages
    .filter((stage) => stage.end >= place)
    .map((stage) => ({ goal: timeline.goals[stage.goal], place: stage.end }));
}

/**
 * The change of one turn, from `breakTurn` to before `stageEnd`, after which `goal` holds at
 * `stageEnd`. Of several, the one after which most `aims` (in the order of their places, none before
 * `stageEnd`) hold as well, for that is what the author meant; then the plainest: the inverse of the
 * opening turn done later, a turn of that stretch by another amount, one left out, any turn done in
 * addition or instead; of equals, the one that leaves most pieces home, then the earliest. Undefined
 * if there is none, if the stretch is longer than `turnsLimit` turns or holds a power or a gap.
 */
export function restoringChange(
  course: Course,
  goal: Goal,
  breakTurn: number,
  stageEnd: number,
  aims: readonly Aim[] = [],
  turnsLimit = 200,
): RestoringChange | undefined {
  const start = course.stateAt(breakTurn);
  if (start === undefined || stageEnd - breakTurn > turnsLimit) return undefined;
  const codes = Array.from({ length: stageEnd - breakTurn }, (_, i) => course.codes[breakTurn + i]);
  if (codes.includes(JUMP)) return undefined;

  const prefix = { where: readWhere(start), holding: start.holding };
  const trial: Where = new Uint8Array(PIECES);
  let best: { change: RestoringChange; met: number; rank: number; home: number } | undefined;
  const attempt = (
    change: RestoringChange,
    rank: number,
    from: number,
    turn: Turn | undefined,
  ): void => {
    trial.set(prefix.where);
    let { holding } = prefix;
    if (turn !== undefined) holding = doTurn(trial, holding, turn);
    for (let i = from; i < codes.length; i++) holding = doTurn(trial, holding, codes[i]);
    if (!whereHolds(goal, trial)) return;
    const home = countHome(trial);
    const met = countMet(course, stageEnd, trial, holding, aims);
    const found = { change, met, rank, home };
    if (best === undefined || isBetter(found, best)) best = found;
  };

  const inverse = invertTurn(codes[0]);
  for (let i = 0; i <= codes.length; i++) {
    const at = breakTurn + i;
    if (i > 0) {
      // Right after the opening turn its inverse would merely cancel it: that is leaving it out.
      if (i > 1) attempt({ kind: 'insert', at, turn: inverse }, INVERSE_OF_OPENING, i, inverse);
      for (const turn of INSERTED) {
        if (turn !== inverse) attempt({ kind: 'insert', at, turn }, ANY_OTHER, i, turn);
      }
    }
    if (i === codes.length) break;
    const code = codes[i];
    const later = i === 0 ? AT_OPENING : 0;
    attempt({ kind: 'remove', at }, LEFT_OUT + later, i + 1, undefined);
    for (let turn = 0; turn < TURNS; turn++) {
      // A rotation and a turn of layers are not taken for each other.
      if (turn === code || isRotation(turn) !== isRotation(code)) continue;
      const rank = familyOf(turn) === familyOf(code) ? OTHER_AMOUNT : ANY_OTHER;
      attempt({ kind: 'replace', at, turn }, rank + later, i + 1, turn);
    }
    prefix.holding = doTurn(prefix.where, prefix.holding, code);
  }
  return best?.change;
}

/** Turns that may have been left out: of faces and of the whole cube. */
const INSERTED: readonly Turn[] = Array.from({ length: TURNS }, (_, turn) => turn).filter(
  (turn) => turn < FACE_TURNS || isRotation(turn),
);

function isBetter(
  a: { readonly met: number; readonly rank: number; readonly home: number },
  b: { readonly met: number; readonly rank: number; readonly home: number },
): boolean {
  if (a.met !== b.met) return a.met > b.met;
  return a.rank !== b.rank ? a.rank < b.rank : a.home > b.home;
}

/** How many aims hold if the course goes on from here as it is written. */
function countMet(
  course: Course,
  from: number,
  start: Where,
  startHolding: Holding,
  aims: readonly Aim[],
): number {
  if (aims.length === 0) return 0;
  const where = start.slice();
  let holding = startHolding;
  let place = from;
  let met = 0;
  for (const aim of aims) {
    for (; place < aim.place; place++) {
      const code = course.codes[place];
      if (code === JUMP) return met;
      holding = doTurn(where, holding, code);
    }
    if (whereHolds(aim.goal, where)) met++;
  }
  return met;
}

/** Returns the holding after the turn. */
function doTurn(where: Where, holding: Holding, turn: Turn): Holding {
  for (const faceTurn of bodyTurns(turn, holding)) moveWhere(where, faceTurn);
  return holdingAfter(turn, holding);
}

function countHome(where: Where): number {
  let count = 0;
  for (let piece = 0; piece < PIECES; piece++) if (isPlaced(where, piece)) count++;
  return count;
}
