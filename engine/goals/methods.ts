/**
 * Methods: ordered lists of stages, and the goals that they amount to for a base colour.
 *
 * A goal takes in the goals before it: its conditions are theirs and its own. What it is judged "up
 * to" is its own affair, so `solved` demands exactly what `top corners` demands up to a turn.
 */
import { CENTRE_AT, type Holding } from '../cube/holding.ts';
import { piecesIn, slotAt, type PieceSet } from '../cube/piece.ts';
import { OPPOSITE, faceIndex } from '../cube/vocabulary.ts';
import type { Choice, Condition, Goal } from './goal.ts';
import { METHOD_SPECS, type StageSpec } from './method-data.ts';

/** A stage of a method: what it adds to the earlier ones, in the order of adding. */
export interface Stage {
  readonly name: string;
  /** Its own demands last; before them those of stages that it takes in. */
  readonly demands: readonly StageSpec[];
  /** Pieces named by slots in the declared holding, whatever the base. */
  readonly ownPieces?: PieceSet;
}

export interface Method {
  readonly name: string;
  readonly stages: readonly Stage[];
  readonly variantOf?: string;
  readonly sided: boolean;
}

export const METHODS: readonly Method[] = METHOD_SPECS.map((spec) => ({
  name: spec.name,
  stages: spec.stages.map((stage, i) => ({
    name: stage.name,
    demands: spec.stages.slice(0, i + 1),
  })),
  sided: spec.sided === true,
  ...(spec.variantOf === undefined ? {} : { variantOf: spec.variantOf }),
}));

/** By its name in any case; `layers` when asked for the default. */
export function findMethod(name: string, methods: readonly Method[] = METHODS): Method | undefined {
  const wanted = name.trim().toLowerCase();
  return methods.find((method) => method.name.toLowerCase() === wanted);
}

export const LAYERS = METHODS[0];

export function stageNames(method: Method): string[] {
  return method.stages.map((stage) => stage.name);
}

/** A holding with the base down; in front the colour given, if it can be. */
function holdingOn(base: number, front: number | undefined): Holding {
  const down = 5;
  const fits = CENTRE_AT.map((_, holding) => holding).filter(
    (holding) => CENTRE_AT[holding][down] === base,
  );
  return fits.find((holding) => CENTRE_AT[holding][2] === front) ?? fits[0];
}

function slotsOf(names: string, holding: Holding): PieceSet {
  let set = 0;
  for (const name of names.split(' ')) {
    const slot = slotAt([...name].map(faceIndex), holding);
    if (slot !== undefined) set |= 1 << slot;
  }
  return set;
}

/**
 * The goals of a method for a base, in its order. Blocks on the sides are those of the front given
 * (a colour index); without one they may be on any side.
 */
export function goalsFor(method: Method, base: number, front?: number): readonly Goal[] {
  let byBase = GOALS.get(method);
  if (byBase === undefined) GOALS.set(method, (byBase = new Map<number, readonly Goal[]>()));
  const key = base * 7 + (front ?? 6);
  let goals = byBase.get(key);
  if (goals === undefined) byBase.set(key, (goals = makeGoals(method, base, front)));
  return goals;
}

/** Goals are the same objects each time, so that what is compiled of them is found again. */
const GOALS = new WeakMap<Method, Map<number, readonly Goal[]>>();

function makeGoals(method: Method, base: number, front?: number): readonly Goal[] {
  if (method.sided && front === undefined) {
    const fronts = CENTRE_AT.filter((map) => map[5] === base).map((map) => map[2]);
    const perFront = fronts.map((colour) => goalsFor({ ...method, sided: false }, base, colour));
    return method.stages.map((stage, i) => {
      const anyOf = distinct(perFront.map((goals) => goals[i]));
      if (anyOf.length === 1) return anyOf[0];
      return { name: stage.name, conditions: [], upTo: undefined, parts: [], anyOf };
    });
  }
  const holding = holdingOn(base, front);
  const before: { spec: StageSpec[]; own: PieceSet } = { spec: [], own: 0 };
  return method.stages.map((stage) => {
    const goal = makeGoal(stage, before, holding);
    for (const spec of stage.demands) if (!before.spec.includes(spec)) before.spec.push(spec);
    before.own |= stage.ownPieces ?? 0;
    return goal;
  });
}

/** Goals that differ by name of the side only are one: a last layer has no left. */
function distinct(goals: readonly Goal[]): Goal[] {
  const seen = new Map<string, Goal>();
  for (const goal of goals) {
    const sets = goal.choice && [...goal.choice.sets].sort((a, b) => a - b);
    const key = JSON.stringify([goal.conditions, goal.upTo, goal.slice, sets]);
    if (!seen.has(key)) seen.set(key, goal);
  }
  return [...seen.values()];
}

function makeGoal(
  stage: Stage,
  before: { spec: readonly StageSpec[]; own: PieceSet },
  holding: Holding,
): Goal {
  const base = CENTRE_AT[holding][5];
  const top = OPPOSITE[base];
  const conditions: Condition[] = [];
  let choice: Choice | undefined;
  const own = before.own | (stage.ownPieces ?? 0);
  if (own !== 0) conditions.push({ kind: 'placed', pieces: own });
  for (const spec of [
    ...before.spec.filter((spec) => !stage.demands.includes(spec)),
    ...stage.demands,
  ]) {
    conditions.push(...conditionsOf(spec, holding));
    if (spec.choice && (choice === undefined || spec.choice.atLeast > choice.atLeast)) {
      choice = {
        sets: spec.choice.sets.map((set) => slotsOf(set, holding)),
        atLeast: spec.choice.atLeast,
      };
    }
  }
  const latest = stage.demands.at(-1);
  const earlier = before.spec
    .flatMap((spec) => conditionsOf(spec, holding))
    .reduce(
      (set, condition) => set | (condition.kind === 'placed' ? condition.pieces : 0),
      before.own,
    );
  const parts = partsOf(stage, holding, earlier);
  const { kept, rest } = settleChoice(choice);
  if (kept !== undefined) conditions.push(kept);
  return {
    name: stage.name,
    conditions: merged(conditions),
    upTo: latest?.upToTop ? top : undefined,
    parts,
    ...(rest === undefined ? {} : { choice: rest }),
    ...(latest?.freeSlice
      ? { slice: { colour: axis(CENTRE_AT[holding][3]), quarters: latest.freeSlice } }
      : {}),
    ...(latest?.partsUpToBase ? { partsUpTo: base } : {}),
  };
}

/** One of two opposite colours, so that goals of opposite fronts come out the same. */
function axis(colour: number): number {
  return Math.min(colour, OPPOSITE[colour]);
}

/** All of the sets are no choice any more. */
function settleChoice(choice: Choice | undefined): { kept?: Condition; rest?: Choice } {
  if (choice === undefined) return {};
  if (choice.atLeast < choice.sets.length) return { rest: choice };
  return { kept: { kind: 'placed', pieces: choice.sets.reduce((all, set) => all | set, 0) } };
}

function conditionsOf(spec: StageSpec, holding: Holding): Condition[] {
  const map = CENTRE_AT[holding];
  const result: Condition[] = [];
  if (spec.placed) result.push({ kind: 'placed', pieces: slotsOf(spec.placed, holding) });
  if (spec.positioned)
    result.push({ kind: 'positioned', pieces: slotsOf(spec.positioned, holding) });
  if (spec.facing)
    result.push({ kind: 'facing', pieces: slotsOf(spec.facing, holding), colour: map[0] });
  if (spec.oriented) {
    result.push({
      kind: 'oriented',
      pieces: slotsOf(spec.oriented, holding),
      up: axis(map[0]),
      front: axis(map[2]),
    });
  }
  return result;
}

/** One `placed` condition instead of several; what is placed needs no weaker condition. */
function merged(conditions: readonly Condition[]): Condition[] {
  const placed = conditions.reduce(
    (set, condition) => (condition.kind === 'placed' ? set | condition.pieces : set),
    0,
  );
  const weaker = conditions
    .filter((condition) => condition.kind !== 'placed')
    .map((condition) => ({ ...condition, pieces: condition.pieces & ~placed }))
    .filter((condition) => condition.pieces !== 0);
  return placed === 0 ? weaker : [{ kind: 'placed', pieces: placed }, ...weaker];
}

function partsOf(stage: Stage, holding: Holding, earlier: PieceSet): PieceSet[] {
  if (stage.ownPieces !== undefined)
    return piecesIn(stage.ownPieces & ~earlier).map((piece) => 1 << piece);
  const latest = stage.demands.at(-1);
  if (latest === undefined) return [];
  if (latest.choice) return latest.choice.sets.map((set) => slotsOf(set, holding));
  const names = latest.placed ?? latest.positioned ?? latest.facing ?? latest.oriented ?? '';
  return piecesIn(slotsOf(names, holding) & ~earlier).map((piece) => 1 << piece);
}

/** The stage of this name in the first method that has one. */
export function findStage(text: string): Stage | undefined {
  const wanted = text.trim().toLowerCase();
  for (const method of METHODS) {
    const stage = method.stages.find((other) => other.name.toLowerCase() === wanted);
    if (stage) return stage;
  }
  return undefined;
}
