/** Why 54 colours are no cube, and what mends it, in sentences; slots are named as they lie in the hands. */
import { FIRST_CORNER, isCorner, pieceTitle, slotName } from './piece.ts';
import type { Problem } from './possible.ts';
import { COLOURS, FACES, OPPOSITE } from './vocabulary.ts';

export interface Explanation {
  /** What is wrong, without a full stop: `white is on 10 facelets instead of 9`. */
  readonly reason: string;
  /** What to do, without a full stop: `look for a facelet that should not be white`. */
  readonly remedy: string;
}

const list = (words: readonly string[]): string => words.join(' and ');
const named = (colours: readonly number[]): string =>
  colours.map((colour) => COLOURS[colour]).join('-');
const place = (slot: number): string => slotName(slot, 0);

export function explainProblem(problem: Problem): Explanation {
  switch (problem.kind) {
    case 'colour-count': {
      const colour = COLOURS[problem.colour];
      const should = problem.count > 9 ? 'should not be' : 'should be';
      return {
        reason: `${colour} is on ${problem.count} ${problem.count === 1 ? 'facelet' : 'facelets'} instead of 9`,
        remedy: `look for a facelet that ${should} ${colour}`,
      };
    }
    case 'centre-twice':
      return {
        reason: `the centres at ${list(problem.faces.map((face) => FACES[face]))} are both ${COLOURS[problem.colour]}`,
        remedy: 'give each centre a colour of its own',
      };
    case 'centres-opposite': {
      const [first, second] = problem.colours;
      return {
        reason: `${COLOURS[first]} and ${COLOURS[second]} are opposite centres`,
        remedy: `${COLOURS[first]} belongs opposite ${COLOURS[OPPOSITE[first]]}`,
      };
    }
    case 'mirrored-scheme':
      return {
        reason: 'the colour scheme is mirrored',
        remedy:
          'with white up and green in front, red is on the right: write the faces in the order U, then L F R B, then D',
      };
    case 'mirrored-corner':
      return {
        reason: `the corner at ${place(problem.slot)} has its colours in mirrored order`,
        remedy: `exchange two of its colours`,
      };
    case 'no-such-piece': {
      const piece = isCorner(problem.slot) ? 'corner' : 'edge';
      const pair = problem.colours.filter((colour, i, all) =>
        problem.reason === 'equal'
          ? all.indexOf(colour) !== i || all.lastIndexOf(colour) !== i
          : all.includes(OPPOSITE[colour]),
      );
      const why =
        problem.reason === 'equal'
          ? `no ${piece} has ${COLOURS[pair[0]]} twice`
          : `${list([...new Set(pair)].map((colour) => COLOURS[colour]))} never meet in a piece`;
      return {
        reason: `the ${piece} at ${place(problem.slot)} cannot be ${named(problem.colours)}: ${why}`,
        remedy: `look at the colours of ${place(problem.slot)} again`,
      };
    }
    case 'piece-twice':
      return {
        reason: `the ${pieceTitle(problem.piece)} is there ${problem.slots.length === 2 ? 'twice' : `${problem.slots.length} times`}, at ${list(problem.slots.map(place))}`,
        remedy: 'look at the colours of these slots again',
      };
    case 'piece-missing':
      return {
        reason: `the ${pieceTitle(problem.piece)} is missing`,
        remedy: `look for ${problem.piece < FIRST_CORNER ? 'an edge' : 'a corner'} that should be it`,
      };
    case 'twisted-corner':
      return {
        reason: 'a corner is twisted',
        remedy: `turn one corner in its place ${problem.remedy}`,
      };
    case 'flipped-edge':
      return { reason: 'an edge is flipped', remedy: 'turn one edge over in its place' };
    case 'swapped-pieces':
      return { reason: 'two pieces are swapped', remedy: 'swap two corners or two edges' };
  }
}
