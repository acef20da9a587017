/**
 * Sequences turned into related ones: inverse, mirror image, the same written for another holding,
 * without rotations. The flat forms work on executed turns, the others keep brackets and repeats.
 */
import { CENTRE_AT, FACE_OF, type Holding } from '../cube/holding.ts';
import { bodyTurns, holdingAfter } from '../cube/state.ts';
import {
  amountOf,
  familyOf,
  invertTurn,
  isRotation,
  makeTurn,
  MOTIONS,
  turnKind,
  type Turn,
} from '../cube/turn.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { foldItems, isBracket, listsOf, withLists, type BracketNode } from './fold.ts';
import type { SequenceNode } from './tree.ts';

export const PLANES = ['left-right', 'front-back', 'up-down'] as const;
/** Which two sides are exchanged: `left-right` makes of a sequence for the right hand one for the left. */
export type Plane = (typeof PLANES)[number];

const MIRRORED_FACES: Readonly<Record<Plane, readonly number[]>> = {
  'left-right': [0, 3, 2, 1, 4, 5],
  'front-back': [0, 1, 4, 3, 2, 5],
  'up-down': [5, 1, 2, 3, 4, 0],
};

/** The turn of the same kind with each face `f` read as `faces[f]`; a mirror image turns the other way. */
function rereadTurn(turn: Turn, faces: readonly number[], mirrored: boolean): Turn {
  const { kind, axis } = MOTIONS[familyOf(turn)];
  const amount = mirrored ? -amountOf(turn) : amountOf(turn);
  const target = faces[axis];
  const same = MOTIONS.findIndex((motion) => motion.kind === kind && motion.axis === target);
  if (same >= 0) return makeTurn(same, amount);
  // Slices and rotations have one name for both directions along their axis.
  const other = MOTIONS.findIndex(
    (motion) => motion.kind === kind && motion.axis === OPPOSITE[target],
  );
  return makeTurn(other, -amount);
}

export function invertTurns(turns: readonly Turn[]): Turn[] {
  return turns.map(invertTurn).reverse();
}

export function mirrorTurns(turns: readonly Turn[], plane: Plane): Turn[] {
  return turns.map((turn) => rereadTurn(turn, MIRRORED_FACES[plane], true));
}

/** What to do on a cube held as `holding` so that the same layers turn as by `turns` in the reference holding. */
export function renameTurns(turns: readonly Turn[], holding: Holding): Turn[] {
  return turns.map((turn) => rereadTurn(turn, FACE_OF[holding], false));
}

/**
 * Rotations taken out, later turns reread in the first holding: the same arrangement, and slices
 * and wide turns stay what they are.
 */
export function withoutRotations(turns: readonly Turn[]): Turn[] {
  const result: Turn[] = [];
  let holding: Holding = 0;
  for (const turn of turns) {
    if (isRotation(turn)) holding = holdingAfter(turn, holding);
    else result.push(rereadTurn(turn, CENTRE_AT[holding], false));
  }
  return result;
}

/** Slices written as two face turns and a rotation (M = x' R L'): the same effect, holding included. */
export function slicesAsFaces(turns: readonly Turn[]): Turn[] {
  return turns.flatMap((turn) => {
    if (turnKind(turn) !== 'slice') return [turn];
    const { axis, faces } = MOTIONS[familyOf(turn)];
    const amount = amountOf(turn);
    const rotation = MOTIONS.findIndex(
      (motion) =>
        motion.kind === 'rotation' && (motion.axis === axis || motion.axis === OPPOSITE[axis]),
    );
    const along = MOTIONS[rotation].axis === axis ? amount : -amount;
    return [
      makeTurn(rotation, along),
      ...faces.map(([face, sign]) => makeTurn(face, sign * amount)).reverse(),
    ];
  });
}

/** Face turns alone that do the same to the pieces relative to the centres; no holding changes. */
export function asFaceTurns(turns: readonly Turn[], holding: Holding = 0): Turn[] {
  const result: Turn[] = [];
  let held = holding;
  for (const turn of turns) {
    result.push(...bodyTurns(turn, held));
    held = holdingAfter(turn, held);
  }
  return result;
}

/** The sequence that undoes `items`, brackets and repeats kept: `[A, B]` becomes `[B, A]`. */
export function invert(items: readonly SequenceNode[]): SequenceNode[] {
  // The fold gives the inverse of every node; each bracket picks where it needs it.
  return foldItems<SequenceNode>(items, {
    open: (node) => {
      if (node.kind === 'turn') return { value: { ...node, turn: invertTurn(node.turn) } };
      if (node.kind === 'name') return { value: { ...node, times: -node.times } };
      if (!isBracket(node)) return { value: node };
      return node.times < 0n
        ? { value: { ...node, times: -node.times } }
        : { lists: listsOf(node) };
    },
    close: (node, lists) => {
      const bracket = node as BracketNode;
      const [first, second] = listsOf(bracket);
      if (bracket.kind === 'group') return withLists(bracket, [lists[0].toReversed()]);
      if (bracket.kind === 'commutator') return withLists(bracket, [second, first]);
      return withLists(bracket, [first, lists[1].toReversed()]);
    },
  }).reverse();
}

/** Undefined if a name occurs: what it stands for would have to be mirrored at its definition. */
export function mirror(items: readonly SequenceNode[], plane: Plane): SequenceNode[] | undefined {
  return rereadItems(items, MIRRORED_FACES[plane], true);
}

/**
 * The sequence written for a cube held as `holding`, turning the same layers as `items` do in the
 * reference holding; undefined if a name occurs.
 */
export function renameHolding(
  items: readonly SequenceNode[],
  holding: Holding,
): SequenceNode[] | undefined {
  return rereadItems(items, FACE_OF[holding], false);
}

function rereadItems(
  items: readonly SequenceNode[],
  faces: readonly number[],
  mirrored: boolean,
): SequenceNode[] | undefined {
  let named = false;
  const result = foldItems<SequenceNode>(items, {
    open: (node) => {
      named ||= node.kind === 'name';
      if (node.kind === 'turn')
        return { value: { ...node, turn: rereadTurn(node.turn, faces, mirrored) } };
      return isBracket(node) ? { lists: listsOf(node) } : { value: node };
    },
    close: (node, lists) => withLists(node as BracketNode, lists),
  });
  return named ? undefined : result;
}
