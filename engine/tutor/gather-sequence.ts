/** Facts on a sequence by itself: its effect, order, inverse, mirror image and counts; and how two compare. */
import { describeEffect } from '../cube/effect.ts';
import { SOLVED, applyTurns, sameState } from '../cube/state.ts';
import { printTurn, turnKind, type Turn } from '../cube/turn.ts';
import { goalHolds } from '../goals/judge.ts';
import { countTurns } from '../notation/count.ts';
import { printTurns } from '../notation/print.ts';
import { asFaceTurns, invertTurns, mirrorTurns } from '../notation/transform.ts';
import { comfortCost } from '../search/comfort.ts';
import type { CompareFact, EffectFact, Fact, RepeatFact, ShorterFact, WayFact } from './facts.ts';
import type { Aspect } from './intents.ts';
import { homeOf, partsOf } from './opened.ts';
import { dueGoal } from './referents.ts';
import { nameGoal, namePieces, type Scene } from './scene.ts';
import { shortWay } from './short-ways.ts';

/** `UFR` as the slot `UFR` and `URB` as `UBR`: U or D first, then F or B, then L or R. */
function slotOf(sticker: string): string {
  return [...sticker].sort((a, b) => 'UDFBLR'.indexOf(a) - 'UDFBLR'.indexOf(b)).join('');
}

export function effectFact({ place }: Scene, turns: readonly Turn[]): EffectFact {
  const effect = describeEffect(applyTurns(SOLVED, turns));
  const slots = (cycles: typeof effect.corners): string[][] =>
    cycles.map(({ stickers }) => stickers.map(slotOf));
  return {
    kind: 'effect',
    place,
    turns: printTurns(turns),
    corners: slots(effect.corners),
    edges: slots(effect.edges),
    centres: slots(effect.centres),
    twisted: effect.twists.map(({ slot }) => slotOf(slot)),
    flipped: effect.flips.map(slotOf),
    order: effect.order,
  };
}

export function gatherSequence(scene: Scene, turns: readonly Turn[], aspect: Aspect): Fact[] {
  const { place } = scene;
  const text = printTurns(turns);
  switch (aspect) {
    case 'effect':
    case 'order':
      return [effectFact(scene, turns)];
    case 'inverse':
      return [
        {
          kind: 'related',
          place,
          relation: 'inverse',
          turns: text,
          other: printTurns(invertTurns(turns)),
        },
      ];
    case 'mirror':
      return [
        {
          kind: 'related',
          place,
          relation: 'mirror',
          turns: text,
          other: printTurns(mirrorTurns(turns, 'left-right')),
        },
      ];
    case 'counts': {
      const { obtm, qtm } = countTurns(turns);
      return [{ kind: 'counts', place, turns: text, obtm: obtm ?? 0, qtm: qtm ?? 0 }];
    }
  }
}

export function shorterFact({ place }: Scene, turns: readonly Turn[]): ShorterFact {
  const { turns: other, provenTo } = shortWay(turns);
  // Shown only if a replay confirms it.
  const sound =
    other !== undefined && sameState(applyTurns(SOLVED, turns), applyTurns(SOLVED, other));
  return {
    kind: 'shorter',
    place,
    turns: printTurns(turns),
    other: sound ? printTurns(other) : undefined,
    count: asFaceTurns(turns).length,
    otherCount: sound ? asFaceTurns(other).length : undefined,
    provenTo,
  };
}

export function compareFact(
  { place }: Scene,
  first: readonly Turn[],
  second: readonly Turn[],
): CompareFact {
  const [a, b] = [comfortCost(first), comfortCost(second)];
  return {
    kind: 'compare',
    place,
    first: printTurns(first),
    second: printTurns(second),
    same: sameState(applyTurns(SOLVED, first), applyTurns(SOLVED, second)),
    counts: [countTurns(first).obtm ?? 0, countTurns(second).obtm ?? 0],
    easier: a === b ? undefined : a < b ? 'first' : 'second',
  };
}

/** Longest order for which every repetition is tried. */
const MOST_TIMES = 1260;

/** How often to do a sequence: until the due goal is reached, else until a piece of it is home with all before it kept. */
export function repeatFact(scene: Scene, turns: readonly Turn[]): RepeatFact {
  const index = dueGoal(scene) ?? scene.goals.length - 1;
  const goal = scene.goals[index];
  const { order } = describeEffect(applyTurns(SOLVED, turns));
  const common = {
    kind: 'repeat' as const,
    place: scene.place,
    ...nameGoal(scene.block.method, goal, scene.base),
    turns: printTurns(turns),
    order,
  };
  const before = scene.goals.slice(0, index);
  const made = partsOf(goal, scene.state).made;
  let gain: { times: number; pieces: number } | undefined;
  let { state } = scene;
  for (let times = 1; times < Math.min(order, MOST_TIMES); times++) {
    state = applyTurns(state, turns);
    const now = state;
    if (!before.every((one) => goalHolds(one, now))) continue;
    if (goalHolds(goal, now)) return { ...common, times, effect: 'goal', pieces: [] };
    const own = partsOf(goal, now).made;
    const gained = own.filter((part) => !made.includes(part));
    const pieces = homeOf(
      gained.reduce((all, part) => all | part, 0),
      now,
    );
    if (gain === undefined && pieces !== 0 && made.every((part) => own.includes(part)))
      gain = { times, pieces };
  }
  if (gain === undefined) return { ...common, times: undefined, effect: undefined, pieces: [] };
  const pieces = namePieces(gain.pieces, scene.base);
  return { ...common, times: gain.times, effect: 'home', pieces };
}

/** Which way a single turn takes what it moves; undefined for rotations, which move no piece against another. */
export function wayFact({ place }: Scene, turn: Turn): WayFact | undefined {
  if (turnKind(turn) === 'rotation') return undefined;
  const effect = describeEffect(applyTurns(SOLVED, [turn]));
  const [first] = effect.edges;
  if (first === undefined) return undefined;
  const [from, to] = first.stickers.map(slotOf);
  return { kind: 'way', place, turn: printTurn(turn), from, to };
}
