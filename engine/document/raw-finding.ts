/**
 * Findings as data, with lines counted from the first line of their block, so that a block that moved
 * in the text keeps its findings. `sentences.ts` says them; `analyse.ts` puts them in their place.
 */
import type { Piece } from '../cube/piece.ts';
import type { Range } from '../cube/place.ts';
import type { FindingCode, Severity } from './finding.ts';

/** A turn as people are told of it. */
export interface TurnRef {
  readonly number: number;
  readonly text: string;
  readonly line: number;
}

/** A piece and where it is instead of at home; slots in the hands at that moment. */
export interface StrayPiece {
  readonly piece: Piece;
  readonly slot: string;
  readonly home: string;
  /** In its own slot, but turned. */
  readonly turned: boolean;
}

/** A single change of the text that makes a goal hold again. */
export type Change =
  | { readonly kind: 'insert'; readonly after: TurnRef | undefined; readonly text: string }
  | { readonly kind: 'replace'; readonly turn: TurnRef; readonly text: string }
  | { readonly kind: 'remove'; readonly turn: TurnRef };

interface Goalwise {
  readonly goal: string;
  /** Colour index, for the order in which colours are said. */
  readonly base: number;
}

export type FindingArgs =
  | (Goalwise & {
      readonly code: 'goal-broken';
      readonly pieces: readonly StrayPiece[];
      /** By a slice or wide turn: the pieces that moved in the hands, which are to be named. */
      readonly moved: readonly Piece[] | undefined;
      readonly turn: TurnRef;
      readonly change: Change | undefined;
      /** Goals that are not reached later, which may follow from this break. */
      readonly follows: readonly string[];
    })
  | (Goalwise & {
      readonly code: 'goal-carried' | 'goal-passing';
      /** Those that moved in the hands. */
      readonly moved: readonly Piece[];
      readonly turn: TurnRef;
      readonly restored: TurnRef;
    })
  | (Goalwise & {
      readonly code: 'goal-not-reached';
      readonly pieces: readonly StrayPiece[];
      readonly last: TurnRef | undefined;
      /** The single change that reaches it, if there is one. */
      readonly change: Change | undefined;
    })
  | (Goalwise & {
      readonly code: 'cross-not-aligned';
      readonly kind: 'offset';
      readonly turn: string;
    })
  | (Goalwise & {
      readonly code: 'cross-not-aligned';
      readonly kind: 'order';
      readonly pieces: readonly StrayPiece[];
    })
  | (Goalwise & { readonly code: 'last-turn-missing'; readonly turn: string })
  | {
      readonly code: 'not-solved';
      readonly base: number;
      readonly pieces: readonly StrayPiece[];
      readonly claimed: boolean;
      /** The goals of the method that hold at the end. */
      readonly holding: readonly string[];
    }
  | (Goalwise & {
      readonly code: 'claim-false';
      readonly kind: 'check';
      readonly pieces: readonly StrayPiece[];
      readonly at: TurnRef | undefined;
    })
  | (Goalwise & {
      readonly code: 'claim-false';
      readonly kind: 'keeps';
      readonly pieces: readonly StrayPiece[];
      readonly turn: TurnRef | undefined;
    })
  | {
      readonly code: 'claim-false';
      readonly kind: 'does';
      readonly claimed: string;
      readonly computed: string;
    }
  | {
      readonly code: 'claim-false';
      readonly kind: 'order';
      readonly claimed: number;
      readonly computed: number;
    }
  | {
      readonly code: 'claim-false';
      readonly kind: 'start';
      readonly base: number;
      readonly pieces: readonly StrayPiece[];
    }
  | {
      readonly code: 'holding-differs';
      readonly up: string;
      readonly front: string;
      readonly rotation: string | undefined;
    }
  | { readonly code: 'turns-cancel'; readonly turns: string; readonly result: string }
  | { readonly code: 'unknown-turn'; readonly text: string }
  | {
      readonly code: 'unclosed';
      readonly kind: 'bracket';
      readonly bracket: string;
      readonly insert: string;
    }
  | { readonly code: 'unclosed'; readonly kind: 'conjugate'; readonly newText: string }
  | { readonly code: 'spelling'; readonly text: string; readonly newText: string }
  | {
      readonly code: 'repeat-or-rotation';
      readonly text: string;
      readonly newText: string;
      readonly repeatFits: boolean;
    }
  | { readonly code: 'spoken-notation'; readonly newText: string | undefined }
  | { readonly code: 'prose'; readonly text: string }
  | { readonly code: 'unknown-key'; readonly key: string; readonly suggestion: string | undefined }
  | { readonly code: 'bad-value'; readonly key: string; readonly reason: string }
  | {
      readonly code: 'state-impossible';
      readonly reason: string;
      readonly remedy: string | undefined;
    }
  | {
      readonly code: 'name-unknown';
      readonly what: 'sequence' | 'goal' | 'method';
      readonly name: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'name-twice'; readonly name: string; readonly line: number }
  | { readonly code: 'name-cycle'; readonly names: readonly string[] }
  | { readonly code: 'use-not-found'; readonly file: string }
  | { readonly code: 'too-long'; readonly limit: number }
  | { readonly code: 'start-assumed' }
  | { readonly code: 'base-assumed'; readonly colour: string }
  | {
      readonly code: 'count-differs';
      readonly claimed: number;
      readonly obtm: number;
      readonly stm: number;
      readonly etm: number;
    }
  | {
      readonly code: 'wide-or-face';
      readonly text: string;
      readonly newText: string;
      readonly facesFit: boolean;
    };

/** A fix as data: what is written where; its title is said from its kind. */
export interface RawFix {
  readonly title: string;
  readonly edits: readonly { readonly range: Range; readonly newText: string }[];
}

export interface RawFinding {
  readonly args: FindingArgs;
  readonly range: Range;
  /** Differs from the default only where the design says so (a stage still being written). */
  readonly severity?: Severity;
  readonly related?: readonly { readonly range: Range; readonly note: RelatedNote }[];
  readonly fixes?: readonly RawFix[];
}

export type RelatedNote =
  | { readonly kind: 'opened' | 'restored'; readonly turn: TurnRef }
  | { readonly kind: 'change'; readonly change: Change }
  | { readonly kind: 'stage-end'; readonly goal: string }
  | { readonly kind: 'follows'; readonly goals: readonly string[] }
  | { readonly kind: 'first'; readonly name: string };

export function findingCode(finding: RawFinding): FindingCode {
  return finding.args.code;
}
