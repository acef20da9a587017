/**
 * Turns that cancel or merge. Turns about one axis commute, so in `R L R'` the first and the last
 * cancel; where a stretch vanishes, its neighbours may meet: `R U U' R'` is nothing.
 */
import { amountOf, familyOf, makeTurn, MOTIONS, TURNS, turnKind, type Turn } from '../cube/turn.ts';
import { NORMALS } from '../cube/vocabulary.ts';

export interface Cancellation {
  /** Indices of the first and last turn concerned. */
  readonly first: number;
  readonly last: number;
  /** What does the same as everything from `first` to `last`. */
  readonly replacement: readonly Turn[];
}

/** Consecutive turns about one axis (what vanished between them left out). */
interface Run {
  /** 0 to 2; −1 for a step that is no turn, across which nothing merges. */
  readonly axis: number;
  readonly turns: Turn[];
  /** Quarter turns by family, in the order in which the families come first. */
  readonly sums: Map<number, number>;
  readonly first: number;
  last: number;
}

type Reduce = (sums: ReadonlyMap<number, number>) => Turn[];

/** 0 for the axis through L and R, 1 for U and D, 2 for F and B. */
function axisOf(turn: Turn): number {
  return NORMALS[MOTIONS[familyOf(turn)].axis].findIndex((part) => part !== 0);
}

/**
 * Places where turns of the same layers cancel or merge, in order and disjoint. Negative codes
 * (steps that are no turn) keep what is before and after them apart.
 */
export function cancellations(codes: ArrayLike<number>): Cancellation[] {
  const { runs, vanished } = findRuns(codes, mergeFamilies);
  const found: Cancellation[] = [];
  for (const run of runs) {
    if (run.axis < 0) continue;
    const replacement = mergeFamilies(run.sums);
    if (replacement.length < run.turns.length)
      found.push({ first: run.first, last: run.last, replacement });
  }
  for (const { first, last } of vanished) found.push({ first, last, replacement: [] });
  found.sort((a, b) => a.first - b.first || b.last - a.last);
  let end = -1;
  return found.filter(({ first, last }) => {
    if (first <= end) return false;
    end = last;
    return true;
  });
}

/** The same effect with every stretch about one axis in as few turns as possible (`R M'` becomes `Rw`). */
export function simplify(turns: readonly Turn[]): Turn[] {
  return findRuns(turns, fewestTurns).runs.flatMap((run) => {
    if (run.axis < 0) return run.turns;
    const reduced = fewestTurns(run.sums);
    return reduced.length < run.turns.length ? reduced : run.turns;
  });
}

function findRuns(codes: ArrayLike<number>, reduce: Reduce): { runs: Run[]; vanished: Run[] } {
  const runs: Run[] = [];
  const vanished: Run[] = [];
  for (let index = 0; index < codes.length; index++) {
    const code = codes[index];
    const axis = code < 0 ? -1 : axisOf(code);
    let run = runs.at(-1);
    if (run === undefined || axis < 0 || run.axis !== axis) {
      run = { axis, turns: [], sums: new Map(), first: index, last: index };
      runs.push(run);
    }
    run.turns.push(code);
    run.last = index;
    if (axis < 0) continue;
    const family = familyOf(code);
    run.sums.set(family, (run.sums.get(family) ?? 0) + amountOf(code));
    if (run.turns.length > 1 && reduce(run.sums).length === 0) {
      runs.pop();
      vanished.push(run);
    }
  }
  return { runs, vanished };
}

/** Turns of the same family as one. */
function mergeFamilies(sums: ReadonlyMap<number, number>): Turn[] {
  return [...sums].filter(([, sum]) => sum % 4 !== 0).map(([family, sum]) => makeTurn(family, sum));
}

/**
 * Quarter turns of the three layers across an axis, from the layer at its negative end, each
 * clockwise as seen from the positive end.
 */
function layersOf(turn: Turn): [number, number, number] {
  const { axis } = MOTIONS[familyOf(turn)];
  const positive = NORMALS[axis].some((part) => part > 0);
  const amount = positive ? amountOf(turn) : 4 - amountOf(turn);
  const kind = turnKind(turn);
  const outer = kind === 'slice' ? 0 : amount;
  const middle = kind === 'face' ? 0 : amount;
  const far = kind === 'rotation' ? amount : 0;
  return positive ? [far, middle, outer] : [outer, middle, far];
}

function layerCode(layers: readonly number[]): number {
  return (layers[0] % 4) + (layers[1] % 4) * 4 + (layers[2] % 4) * 16;
}

/** `FEWEST[axis][layerCode]`: the fewest turns, face turns preferred as they come first. */
const FEWEST: readonly (readonly (readonly Turn[])[])[] = [0, 1, 2].map((axis) => {
  const turns = Array.from({ length: TURNS }, (_, turn) => turn).filter(
    (turn) => axisOf(turn) === axis,
  );
  const table: (readonly Turn[])[] = new Array<readonly Turn[]>(64);
  table[0] = [];
  const queue: [number, number, number][] = [[0, 0, 0]];
  for (const layers of queue) {
    for (const turn of turns) {
      const own = layersOf(turn);
      const next: [number, number, number] = [
        layers[0] + own[0],
        layers[1] + own[1],
        layers[2] + own[2],
      ];
      if (table[layerCode(next)] !== undefined) continue;
      table[layerCode(next)] = [...table[layerCode(layers)], turn];
      queue.push(next);
    }
  }
  return table;
});

function fewestTurns(sums: ReadonlyMap<number, number>): Turn[] {
  const total = [0, 0, 0];
  let axis = 0;
  for (const [family, sum] of sums) {
    const quarter = makeTurn(family, 1);
    axis = axisOf(quarter);
    layersOf(quarter).forEach((amount, layer) => (total[layer] += amount * (sum % 4)));
  }
  return [...FEWEST[axis][layerCode(total)]];
}
