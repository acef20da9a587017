/**
 * Turns that are sensible at a place, with what they would do: single turns, common triggers and the
 * text's own sequences, each tried on the state once. Nothing is searched.
 */
import { pieceName, piecesIn } from '../../cube/piece.ts';
import { applyTurns, compose, type State } from '../../cube/state.ts';
import { FACE_TURNS, printTurn, type Turn } from '../../cube/turn.ts';
import type { Goal } from '../../goals/goal.ts';
import { goalHolds, goalMissing, readWhere } from '../../goals/judge.ts';
import { readName } from '../../notation/letters.ts';
import { Measures } from '../../notation/measure.ts';
import { readSequence } from '../../notation/read.ts';
import type { Analysis, Block } from '../analysis.ts';
import type { NamedSequence } from '../names.ts';
import { partsInPlace } from './progress.ts';
import { counted, listed } from './text.ts';

export interface Continuation {
  readonly text: string;
  /** What it would do: `reaches cross`, `2 more edges`, `takes white-red out of cross`. */
  readonly does: string;
  /** Higher is better; what changes nothing is 0. */
  readonly worth: number;
}

/** Inserts and triggers of common practice, in the holding at the place; their mirror images are there as well. */
const TRIGGERS: readonly string[] = [
  "R U R'",
  "R U' R'",
  "R U2 R'",
  "R' U R",
  "R' U' R",
  "L U L'",
  "L U' L'",
  "L' U L",
  "L' U' L",
  "L' U2 L",
  "F U F'",
  "F U' F'",
  "F' U F",
  "F' U' F",
  "R U R' U'",
  "L' U' L U",
  "F R U R' U' F'",
  "F U R U' R' F'",
  "R U R' U R U2 R'",
  "L' U' L U' L' U2 L",
  "U R U' R' U' F' U F",
  "U' L' U L U F U' F'",
];
const READ = TRIGGERS.map((text) => ({
  text,
  turns: readSequence(text).items.flatMap((node) => (node.kind === 'turn' ? [node.turn] : [])),
}));

/** Goals that count at a place: that of the stage under way (or due next), and those guarded. */
interface Wanted {
  readonly goal: Goal;
  readonly guarded: readonly Goal[];
}

function wantedAt(block: Block, place: number, state: State): Wanted | undefined {
  const { timeline } = block;
  const stage = timeline.stages.findLast(({ first }) => first <= place);
  const next = timeline.goals.findIndex(
    (goal, index) => index >= (stage?.goal ?? 0) && !goalHolds(goal, state),
  );
  if (next < 0) return undefined;
  const guarded = timeline.outcomes.flatMap(({ guardedFrom }, index) =>
    guardedFrom !== undefined && guardedFrom <= place && index < next
      ? [timeline.judged[index]]
      : [],
  );
  return { goal: timeline.goals[next], guarded };
}

/** Best first; of the single turns all, of longer ones only those that help. */
export function continuations(analysis: Analysis, block: Block, place: number): Continuation[] {
  const state = block.course.stateAt(place);
  if (state === undefined || block.kind === 'sequence') return [];
  const wanted = wantedAt(block, place, state);
  const found: Continuation[] = [];
  const last = place > block.ownFrom ? block.course.codes[place - 1] : -1;
  for (let turn: Turn = 0; turn < FACE_TURNS; turn++) {
    // The same layer twice is one turn.
    if (last >= 0 && Math.floor(last / 3) === Math.floor(turn / 3)) continue;
    found.push(judged(printTurn(turn), state, applyTurns(state, [turn]), wanted, block.base));
  }
  const longer = [
    ...READ.map(({ text, turns }) => ({ text, after: applyTurns(state, turns) })),
    ...calls(analysis, state),
  ];
  for (const { text, after } of longer) {
    const one = judged(text, state, after, wanted, block.base);
    if (one.worth > 0) found.push(one);
  }
  return found.sort((a, b) => b.worth - a.worth);
}

/** The named sequences whose name can be written after `@`: signs in a title end it. */
export function callable(names: Analysis['names']): NamedSequence[] {
  return [...names.known.values()].filter(
    ({ name }) => readName(`@${name}`, 0, name.length + 1)?.end === name.length + 1,
  );
}

function calls({ names }: Analysis, state: State): { text: string; after: State }[] {
  return callable(names).map(({ name, items }) => {
    const measures = new Measures(names.resolve);
    measures.measure(items);
    return { text: `@${name}`, after: compose(state, measures.effectOf(items)) };
  });
}

function judged(
  text: string,
  before: State,
  after: State,
  wanted: Wanted | undefined,
  base: number,
): Continuation {
  if (wanted === undefined) return { text, does: '', worth: 0 };
  const { goal, guarded } = wanted;
  const broken = guarded.filter((one) => goalHolds(one, before) && !goalHolds(one, after));
  const mended = guarded.filter((one) => !goalHolds(one, before) && goalHolds(one, after));
  const reached = goalHolds(goal, after);
  const { done: now, unit } = partsInPlace(goal, readWhere(before));
  const then = partsInPlace(goal, readWhere(after)).done;
  const said: string[] = [];
  if (reached) said.push(`reaches ${goal.name}`);
  else if (then > now) said.push(`${counted(then - now, `more ${unit}`)} in place`);
  else if (then < now) said.push(`${counted(now - then, unit)} out of place`);
  if (mended.length > 0) said.push(`restores ${listed(mended.map(({ name }) => name))}`);
  if (broken.length > 0) {
    const pieces = piecesIn(goalMissing(broken[0], after)).map((piece) => pieceName(piece, base));
    said.push(
      `lends ${pieces.length > 3 ? counted(pieces.length, 'piece') : listed(pieces)} of ${broken[0].name}`,
    );
  }
  const worth =
    (reached && broken.length === 0 ? 100 : 0) +
    10 * (mended.length - broken.length) +
    (then - now) * (broken.length === 0 ? 5 : 1);
  return { text, does: said.join('; '), worth };
}
