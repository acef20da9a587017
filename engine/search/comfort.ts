/**
 * How comfortable turns are for a right-handed person: a rough cost by face and amount, from common
 * practice (right and top are turned by fingers alone, back and bottom need the grip to change).
 * It only orders sequences of the same length; it is no measure of speed.
 */
import { FACES } from '../cube/vocabulary.ts';
import { amountOf, familyOf, turnKind, type Turn } from '../cube/turn.ts';

const FACE_COST: Readonly<Record<(typeof FACES)[number], number>> = {
  U: 10,
  R: 10,
  F: 16,
  L: 18,
  D: 17,
  B: 30,
};

export function comfortCost(turns: readonly Turn[]): number {
  let cost = 0;
  for (const turn of turns) {
    const kind = turnKind(turn);
    if (kind === 'face') cost += FACE_COST[FACES[familyOf(turn)]];
    else cost += kind === 'rotation' ? 25 : 18;
    if (amountOf(turn) === 2) cost += 5;
  }
  return cost;
}
