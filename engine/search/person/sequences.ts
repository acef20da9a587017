/**
 * The sequences of the person's way, all of them common practice, each with what it does to every
 * place when it is done in a given holding after a given turn of the top.
 */
import type { Holding } from '../../cube/holding.ts';
import type { PieceSet } from '../../cube/piece.ts';
import { FIRST_CORNER, PIECES } from '../../cube/piece.ts';
import { SOLVED, applyTurns, held } from '../../cube/state.ts';
import { makeTurn, type Turn } from '../../cube/turn.ts';
import { readSequence } from '../../notation/read.ts';
import { homeOf, placesOf } from '../places.ts';
import type { Reason } from './step.ts';

/** Flat turns of a sequence written without brackets. */
export function turnsOf(text: string): Turn[] {
  return readSequence(text).items.map((item) => {
    if (item.kind !== 'turn') throw new Error(`no flat sequence: ${text}`);
    return item.turn;
  });
}

export interface Template {
  readonly reason: Reason;
  readonly sequence: readonly Turn[];
  readonly times: number;
  /** It brings the piece home, or else only up to the top. */
  readonly arrives: boolean;
}

function template(reason: Reason, text: string, times = 1, arrives = true): Template {
  return { reason, sequence: turnsOf(text), times, arrives };
}

/** Home is at the bottom of the side that turns last: in front, or where no regrip is needed, right or left. */
export const EDGE_TEMPLATES: readonly Template[] = [
  template('base-up-above-home', 'F2'),
  template('base-up-above-home', 'R2'),
  template('base-up-above-home', 'L2'),
  template('beside-home', 'F'),
  template('beside-home', "F'"),
  template('beside-home', 'R'),
  template('beside-home', "R'"),
  template('beside-home', 'L'),
  template('beside-home', "L'"),
  template('base-aside-above-home', "U' R' F R"),
  template('base-aside-above-home', "U L F' L'"),
  template('base-aside-above-home', "U F R' F'"),
  template('base-aside-above-home', "U' F' L F"),
];

/** The edge is at front-right, front-left or bottom front; plain where nothing below must be put back. */
export const EDGE_OUT_TEMPLATES: readonly Template[] = [
  template('edge-stuck-in-middle', 'R', 1, false),
  template('edge-stuck-in-middle', "F'", 1, false),
  template('edge-stuck-in-middle', "R U R'", 1, false),
  template('edge-stuck-in-middle', "F' U' F", 1, false),
  template('edge-stuck-in-middle', "L'", 1, false),
  template('edge-stuck-in-middle', 'F', 1, false),
  template('edge-stuck-in-middle', "L' U' L", 1, false),
  template('edge-stuck-in-middle', "F U F'", 1, false),
  ...['F2', 'R2', 'L2'].flatMap((text) => [
    template('edge-in-wrong-base-slot', text, 1, false),
    template('edge-turned-in-base', text, 1, false),
  ]),
];

const RIGHT_CORNER = "U R U' R'";
const LEFT_CORNER = "U' L' U L";

/** Home is at the bottom front-right (or front-left for the mirror image). */
export const CORNER_TEMPLATES: readonly Template[] = [
  template('base-to-the-side', RIGHT_CORNER),
  template('base-to-the-side', LEFT_CORNER),
  template('base-up', RIGHT_CORNER, 3),
  template('corner-turned-in-slot', RIGHT_CORNER, 2),
  template('corner-turned-in-slot', RIGHT_CORNER, 4),
];

export const CORNER_OUT_TEMPLATES: readonly Template[] = [
  template('corner-in-wrong-slot', RIGHT_CORNER, 1, false),
  template('corner-in-wrong-slot', LEFT_CORNER, 1, false),
];

const EDGE_RIGHT = "U R U' R' U' F' U F";
const EDGE_LEFT = "U' L' U L U F U' F'";

/** The edge is at the top front, its side sticker matching the front centre. */
export const MIDDLE_TEMPLATES: readonly Template[] = [
  template('edge-goes-right', EDGE_RIGHT),
  template('edge-goes-left', EDGE_LEFT),
];

/** The edge that comes out is at front-right or front-left. */
export const MIDDLE_OUT_TEMPLATES: readonly Template[] = [
  template('edge-in-wrong-middle-slot', EDGE_RIGHT, 1, false),
  template('edge-in-wrong-middle-slot', EDGE_LEFT, 1, false),
  template('edge-turned-in-middle', EDGE_RIGHT, 1, false),
  template('edge-turned-in-middle', EDGE_LEFT, 1, false),
];

export const LINE_TO_CROSS = turnsOf("F R U R' U' F'");
export const ANGLE_TO_CROSS = turnsOf("Fw R U R' U' Fw'");
export const TURN_CORNERS = turnsOf("R U R' U R U2 R'");
export const CYCLE_CORNERS = turnsOf("R' F R' B2 R F' R' B2 R2");
export const EDGES_CLOCKWISE = turnsOf("F2 U L R' F2 L' R U F2");
export const EDGES_COUNTER = turnsOf("F2 U' L R' F2 L' R U' F2");

/** The turn of the top by so many quarters clockwise; none for 0. */
export function topTurn(quarters: number): Turn[] {
  return quarters % 4 === 0 ? [] : [makeTurn('U', quarters)];
}

export interface Motion {
  /** By place of an edge (0…23) or, from 24 on, of a corner: the place after. */
  readonly goes: Uint8Array;
  /** Pieces that would not be at home afterwards if all were at home before. */
  readonly moves: PieceSet;
}

const motions = new Map<Template, Motion[]>();

/** What a template does, held so, after so many quarter turns of the top. */
export function motionOf(own: Template, holding: Holding, quarters: number): Motion {
  let all = motions.get(own);
  if (!all) {
    all = [];
    motions.set(own, all);
  }
  return (all[holding * 4 + quarters] ??= makeMotion(
    [...topTurn(quarters), ...repeated(own)],
    holding,
  ));
}

export function repeated({ sequence, times }: Pick<Template, 'sequence' | 'times'>): Turn[] {
  return Array.from({ length: times }, () => sequence).flat();
}

function makeMotion(turns: readonly Turn[], holding: Holding): Motion {
  const places = placesOf(applyTurns(held(SOLVED, holding), turns));
  const goes = new Uint8Array(48);
  let moves = 0;
  for (let piece = 0; piece < PIECES; piece++) {
    const corner = piece >= FIRST_CORNER;
    const size = corner ? 3 : 2;
    const offset = corner ? 24 : 0;
    if (places[piece] !== homeOf(piece)) moves |= 1 << piece;
    // A piece that starts with some turn ends with that much more.
    for (let turned = 0; turned < size; turned++) {
      const slotBase = places[piece] - (places[piece] % size);
      goes[offset + homeOf(piece) + turned] =
        slotBase + ((places[piece] - slotBase + turned) % size);
    }
  }
  return { goes, moves };
}
