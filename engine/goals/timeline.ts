/**
 * Follows the goals of a method through a solve: where each is reached, guarded, broken, restored.
 *
 * One pass over the turns with a buffer of its own, no search and no second look: what is guarded is
 * settled at the place where its stage closes, so that later places are judged against just that
 * (the pairs that were made, the side on which a block was built). From there on `held` speaks of it.
 */
import type { PieceSet } from '../cube/piece.ts';
import { bodyTurns, holdingAfter } from '../cube/state.ts';
import { kindOfBreak, tellBreaks, type Ending, type RawBreak } from './breaks.ts';
import { JUMP, type Course } from './course.ts';
import type { Goal } from './goal.ts';
import {
  compileGoal,
  freezeGoal,
  meets,
  moveWhere,
  notPlaced,
  readWhere,
  whereHolds,
  whereMissing,
  type Where,
} from './judge.ts';
import { guardParts, judgeParts, watchParts, type PartWatch } from './parts.ts';
import type { Break, StageOutcome, Timeline, TimelineInput } from './timeline-types.ts';

const UNKNOWN = 2;

interface GoalTrack {
  /** As it is judged now: frozen once guarded. */
  goal: Goal;
  holds: (where: Where) => boolean;
  readonly held: Uint8Array;
  /** Whether its stage, or one after it if it has none, has come. */
  came: boolean;
  reached: boolean;
  guardedFrom: number | undefined;
  broken: { readonly turn: number; readonly pieces: PieceSet } | undefined;
}

function judgeOf(goal: Goal): (where: Where) => boolean {
  const { demands, choice } = compileGoal(goal);
  if (goal.anyOf || choice || demands.length !== 1) return (where) => whereHolds(goal, where);
  const [demand] = demands;
  return (where) => meets(where, demand);
}

export function followGoals(input: TimelineInput): Timeline {
  const { course, goals, stages } = input;
  const tracks = goals.map((goal): GoalTrack => ({
    goal,
    holds: judgeOf(goal),
    held: new Uint8Array(course.length + 1),
    came: false,
    reached: false,
    guardedFrom: undefined,
    broken: undefined,
  }));
  const written = new Set(stages.map((stage) => stage.goal));
  const sets = pairSets(goals);
  /** Place since which each pair is made, or infinity. */
  const madeSince = new Map<PieceSet, number>(sets.map((set) => [set, Infinity]));
  const guardedSets: PieceSet[] = [];
  const raw: RawBreak[] = [];
  const partBreaks: Break[] = [];
  let watch: PartWatch | undefined;
  let stage = 0;
  let isOpen = false;
  let step = 0;
  let lastKnown = -1;

  const guard = (track: GoalTrack, place: number, where: Where): void => {
    const made = [...sets].sort((a, b) => (madeSince.get(a) ?? 0) - (madeSince.get(b) ?? 0));
    track.goal = freezeGoal(track.goal, where, [...guardedSets, ...made]);
    track.holds = judgeOf(track.goal);
    track.guardedFrom = place;
    const kept = track.goal.conditions.reduce(
      (all, one) => (one.kind === 'placed' ? all | one.pieces : all),
      0,
    );
    for (const set of made)
      if ((set & ~kept) === 0 && !guardedSets.includes(set)) guardedSets.push(set);
  };

  const guardHeld = (place: number, where: Where): void => {
    for (const track of tracks) {
      if (track.came && track.guardedFrom === undefined && track.held[place] === 1)
        guard(track, place, where);
    }
  };

  const atPlace = (place: number, where: Where, isKnown: boolean, hasMoved: boolean): void => {
    for (const track of tracks) {
      if (!isKnown) track.held[place] = UNKNOWN;
      else if (!hasMoved) track.held[place] = track.held[place - 1];
      else track.held[place] = track.holds(where) ? 1 : 0;
    }
    if (isKnown && hasMoved) {
      for (let g = 0; g < tracks.length; g++) {
        if (tracks[g].guardedFrom !== undefined)
          noteBreak(tracks[g], g, place, where, lastKnown, raw);
      }
      for (const set of sets) {
        if (notPlaced(where, set) !== 0) madeSince.set(set, Infinity);
        else if (madeSince.get(set) === Infinity) madeSince.set(set, place);
      }
      if (watch) judgeParts(watch, where, place - 1, lastKnown, partBreaks);
    }
    if (isKnown) lastKnown = place;
    for (; stage < stages.length; stage++) {
      const span = stages[stage];
      if (!isOpen) {
        if (span.first > place) break;
        isOpen = true;
        step = 0;
        for (let g = 0; g < span.goal; g++) if (!written.has(g)) tracks[g].came = true;
        guardHeld(place, where);
        const parted = partGoal(tracks[span.goal].goal, course, span.end);
        watch = watchParts(parted, span.goal, stage, guardedSets);
      }
      if (span.end > place) {
        while (step < span.stepEnds.length && span.stepEnds[step] < place) step++;
        if (isKnown && watch && span.stepEnds[step] === place && place > span.first)
          guardParts(watch, where);
        break;
      }
      isOpen = false;
      watch = undefined;
      const track = tracks[span.goal];
      track.came = true;
      if (track.held[place] === 1) track.reached = true;
      guardHeld(place, where);
    }
  };

  walk(course, atPlace);

  for (const [goal, { broken }] of tracks.entries())
    if (broken) raw.push({ goal, ...broken, restoredAt: undefined });
  const held = tracks.map((track) => track.held);
  const ending: Ending = {
    stages,
    held,
    length: course.length,
    finished: tracks.length > 0 && tracks[tracks.length - 1].guardedFrom !== undefined,
  };
  const breaks = [...tellBreaks(raw, ending), ...partBreaks].sort(
    (a, b) => a.turn - b.turn || a.goal - b.goal,
  );
  const unkept = new Set(
    raw
      .filter((one) => ['carried', 'lasting'].includes(kindOfBreak(one, ending)))
      .map((one) => one.goal),
  );
  const outcomes = tracks.map((track, goal): StageOutcome => {
    const spans = stages.filter((span) => span.goal === goal);
    const turned = spans.filter((span) => span.end > span.first);
    const reached = written.has(goal)
      ? track.reached
      : track.guardedFrom !== undefined || (!track.came && track.held[course.length] === 1);
    return {
      goal,
      reached,
      kept: reached && !unkept.has(goal),
      firstTurn: turned.at(0)?.first,
      lastTurn: turned.length === 0 ? undefined : turned[turned.length - 1].end - 1,
      guardedFrom: track.guardedFrom,
    };
  });
  return { goals, held, stages, outcomes, breaks, judged: tracks.map((track) => track.goal) };
}

/** Calls `visit` at every place with the pieces' places; the buffer is the walk's own. */
function walk(
  course: Course,
  visit: (place: number, where: Where, isKnown: boolean, hasMoved: boolean) => void,
): void {
  const start = course.stateAt(0);
  const where = readWhere(start ?? EMPTY);
  let holding = start?.holding ?? 0;
  let isKnown = start !== undefined;
  visit(0, where, isKnown, true);
  for (let index = 0; index < course.length; index++) {
    const code = course.codes[index];
    let hasMoved = true;
    if (code === JUMP) {
      const state = course.stateAt(index + 1);
      isKnown = state !== undefined;
      if (state) {
        readWhere(state, where);
        holding = state.holding;
      }
    } else if (isKnown) {
      const turns = bodyTurns(code, holding);
      for (const turn of turns) moveWhere(where, turn);
      holding = holdingAfter(code, holding);
      hasMoved = turns.length > 0;
    }
    visit(index + 1, where, isKnown, hasMoved);
  }
}

const EMPTY = { corners: new Uint8Array(8), edges: new Uint8Array(12), holding: 0 };

function noteBreak(
  track: GoalTrack,
  goal: number,
  place: number,
  where: Where,
  lastKnown: number,
  raw: RawBreak[],
): void {
  const isHeld = track.held[place] === 1;
  if (track.broken && isHeld) {
    raw.push({ goal, ...track.broken, restoredAt: place - 1 });
    track.broken = undefined;
  } else if (!track.broken && !isHeld) {
    // The turn after the last place that is known: across an unknown stretch, the stretch itself.
    track.broken = { turn: lastKnown, pieces: whereMissing(track.goal, where) };
  }
}

/** Of a goal that may be made on several sides: the side on which it is made in the end. */
function partGoal(goal: Goal, course: Course, end: number): Goal {
  if (goal.anyOf === undefined) return goal;
  const state = course.stateAt(end);
  if (state === undefined) return goal;
  const where = readWhere(state);
  return goal.anyOf.find((alternative) => whereHolds(alternative, where)) ?? goal;
}

function pairSets(goals: readonly Goal[]): PieceSet[] {
  const all = goals
    .flatMap((goal) => [goal, ...(goal.anyOf ?? [])])
    .flatMap((goal) => goal.choice?.sets ?? []);
  return [...new Set(all)];
}
