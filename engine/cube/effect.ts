/**
 * What a sequence does to any cube, read off its effect (the state it leads to from the solved cube):
 * cycles of stickers as they lie in the hands, pieces turned in place, parity and order.
 *
 * A sticker is named by its own face first. The others follow counter-clockwise as seen from
 * outside (`UFR ULF UBL URB DRF DFL DLB DBR` are the up and down stickers of the corners), so that
 * the name tells the sticker apart from the slot, whose name has a fixed order (`UFL`).
 */
import { FACELETS, FACELET_SLOTS, faceletIndex, faceletMotion } from './facelets.ts';
import { FIRST_CORNER, PIECES, faceletsOf, isCorner, type Piece } from './piece.ts';
import { isOdd } from './possible.ts';
import type { State } from './state.ts';
import { CORNERS, EDGES, FACES, type Corner, type Edge } from './vocabulary.ts';

export type TurnedInPlace = 'clockwise' | 'counter-clockwise';

/** First goes to second, and so on, the last to the slot of the first. */
export interface Cycle {
  /** One sticker of each piece on the way, beginning with the up or down (else front or back) sticker of the lowest slot. */
  readonly stickers: readonly string[];
  /** How the piece comes back to the first slot after one round. */
  readonly returns: 'right' | 'flipped' | TurnedInPlace;
}

export interface Effect {
  readonly corners: readonly Cycle[];
  readonly edges: readonly Cycle[];
  /** Centres by their face letter; they move with slices, wide turns and rotations. */
  readonly centres: readonly Cycle[];
  /** Corners that stay but turn, as seen from outside. */
  readonly twists: readonly { readonly slot: Corner; readonly turn: TurnedInPlace }[];
  /** Edges that stay but are turned over. */
  readonly flips: readonly Edge[];
  /**
   * Of the corners. With the centres still it is that of the edges, too; slices and rotations leave
   * it alone, as they permute the corners evenly.
   */
  readonly parity: 'even' | 'odd';
  /** How often the effect must be repeated until every sticker, centres included, is back in the hands. */
  readonly order: number;
  /** All sticker cycles as facelets, each cycle of pieces once; what returns turned runs on. */
  readonly runs: readonly (readonly number[])[];
}

const STICKER_NAMES: readonly string[] = Array.from({ length: FACELETS }, (_, facelet) => {
  const { slot, index } = FACELET_SLOTS[facelet];
  if (slot < 0) return FACES[Math.floor(facelet / 9)];
  const faces = faceletsOf(slot);
  // The slot's order is clockwise, so backwards through it is counter-clockwise.
  return faces.map((_, i) => FACES[faces[(index + faces.length - i) % faces.length]]).join('');
});

export function stickerName(facelet: number): string {
  return STICKER_NAMES[facelet];
}

/** The facelet of a sticker named by its face first and the others in any order: `UFL`, `FU`, `R`. */
export function stickerAt(name: string): number | undefined {
  const sorted = (text: string): string => text.charAt(0) + [...text.slice(1)].sort().join('');
  const wanted = sorted(name.toUpperCase());
  const found = STICKER_NAMES.findIndex((other) => sorted(other) === wanted);
  return found < 0 ? undefined : found;
}

/** `result[facelet]`: where the sticker there goes, in the hands. */
export function faceletTargets(effect: State): Uint8Array {
  const result = new Uint8Array(FACELETS);
  faceletMotion(effect).forEach((source, target) => (result[source] = target));
  return result;
}

export function describeEffect(effect: State): Effect {
  const goesTo = faceletTargets(effect);
  const corners: Cycle[] = [];
  const edges: Cycle[] = [];
  const twists: { slot: Corner; turn: TurnedInPlace }[] = [];
  const flips: Edge[] = [];
  const cornerRuns: number[][] = [];
  const edgeRuns: number[][] = [];
  const seen = new Set<Piece>();
  for (let slot = 0; slot < PIECES; slot++) {
    if (seen.has(slot)) continue;
    const run = cycleFrom(goesTo, faceletIndex(slot, faceletsOf(slot)[0]));
    if (run.length === 1) continue;
    const pieces = new Set(run.map((facelet) => FACELET_SLOTS[facelet].slot));
    for (const piece of pieces) seen.add(piece);
    (isCorner(slot) ? cornerRuns : edgeRuns).push(run);
    const returnsAt = pieces.size === run.length ? 0 : FACELET_SLOTS[run[pieces.size]].index;
    const turn = returnsAt === 1 ? 'clockwise' : 'counter-clockwise';
    const stickers = run.slice(0, pieces.size).map(stickerName);
    if (isCorner(slot)) {
      if (pieces.size === 1) twists.push({ slot: CORNERS[slot - FIRST_CORNER], turn });
      else corners.push({ stickers, returns: returnsAt === 0 ? 'right' : turn });
    } else if (pieces.size === 1) flips.push(EDGES[slot]);
    else edges.push({ stickers, returns: returnsAt === 0 ? 'right' : 'flipped' });
  }
  const centreRuns = centreCycles(goesTo);
  return {
    corners,
    edges,
    centres: centreRuns.map((run) => ({ stickers: run.map(stickerName), returns: 'right' })),
    twists,
    flips,
    parity: isOdd(Array.from(effect.corners, (code) => (code / 3) | 0)) ? 'odd' : 'even',
    order: orderOf(goesTo),
    runs: [...cornerRuns, ...edgeRuns, ...centreRuns],
  };
}

/** The order of an effect alone, holding and centres counted. */
export function effectOrder(effect: State): number {
  return orderOf(faceletTargets(effect));
}

/** `(UFR ULF UBL)(UF FU)`: what a `does:` line would claim; empty for an effect that does nothing. */
export function printDoes(effect: Effect): string {
  return effect.runs.map((run) => `(${run.map(stickerName).join(' ')})`).join('');
}

function cycleFrom(goesTo: ArrayLike<number>, start: number): number[] {
  const run = [start];
  for (let at = goesTo[start]; at !== start; at = goesTo[at]) run.push(at);
  return run;
}

function centreCycles(goesTo: ArrayLike<number>): number[][] {
  const seen = new Set<number>();
  const runs: number[][] = [];
  for (let face = 0; face < FACES.length; face++) {
    const run = cycleFrom(goesTo, face * 9 + 4);
    if (run.length > 1 && !seen.has(run[0])) runs.push(run);
    for (const facelet of run) seen.add(facelet);
  }
  return runs;
}

function orderOf(goesTo: ArrayLike<number>): number {
  let order = 1;
  for (let facelet = 0; facelet < FACELETS; facelet++) {
    order = leastCommonMultiple(order, cycleFrom(goesTo, facelet).length);
  }
  return order;
}

function leastCommonMultiple(a: number, b: number): number {
  let [big, small] = [a, b];
  while (small > 0) [big, small] = [small, big % small];
  return (a / big) * b;
}
