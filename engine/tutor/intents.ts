/** What can be asked, and what understanding a question gives: an intent and its slots. */
import type { Piece } from '../cube/piece.ts';
import type { StageName } from '../goals/stage-names.ts';

export const INTENTS = [
  'next-step',
  'where-piece',
  'why-broke',
  'is-done',
  'which-hold',
  'judge-turns',
  'which-case',
  'what-does',
  'where-wrong',
  'shorter',
  'explain-term',
  'is-possible',
  'compare',
  'how-often',
  'which-way',
  'journey',
  'stage-span',
  'which-order',
  'not-understood',
] as const;
export type Intent = (typeof INTENTS)[number];

/** A piece as it was spoken of. */
export type PieceRef =
  /** By two or three colours (indices). */
  | { readonly kind: 'colours'; readonly colours: readonly number[] }
  /** By one colour: "the red one", "the blue corner". */
  | {
      readonly kind: 'colour';
      readonly colour: number;
      readonly corner: boolean | undefined;
    }
  /** The piece that belongs in a slot of the hands (face indices): "the DF edge". */
  | { readonly kind: 'home'; readonly faces: readonly number[] }
  /** The piece that lies in a slot: "what is in DF". */
  | { readonly kind: 'slot'; readonly faces: readonly number[] };

export interface GoalRef {
  readonly text: string;
  readonly name: StageName;
}

export type PlaceRef =
  | { readonly kind: 'turn'; readonly number: number; readonly before: boolean }
  | { readonly kind: 'line'; readonly line: number; readonly before: boolean }
  | { readonly kind: 'here' | 'start' | 'end' };

export interface TurnsRef {
  /** As written. */
  readonly asked: string;
  /** As read, where letters in lower case were taken for faces; else the same. */
  readonly text: string;
}

/** How much help a question asks for: a level, one more than before, or what comes by itself. */
export type HelpWanted = 1 | 2 | 3 | 'more' | undefined;

/** What is asked of a sequence. */
export type Aspect = 'effect' | 'order' | 'inverse' | 'mirror' | 'counts';

/** Pieces said to be wrong in a way of their own: "one edge is flipped", "two corners are swapped". */
export interface Flaw {
  readonly pieces: 'edges' | 'corners';
  readonly what: 'flipped' | 'twisted' | 'swapped';
  readonly count: number;
}

export interface Understood {
  readonly text: string;
  readonly intent: Intent;
  /** Why there is no intent. */
  readonly refusal?:
    'empty' | 'too-long' | 'unreadable' | 'not-understood' | 'no-turns-named' | 'turns-unread';
  readonly pieces: readonly PieceRef[];
  readonly goals: readonly GoalRef[];
  readonly places: readonly PlaceRef[];
  readonly turns: TurnsRef | undefined;
  /** All sequences of the question, in order; `turns` is the last of them. */
  readonly sequences: readonly TurnsRef[];
  readonly aspect: Aspect;
  readonly flaw: Flaw | undefined;
  /** Name of a term of the catalogue. */
  readonly term: string | undefined;
  readonly help: HelpWanted;
  /** "and then?": after the turns last spoken of. */
  readonly onwards: boolean;
}

/** What the dialogue remembers, as plain data. */
export interface Memory {
  readonly intent: Intent | undefined;
  readonly pieces: readonly Piece[];
  readonly goal: GoalRef | undefined;
  /** Turns last judged, as read. */
  readonly turns: string | undefined;
  /** Help given so far (0…3) for this state and goal. */
  readonly level: number;
  readonly levelFor: string | undefined;
  /** Turns after the place at which the last hint stood; empty if none. */
  readonly then: string;
}

export const NO_MEMORY: Memory = {
  intent: undefined,
  pieces: [],
  goal: undefined,
  turns: undefined,
  level: 0,
  levelFor: undefined,
  then: '',
};
