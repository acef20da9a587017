/** Which case of the last layer it is, and how to hold it. */
import { COLOURS, OPPOSITE } from '../cube/vocabulary.ts';
import type { CaseFact, Fact, HoldFact } from './facts.ts';
import { sayCue } from './render-cue.ts';
import { sayMissing } from './render-goals.ts';
import { sayStand } from './render-where.ts';
import { capital, sayPiece, sayState } from './say.ts';
import { one } from './select.ts';

function sayCase({ base, edges, cornersRight, swap, letter }: CaseFact): string {
  const top = COLOURS[OPPOSITE[COLOURS.indexOf(base)]];
  if (swap !== undefined) {
    const corners =
      swap === 'right'
        ? 'the corners are in the right order'
        : swap === 'adjacent'
          ? 'two corners beside each other are exchanged'
          : 'two corners across from each other are exchanged';
    const name = letter === undefined ? '' : `; people call the case ${letter}`;
    return `All of the ${top} layer is turned right; up to turns of it ${corners}${name}.`;
  }
  const shape = edges === 'cross' ? 'a cross' : edges === 'angle' ? 'an angle' : `a ${edges}`;
  return `The case is ${shape} of ${top} edges, with ${cornersRight} of 4 corners showing ${top} on top.`;
}

const TIMES = ['', 'once', 'twice', 'three times', 'four times', 'five times'];

function sayHold({ regrip, up, front, setup, sequence, times }: HoldFact): string[] {
  const held = `with ${up} up and ${front} in front`;
  return [
    regrip === '' ? `Hold it as it is, ${held}.` : `Hold it ${held}: ${regrip} leads there.`,
    sequence === ''
      ? `Then turn ${setup}.`
      : setup === ''
        ? times === 1
          ? `Then comes ${sequence}.`
          : `Then comes ${sequence}, ${TIMES[times]}.`
        : `Then comes ${setup} first, and ${sequence}, ${TIMES[times]}.`,
  ];
}

export function renderCase(facts: readonly Fact[]): string[] {
  const result: string[] = [];
  const found = one(facts, 'case');
  const goal = one(facts, 'goal');
  const cue = one(facts, 'cue');
  if (found) result.push(sayCase(found));
  else if (goal) {
    result.push(
      `There is no case of the last layer here yet, because ${sayState(goal, goal.holds)}${sayMissing(goal)}.`,
    );
  }
  if (cue?.piece) result.push(`Now it is about ${sayPiece(cue.piece)}.`);
  if (cue) result.push(sayCue(cue));
  const hold = one(facts, 'hold');
  if (hold) result.push(...sayHold(hold));
  const stand = one(facts, 'stand');
  if (stand && !hold) result.push(sayStand(stand));
  return result.map(capital);
}
