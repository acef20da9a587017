/**
 * What a timeline says, worked out the long way: the cube is replayed from the start for every
 * place, and every break is told by reading the places one after the other. Nothing of the engine.
 */
import {
  holds,
  madePairs,
  mostAgreeingFirst,
  partInPlace,
  smallestMissing,
  type NaiveGoal,
} from './goals.ts';
import { replay, turned, type Cube } from './stickers.ts';

export interface NaiveStage {
  readonly goal: number;
  readonly first: number;
  readonly end: number;
  readonly stepEnds: readonly number[];
}

/** A turn, or an unknown stretch after which the cube is solved and then turned so, or unknown. */
export type NaiveTurn = string | { readonly gap: readonly string[] | undefined };

export interface NaiveBreak {
  readonly goal: number;
  readonly kind: string;
  readonly turn: number;
  /** Acceptable sets of misplaced pieces, each joined by spaces. */
  readonly pieces: readonly string[];
  readonly restoredAt: number | undefined;
  readonly part: boolean;
}

function cubeAt(
  setup: Cube,
  solved: Cube,
  turns: readonly NaiveTurn[],
  place: number,
): Cube | undefined {
  let cube: Cube | undefined = setup;
  for (const turn of turns.slice(0, place)) {
    if (typeof turn !== 'string') cube = turn.gap && replay(solved, turn.gap);
    else cube = cube && turned(cube, turn);
  }
  return cube;
}

/** What of a goal is guarded: pairs named one by one. */
function guardedForm(goal: NaiveGoal, pairs: readonly (readonly string[])[]): NaiveGoal {
  if (goal.pairs === undefined) return goal;
  const { pairs: _pairs, ...rest } = goal;
  const home = pairs.flat().map((piece) => ({ piece, demand: 'home' as const, colours: [] }));
  return { ...rest, wants: [...goal.wants, ...home] };
}

export function naiveTimeline(
  start: Cube,
  solved: Cube,
  turns: readonly NaiveTurn[],
  goals: readonly NaiveGoal[],
  stages: readonly NaiveStage[],
): { breaks: NaiveBreak[]; guardedFrom: (number | undefined)[]; held: (boolean | undefined)[][] } {
  const cubes = Array.from({ length: turns.length + 1 }, (_, place) =>
    cubeAt(start, solved, turns, place),
  );
  const isHeld = (goal: NaiveGoal, place: number): boolean | undefined => {
    const cube = cubes[place];
    return cube && holds(goal, cube);
  };

  // What is guarded, and from where.
  const guardedFrom: (number | undefined)[] = goals.map(() => undefined);
  const forms = [...goals];
  const ownStage = (g: number): boolean => stages.some(({ goal }) => goal === g);
  const guardedPairs: (readonly string[])[] = [];
  const guard = (g: number, place: number): void => {
    if (guardedFrom[g] !== undefined || isHeld(goals[g], place) !== true) return;
    guardedFrom[g] = place;
    const cube = cubes[place];
    const goal = goals[g];
    if (cube === undefined || goal.pairs === undefined) return;
    const since = (pair: readonly string[]): number => {
      let at = place;
      // An unknown stretch tells nothing of when a pair was made.
      for (let p = place - 1; p >= 0; p--) {
        const before = cubes[p];
        if (before === undefined) continue;
        if (!madePairs(goal, before).some((one) => one.join() === pair.join())) break;
        at = p;
      }
      return at;
    };
    const rank = (pair: readonly string[]): number => {
      const at = guardedPairs.findIndex((one) => one.join() === pair.join());
      return at < 0 ? 1000 + since(pair) : at;
    };
    const made = madePairs(goal, cube);
    const isTie = new Set(made.map(rank)).size < made.length && made.length > goal.pairs.atLeast;
    if (isTie) throw new Tie();
    const chosen = made.sort((a, b) => rank(a) - rank(b)).slice(0, goal.pairs.atLeast);
    for (const pair of chosen)
      if (!guardedPairs.some((one) => one.join() === pair.join())) guardedPairs.push(pair);
    forms[g] = guardedForm(goal, chosen);
  };
  const pairsBefore: string[][] = [];
  stages.forEach(({ goal, first, end }, s) => {
    const came = (g: number): boolean =>
      stages.slice(0, s).some((other) => other.goal === g) ||
      (!ownStage(g) && stages.slice(0, s + 1).some((other) => other.goal > g));
    goals.forEach((_, g) => {
      if (came(g)) guard(g, first);
    });
    pairsBefore.push(guardedPairs.map((pair) => pair.join()));
    goals.forEach((_, g) => {
      if (g === goal || came(g)) guard(g, end);
    });
  });

  // Goals that were guarded and became false.
  const all: (NaiveBreak & { readonly rank: number })[] = [];
  const stageOf = (turn: number): number =>
    stages.findIndex(({ first, end }) => first <= turn && turn < end);
  const lastGoalGuarded = guardedFrom[goals.length - 1] !== undefined;
  forms.forEach((goal, g) => {
    const from = guardedFrom[g];
    if (from === undefined) return;
    const known = cubes.flatMap((cube, place) => (cube && place >= from ? [place] : []));
    known.forEach((place, i) => {
      if (i === 0 || !isHeld(goal, known[i - 1]) || isHeld(goal, place)) return;
      const turn = known[i - 1];
      const restored = known.slice(i).find((later) => isHeld(goal, later));
      const stage = stageOf(turn);
      const next = stages.find(({ first, end }) => first > turn && first < end);
      const end = stage >= 0 ? stages[stage].end : (next?.first ?? turns.length);
      let kind: string;
      if (restored !== undefined) kind = restored <= end ? 'passing' : 'carried';
      else if (stage < 0) kind = next === undefined && !lastGoalGuarded ? 'open' : 'lasting';
      else if (stage === stages.length - 1) {
        const last = stages[stage];
        const at = guardedFrom[last.goal];
        const form = at !== undefined && at <= last.end ? forms[last.goal] : goals[last.goal];
        kind = isHeld(form, last.end) ? 'lasting' : 'open';
      } else kind = 'lasting';
      const pieces = smallestMissing(goal, cubes[place] ?? solved);
      const rank = ['passing', 'open', 'carried', 'lasting'].indexOf(kind);
      all.push({
        goal: g,
        kind,
        turn,
        pieces,
        restoredAt: restored && restored - 1,
        part: false,
        rank,
      });
    });
  });
  const breaks: NaiveBreak[] = all
    .filter(
      (one) =>
        !all.some(
          (other) => other.turn === one.turn && other.goal < one.goal && other.rank >= one.rank,
        ),
    )
    .map(({ rank: _rank, ...one }) => one);

  stages.forEach((stage, s) =>
    breaks.push(...partBreaks(goals[stage.goal], stage, pairsBefore[s])),
  );
  return {
    breaks,
    guardedFrom,
    held: goals.map((goal) => cubes.map((cube) => cube && holds(goal, cube))),
  };

  function partBreaks(
    goal: NaiveGoal,
    stage: NaiveStage,
    guardedBefore: readonly string[],
  ): NaiveBreak[] {
    const result: NaiveBreak[] = [];
    const watched: {
      part: readonly string[];
      out: { turn: number; pieces: string[] } | undefined;
    }[] = [];
    let lastKnown = stage.first;
    for (let place = stage.first + 1; place <= stage.end; place++) {
      const cube = cubes[place];
      if (cube === undefined) continue;
      const together: string[] = [];
      for (const one of watched) {
        const isIn = partInPlace(goal, cube, one.part, together);
        if (isIn) together.push(...one.part);
        if (isIn && one.out) {
          result.push({
            goal: stage.goal,
            kind: 'passing',
            turn: one.out.turn,
            pieces: one.out.pieces,
            restoredAt: place - 1,
            part: true,
          });
          one.out = undefined;
        } else if (!isIn && !one.out) {
          const away =
            one.part.length === 1
              ? one.part
              : one.part.filter((piece) => !partInPlace(goal, cube, [piece], []));
          one.out = { turn: lastKnown, pieces: [[...away].sort().join(' ')] };
        }
      }
      if (stage.stepEnds.includes(place) && place < stage.end) {
        const open = goal.parts.filter(
          (part) =>
            !guardedBefore.includes(part.join()) && !watched.some((one) => one.part === part),
        );
        for (const part of mostAgreeingFirst(goal, cube, open, together)) {
          if (partInPlace(goal, cube, part, together)) {
            watched.push({ part, out: undefined });
            together.push(...part);
          }
        }
      }
      lastKnown = place;
    }
    return result;
  }
}

/** More pairs are in place than a goal asks for, made at the same turn: the design leaves open which are guarded. */
export class Tie extends Error {}
