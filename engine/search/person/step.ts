/**
 * One step of a solve as a beginner would do it: one insert or one sequence of the last layer, with
 * what a person would say about it. Everything in it is computed from the state it starts from.
 */
import type { Holding } from '../../cube/holding.ts';
import type { Piece, PieceSet, Whereabouts } from '../../cube/piece.ts';
import type { Turn } from '../../cube/turn.ts';

/** Why these turns: the situation that the person recognises. */
export const REASONS = [
  // A base edge …
  'base-up-above-home', // in the top, base sticker up: half a turn takes it down
  'base-aside-above-home', // in the top, base sticker to the side: by way of the middle layer
  'beside-home', // in the middle layer, one quarter turn from home
  'edge-stuck-in-middle', // in the middle layer, away from home: up to the top first
  'edge-in-wrong-base-slot', // in the base layer, base sticker down, but elsewhere: up first
  'edge-turned-in-base', // in the base layer with the base sticker to the side: up first
  // A base corner …
  'base-to-the-side', // above its slot, base sticker to the side: one insert
  'base-up', // above its slot, base sticker up: three inserts
  'corner-turned-in-slot', // in its slot, turned wrong: two or four inserts
  'corner-in-wrong-slot', // in another base slot: one insert takes it out
  // A middle edge …
  'edge-goes-right',
  'edge-goes-left',
  'edge-in-wrong-middle-slot', // in another slot of the middle layer: out first
  'edge-turned-in-middle', // in its slot, turned wrong: out first
  // The last layer
  'dot',
  'line',
  'angle',
  'no-corner-right',
  'one-corner-right',
  'two-corners-right',
  'headlights',
  'no-headlights',
  'no-finished-side',
  'three-edges-clockwise',
  'three-edges-counter-clockwise',
  'last-turn',
] as const;
export type Reason = (typeof REASONS)[number];

export interface Disturbance {
  /** Guarded pieces that leave their places during the step. */
  readonly pieces: PieceSet;
  /** Index into `turns` of the first turn that moves one of them. */
  readonly from: number;
  /** Index of the turn after which all of them are back. */
  readonly restoredBy: number;
}

export interface PersonStep {
  /** The stage of `layers` it belongs to. */
  readonly stage: string;
  readonly reason: Reason;
  /** The piece it is about; undefined in the last layer. */
  readonly piece: Piece | undefined;
  /** Where that piece is before and after. */
  readonly from: Whereabouts | undefined;
  readonly to: Whereabouts | undefined;
  /** Whether the piece comes home (or, in the last layer, the stage's goal is reached). */
  readonly arrives: boolean;
  /** How the cube must be held for the sequence, and the rotations that lead there. */
  readonly holding: Holding;
  readonly regrip: readonly Turn[];
  /** Turn of the top that brings the piece into position, if any. */
  readonly setup: readonly Turn[];
  /** The sequence as people learn it, and how often. */
  readonly sequence: readonly Turn[];
  readonly times: number;
  /** All turns as made: regrip, then setup and sequence with what cancels between them taken out. */
  readonly turns: readonly Turn[];
  /** What was made before, leaves its place and comes back; undefined if nothing does. */
  readonly disturbs: Disturbance | undefined;
}
