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
  | { readonly kind: 'facing'; readonly pieces: PieceSet; readonly colour: number };

export interface Goal {
  /** As the method calls it: `cross`, `2nd pair`, `solved`. */
  readonly name: string;
  readonly conditions: readonly Condition[];
  /** Colour index of the layer up to whose turn the conditions are meant. */
  readonly upTo: number | undefined;
  /** The pieces or pairs that this goal adds to the goals before it, each a set. */
  readonly parts: readonly PieceSet[];
}
