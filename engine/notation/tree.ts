/**
 * The tree of a sequence as it stands in one line of text. Spans are offsets in that line; brackets
 * never reach beyond their line, so that one left open cannot hide the rest.
 *
 * Trees may be nested as deep as memory allows: whatever walks them uses a stack of its own.
 */
import type { Span } from '../cube/place.ts';
import type { Turn } from '../cube/turn.ts';

interface Placed {
  /** The whole node, its repeat count or prime included. */
  readonly span: Span;
}

export interface TurnNode extends Placed {
  readonly kind: 'turn';
  readonly turn: Turn;
}

/** `~`: a pause to look. */
export interface PauseNode extends Placed {
  readonly kind: 'pause';
}

/** `…`, `...` or `???`: an unknown stretch. */
export interface GapNode extends Placed {
  readonly kind: 'gap';
}

/** `(A)3`, `(A)'`, `[A]`. */
export interface GroupNode extends Placed {
  readonly kind: 'group';
  readonly items: readonly SequenceNode[];
  /** How often it is done; negative: its inverse that often; may exceed the safe integers, hence a bigint. */
  readonly times: bigint;
}

/** `[A, B]` = A B A' B'. */
export interface CommutatorNode extends Placed {
  readonly kind: 'commutator';
  readonly first: readonly SequenceNode[];
  readonly second: readonly SequenceNode[];
  readonly times: bigint;
}

/** `[A: B]` = A B A'. */
export interface ConjugateNode extends Placed {
  readonly kind: 'conjugate';
  readonly setup: readonly SequenceNode[];
  readonly core: readonly SequenceNode[];
  readonly times: bigint;
}

/** `@name`. */
export interface NameNode extends Placed {
  readonly kind: 'name';
  /** Without the `@`, lower case, hyphens for spaces. */
  readonly name: string;
  readonly times: bigint;
}

/** A token that is no turn: kept as a whole, never half executed. */
export interface UnknownNode extends Placed {
  readonly kind: 'unknown';
  readonly text: string;
}

export type SequenceNode =
  | TurnNode
  | PauseNode
  | GapNode
  | GroupNode
  | CommutatorNode
  | ConjugateNode
  | NameNode
  | UnknownNode;

/** What reading a line of turns brought up, besides the tree. */
export type SequenceMark = { readonly span: Span } & (
  | { readonly kind: 'unknown-turn'; readonly text: string }
  /** A bracket without its partner; `insert` is the text that would close (or open) it at `at`. */
  | {
      readonly kind: 'unclosed';
      readonly bracket: string;
      readonly at: number;
      readonly insert: string;
    }
  /** `F: R U`: a conjugate that lost its brackets; nothing of it is executed. */
  | { readonly kind: 'bare-conjugate'; readonly newText: string }
  /** Another spelling in use (`Ri`, `2Rw`, `(A) x3`), read as meant. */
  | { readonly kind: 'spelling'; readonly newText: string }
  /** `(A) x2`: read as the rotation after the group; `newText` is the repeat. */
  | { readonly kind: 'repeat-or-rotation'; readonly newText: string }
);

export interface SequenceTree {
  readonly items: readonly SequenceNode[];
  readonly marks: readonly SequenceMark[];
}
