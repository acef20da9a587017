/**
 * All 62,208 states of the last layer: white up, green in front, everything below at home. The top
 * layer's pieces and slots are the first four edges (UF UR UB UL) and corners (UFR UFL UBL UBR).
 */
import { colourFacelets, faceletIndex } from '../../engine/cube/facelets.ts';
import { readState, sumProblems } from '../../engine/cube/possible.ts';
import { SOLVED, applyTurn, applyTurns, type State } from '../../engine/cube/state.ts';
import { makeTurn, type Turn } from '../../engine/cube/turn.ts';
import { digits, permutations } from './numbers.ts';

const TOP = [0, 1, 2, 3];

/** Turns of the top layer; none is 0. */
const TOP_TURNS: readonly (readonly Turn[])[] = [
  [],
  [makeTurn('U', 1)],
  [makeTurn('U', 2)],
  [makeTurn('U', 3)],
];

export interface Pattern {
  readonly cornerPieces?: readonly (readonly number[])[];
  readonly edgePieces?: readonly (readonly number[])[];
  readonly twists?: readonly (readonly number[])[];
  readonly flips?: readonly (readonly number[])[];
}

export const ARRANGEMENTS = permutations(TOP);
export const TWISTS = digits(4, 3);
export const FLIPS = digits(4, 2);
/** Nothing turned, nothing exchanged. */
export const RIGHT: readonly (readonly number[])[] = [[0, 0, 0, 0]];
export const HOME: readonly (readonly number[])[] = [TOP];

/** All possible states with the arrangements and turnings given (default: any). */
export function lastLayerStates(pattern: Pattern = {}): State[] {
  const states: State[] = [];
  for (const cornerPieces of pattern.cornerPieces ?? ARRANGEMENTS) {
    for (const edgePieces of pattern.edgePieces ?? ARRANGEMENTS) {
      for (const twists of pattern.twists ?? TWISTS) {
        for (const flips of pattern.flips ?? FLIPS) {
          const state = {
            corners: Uint8Array.from(SOLVED.corners, (code, slot) =>
              slot < 4 ? cornerPieces[slot] * 3 + twists[slot] : code,
            ),
            edges: Uint8Array.from(SOLVED.edges, (code, slot) =>
              slot < 4 ? edgePieces[slot] * 2 + flips[slot] : code,
            ),
            holding: 0,
          };
          if (sumProblems(state).length === 0) states.push(state);
        }
      }
    }
  }
  return states;
}

/** Everything about a state but its holding, as a text to compare and to collect. */
export function nameOf({ corners, edges }: State): string {
  return String.fromCharCode(...Array.from(corners), ...Array.from(edges));
}

/** How the top layer's pieces are turned, by slot. */
export function turningOf({ corners, edges }: State): string {
  return TOP.map((slot) => `${corners[slot] % 3}${edges[slot] & 1}`).join(' ');
}

/** The state with the top turned before all (so that other pieces stand for the same places) and after. */
export function withTopTurned(state: State, before: number, after: number): State {
  // Turning the top first renames the pieces: piece p of the solved cube is then where U takes it.
  const renamed = applyTurns(SOLVED, TOP_TURNS[before]);
  const corners = Uint8Array.from(state.corners, (code) => {
    const other = renamed.corners[(code / 3) | 0];
    return other - (other % 3) + ((other + code) % 3);
  });
  const edges = Uint8Array.from(state.edges, (code) => renamed.edges[code >> 1] ^ (code & 1));
  return applyTurns({ corners, edges, holding: state.holding }, TOP_TURNS[after]);
}

/** All that the turns of the top make of a state, before (if asked) and after. */
export function turnedVariants(state: State, before: boolean): State[] {
  const amounts = [0, 1, 2, 3];
  return (before ? amounts : [0]).flatMap((first) =>
    amounts.map((last) => withTopTurned(state, first, last)),
  );
}

/** The mirror image, left for right: read off the mirrored net. */
export function mirrored(state: State): State {
  const colours = colourFacelets(state);
  const swapped = [0, 3, 2, 1, 4, 5];
  const result = colours.map((_, facelet) => {
    const face = Math.floor(facelet / 9);
    const row = Math.floor(facelet / 3) % 3;
    const source = swapped[face] * 9 + row * 3 + (2 - (facelet % 3));
    return swapped[colours[source]];
  });
  const reading = readState(result);
  if (reading.kind !== 'possible') throw new Error('the mirror image of a state is possible');
  return reading.state;
}

/** The same cube turned as a whole by quarter turns, seen from above clockwise. */
export function rotated(state: State, quarters: number): State {
  return quarters === 0 ? state : applyTurn(state, makeTurn('y', quarters));
}

/** The colour (index) of the sticker on `face` of the slot, both in the hands. */
export function colourOn(state: State, slot: number, face: number): number {
  return colourFacelets(state)[faceletIndex(slot, face)];
}
