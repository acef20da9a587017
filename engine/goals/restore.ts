/**
 * Which single change of a stage would have brought a lost goal back by the stage's end.
 *
 * All changes of one turn are tried by doing the rest of the stage again: some 70 per turn, each as
 * long as what remains, so a stage of 60 turns takes a few milliseconds.
 */
import type { Holding } from '../cube/holding.ts';
import { PIECES } from '../cube/piece.ts';
import { bodyTurns, holdingAfter } from '../cube/state.ts';
import {
  FACE_TURNS,
  TURNS,
  familyOf,
  invertTurn,
  isRotation,
  turnKind,
  type Turn,
} from '../cube/turn.ts';
import { JUMP, type Course } from './course.ts';
import type { Goal } from './goal.ts';
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
const ANY_OTHER = 2;
/** The opening turn itself is more often meant than not. */
const AT_OPENING = 0.5;

/**
 * The change of one turn, from `breakTurn` to before `stageEnd`, after which `goal` holds at
 * `stageEnd`: first the inverse of the opening turn done later, then a turn of that stretch by
 * another amount, then any turn done in addition, left out or done instead; of equals, the one that
 * leaves most pieces home, then the earliest. Undefined if there is none, if the stretch is longer
 * than `turnsLimit` turns or holds a power or an unknown stretch.
 */
export function restoringChange(
  course: Course,
  goal: Goal,
  breakTurn: number,
  stageEnd: number,
  turnsLimit = 200,
): RestoringChange | undefined {
  const start = course.stateAt(breakTurn);
  if (start === undefined || stageEnd - breakTurn > turnsLimit) return undefined;
  const codes = Array.from({ length: stageEnd - breakTurn }, (_, i) => course.codes[breakTurn + i]);
  if (codes.includes(JUMP)) return undefined;

  const prefix = { where: readWhere(start), holding: start.holding };
  const trial: Where = new Uint8Array(PIECES);
  let best: { change: RestoringChange; rank: number; home: number } | undefined;
  const attempt = (
    change: RestoringChange,
    rank: number,
    from: number,
    turn: Turn | undefined,
  ): void => {
    if (best && rank > best.rank) return;
    trial.set(prefix.where);
    let { holding } = prefix;
    if (turn !== undefined) holding = doTurn(trial, holding, turn);
    for (let i = from; i < codes.length; i++) holding = doTurn(trial, holding, codes[i]);
    if (!whereHolds(goal, trial)) return;
    const home = countHome(trial);
    if (best === undefined || rank < best.rank || home > best.home) best = { change, rank, home };
  };

  const inverse = invertTurn(codes[0]);
  for (let i = 0; i <= codes.length; i++) {
    const at = breakTurn + i;
    if (i > 0) {
      // Right after the opening turn its inverse would merely cancel it: that is leaving it out.
      if (i > 1) attempt({ kind: 'insert', at, turn: inverse }, INVERSE_OF_OPENING, i, inverse);
      for (let turn = 0; turn < FACE_TURNS; turn++) {
        if (turn !== inverse) attempt({ kind: 'insert', at, turn }, ANY_OTHER, i, turn);
      }
    }
    if (i === codes.length) break;
    const code = codes[i];
    const later = i === 0 ? AT_OPENING : 0;
    if (!isRotation(code)) attempt({ kind: 'remove', at }, ANY_OTHER + later, i + 1, undefined);
    for (let turn = 0; turn < TURNS; turn++) {
      if (turn === code || turnKind(turn) === 'rotation') continue;
      const rank = familyOf(turn) === familyOf(code) ? OTHER_AMOUNT : ANY_OTHER;
      attempt({ kind: 'replace', at, turn }, rank + later, i + 1, turn);
    }
    prefix.holding = doTurn(prefix.where, prefix.holding, code);
  }
  return best?.change;
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
