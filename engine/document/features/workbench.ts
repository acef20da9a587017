/**
 * What a sequence does to any cube, told in full: for sequence blocks as a workbench, for groups and
 * for names. Everything is computed from the turns; what cannot be is left out.
 */
import { describeEffect, effectOrder, type Cycle, type Effect } from '../../cube/effect.ts';
import { HOLDINGS, type Holding } from '../../cube/holding.ts';
import { pieceName, slotAt } from '../../cube/piece.ts';
import {
  SOLVED,
  applyTurns,
  held,
  holdingAfter,
  invertState,
  rename,
  sameArrangement,
  type State,
} from '../../cube/state.ts';
import { makeTurn, printTurn, type Turn } from '../../cube/turn.ts';
import { faceIndex } from '../../cube/vocabulary.ts';
import type { Goal } from '../../goals/goal.ts';
import { goalHolds } from '../../goals/judge.ts';
import { effectKeeps } from '../../goals/keeps.ts';
import { countTurns, type Counts } from '../../notation/count.ts';
import { execute, JUMP, type Resolve } from '../../notation/execute.ts';
import { printSequence, printTurns } from '../../notation/print.ts';
import { invert, mirror, mirrorTurns, withoutRotations } from '../../notation/transform.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import { findForm } from './commutator.ts';

const MOST_TURNS = 2_000;

export interface Question {
  readonly items: readonly SequenceNode[];
  readonly resolve: Resolve;
  readonly goals: readonly Goal[];
  readonly holding: Holding;
  /** Colour index. */
  readonly base: number;
}

export interface GoalFate {
  readonly goal: string;
  /** It holds at the end from any state in which it held. */
  readonly kept: boolean;
  /** Index and text of the turn that opens it for the last time on a solved cube; undefined: never opened. */
  readonly opened: { readonly turn: number; readonly text: string } | undefined;
  /** The turn that brings it back; undefined where it never comes back. */
  readonly back: { readonly turn: number; readonly text: string } | undefined;
}

export interface SequenceReport {
  readonly turns: readonly Turn[];
  readonly counts: Counts;
  readonly order: number;
  readonly effect: Effect;
  readonly goals: readonly GoalFate[];
  readonly inverse: string;
  /** Left for right; undefined if it calls a sequence by its name. */
  readonly mirror: string | undefined;
  /** Rotations after which it does the same (`same`), and after which its mirror image or inverse does. */
  readonly symmetry: {
    readonly same: readonly string[];
    readonly mirrored: readonly string[];
    readonly inverted: readonly string[];
    readonly selfInverse: boolean;
  };
  /** The sequence as a commutator or conjugate, if it is one. */
  readonly form:
    { readonly text: string; readonly disguised: boolean; readonly kind: string } | undefined;
}

/** Undefined if the turns are too many, or some are unknown. */
export function reportOn(question: Question): SequenceReport | undefined {
  const { items, resolve, goals, holding } = question;
  const { codes, tooLong, unresolved } = execute(items, { resolve, limit: MOST_TURNS });
  if (tooLong || unresolved.length > 0 || codes.length === 0 || codes.includes(JUMP))
    return undefined;
  const whole = applyTurns(SOLVED, codes);
  const still = withoutRotations(codes);
  const onBody = applyTurns(held(SOLVED, holding), codes);
  const mirrored = mirror(items, 'left-right');
  const form = findForm(codes);
  return {
    turns: codes,
    counts: countTurns(codes),
    order: effectOrder(whole),
    effect: describeEffect(applyTurns(SOLVED, still)),
    goals: goals.map((goal) => fateOf(goal, codes, holding, effectKeeps(goal, onBody))),
    inverse: printSequence(invert(items)),
    mirror: mirrored && printSequence(mirrored),
    symmetry: symmetryOf(whole, applyTurns(SOLVED, mirrorTurns(codes, 'left-right'))),
    form: form && {
      text: printSequence([form.node]),
      disguised: form.disguised,
      kind: form.kind,
    },
  };
}

function fateOf(goal: Goal, turns: readonly Turn[], holding: Holding, kept: boolean): GoalFate {
  let state = held(SOLVED, holding);
  let opened: number | undefined;
  let back: number | undefined;
  turns.forEach((turn, index) => {
    const was = goalHolds(goal, state);
    state = applyTurns(state, [turn]);
    const is = goalHolds(goal, state);
    if (was && !is) [opened, back] = [index, undefined];
    if (!was && is) back = index;
  });
  const place = (turn: number | undefined): GoalFate['back'] =>
    turn === undefined ? undefined : { turn, text: printTurn(turns[turn]) };
  return { goal: goal.name, kept, opened: place(opened), back: place(back) };
}

function symmetryOf(effect: State, image: State): SequenceReport['symmetry'] {
  const body = held(effect, 0);
  const inverse = held(invertState(body), 0);
  const those = (from: State, wanted: State): string[] =>
    Array.from({ length: HOLDINGS }, (_, holding) => holding)
      .filter((holding) => sameArrangement(rename(from, holding), wanted))
      .map((holding) => ROTATIONS[holding]);
  return {
    same: those(body, body).filter((name) => name !== ''),
    mirrored: those(held(image, 0), body),
    inverted: those(body, inverse).filter((name) => name !== ''),
    selfInverse: sameArrangement(body, inverse),
  };
}

/** By holding: the fewest rotations that lead to it from the first one. */
const ROTATIONS: readonly string[] = (() => {
  const single = (['x', 'y', 'z'] as const).flatMap((family) =>
    [1, 3, 2].map((amount) => makeTurn(family, amount)),
  );
  const found: string[] = [''];
  for (const words of [
    single.map((turn) => [turn]),
    single.flatMap((a) => single.map((b) => [a, b])),
  ])
    for (const turns of words) {
      const holding = turns.reduce<Holding>((at, turn) => holdingAfter(turn, at), 0);
      found[holding] ??= printTurns(turns);
    }
  return found;
})();

/** `UFR → ULB → URB`, with what these pieces are on a solved cube. */
export function sayCycle(cycle: Cycle, holding: Holding, base: number): string {
  const names = cycle.stickers.map((sticker) => {
    const slot = slotAt([...sticker].map(faceIndex), holding);
    return slot === undefined ? sticker : pieceName(slot, base);
  });
  const slots = [...cycle.stickers, cycle.stickers[0]].join(' → ');
  const turned =
    cycle.returns === 'right'
      ? ''
      : ` (comes back ${cycle.returns === 'flipped' ? 'flipped' : `turned ${cycle.returns}`})`;
  return cycle.stickers[0].length === 1 ? slots : `${slots}${turned}: ${names.join(', ')}`;
}
