/**
 * Shorter ways for a stretch of a block's turns: with the same effect on every cube, or, where that
 * is not to be had, with the same goals reached.
 */
import { goalHolds } from '../goals/judge.ts';
import { applyTurns } from '../cube/state.ts';
import type { Position } from '../cube/place.ts';
import type { Turn } from '../cube/turn.ts';
import type { Block } from '../document/analysis.ts';
import type { TextEdit } from '../document/finding.ts';
import { JUMP } from '../goals/course.ts';
import { printTurns } from '../notation/print.ts';
import { asFaceTurns } from '../notation/transform.ts';
import { findAlternatives, findShorter, findShorterOnGoals } from '../search/same-effect.ts';
import type { Search } from '../search/step.ts';
import { tryEdits, type Source } from './trial.ts';
import { isBefore } from './written.ts';

export interface Stretch {
  /** Turns of the block, `first` to before `end`. */
  readonly first: number;
  readonly end: number;
  readonly turns: readonly Turn[];
}

export type Shorter =
  /** `optimal`: proven that nothing shorter has this effect (or reaches these goals). */
  | {
      readonly kind: 'shorter';
      readonly same: 'effect' | 'goals';
      readonly turns: readonly Turn[];
      readonly optimal: boolean;
      /** In the place of the stretch; undefined where it does not stand as one piece of text. */
      readonly edits: readonly TextEdit[] | undefined;
    }
  | {
      readonly kind: 'none';
      /** No face turns of at most so many have the same effect. */
      readonly provenTo: number;
      readonly optimal: boolean;
    };

/** The turns whose text lies between two places of the text; undefined if there are none, or an unknown stretch among them. */
export function stretchBetween(block: Block, from: Position, to: Position): Stretch | undefined {
  let first = -1;
  let end = -1;
  for (let turn = 0; turn < block.course.length; turn++) {
    const range = block.rangeOf(turn);
    if (isBefore(range.start, from) || isBefore(to, range.end)) continue;
    if (first < 0) first = turn;
    end = turn + 1;
  }
  if (first < 0) return undefined;
  const turns: Turn[] = [];
  for (let turn = first; turn < end; turn++) {
    if (block.course.codes[turn] === JUMP) return undefined;
    turns.push(block.course.codes[turn]);
  }
  return { first, end, turns };
}

export function* shorterWays(source: Source, block: Block, stretch: Stretch): Search<Shorter[]> {
  const found: Shorter[] = [];
  const { turns, first, end } = stretch;
  const result = yield* findShorter(turns);
  if (result.kind === 'none') found.push(result);
  else found.push(asFound(source, block, stretch, 'effect', result.turns, result.optimal));
  const start = block.course.stateAt(first);
  const { goals } = block.timeline;
  const after = start && applyTurns(start, turns);
  if (start === undefined || after === undefined) return found;
  // Turns that come after were made for the effect, so goals alone count only at the end.
  if (end < block.course.length || !goals.some((goal) => goalHolds(goal, after))) return found;
  const best =
    result.kind === 'shorter' ? asFaceTurns(result.turns).length : asFaceTurns(turns).length;
  const other = yield* findShorterOnGoals(start, turns, goals, {
    maxTurns: best - 1,
    budget: 2_000_000,
  });
  if (other.kind === 'found')
    found.push(asFound(source, block, stretch, 'goals', other.turns, other.optimal));
  return found;
}

/** How many other ways are given. */
const MOST_OTHER = 5;

/** Other turns with the same effect, by hand comfort, at most one face turn longer than the shortest. */
export function* otherWays(stretch: Stretch): Search<(readonly Turn[])[]> {
  const { alternatives } = yield* findAlternatives(stretch.turns);
  return alternatives.slice(0, MOST_OTHER);
}

function asFound(
  source: Source,
  block: Block,
  stretch: Stretch,
  same: 'effect' | 'goals',
  turns: readonly Turn[],
  optimal: boolean,
): Shorter {
  const edits = replaceStretch(source, block, stretch, turns);
  return { kind: 'shorter', same, turns, optimal, edits };
}

/** The turns in the place of the stretch, tried. Only within one line, so that no heading or comment between the turns is lost. */
export function replaceStretch(
  source: Source,
  block: Block,
  { first, end }: Stretch,
  turns: readonly Turn[],
): TextEdit[] | undefined {
  const from = block.rangeOf(first);
  const to = block.rangeOf(end - 1);
  if (from.start.line !== to.end.line) return undefined;
  const range = { start: from.start, end: to.end };
  const edits = [{ range, newText: printTurns(turns) }];
  const trial = tryEdits(source, block, edits);
  // The rest of the block must come out as before: the same turns, and no fewer of them.
  const length = block.course.length - (end - first) + turns.length;
  if (trial?.block.course.length !== length) return undefined;
  for (let turn = 0; turn < turns.length; turn++) {
    if (trial.block.course.codes[first + turn] !== turns[turn]) return undefined;
  }
  return edits;
}
