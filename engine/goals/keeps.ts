/**
 * Whether a sequence leaves a goal alone, whatever else the state is: from every state in which the
 * goal held it holds again at the end.
 *
 * A goal allows each of its pieces some places; an effect takes places to places. So it keeps the
 * goal if, for each turn of a layer that the goal does not mind, all allowed places of all pieces go
 * to places that are allowed together. Of a choice (some of four pairs) every pair must stay, since
 * any of them may be the ones that are made.
 */
import { FIRST_CORNER, type PieceSet } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import type { Goal } from './goal.ts';
import { compileGoal, readWhere, type Demand } from './judge.ts';

/** `effect`: relative to the centres, from solved; `from` and `to` are demands of goals that are alternatives. */
function takes(goes: Uint8Array, from: Demand, to: Demand): boolean {
  return from.pieces.every((piece) => {
    const places = from.allowed[piece];
    for (let place = 0; place < 24; place++) {
      if (
        (places >> place) & 1 &&
        ((to.allowed[piece] >> goes[piece < FIRST_CORNER ? place : 24 + place]) & 1) === 0
      ) {
        return false;
      }
    }
    return true;
  });
}

/** `result[place]` for edges (0…23), `result[24 + place]` for corners: where an effect takes what is there. */
function placesAfter(effect: State): Uint8Array {
  const result = new Uint8Array(48);
  // The piece that belongs in a slot shows where the effect takes what lies there.
  const where = readWhere(effect);
  for (let slot = 0; slot < 12; slot++) {
    for (let flip = 0; flip < 2; flip++) result[slot * 2 + flip] = where[slot] ^ flip;
  }
  for (let slot = 0; slot < 8; slot++) {
    const place = where[FIRST_CORNER + slot];
    for (let twist = 0; twist < 3; twist++) {
      result[24 + slot * 3 + twist] = place - (place % 3) + ((place + twist) % 3);
    }
  }
  return result;
}

function alternatives(goal: Goal): readonly Goal[] {
  return goal.anyOf ?? [goal];
}

/** Whether `effect` keeps `goal` from any state in which it held. */
export function effectKeeps(goal: Goal, effect: State): boolean {
  const goes = placesAfter(effect);
  const compiled = alternatives(goal).map(compileGoal);
  return compiled.every(({ demands, choice }) => {
    const stays = (set: PieceSet): boolean => piecesStay(set, goes);
    return (
      (choice?.sets.every(stays) ?? true) &&
      demands.every((from) =>
        compiled.some((other) => other.demands.some((to) => takes(goes, from, to))),
      )
    );
  });
}

function piecesStay(set: PieceSet, goes: Uint8Array): boolean {
  for (let piece = 0; piece < FIRST_CORNER; piece++) {
    if ((set >> piece) & 1 && goes[piece * 2] !== piece * 2) return false;
  }
  for (let slot = 0; slot < 8; slot++) {
    if ((set >> (slot + FIRST_CORNER)) & 1 && goes[24 + slot * 3] !== slot * 3) return false;
  }
  return true;
}
