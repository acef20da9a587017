/**
 * The one door from 54 colours, as somebody wrote them down, to a state that a cube can have; or
 * else all the reasons why it cannot, each with what would mend it.
 *
 * The checks come in three rounds, as a later one means nothing before the earlier are passed: the
 * centres and each piece by itself; every piece once; and the three sums that no turn changes
 * (twists modulo 3, flips modulo 2, parity of corners and edges against each other). The inverse of
 * `colourFacelets`.
 */
import { FACELETS, faceletIndex } from './facelets.ts';
import { CENTRE_AT, FACE_OF, type Holding } from './holding.ts';
import { FIRST_CORNER, PIECES, faceletsOf, isCorner, pieceOf, type Piece } from './piece.ts';
import type { State } from './state.ts';
import { COLOURS, OPPOSITE, isClockwise } from './vocabulary.ts';

/** Slots are numbered as in `piece.ts`, but named in the hands; colours are indices of `COLOURS`. */
export type Problem =
  /** A colour that is not on exactly nine facelets. */
  | { readonly kind: 'colour-count'; readonly colour: number; readonly count: number }
  /** Centres that are not six different colours. */
  | { readonly kind: 'centre-twice'; readonly colour: number; readonly faces: readonly number[] }
  /** Two centres face each other that are neighbours on a cube. */
  | { readonly kind: 'centres-opposite'; readonly colours: readonly [number, number] }
  /** The whole colour scheme is the mirror image, told by the centres or by all eight corners. */
  | { readonly kind: 'mirrored-scheme' }
  /** One corner has the right colours, but in mirrored order. */
  | { readonly kind: 'mirrored-corner'; readonly slot: Piece; readonly colours: readonly number[] }
  /** A piece with the same colour twice, or with two colours that face each other on a cube. */
  | {
      readonly kind: 'no-such-piece';
      readonly slot: Piece;
      readonly colours: readonly number[];
      readonly reason: 'equal' | 'opposite';
    }
  | { readonly kind: 'piece-twice'; readonly piece: Piece; readonly slots: readonly Piece[] }
  | { readonly kind: 'piece-missing'; readonly piece: Piece }
  /** The corners are twisted by a third in sum; turning any one corner as `remedy` says mends it. */
  | { readonly kind: 'twisted-corner'; readonly remedy: 'clockwise' | 'counter-clockwise' }
  /** An odd number of edges is flipped; turning any one of them over mends it. */
  | { readonly kind: 'flipped-edge' }
  /** Two pieces are exchanged; swapping any two corners or any two edges mends it. */
  | { readonly kind: 'swapped-pieces' };

export interface Possible {
  readonly kind: 'possible';
  readonly state: State;
}

export interface Impossible {
  readonly kind: 'impossible';
  /** At least one, the most basic first. */
  readonly problems: readonly Problem[];
}

/** The state of a cube that looks so in the hands, in whatever holding. `colours`: 54, as in `Net`. */
export function readState(colours: ArrayLike<number>): Possible | Impossible {
  if (colours.length !== FACELETS) throw new RangeError(`${colours.length} facelets`);
  const holding = holdingOfCentres(colours);
  const centres = centreProblems(colours, holding);
  const told = (problem: Problem): boolean =>
    problem.kind === 'mirrored-scheme' && centres.some(({ kind }) => kind === problem.kind);
  const problems = [
    ...countProblems(colours),
    ...centres,
    ...pieceProblems(colours).filter((problem) => !told(problem)),
  ];
  if (problems.length === 0) problems.push(...setProblems(colours));
  if (problems.length > 0 || holding === undefined) return { kind: 'impossible', problems };
  const state = stateFrom(colours, holding);
  const sums = sumProblems(state);
  return sums.length > 0 ? { kind: 'impossible', problems: sums } : { kind: 'possible', state };
}

/** Whether pieces that are all there, each once, can come about by turns; the empty list if so. */
export function sumProblems(state: Omit<State, 'holding'>): Problem[] {
  const problems: Problem[] = [];
  const corners = Array.from(state.corners);
  const edges = Array.from(state.edges);
  const twist = corners.reduce((sum, code) => sum + (code % 3), 0) % 3;
  if (twist !== 0) {
    problems.push({
      kind: 'twisted-corner',
      remedy: twist === 1 ? 'counter-clockwise' : 'clockwise',
    });
  }
  if (edges.reduce((sum, code) => sum + (code & 1), 0) % 2 !== 0) {
    problems.push({ kind: 'flipped-edge' });
  }
  const cornersOdd = isOdd(corners.map((code) => (code / 3) | 0));
  if (cornersOdd !== isOdd(edges.map((code) => code >> 1))) {
    problems.push({ kind: 'swapped-pieces' });
  }
  return problems;
}

/** Whether a permutation, given as the list of its values, is odd. */
export function isOdd(permutation: readonly number[]): boolean {
  const seen = permutation.map(() => false);
  let odd = false;
  for (let start = 0; start < permutation.length; start++) {
    for (let at = permutation[start]; !seen[start] && at !== start; at = permutation[at]) {
      seen[at] = true;
      odd = !odd;
    }
  }
  return odd;
}

function holdingOfCentres(colours: ArrayLike<number>): Holding | undefined {
  const found = CENTRE_AT.findIndex((map) => map.every((at, face) => colours[face * 9 + 4] === at));
  return found < 0 ? undefined : found;
}

function countProblems(colours: ArrayLike<number>): Problem[] {
  const all = Array.from(colours);
  return COLOURS.flatMap((_, colour): Problem[] => {
    const count = all.filter((other) => other === colour).length;
    return count === 9 ? [] : [{ kind: 'colour-count', colour, count }];
  });
}

function centreProblems(colours: ArrayLike<number>, holding: Holding | undefined): Problem[] {
  if (holding !== undefined) return [];
  const centres = OPPOSITE.map((_, face) => colours[face * 9 + 4]);
  const twice = COLOURS.flatMap((_, colour): Problem[] => {
    const faces = OPPOSITE.map((_, face) => face).filter((face) => centres[face] === colour);
    return faces.length > 1 ? [{ kind: 'centre-twice', colour, faces }] : [];
  });
  if (twice.length > 0) return twice;
  const opposite = [0, 1, 2].flatMap((face): Problem[] => {
    const pair = [centres[face], centres[OPPOSITE[face]]] as const;
    return OPPOSITE[pair[0]] === pair[1] ? [] : [{ kind: 'centres-opposite', colours: pair }];
  });
  return opposite.length > 0 ? opposite : [{ kind: 'mirrored-scheme' }];
}

/** The colours in a slot in the hands, in the order of the slot's facelets. */
function coloursIn(colours: ArrayLike<number>, slot: Piece): number[] {
  return faceletsOf(slot).map((face) => colours[faceletIndex(slot, face)]);
}

function pieceProblems(colours: ArrayLike<number>): Problem[] {
  const problems: Problem[] = [];
  const mirrored: Problem[] = [];
  for (let slot = 0; slot < PIECES; slot++) {
    const own = coloursIn(colours, slot);
    if (new Set(own).size < own.length) {
      problems.push({ kind: 'no-such-piece', slot, colours: own, reason: 'equal' });
    } else if (own.some((colour) => own.includes(OPPOSITE[colour]))) {
      problems.push({ kind: 'no-such-piece', slot, colours: own, reason: 'opposite' });
    } else if (isCorner(slot) && !isClockwise(own[0], own[1], own[2])) {
      mirrored.push({ kind: 'mirrored-corner', slot, colours: own });
    }
  }
  // All eight at once are the fault of the scheme.
  if (mirrored.length === PIECES - FIRST_CORNER) return [...problems, { kind: 'mirrored-scheme' }];
  return [...problems, ...mirrored];
}

function setProblems(colours: ArrayLike<number>): Problem[] {
  const slots: Piece[][] = Array.from({ length: PIECES }, () => []);
  for (let slot = 0; slot < PIECES; slot++) {
    const piece = pieceOf(coloursIn(colours, slot));
    if (piece !== undefined) slots[piece].push(slot);
  }
  const pieces = slots.map((found, piece) => ({ piece, found }));
  return [
    ...pieces
      .filter(({ found }) => found.length > 1)
      .map(({ piece, found }): Problem => ({ kind: 'piece-twice', piece, slots: found })),
    ...pieces
      .filter(({ found }) => found.length === 0)
      .map(({ piece }): Problem => ({ kind: 'piece-missing', piece })),
  ];
}

/** Reads the pieces off; they are known to be there, each once, and none is mirrored. */
function stateFrom(colours: ArrayLike<number>, holding: Holding): State {
  const corners = new Uint8Array(PIECES - FIRST_CORNER);
  const edges = new Uint8Array(FIRST_CORNER);
  const faceOf = FACE_OF[holding];
  for (let slot = 0; slot < PIECES; slot++) {
    const inHands = faceletsOf(slot).map((face) => faceOf[face]);
    const handSlot = pieceOf(inHands);
    if (handSlot === undefined) throw new Error(`no slot at ${inHands.join(' ')}`);
    const own = inHands.map((face) => colours[faceletIndex(handSlot, face)]);
    const piece = pieceOf(own);
    if (piece === undefined) throw new Error(`no piece of ${own.join(' ')}`);
    const turned = own.indexOf(faceletsOf(piece)[0]);
    if (isCorner(slot)) corners[slot - FIRST_CORNER] = (piece - FIRST_CORNER) * 3 + turned;
    else edges[slot] = piece * 2 + turned;
  }
  return { corners, edges, holding };
}
