/** Facts on where pieces are. */
import {
  directionOf,
  faceShowing,
  faceletsOf,
  isCorner,
  whereIs,
  type Piece,
} from '../cube/piece.ts';
import { applyTurn } from '../cube/state.ts';
import { makeTurn, printTurn } from '../cube/turn.ts';
import { COLOURS, OPPOSITE, faceIndex } from '../cube/vocabulary.ts';
import type { Fact, OverHomeFact, PieceFact, StandFact } from './facts.ts';
import { faceOf, lastTurnBefore, namePiece, slotIn, upAndFront, type Scene } from './scene.ts';

export function standFact(scene: Scene): StandFact {
  const { block, at, state, place } = scene;
  return { kind: 'stand', place, last: lastTurnBefore(block, at), ...upAndFront(state) };
}

export function pieceFact(scene: Scene, piece: Piece): PieceFact {
  const { state, base, place } = scene;
  const { slot, turned } = whereIs(state, piece);
  const name = namePiece(piece, base);
  const axis = faceletsOf(slot).find((face) => face === base || face === OPPOSITE[base]);
  return {
    kind: 'piece',
    place,
    base: COLOURS[base],
    piece: name,
    slot: slotIn(state, slot),
    home: slotIn(state, piece),
    status: slot !== piece ? 'elsewhere' : turned === 0 ? 'placed' : 'turned',
    shows: name.map((colour) => ({
      colour,
      face: faceOf(state, faceShowing(state, piece, COLOURS.indexOf(colour))),
    })),
    layer: axis === undefined ? undefined : COLOURS[axis],
  };
}

/** For a piece of the base layer that lies in the opposite layer: the turn of that layer that brings it over its slot. */
export function overHome(scene: Scene, piece: Piece): OverHomeFact | undefined {
  const { base, place } = scene;
  const top = OPPOSITE[base];
  if (!faceletsOf(piece).includes(base)) return undefined;
  const [x, y, z] = directionOf(piece);
  const axis = directionAxis(base);
  const wanted = [x, y, z].map((value, i) => (i === axis ? -value : value));
  let { state } = scene;
  const { slot } = whereIs(state, piece);
  if (!faceletsOf(slot).includes(top)) return undefined;
  const face = faceIndex(faceOf(state, top));
  for (let amount = 0; amount < 4; amount++) {
    const lies = whereIs(state, piece).slot;
    if (directionOf(lies).every((value, i) => value === wanted[i])) {
      return {
        kind: 'over-home',
        place,
        base: COLOURS[base],
        piece: namePiece(piece, base),
        turn: amount === 0 ? '' : printTurn(makeTurn(face, amount)),
        slot: slotIn(state, lies),
      };
    }
    state = applyTurn(state, makeTurn(face, 1));
  }
  return undefined;
}

function directionAxis(colour: number): number {
  return colour === 0 || colour === 5 ? 1 : colour === 1 || colour === 3 ? 0 : 2;
}

export function gatherWhere(scene: Scene, pieces: readonly Piece[]): Fact[] {
  const facts: Fact[] = [standFact(scene)];
  for (const piece of pieces) {
    facts.push(pieceFact(scene, piece));
    const over = whereIs(scene.state, piece).slot === piece ? undefined : overHome(scene, piece);
    if (over && (isCorner(piece) || faceletsOf(piece).includes(scene.base))) facts.push(over);
  }
  return facts;
}
