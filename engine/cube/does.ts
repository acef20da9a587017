/**
 * The claim of a `does:` line, read and compared with an effect.
 *
 * A claim names stickers by their face first, the others in any order. Each cycle of pieces is
 * written once; the other stickers of its pieces follow from it, as a piece moves as a whole. With
 * `…` before the first or after the last bracket it need not be complete.
 */
import { FACELETS, FACELET_SLOTS, faceletIndex } from './facelets.ts';
import { faceletTargets, stickerAt, stickerName } from './effect.ts';
import { faceletsOf } from './piece.ts';
import type { Span } from './place.ts';
import type { State } from './state.ts';

export interface DoesClaim {
  readonly kind: 'does';
  /** Cycles of facelets as written. */
  readonly cycles: readonly { readonly facelets: readonly number[]; readonly span: Span }[];
  readonly complete: boolean;
}

export interface DoesFailure {
  readonly kind: 'bad-does';
  /** What cannot be read, in the text given. */
  readonly span: Span;
  readonly text: string;
  readonly reason: 'no-sticker' | 'mixed-kinds' | 'sticker-twice' | 'no-bracket' | 'empty';
}

const GAP = /^(?:…|\.\.\.|\?\?\?)$/u;
/** A gap, a bracket with what is in it, or a word that belongs to neither. */
const PART = /…|\.\.\.|\?\?\?|\(([^()]*)\)|[^\s…(),]+|[()]/gu;

/** Reads `(UF RU UB)(UFR ULF) …`; commas between stickers are allowed. */
export function readDoes(text: string): DoesClaim | DoesFailure {
  const cycles: { facelets: number[]; span: Span }[] = [];
  let complete = true;
  for (const match of text.matchAll(PART)) {
    const span = { start: match.index, end: match.index + match[0].length };
    if (GAP.test(match[0])) {
      complete = false;
      continue;
    }
    const inside = match[1] as string | undefined;
    if (inside === undefined) {
      return { kind: 'bad-does', span, text: match[0], reason: 'no-bracket' };
    }
    const cycle = readCycle(inside, match.index + 1);
    if ('kind' in cycle) return cycle;
    if (cycle.facelets.length === 0) {
      return { kind: 'bad-does', span, text: match[0], reason: 'empty' };
    }
    cycles.push({ facelets: cycle.facelets, span });
  }
  return { kind: 'does', cycles, complete };
}

function readCycle(inside: string, offset: number): { facelets: number[] } | DoesFailure {
  const facelets: number[] = [];
  for (const match of inside.matchAll(/[^\s,]+/gu)) {
    const text = match[0];
    const start = offset + match.index;
    const fail = (reason: DoesFailure['reason']): DoesFailure => ({
      kind: 'bad-does',
      span: { start, end: start + text.length },
      text,
      reason,
    });
    const facelet = stickerAt(text);
    if (facelet === undefined) return fail('no-sticker');
    if (facelets.includes(facelet)) return fail('sticker-twice');
    if (facelets.length > 0 && sizeOf(facelet) !== sizeOf(facelets[0])) return fail('mixed-kinds');
    facelets.push(facelet);
  }
  return { facelets };
}

/** Number of stickers of the piece at a facelet: 3, 2 or 1. */
function sizeOf(facelet: number): number {
  const { slot } = FACELET_SLOTS[facelet];
  return slot < 0 ? 1 : faceletsOf(slot).length;
}

export type DoesComparison =
  | { readonly kind: 'same' }
  /** The sticker at `from` is claimed to go to `claimed`, but goes to `goesTo` (names of stickers). */
  | {
      readonly kind: 'wrong';
      readonly from: string;
      readonly claimed: string;
      readonly goesTo: string;
      readonly span: Span;
    }
  /** All that is claimed is true, but the claim says that nothing else moves, and these do. */
  | { readonly kind: 'incomplete'; readonly from: string; readonly goesTo: string };

export function compareDoes(claim: DoesClaim, effect: State): DoesComparison {
  const goesTo = faceletTargets(effect);
  const told = new Set<number>();
  for (const { facelets, span } of claim.cycles) {
    for (let i = 0; i < facelets.length; i++) {
      const from = facelets[i];
      const to = facelets[(i + 1) % facelets.length];
      if (goesTo[from] !== to) {
        return {
          kind: 'wrong',
          from: stickerName(from),
          claimed: stickerName(to),
          goesTo: stickerName(goesTo[from]),
          span,
        };
      }
      for (const sticker of stickersBeside(from)) told.add(sticker);
    }
  }
  if (claim.complete) {
    for (let facelet = 0; facelet < FACELETS; facelet++) {
      if (goesTo[facelet] !== facelet && !told.has(facelet)) {
        return {
          kind: 'incomplete',
          from: stickerName(facelet),
          goesTo: stickerName(goesTo[facelet]),
        };
      }
    }
  }
  return { kind: 'same' };
}

export function sameDoes(claim: DoesClaim, effect: State): boolean {
  return compareDoes(claim, effect).kind === 'same';
}

/** All facelets of the slot (or the centre) that a facelet belongs to. */
function stickersBeside(facelet: number): number[] {
  const { slot } = FACELET_SLOTS[facelet];
  return slot < 0 ? [facelet] : faceletsOf(slot).map((face) => faceletIndex(slot, face));
}
