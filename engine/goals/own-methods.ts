/**
 * Goals and methods of the person's own: `goal: left block = DL FL BL DFL DBL` and
 * `method: mine = cross, left block, solved`.
 */
import type { Holding } from '../cube/holding.ts';
import { slotAt, type PieceSet } from '../cube/piece.ts';
import { faceIndex } from '../cube/vocabulary.ts';
import { METHOD_SPECS } from './method-data.ts';
import type { Method, Stage } from './methods.ts';
import { stageNamed } from './stage-names.ts';

/** A goal of the person's own: `goal: left block = DL FL BL DFL DBL`. */
export interface OwnGoal {
  readonly name: string;
  readonly pieces: PieceSet;
}

export type OwnGoalResult =
  | { readonly kind: 'goal'; readonly goal: OwnGoal }
  | { readonly kind: 'no-name' }
  | { readonly kind: 'no-slots' }
  | { readonly kind: 'unknown-slot'; readonly text: string };

/** The pieces whose homes are those slots (`DL FL DFL`, letters in any order) in the declared holding. */
export function makeOwnGoal(name: string, slots: string, holding: Holding): OwnGoalResult {
  const title = name.trim();
  if (title === '') return { kind: 'no-name' };
  let pieces = 0;
  for (const word of slots.split(/[\s,]+/)) {
    if (word === '') continue;
    const faces = [...word.toUpperCase()].map(faceIndex);
    const slot = faces.includes(-1) ? undefined : slotAt(faces, holding);
    if (slot === undefined) return { kind: 'unknown-slot', text: word };
    pieces |= 1 << slot;
  }
  return pieces === 0 ? { kind: 'no-slots' } : { kind: 'goal', goal: { name: title, pieces } };
}

export type MethodResult =
  | { readonly kind: 'method'; readonly method: Method }
  | { readonly kind: 'no-name' }
  | { readonly kind: 'no-stages' }
  | { readonly kind: 'unknown-stage'; readonly text: string }
  | { readonly kind: 'stage-twice'; readonly text: string };

/**
 * A method of the person's own. Each stage is an own goal or a stage of a method here, then with all
 * that it takes in there (`top cross` wants the lower layers home).
 */
export function makeMethod(
  name: string,
  stages: readonly string[],
  ownGoals: readonly OwnGoal[],
): MethodResult {
  const title = name.trim();
  if (title === '') return { kind: 'no-name' };
  const result: Stage[] = [];
  for (const text of stages.map((stage) => stage.trim()).filter((stage) => stage !== '')) {
    const own = ownGoals.find((goal) => goal.name.toLowerCase() === text.toLowerCase());
    const stage = own ? { name: own.name, demands: [], ownPieces: own.pieces } : stageNamed(text);
    if (stage === undefined) return { kind: 'unknown-stage', text };
    if (result.some((other) => other.name === stage.name)) return { kind: 'stage-twice', text };
    result.push(stage);
  }
  if (result.length === 0) return { kind: 'no-stages' };
  const sided = result.some((stage) => stage.demands.some((spec) => SIDED.has(spec)));
  return { kind: 'method', method: { name: title, stages: result, sided } };
}

/** Stages that depend on which side is in front. */
const SIDED = new Set(
  METHOD_SPECS.filter((spec) => spec.sided)
    .flatMap((spec) => spec.stages)
    .filter((spec) => spec.oriented ?? spec.freeSlice ?? spec.choice?.sets.length === 2),
);
