/**
 * Slips: likely mistakes of writing that explain why a solve does not end solved, or why a stage does
 * not reach its goal. Single edits first, then whole stretches, and only where neither explains it
 * (and only for "ends solved", since for a stage they hit by chance) pairs of edits.
 */
import type { State } from '../../cube/state.ts';
import type { Turn } from '../../cube/turn.ts';
import { compose, isSolved } from '../../cube/state.ts';
import type { Goal } from '../../goals/goal.ts';
import { goalHolds } from '../../goals/judge.ts';
import { simplify } from '../../notation/simplify.ts';
import { asFaceTurns } from '../../notation/transform.ts';
import { STEP_STATES, type Search } from '../step.ts';
import { SlipCourse } from './course.ts';
import { applyEdits, singleEdits, type SlipEdit } from './edits.ts';
import { pairsThatSolve } from './pairs.ts';
import { stretchesThatSolve } from './stretches.ts';

export interface Slip {
  /** One edit, two edits, or the two rotations around a stretch, by their indices in the turns as given. */
  readonly edits: readonly SlipEdit[];
  /** Likelihood by how people slip, between 0 and 1; only the order means anything. */
  readonly score: number;
  /** The turns with the edits made. */
  readonly turns: readonly Turn[];
}

export interface SlipResult {
  /** `too-long`: more than 1,000 turns; nothing was tried. */
  readonly kind: 'already-solved' | 'slips' | 'none' | 'too-long';
  /** The best, at most `most`. */
  readonly slips: readonly Slip[];
  /** How many there are in all. */
  readonly count: number;
  /** Whether pairs were tried. */
  readonly pairs: boolean;
}

export interface SlipOptions {
  /** How many to give; 5 by default. */
  readonly most?: number;
  /** Whether to try pairs where nothing simpler explains; true by default. */
  readonly pairs?: boolean;
}

const MOST = 5;
/** Edits of more turns would fill the memory, and explain nothing any more. */
const MOST_TURNS = 1_000;
const NOTHING = { slips: [], count: 0, pairs: false } as const;
const PAIR_WEIGHT = 0.5;

/**
 * Slips after which the turns solve `start`. To look for a slip in the scramble as well, give the
 * solved cube as the start and scramble and solve as the turns: indices below the scramble's length
 * are then slips in it.
 */
export function* findSlips(
  start: State,
  turns: readonly Turn[],
  options: SlipOptions = {},
): Search<SlipResult> {
  if (turns.length > MOST_TURNS) return { kind: 'too-long', ...NOTHING };
  const course = new SlipCourse(start, turns);
  if (isSolved(course.end)) return { kind: 'already-solved', ...NOTHING };
  const edits = singleEdits(turns);
  yield { nodes: 0, depth: 1 };
  const simple = yield* singlesThatSolve(course, edits);
  simple.push(...(yield* stretchesThatSolve(course)));
  if (simple.length > 0) return rank(turns, simple, options, false);
  if (options.pairs === false) return rank(turns, [], options, false);
  const pairs = yield* pairsThatSolve(course, edits);
  return rank(turns, pairs, options, true);
}

/** Single edits after which the course ends solved. */
export function* singlesThatSolve(
  course: SlipCourse,
  edits: readonly SlipEdit[],
): Search<SlipEdit[][]> {
  const found: SlipEdit[][] = [];
  for (let i = 0; i < edits.length; i++) {
    const edit = edits[i];
    if (course.isSolvedBy(course.afterEdit(edit), edit.index + edit.remove)) found.push([edit]);
    if (i % STEP_STATES === STEP_STATES - 1) yield { nodes: i + 1, depth: 1 };
  }
  return found;
}

/**
 * Single edits within the turns of a stage after which its goal holds at its end, and all goals that
 * were reached before. `start` is the state before the turns.
 */
export function* findStageSlips(
  start: State,
  turns: readonly Turn[],
  goal: Goal,
  kept: readonly Goal[],
  options: SlipOptions = {},
): Search<SlipResult> {
  if (turns.length > MOST_TURNS) return { kind: 'too-long', ...NOTHING };
  const course = new SlipCourse(start, turns);
  const goals = [goal, ...kept];
  const holds = (state: State): boolean => goals.every((own) => goalHolds(own, state));
  if (holds(course.end)) return { kind: 'already-solved', ...NOTHING };
  const rests = course.before.map((_, place) => course.rest(place));
  const found: SlipEdit[][] = [];
  const edits = singleEdits(turns);
  for (let i = 0; i < edits.length; i++) {
    const edit = edits[i];
    const end = compose(course.afterEdit(edit), rests[edit.index + edit.remove]);
    if (holds(end)) found.push([edit]);
    if (i % STEP_STATES === STEP_STATES - 1) yield { nodes: i + 1, depth: 1 };
  }
  return rank(turns, found, options, false);
}

/** The best first; edits that lead to the same executed turns are one. */
function rank(
  turns: readonly Turn[],
  found: readonly (readonly SlipEdit[])[],
  options: SlipOptions,
  pairs: boolean,
): SlipResult {
  const best = new Map<string, Slip>();
  for (const edits of found) {
    const slip = { edits, score: scoreOf(edits), turns: applyEdits(turns, edits) };
    // As turned on the cube: what cancels or is only held otherwise makes no difference.
    const key = simplify(asFaceTurns(slip.turns)).join(' ');
    const known = best.get(key);
    if (!known || isBetter(slip, known)) best.set(key, slip);
  }
  const slips = [...best.values()].sort(
    (a, b) => b.score - a.score || a.edits[0].index - b.edits[0].index,
  );
  return {
    kind: slips.length > 0 ? 'slips' : 'none',
    slips: slips.slice(0, options.most ?? MOST),
    count: slips.length,
    pairs,
  };
}

/** Of two ways to write the same turns: the one in which less cancels, then the likelier. */
function isBetter(slip: Slip, known: Slip): boolean {
  if (slip.turns.length !== known.turns.length) return slip.turns.length < known.turns.length;
  return slip.score > known.score;
}

function scoreOf(edits: readonly SlipEdit[]): number {
  const [first, second] = edits;
  if (!second) return first.weight;
  // Two rotations around a stretch are one slip.
  return first.kind === 'other-holding' ? first.weight : first.weight * second.weight * PAIR_WEIGHT;
}
