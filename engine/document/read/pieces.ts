/** Values that name slots and stickers: `goal: left block = DL FL BL`, `does: (UF RU …)`. */
import type { Span } from '../../cube/place.ts';
import { pieceOf } from '../../cube/piece.ts';
import { faceIndex } from '../../cube/vocabulary.ts';
import type { Words } from './tree.ts';
import { bad, cutAtEquals, type BadValue } from './values.ts';
import { splitWords } from './words.ts';

export interface SlotItem extends Words {
  /** Face indices in the order written; for a sticker the first one is where it is seen. */
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

export interface CycleItem {
  readonly stickers: readonly SlotItem[];
  /** Its brackets included. */
  readonly span: Span;
}

export interface CyclesValue {
  readonly kind: 'cycles';
  /** First goes to second; each cycle once. Empty: it does nothing. */
  readonly cycles: readonly CycleItem[];
  /** `…` before or after the brackets: there may be more cycles than these. */
  readonly partial: boolean;
}

const NOTHING = /^(?:\(\s*\)|nothing|-)$/i;
const PART = /\(([^()]*)\)|…|\.{3}|[^\s(),;]+|[()]/g;

export function readDoes(value: Words): CyclesValue | BadValue {
  if (value.text === '') return bad('empty', value);
  if (NOTHING.test(value.text)) return { kind: 'cycles', cycles: [], partial: false };
  const cycles: CycleItem[] = [];
  const used = new Set<string>();
  let partial = false;
  for (const match of value.text.matchAll(PART)) {
    const start = value.span.start + match.index;
    const part = { text: match[0], span: { start, end: start + match[0].length } };
    if (part.text === '…' || part.text === '...') {
      partial = true;
      continue;
    }
    if (match[1] === undefined) return bad('no-cycle', part);
    const inside = { text: match[1], span: { start: start + 1, end: part.span.end - 1 } };
    const stickers: SlotItem[] = [];
    for (const item of splitWords(inside, /[\s,;→>-]+/g)) {
      if (item.text === '') continue;
      const faces = readSticker(item.text);
      if (faces === undefined) return bad('no-sticker', item);
      if (faces.length !== (stickers[0]?.faces ?? faces).length) return bad('sticker-kinds', item);
      const key = [faces[0], ...faces.slice(1).sort()].join();
      if (used.has(key)) return bad('sticker-twice', item);
      used.add(key);
      stickers.push({ ...item, faces });
    }
    if (stickers.length < 2) return bad('short-cycle', part);
    cycles.push({ stickers, span: part.span });
  }
  return cycles.length === 0 ? bad('no-cycle', value) : { kind: 'cycles', cycles, partial };
}

/** A sticker of a corner or edge, or a centre by its single letter. */
function readSticker(text: string): number[] | undefined {
  if (text.length > 1) return readSlot(text);
  const face = faceIndex(text.toUpperCase());
  return face === -1 ? undefined : [face];
}
