/**
 * The finding for a stage that is over without its goal. One fault has one code: a cross off its
 * centres, a last turn left out and a solve that does not end solved have words of their own.
 */
import type { PieceSet } from '../cube/piece.ts';
import { printTurn } from '../cube/turn.ts';
import { crossAlignment, lastTurnMissing } from '../goals/cross-alignment.ts';
import { goalHolds, goalMissing } from '../goals/judge.ts';
import { aimsFrom, restoringChange } from '../goals/restore.ts';
import {
  changeFix,
  changeRef,
  layerTurn,
  rangeOfTurn,
  straysAt,
  topOf,
  turnBefore,
  type Judged,
} from './judged.ts';
import type { Change, RawFinding, RawFix } from './raw-finding.ts';
import type { TextStage } from './stages.ts';

/** Turns of a stage that are searched for the change that reaches its goal. */
const CHANGE_LIMIT = 60;

/** `missing`: the pieces in the way; `mayChange`: whether a single change of the stage is looked for. */
export function unreached(
  judged: Judged,
  stage: TextStage,
  missing: PieceSet,
  isLast: boolean,
  mayChange: boolean,
): RawFinding {
  const { course, base } = judged;
  const goal = judged.goals[stage.goal];
  const state = course.stateAt(stage.end);
  if (state === undefined) throw new Error('an unknown state is not judged');
  const range = {
    start: { line: stage.line, character: stage.span.start },
    end: { line: stage.line, character: stage.span.end },
  };
  const pieces = straysAt(judged, stage.end, missing);
  const alignment = goal.name === 'cross' ? crossAlignment(state, base) : undefined;
  const severity = isLast ? { severity: 'warning' as const } : {};
  const isFinal = stage.goal === judged.goals.length - 1;
  if (alignment?.kind === 'offset') {
    const turn = printTurn(layerTurn(base, alignment.turns, state.holding));
    return {
      args: { code: 'cross-not-aligned', kind: 'offset', goal: goal.name, base, turn },
      range,
      ...severity,
      ...appended(judged, stage, turn),
    };
  }
  if (alignment?.kind === 'order') {
    return {
      args: { code: 'cross-not-aligned', kind: 'order', goal: goal.name, base, pieces },
      range,
      ...severity,
    };
  }
  const quarters = lastTurnMissing(goal, state, base);
  if (quarters !== undefined && (isLast || isFinal)) {
    const turn = printTurn(layerTurn(topOf(base), quarters, state.holding));
    return {
      args: { code: 'last-turn-missing', goal: isFinal ? 'solved' : goal.name, base, turn },
      range,
      ...appended(judged, stage, turn),
    };
  }
  if (
    isFinal &&
    judged.kind === 'solve' &&
    stage.end === course.length &&
    judged.start.from !== 'inverse'
  ) {
    const holding = namesHeld(judged, stage.end);
    return { args: { code: 'not-solved', base, pieces, claimed: true, holding }, range };
  }
  const { change, fix } = mayChange ? changeFor(judged, stage) : {};
  return {
    args: {
      code: 'goal-not-reached',
      goal: goal.name,
      base,
      pieces,
      last: turnBefore(judged, stage.end),
      change,
    },
    range,
    ...severity,
    ...(fix ? { fixes: [fix] } : {}),
  };
}

/** The single change of the stage that reaches its goal, if it can be written. */
function changeFor(judged: Judged, stage: TextStage): { change?: Change; fix?: RawFix } {
  const first = Math.max(stage.first, judged.ownFrom);
  if (stage.end <= first) return {};
  const goal = judged.goals[stage.goal];
  const change = restoringChange(
    judged.course,
    goal,
    first,
    stage.end,
    aimsFrom(judged.timeline, stage.end),
    CHANGE_LIMIT,
  );
  const fix = change && changeFix(judged, change);
  return change && fix ? { change: changeRef(judged, change), fix } : {};
}

/** A turn written behind the last one of a stage, unless that stands in a bracket. */
function appended(judged: Judged, stage: TextStage, turn: string): { fixes?: RawFix[] } {
  if (stage.end <= judged.ownFrom) return {};
  const { end } = rangeOfTurn(judged, stage.end - 1);
  const line = judged.textOf(end.line);
  const inBracket = /^[^/#;]*[)\]]/.test(line.slice(end.character));
  if (inBracket) return {};
  return {
    fixes: [{ title: `Add ${turn}`, edits: [{ range: { start: end, end }, newText: ` ${turn}` }] }],
  };
}

/** The goals of the method that hold at a place. */
function namesHeld({ goals, timeline }: Judged, place: number): string[] {
  return goals.filter((_, index) => timeline.held[index][place] === 1).map((goal) => goal.name);
}

/** The end of a solve that says nothing of its stages. */
export function unsolvedEnd(judged: Judged): RawFinding[] {
  const { course, goals, base } = judged;
  const { from } = judged.start;
  if (judged.kind !== 'solve' || from === 'inverse' || from === 'unknown') return [];
  if (judged.stages.stages.length > 0 || course.length === 0) return [];
  const state = course.stateAt(course.length);
  const solved = goals[goals.length - 1];
  if (state === undefined || goalHolds(solved, state)) return [];
  const range = rangeOfTurn(judged, course.length - 1);
  const quarters = lastTurnMissing(solved, state, base);
  if (quarters !== undefined) {
    const turn = printTurn(layerTurn(topOf(base), quarters, state.holding));
    const edit = { range: { start: range.end, end: range.end }, newText: ` ${turn}` };
    return [
      {
        args: { code: 'last-turn-missing', goal: 'solved', base, turn },
        range,
        fixes: [{ title: `Add ${turn}`, edits: [edit] }],
      },
    ];
  }
  const pieces = straysAt(judged, course.length, goalMissing(solved, state));
  const holding = namesHeld(judged, course.length);
  return [
    {
      args: { code: 'not-solved', base, pieces, claimed: false, holding },
      range,
      severity: 'warning',
    },
  ];
}
