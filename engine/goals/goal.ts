/**
 * Goals as data: conditions on some pieces, relative to the centres, perhaps up to a turn of one layer.
 */
import type { PieceSet } from '../cube/piece.ts';

export type Condition =
  /** In their own slots and turned right. */
  | { readonly kind: 'placed'; readonly pieces: PieceSet }
  /** In their own slots, however turned. */
  | { readonly kind: 'positioned'; readonly pieces: PieceSet }
  /** In the layer of `colour`, wherever in it, with that colour facing its centre. */
  | { readonly kind: 'facing'; readonly pieces: PieceSet; readonly colour: number }
  /**
   * Edges that could come home without a quarter turn of the layer of `front` or its opposite:
   * the colour of the axis of `up`, else that of the axis of `front`, lies on a face of the first
   * of these two axes that the slot has.
   */
  | {
      readonly kind: 'oriented';
      readonly pieces: PieceSet;
      readonly up: number;
      readonly front: number;
    };

/** Some of several sets, any of them, placed as well: three of four pairs. */
export interface Choice {
  readonly sets: readonly PieceSet[];
  readonly atLeast: number;
}

/** Turns of a slice that a goal does not mind: the layers of `colour` and its opposite turn against it together. */
export interface FreeSlice {
  readonly colour: number;
  /** 1: any turn of the slice; 2: half turns only. */
  readonly quarters: 1 | 2;
}

export interface Goal {
  /** As the method calls it: `cross`, `2nd pair`, `solved`. */
  readonly name: string;
  readonly conditions: readonly Condition[];
  /** Colour index of the layer up to whose turn the conditions are meant. */
  readonly upTo: number | undefined;
  /** The pieces or pairs that this goal adds to the goals before it, each a set. */
  readonly parts: readonly PieceSet[];
  readonly choice?: Choice;
  readonly slice?: FreeSlice;
  /** Colour index of the layer up to whose turn parts of the goal may be made, though the goal itself is not. */
  readonly partsUpTo?: number;
  /** Goals any of which suffices (blocks on whichever side); then this one has no conditions of its own. */
  readonly anyOf?: readonly Goal[];
}
