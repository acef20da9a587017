/**
 * Findings about stage goals: which is not reached, which breaks and at which turn, and what follows
 * from what. One fault has one code; what merely follows from an earlier fault is a note to it.
 */
import { setOf, type Piece, type PieceSet } from '../cube/piece.ts';
import { makeCourse, type Course } from '../goals/course.ts';
import { lastTurnMissing } from '../goals/cross-alignment.ts';
import { goalHolds, goalMissing } from '../goals/judge.ts';
import { piecesToName } from '../goals/moved.ts';
import { aimsFrom, restoringChange, type RestoringChange } from '../goals/restore.ts';
import type { Break } from '../goals/timeline-types.ts';
import {
  changeFix,
  changeRef,
  changedCodes,
  rangeOfTurn,
  straysAt,
  turnRef,
  type Judged,
} from './judged.ts';
import type { RawFinding, RawFix, StrayPiece } from './raw-finding.ts';
import type { TextStage } from './stages.ts';
import { unreached, unsolvedEnd } from './unreached.ts';

/** Turns of a stage that are searched for a restoring change. */
const CHANGE_LIMIT = 120;

/** `mayChange`: whether changes that reach a missed goal are looked for; they have to be tried then. */
export function checkGoals(judged: Judged, mayChange: boolean): RawFinding[] {
  const checker = new GoalChecker(judged);
  if (!mayChange) checker.changesLeft = 0;
  checker.breaks();
  checker.stages();
  return [...checker.findings, ...unsolvedEnd(judged)];
}

class GoalChecker {
  readonly judged: Judged;
  readonly findings: RawFinding[] = [];
  /** Pieces for whose absence there is a finding already. */
  covered: PieceSet = 0;
  /** The first lasting break, and how the course would be with the change that closes it. */
  fault: { readonly break: Break; readonly mended: Mended | undefined } | undefined;
  /** How many stages may still be searched for the change that reaches them. */
  changesLeft = 5;

  /** Carried breaks by goal, in order. */
  readonly carried = new Map<number, Break[]>();

  constructor(judged: Judged) {
    this.judged = judged;
    for (const found of judged.timeline.breaks) {
      if (found.kind !== 'carried') continue;
      const breaks = this.carried.get(found.goal);
      if (breaks) breaks.push(found);
      else this.carried.set(found.goal, [found]);
    }
  }

  breaks(): void {
    const { judged } = this;
    for (const found of judged.timeline.breaks) {
      if (found.turn < judged.ownFrom || found.part || found.kind === 'open') continue;
      const goal = judged.goals[found.goal].name;
      const named = piecesToName(
        judged.course,
        judged.timeline.judged[found.goal],
        found.turn,
        found.pieces,
      );
      const common = {
        goal,
        base: judged.base,
        turn: turnRef(judged, found.turn),
      };
      const range = rangeOfTurn(judged, found.turn);
      if (found.kind === 'lasting') {
        this.fault ??= { break: found, mended: this.mend(found) };
        if (this.fault.break === found)
          this.findings.push(this.broken(found, { ...common, ...this.lost(found, named) }, range));
      } else if (found.restoredAt !== undefined && !(found.kind === 'carried' && found.wanted)) {
        const restored = turnRef(judged, found.restoredAt);
        this.findings.push({
          args: {
            code: found.kind === 'carried' ? 'goal-carried' : 'goal-passing',
            moved: named,
            ...common,
            restored,
          },
          range,
          related: [
            {
              range: rangeOfTurn(judged, found.restoredAt),
              note: { kind: 'restored', turn: restored },
            },
          ],
        });
      }
    }
  }

  lost(
    found: Break,
    named: readonly Piece[],
  ): { pieces: StrayPiece[]; moved: readonly Piece[] | undefined } {
    const pieces = straysAt(this.judged, found.turn + 1, setOf(found.pieces));
    return { pieces, moved: named === found.pieces ? undefined : named };
  }

  broken(
    found: Break,
    common: Pick<
      Extract<RawFinding['args'], { code: 'goal-broken' }>,
      'goal' | 'base' | 'pieces' | 'moved' | 'turn'
    >,
    range: RawFinding['range'],
  ): RawFinding {
    const { judged } = this;
    const mended = this.fault?.mended;
    const stages = judged.stages.stages.filter(
      (stage) => stage.end > found.turn && !this.reached(stage),
    );
    const follows = [
      ...new Set(
        stages
          .filter((stage) => this.followsFromBreak(stage))
          .map((stage) => judged.goals[stage.goal].name),
      ),
    ];
    this.covered |= setOf(found.pieces);
    const end = judged.course.stateAt(judged.course.length);
    if (end) this.covered |= goalMissing(judged.timeline.judged[found.goal], end);
    const related: {
      range: RawFinding['range'];
      note: NonNullable<RawFinding['related']>[number]['note'];
    }[] = [];
    const change = mended && changeRef(judged, mended.change);
    if (mended && change) {
      const place = Math.max(
        0,
        mended.change.kind === 'insert' ? mended.change.at - 1 : mended.change.at,
      );
      related.push({ range: rangeOfTurn(judged, place), note: { kind: 'change', change } });
    }
    const [first] = stages;
    if (follows.length > 0) {
      const place = { line: first.line, character: first.span.start };
      related.push({
        range: { start: place, end: { line: first.line, character: first.span.end } },
        note: { kind: 'follows', goals: follows },
      });
    }
    const fix = mended?.fix;
    return {
      args: { code: 'goal-broken', ...common, change, follows },
      range,
      related,
      ...(fix ? { fixes: [fix] } : {}),
    };
  }

  /** The single change that brings the goal back by the end of the stage in which it was lost. */
  mend(found: Break): Mended | undefined {
    const { judged } = this;
    const stage = found.stage === undefined ? undefined : judged.stages.stages[found.stage];
    const stageEnd = stage ? stage.end : judged.course.length;
    const change = restoringChange(
      judged.course,
      judged.timeline.judged[found.goal],
      found.turn,
      stageEnd,
      aimsFrom(judged.timeline, stageEnd),
      CHANGE_LIMIT,
    );
    if (change === undefined) return undefined;
    const { codes, shift } = changedCodes(judged.course.codes, change);
    const jumps = new Map([...judged.course.jumps].map(([index, jump]) => [shift(index), jump]));
    return {
      change,
      course: makeCourse(judged.course.stateAt(0), codes, jumps),
      shift,
      fix: changeFix(judged, change),
    };
  }

  /** Pieces of goals that are lent out across a place, for which there is a finding or an announcement. */
  lentAt(place: number): PieceSet {
    const { judged } = this;
    const state = judged.course.stateAt(place);
    let lent: PieceSet = 0;
    for (const [goal, breaks] of this.carried) {
      const found = lastBefore(breaks, place);
      if (state && found?.restoredAt !== undefined && found.restoredAt >= place)
        lent |= goalMissing(judged.timeline.judged[goal], state);
    }
    return lent;
  }

  reached(stage: TextStage): boolean {
    return this.judged.timeline.held[stage.goal][stage.end] !== 0;
  }

  /** With the break mended the stage would have been reached; if no change mends it, all later ones are taken to follow. */
  followsFromBreak(stage: TextStage): boolean {
    if (this.fault === undefined || stage.end <= this.fault.break.turn) return false;
    const { mended } = this.fault;
    if (mended === undefined) return true;
    const state = mended.course.stateAt(mended.shift(stage.end));
    return state === undefined || goalHolds(this.judged.goals[stage.goal], state);
  }

  stages(): void {
    const { judged, fault } = this;
    const { stages } = judged.stages;
    /** Behind the first lasting break: the first stage that fails for another reason, and those after it. */
    let second: { readonly at: number; readonly after: TextStage[] } | undefined;
    stages.forEach((stage, index) => {
      if (stage.line < judged.firstLine || this.reached(stage) || this.followsFromBreak(stage))
        return;
      // Said twice at one place, it is one claim.
      const next = stages.at(index + 1);
      if (next?.goal === stage.goal && next.end === stage.end) return;
      const state = judged.course.stateAt(stage.end);
      if (state === undefined) return;
      const goal = judged.goals[stage.goal];
      // `// PLL`, then `// AUF`: the last turn has a label of its own.
      if (next?.goal === stage.goal && lastTurnMissing(goal, state, judged.base) !== undefined)
        return;
      const missing = goalMissing(goal, state);
      const lent = this.lentAt(stage.end);
      const isTold = (missing & ~(this.covered | lent)) === 0;
      this.covered |= missing & ~lent;
      if (isTold) return;
      if (second) {
        second.after.push(stage);
        return;
      }
      const isBehind = fault !== undefined && stage.end > fault.break.turn;
      const isLast = index === stages.length - 1 && stage.end === judged.course.length;
      const mayChange = !isBehind && this.changesLeft-- > 0;
      if (isBehind) second = { at: this.findings.length, after: [] };
      this.findings.push(unreached(judged, stage, missing, isLast, mayChange));
    });
    if (second) this.noteAfter(second.at, second.after);
  }

  /** What fails after the second fault is a note to it: which of the two is to blame cannot be told. */
  noteAfter(at: number, after: readonly TextStage[]): void {
    if (after.length === 0) return;
    const goals = [...new Set(after.map((stage) => this.judged.goals[stage.goal].name))];
    const [{ line, span }] = after;
    const range = { start: { line, character: span.start }, end: { line, character: span.end } };
    const finding = this.findings[at];
    this.findings[at] = {
      ...finding,
      related: [...(finding.related ?? []), { range, note: { kind: 'follows', goals } }],
    };
  }
}

/** The last break that a turn before a place opened. */
function lastBefore(breaks: readonly Break[], place: number): Break | undefined {
  let low = 0;
  let high = breaks.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (breaks[middle].turn < place) low = middle + 1;
    else high = middle;
  }
  return breaks[low - 1];
}

interface Mended {
  readonly change: RestoringChange;
  readonly course: Course;
  readonly shift: (place: number) => number;
  readonly fix: RawFix | undefined;
}
