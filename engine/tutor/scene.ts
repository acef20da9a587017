/**
 * The scene of an answer: one block, one place in it, the cube there, and the names by which facts
 * speak of them. Turns that are not written (a proposal) can follow upon the place.
 */
import { CENTRE_AT } from '../cube/holding.ts';
import { piecesIn, slotName, spokenColours, type Piece, type PieceSet } from '../cube/piece.ts';
import type { Position } from '../cube/place.ts';
import { applyTurns, type State } from '../cube/state.ts';
import { isRotation, type Turn } from '../cube/turn.ts';
import { COLOURS, FACES, type Colour, type Face } from '../cube/vocabulary.ts';
import type { Analysis, Block } from '../document/analysis.ts';
import { JUMP } from '../goals/course.ts';
import type { Goal } from '../goals/goal.ts';
import { execute, type Resolve } from '../notation/execute.ts';
import { printTurns } from '../notation/print.ts';
import { executable, readSequence } from '../notation/read.ts';
import type { FactPlace, GoalName, PieceName, TurnName } from './facts.ts';
import type { PlaceRef } from './intents.ts';

export interface Scene {
  readonly block: Block;
  /** Executed turns of the block before the place. */
  readonly at: number;
  readonly then: readonly Turn[];
  /** The cube at `at` and after `then`. */
  readonly state: State;
  readonly goals: readonly Goal[];
  readonly base: number;
  readonly place: FactPlace;
}

export type SceneResult =
  | { readonly kind: 'scene'; readonly scene: Scene }
  | { readonly kind: 'no-cube' | 'state-unknown'; readonly place: FactPlace }
  | {
      readonly kind: 'no-turn';
      readonly what: 'turn' | 'line';
      readonly number: number;
      readonly last: number;
      readonly place: FactPlace;
    };

/** The block that is spoken of: where the position is; else the first solve. */
export function blockOf(analysis: Analysis, position: Position | undefined): Block | undefined {
  const there = position && analysis.blockAt(position);
  return there ?? analysis.blocks.find((block) => block.kind === 'solve') ?? analysis.blocks[0];
}

export function setScene(
  analysis: Analysis,
  position: Position | undefined,
  ref: PlaceRef | undefined,
): SceneResult {
  const block = blockOf(analysis, position);
  if (block === undefined) return { kind: 'no-cube', place: { block: 0, at: 0, then: '' } };
  const { length } = block.course;
  const here = position && analysis.blockAt(position) === block ? block.placeAt(position) : length;
  const at = ref === undefined ? here : placeOf(block, ref, here);
  if (typeof at === 'number') return sceneAt(block, at);
  const place = { block: block.line, at: here, then: '' };
  return { kind: 'no-turn', what: at.what, number: at.number, last: lastNumber(block), place };
}

export function sceneAt(block: Block, at: number, then: readonly Turn[] = []): SceneResult {
  const state = block.course.stateAt(at);
  const place = { block: block.line, at, then: printTurns(then) };
  if (state === undefined) {
    return {
      kind:
        block.startFrom === 'unknown' && block.course.length === 0 ? 'no-cube' : 'state-unknown',
      place,
    };
  }
  const scene: Scene = {
    block,
    at,
    then,
    state: applyTurns(state, then),
    goals: block.timeline.goals,
    base: block.base,
    place,
  };
  return { kind: 'scene', scene };
}

/** The turns that people number: no rotations, and no unknown stretches. */
export function isNumbered(block: Block, turn: number): boolean {
  const code = block.course.codes[turn];
  return code === JUMP ? block.course.jumps.get(turn)?.kind === 'power' : !isRotation(code);
}

export function turnNumbered(block: Block, number: number): number | undefined {
  for (let turn = 0; turn < block.course.length; turn++) {
    if (isNumbered(block, turn) && block.numberOf(turn) === number) return turn;
  }
  return undefined;
}

export function turnsOfLine(
  block: Block,
  line: number,
): { first: number; end: number } | undefined {
  let first: number | undefined;
  let end = 0;
  for (let turn = 0; turn < block.course.length; turn++) {
    if (block.rangeOf(turn).start.line !== line - 1) continue;
    first ??= turn;
    end = turn + 1;
  }
  return first === undefined ? undefined : { first, end };
}

function lastNumber(block: Block): number {
  for (let turn = block.course.length - 1; turn >= 0; turn--) {
    if (isNumbered(block, turn)) return block.numberOf(turn);
  }
  return 0;
}

function placeOf(
  block: Block,
  ref: PlaceRef,
  here: number,
): number | { readonly what: 'turn' | 'line'; readonly number: number } {
  switch (ref.kind) {
    case 'here':
      return here;
    case 'start':
      return 0;
    case 'end':
      return block.course.length;
    case 'turn': {
      const turn = turnNumbered(block, ref.number);
      if (turn === undefined) return { what: 'turn', number: ref.number };
      return ref.before ? turn : turn + 1;
    }
    case 'line': {
      const turns = turnsOfLine(block, ref.line);
      if (turns === undefined) return { what: 'line', number: ref.line };
      return ref.before ? turns.first : turns.end;
    }
  }
}

export function nameTurn(block: Block, turn: number): TurnName {
  return {
    index: turn,
    number: block.numberOf(turn),
    line: block.rangeOf(turn).start.line + 1,
    text: block.textOf(turn),
  };
}

/** The last turn before a place that people number. */
export function lastTurnBefore(block: Block, at: number): TurnName | undefined {
  for (let turn = at - 1; turn >= 0; turn--)
    if (isNumbered(block, turn)) return nameTurn(block, turn);
  return undefined;
}

export function namePiece(piece: Piece, base: number): PieceName {
  return spokenColours(piece, base);
}

export function namePieces(set: PieceSet, base: number): PieceName[] {
  return piecesIn(set).map((piece) => namePiece(piece, base));
}

export function nameGoal(method: string, goal: Goal, base: number): GoalName {
  return { method, goal: goal.name, base: COLOURS[base] };
}

export function slotIn(state: State, slot: Piece): string {
  return slotName(slot, state.holding);
}

export function upAndFront(state: State): { up: Colour; front: Colour } {
  const map = CENTRE_AT[state.holding];
  return { up: COLOURS[map[0]], front: COLOURS[map[2]] };
}

/** The face in the hands at which a centre is seen. */
export function faceOf(state: State, colour: number): Face {
  return FACES[CENTRE_AT[state.holding].indexOf(colour)];
}

/** Most turns that a question may propose. */
export const LONGEST_PROPOSAL = 200;

const NO_NAMES: Resolve = () => undefined;

/** The single turns of a proposal; undefined if they can't be read, are too many, or hold names or unknown stretches. */
export function turnsOf(text: string): readonly Turn[] | undefined {
  const tree = readSequence(text);
  if (!executable(tree)) return undefined;
  const done = execute(tree.items, { resolve: NO_NAMES, limit: LONGEST_PROPOSAL });
  if (done.jumps.size > 0 || done.unresolved.length > 0 || done.codes.length > LONGEST_PROPOSAL)
    return undefined;
  return done.codes;
}
