/**
 * Last-layer cases: 57 orientation cases and the finished one, 21 permutation cases and the finished
 * one, each told by its edge and corner pattern, with the chance of meeting it. All of them are
 * found by going through the 216 orientations and 288 permutations, nothing is listed by hand but
 * the names. Names are plain words and the letters in general use.
 */
import { CENTRE_AT, type Holding } from '../cube/holding.ts';
import { ALL_PIECES, piecesWith, placedSet } from '../cube/piece.ts';
import { isOdd } from '../cube/possible.ts';
import { held, type State } from '../cube/state.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { finishedSides, headlights, readTopLayer, shifted } from './last-layer.ts';

export const EDGE_PATTERNS = ['dot', 'line', 'angle', 'cross'] as const;
export type EdgePattern = (typeof EDGE_PATTERNS)[number];

/** Letters as in general use; S and its mirror image AS leave one corner right. */
export const CORNER_PATTERNS = ['right', 'S', 'AS', 'T', 'U', 'L', 'H', 'Pi'] as const;
export type CornerPattern = (typeof CORNER_PATTERNS)[number];

export interface OrientationCase {
  /** Flips, then twists, round the top in the holding in which it is lowest. */
  readonly key: string;
  readonly edges: EdgePattern;
  readonly corners: CornerPattern;
  readonly cornersRight: number;
  /** How many of the 216 orientations belong to it. */
  readonly states: number;
}

export type CornerSwap = 'right' | 'adjacent' | 'diagonal';

export interface PermutationCase {
  /** Corners, then edges, up to turns of the top before and after. */
  readonly key: string;
  readonly corners: CornerSwap;
  /** The letter in general use; empty for the finished case. Mirror images and inverses share it. */
  readonly letter: string;
  /** How many of the 288 permutations belong to it. */
  readonly states: number;
  readonly mirror: string;
  readonly inverse: string;
}

export const ORIENTATIONS = 216;
export const PERMUTATIONS = 288;

export function edgePattern(flips: readonly number[]): EdgePattern {
  const up = [0, 1, 2, 3].filter((side) => flips[side] === 0);
  if (up.length === 4) return 'cross';
  if (up.length === 0) return 'dot';
  return up[1] - up[0] === 2 ? 'line' : 'angle';
}

export function cornerPattern(twists: readonly number[]): CornerPattern {
  const turned = [0, 1, 2, 3].filter((corner) => twists[corner] !== 0);
  // The side on which each turned corner shows the top's colour.
  const sides = turned.map((corner) => (corner + twists[corner] - 1) % 4);
  switch (turned.length) {
    case 0:
      return 'right';
    case 3:
      return twists[turned[0]] === 1 ? 'S' : 'AS';
    case 2:
      if (turned[1] - turned[0] === 2) return 'L';
      return sides[0] === sides[1] ? 'U' : 'T';
    default:
      return new Set(sides).size === 2 ? 'H' : 'Pi';
  }
}

function orientationKey(flips: readonly number[], twists: readonly number[]): string {
  return `${flips.join('')} ${twists.join('')}`;
}

/** The lowest key over the four holdings, and the quarter turns (clockwise round) that lead there. */
function lowestOrientation(
  flips: readonly number[],
  twists: readonly number[],
): { key: string; by: number } {
  return [0, 1, 2, 3]
    .map((by) => ({ key: orientationKey(shifted(flips, by), shifted(twists, by)), by }))
    .reduce((best, other) => (other.key < best.key ? other : best));
}

function allOrientations(): OrientationCase[] {
  const cases = new Map<string, OrientationCase>();
  for (let code = 0; code < 16 * 81; code++) {
    const flips = [0, 1, 2, 3].map((i) => (code >> i) & 1);
    const twists = [1, 3, 9, 27].map((unit) => Math.floor((code >> 4) / unit) % 3);
    const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
    if (sum(flips) % 2 !== 0 || sum(twists) % 3 !== 0) continue;
    const { key } = lowestOrientation(flips, twists);
    cases.set(key, {
      key,
      edges: edgePattern(flips),
      corners: cornerPattern(twists),
      cornersRight: twists.filter((twist) => twist === 0).length,
      states: (cases.get(key)?.states ?? 0) + 1,
    });
  }
  return [...cases.values()];
}

/** The lowest way to write a permutation, up to turns of the top before and after. */
function permutationKey(corners: readonly number[], edges: readonly number[]): string {
  const keys: string[] = [];
  for (let before = 0; before < 4; before++) {
    for (let after = 0; after < 4; after++) {
      const write = (values: readonly number[]): string =>
        shifted(values, before)
          .map((value) => (value + after) % 4)
          .join('');
      keys.push(`${write(corners)} ${write(edges)}`);
    }
  }
  return keys.reduce((best, key) => (key < best ? key : best));
}

export function cornerSwap(corners: readonly number[]): CornerSwap {
  const count = headlights(corners).length;
  return count === 4 ? 'right' : count === 0 ? 'diagonal' : 'adjacent';
}

const inverted = (values: readonly number[]): number[] => values.map((_, i) => values.indexOf(i));
/** Left and right exchanged: sides 1 and 3; corner `i` lies between sides `i` and `i + 1`. */
const mirroredEdges = (values: readonly number[]): number[] =>
  values.map((_, i) => (4 - values[(4 - i) % 4]) % 4);
const mirroredCorners = (values: readonly number[]): number[] =>
  values.map((_, i) => 3 - values[3 - i]);

/**
 * One example of each letter: corners, edges. With the front-right and back-right corners (3 and 2)
 * exchanged: T, F, J, R by the two edges exchanged. With two opposite corners (1 and 3) exchanged:
 * V edges around a corner that stays, Y around one that goes, N two opposite edges. E exchanges the
 * corners of two opposite sides; A, U, G are cycles of three.
 */
const EXAMPLES: readonly (readonly [letter: string, corners: string, edges: string])[] = [
  ['', '0123', '0123'],
  ['H', '0123', '2301'],
  ['Z', '0123', '3210'],
  ['U', '0123', '3021'],
  ['T', '0132', '0321'],
  ['F', '0132', '2103'],
  ['J', '0132', '3120'],
  ['R', '0132', '1023'],
  ['A', '1203', '0123'],
  ['E', '1032', '0123'],
  ['V', '0321', '1023'],
  ['Y', '0321', '0213'],
  ['N', '0321', '2103'],
];

function letterOf(
  key: string,
  mirror: string,
  inverse: string,
  names: Map<string, string>,
): string {
  return names.get(key) ?? names.get(mirror) ?? names.get(inverse) ?? 'G';
}

function allPermutations(): PermutationCase[] {
  const digits = (text: string): number[] => [...text].map(Number);
  const names = new Map(
    EXAMPLES.map(([letter, corners, edges]) => [
      permutationKey(digits(corners), digits(edges)),
      letter,
    ]),
  );
  const orders = allOrders();
  const cases = new Map<string, PermutationCase>();
  for (const corners of orders) {
    for (const edges of orders) {
      if (isOdd(corners) !== isOdd(edges)) continue;
      const key = permutationKey(corners, edges);
      const known = cases.get(key);
      if (known) {
        cases.set(key, { ...known, states: known.states + 1 });
        continue;
      }
      const mirror = permutationKey(mirroredCorners(corners), mirroredEdges(edges));
      const inverse = permutationKey(inverted(corners), inverted(edges));
      const letter = letterOf(key, mirror, inverse, names);
      cases.set(key, { key, corners: cornerSwap(corners), letter, states: 1, mirror, inverse });
    }
  }
  return [...cases.values()];
}

function allOrders(): number[][] {
  const all: number[][] = [];
  for (let code = 0; code < 256; code++) {
    const order = [0, 1, 2, 3].map((i) => (code >> (2 * i)) & 3);
    if (new Set(order).size === 4) all.push(order);
  }
  return all;
}

/** 58 with the finished one. */
export const ORIENTATION_CASES: readonly OrientationCase[] = allOrientations();
/** 22 with the finished one. */
export const PERMUTATION_CASES: readonly PermutationCase[] = allPermutations();

export interface LastLayerCase {
  readonly orientation: OrientationCase;
  /** A holding in which the orientation reads as its key: one way to hold it for a sequence. */
  readonly holding: Holding;
  /** Only where all pieces of the top are turned right. */
  readonly permutation: PermutationCase | undefined;
  /** Sides (indices of `ROUND`, in that holding) with two corners that agree, and with edge and corners that agree. */
  readonly headlights: readonly number[];
  readonly finished: readonly number[];
}

/** The case of the last layer; undefined unless everything but the layer opposite to `base` is home. */
export function lastLayerCase(state: State, base: number): LastLayerCase | undefined {
  const below = ALL_PIECES & ~piecesWith(OPPOSITE[base]);
  if ((placedSet(state) & below) !== below) return undefined;
  const holdings = CENTRE_AT.map((_, holding) => holding).filter(
    (holding) => CENTRE_AT[holding][5] === base,
  );
  // The present holding first, so that nothing is regripped without need.
  holdings.sort((a, b) => Number(b === state.holding) - Number(a === state.holding));
  const views = holdings.map((holding) => ({ holding, top: readTopLayer(held(state, holding)) }));
  const { key } = lowestOrientation(views[0].top.flips, views[0].top.twists);
  const view = views.find(({ top }) => orientationKey(top.flips, top.twists) === key);
  const orientation = ORIENTATION_CASES.find((other) => other.key === key);
  if (!view || !orientation) throw new Error(`no orientation case ${key}`);
  const { edges, corners } = view.top;
  if (!edges || !corners) {
    return {
      orientation,
      holding: view.holding,
      permutation: undefined,
      headlights: [],
      finished: [],
    };
  }
  const permutation = PERMUTATION_CASES.find(
    (other) => other.key === permutationKey(corners, edges),
  );
  return {
    orientation,
    holding: view.holding,
    permutation,
    headlights: headlights(corners),
    finished: finishedSides(corners, edges),
  };
}
