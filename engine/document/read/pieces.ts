/** Values that name slots and stickers: `goal: left block = DL FL BL`, `does: (UF RU …)`. */
import { readDoes as readCycles, type DoesClaim, type DoesFailure } from '../../cube/does.ts';
import type { Span } from '../../cube/place.ts';
import { pieceOf } from '../../cube/piece.ts';
import { faceIndex } from '../../cube/vocabulary.ts';
import type { Words } from './tree.ts';
import { bad, cutAtEquals, type BadReason, type BadValue } from './values.ts';
import { splitWords } from './words.ts';

export interface SlotItem extends Words {
  /** Face indices in the order written. */
  readonly faces: readonly number[];
}

export interface GoalValue {
  readonly kind: 'goal';
  readonly name: Words;
  /** Slots in the declared holding. */
  readonly slots: readonly SlotItem[];
}

/** Face indices of `DFR`, `UF`; undefined if no slot has that name. */
export function readSlot(text: string): number[] | undefined {
  if (text.length < 2 || text.length > 3) return undefined;
  const faces = [...text.toUpperCase()].map(faceIndex);
  return faces.includes(-1) || pieceOf(faces) === undefined ? undefined : faces;
}

export function readGoal(value: Words): GoalValue | BadValue {
  if (value.text === '') return bad('empty', value);
  const halves = cutAtEquals(value);
  if (halves === undefined || halves[0].text === '' || halves[1].text === '') {
    return bad('empty-item', value);
  }
  const [name, right] = halves;
  const slots: SlotItem[] = [];
  for (const item of splitWords(right, /[\s,;+&]+/g)) {
    if (item.text === '') continue;
    const faces = readSlot(item.text);
    if (faces === undefined) return bad('no-slot', item);
    slots.push({ ...item, faces });
  }
  return slots.length === 0 ? bad('empty-item', right) : { kind: 'goal', name, slots };
}

const NOTHING = /^(?:\(\s*\)|nothing|-)$/i;

/** The cycles of facelets with their spans in the line; none: the claim that nothing moves. */
export function readDoes(value: Words): DoesClaim | BadValue {
  if (value.text === '') return bad('empty', value);
  if (NOTHING.test(value.text)) return { kind: 'does', cycles: [], complete: true };
  const offset = value.span.start;
  const shifted = (span: Span): Span => ({ start: span.start + offset, end: span.end + offset });
  const claim = readCycles(value.text);
  if (claim.kind === 'bad-does') {
    return bad(REASONS[claim.reason], { text: claim.text, span: shifted(claim.span) });
  }
  return {
    ...claim,
    cycles: claim.cycles.map((cycle) => ({ ...cycle, span: shifted(cycle.span) })),
  };
}

const REASONS: Readonly<Record<DoesFailure['reason'], BadReason>> = {
  'no-sticker': 'no-sticker',
  'mixed-kinds': 'sticker-kinds',
  'sticker-twice': 'sticker-twice',
  'no-bracket': 'no-cycle',
  empty: 'empty-item',
};
