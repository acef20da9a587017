/**
 * Edits of a flat list of executed turns, each named by the slip of writing that it would mend, with
 * how likely people make it (a rough weight from common experience; it only orders the answers).
 */
import {
  amountOf,
  familyOf,
  invertTurn,
  turnKind,
  MOTIONS,
  TURNS,
  type Turn,
} from '../../cube/turn.ts';
import { OPPOSITE } from '../../cube/vocabulary.ts';

export const SLIP_KINDS = [
  'reversed', // R written, R' meant; y for y', M the wrong way
  'half-for-quarter', // R2 written, R or R' meant
  'quarter-for-half', // R written, R2 meant
  'other-face', // another letter meant
  'other-axis', // another rotation meant: x2 for z2
  'wide-or-narrow', // Rw for R or R for Rw
  'other-turn', // any other turn meant
  'left-out', // a turn not written
  'rotation-forgotten', // a rotation not written
  'one-too-many', // a turn written that was not made
  'swapped', // two neighbours exchanged
  'mirrored-stretch', // written for the other hand
  'inverted-stretch', // written backwards
  'other-holding', // written as seen in another holding
  'repeat-missing', // a repeat once less than made
  'repeat-extra', // a repeat once more than made
] as const;
export type SlipKind = (typeof SLIP_KINDS)[number];

/** Replace the `remove` turns from `index` on by `turns`. */
export interface SlipEdit {
  readonly index: number;
  readonly remove: number;
  readonly turns: readonly Turn[];
  readonly kind: SlipKind;
  readonly weight: number;
}

/** What a turn could have been meant as instead, with kind and weight; by turn. */
const REPLACEMENTS: readonly (readonly { turn: Turn; kind: SlipKind; weight: number }[])[] =
  Array.from({ length: TURNS }, (_, written) =>
    Array.from({ length: TURNS }, (_, turn) => ({ turn, ...replacement(written, turn) })).filter(
      ({ turn }) => turn !== written,
    ),
  );

function replacement(written: Turn, meant: Turn): { kind: SlipKind; weight: number } {
  const kinds = [turnKind(written), turnKind(meant)];
  const sameAmount = amountOf(written) === amountOf(meant);
  const amountWeight = sameAmount ? 1 : 0.25;
  if (familyOf(written) === familyOf(meant)) {
    if (meant === invertTurn(written)) return { kind: 'reversed', weight: 1 };
    return amountOf(written) === 2
      ? { kind: 'half-for-quarter', weight: 0.5 }
      : { kind: 'quarter-for-half', weight: 0.6 };
  }
  const axes = [MOTIONS[familyOf(written)].axis, MOTIONS[familyOf(meant)].axis];
  if (kinds[0] === kinds[1]) {
    const opposite = OPPOSITE[axes[0]] === axes[1];
    if (kinds[0] === 'rotation') return { kind: 'other-axis', weight: 0.5 * amountWeight };
    return { kind: 'other-face', weight: (opposite ? 0.55 : 0.25) * amountWeight };
  }
  if (axes[0] === axes[1] && kinds.includes('wide') && kinds.includes('face')) {
    return { kind: 'wide-or-narrow', weight: 0.5 * amountWeight };
  }
  return { kind: 'other-turn', weight: 0.05 * amountWeight };
}

function insertion(turn: Turn): { kind: SlipKind; weight: number } {
  switch (turnKind(turn)) {
    case 'face':
      return { kind: 'left-out', weight: 0.35 };
    case 'rotation':
      return { kind: 'rotation-forgotten', weight: 0.4 };
    default:
      return { kind: 'left-out', weight: 0.08 };
  }
}

/** All single edits whose place lies in `from` … `end`, in the order of their places. */
export function singleEdits(turns: readonly Turn[], from = 0, end = turns.length): SlipEdit[] {
  const edits: SlipEdit[] = [];
  for (let index = from; index <= end; index++) {
    for (let turn = 0; turn < TURNS; turn++) {
      edits.push({ index, remove: 0, turns: [turn], ...insertion(turn) });
    }
    if (index === end) break;
    const written = turns[index];
    edits.push({ index, remove: 1, turns: [], kind: 'one-too-many', weight: 0.3 });
    for (const { turn, kind, weight } of REPLACEMENTS[written]) {
      edits.push({ index, remove: 1, turns: [turn], kind, weight });
    }
    if (index + 1 < end && turns[index + 1] !== written) {
      const pair = [turns[index + 1], written];
      edits.push({ index, remove: 2, turns: pair, kind: 'swapped', weight: 0.45 });
    }
  }
  return edits;
}

/** The turns with the edits made; edits must not overlap. */
export function applyEdits(turns: readonly Turn[], edits: readonly SlipEdit[]): Turn[] {
  const result = [...turns];
  // From the back, so that earlier indices stay right; of two at one place the later comes last.
  const order = edits
    .map((edit, i) => ({ edit, i }))
    .sort((a, b) => b.edit.index - a.edit.index || b.i - a.i);
  for (const { edit } of order) result.splice(edit.index, edit.remove, ...edit.turns);
  return result;
}
