/**
 * Slips that concern a whole stretch: written as the mirror image for the other hand, backwards, as seen
 * in another holding, or a repeat off by one.
 */
import { compose, invertState, type State } from '../../cube/state.ts';
import { applyTurns, SOLVED } from '../../cube/state.ts';
import { TURNS, invertTurn, isRotation, type Turn } from '../../cube/turn.ts';
import { PLANES, invertTurns, mirrorTurns } from '../../notation/transform.ts';
import { STEP_STATES, type Search } from '../step.ts';
import type { SlipCourse } from './course.ts';
import type { SlipEdit, SlipKind } from './edits.ts';

/** Shorter stretches are single edits under another name. */
const SHORTEST = 3;
/** A stage at most; longer ones would cost the square of the turns. */
const LONGEST = 60;
const LONGEST_REPEAT = 12;

const ROTATIONS = Array.from({ length: TURNS }, (_, turn) => turn).filter(isRotation);

/** Edits of one stretch (one edit, or two rotations around it) after which the course ends solved. */
export function* stretchesThatSolve(course: SlipCourse): Search<SlipEdit[][]> {
  const { turns, before } = course;
  const found: SlipEdit[][] = [];
  const mirrors = PLANES.map((plane) => ({ plane, states: prefixes(mirrorTurns(turns, plane)) }));
  const back = before.map(invertState);
  let nodes = 0;
  let reported = 0;
  for (let first = 0; first < turns.length; first++) {
    for (let end = first + SHORTEST; end <= Math.min(turns.length, first + LONGEST); end++) {
      const length = end - first;
      const replace = (kind: SlipKind, weight: number, meant: readonly Turn[]): void => {
        found.push([{ index: first, remove: length, turns: meant, kind, weight }]);
      };
      for (const { plane, states } of mirrors) {
        nodes++;
        const stretch = compose(invertState(states[first]), states[end]);
        if (!course.isSolvedBy(compose(before[first], stretch), end)) continue;
        replace(
          'mirrored-stretch',
          0.3 + length / 200,
          mirrorTurns(turns.slice(first, end), plane),
        );
      }
      const written = compose(back[first], before[end]);
      nodes += 1 + ROTATIONS.length;
      if (course.isSolvedBy(compose(before[first], invertState(written)), end)) {
        replace('inverted-stretch', 0.3 + length / 200, invertTurns(turns.slice(first, end)));
      }
      // With the end in another holding it is one forgotten rotation, which is a single edit.
      if (end < turns.length) {
        for (const rotation of ROTATIONS) {
          const around = compose(
            compose(TURN_EFFECTS[rotation], written),
            TURN_EFFECTS[invertTurn(rotation)],
          );
          if (!course.isSolvedBy(compose(before[first], around), end)) continue;
          found.push(
            [rotation, invertTurn(rotation)].map((turn, i) => ({
              index: i === 0 ? first : end,
              remove: 0,
              turns: [turn],
              kind: 'other-holding',
              weight: 0.5 + length / 400,
            })),
          );
        }
      }
      if (nodes - reported >= STEP_STATES) {
        reported = nodes;
        if ((yield { nodes, depth: 1 }) === 'stop') return found;
      }
    }
  }
  found.push(...repeatSlips(course));
  return found;
}

const TURN_EFFECTS: readonly State[] = Array.from({ length: TURNS }, (_, turn) =>
  applyTurns(SOLVED, [turn]),
);

function prefixes(turns: readonly Turn[]): State[] {
  const states: State[] = [SOLVED];
  for (const turn of turns) states.push(compose(states[states.length - 1], TURN_EFFECTS[turn]));
  return states;
}

/** Stretches that are written twice or more in a row, once more or once less. */
function repeatSlips(course: SlipCourse): SlipEdit[][] {
  const { turns, before } = course;
  const found: SlipEdit[][] = [];
  for (let length = 2; length <= LONGEST_REPEAT; length++) {
    for (let first = 0; first + 2 * length <= turns.length; first++) {
      let equal = 0;
      while (equal < length && turns[first + equal] === turns[first + length + equal]) equal++;
      if (equal < length) continue;
      const stretch = turns.slice(first, first + length);
      const middle = first + length;
      if (course.isSolvedBy(before[first], middle)) {
        found.push([
          { index: first, remove: length, turns: [], kind: 'repeat-extra', weight: 0.7 },
        ]);
      }
      if (course.isSolvedBy(applyTurns(before[middle], stretch), middle)) {
        found.push([
          { index: middle, remove: 0, turns: stretch, kind: 'repeat-missing', weight: 0.7 },
        ]);
      }
    }
  }
  return found;
}
