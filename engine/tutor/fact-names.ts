/** Names by which facts speak: of pieces, places, turns and goals. */
import type { Colour } from '../cube/vocabulary.ts';

/** Colours of a piece in the order in which they are said. */
export type PieceName = readonly Colour[];

/** The cube after `at` executed turns of the block that begins in line `block`, and then after the turns `then`. */
export interface FactPlace {
  /** Zero-based line of the block's heading. */
  readonly block: number;
  /** Executed turns, rotations and pauses included. */
  readonly at: number;
  /** Turns done after them that are not written in the text; may be empty. */
  readonly then: string;
}

/** A turn as people are told of it. */
export interface TurnName {
  /** Index over the turns as executed. */
  readonly index: number;
  /** Counted from 1, without rotations. */
  readonly number: number;
  /** Counted from 1. */
  readonly line: number;
  readonly text: string;
}

/** A goal of a method, for a base. */
export interface GoalName {
  readonly method: string;
  readonly goal: string;
  readonly base: Colour;
}

export interface Placed {
  readonly place: FactPlace;
}
