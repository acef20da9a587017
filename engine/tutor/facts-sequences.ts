/** Facts on sequences by themselves, on the last layer, on terms, and on what turns can do. */
import type { Colour, Face } from '../cube/vocabulary.ts';
import type { GoalName, PieceName, Placed, TurnName } from './fact-names.ts';

/** What a sequence does to any cube, read off its replay; slots as they lie in the hands before it. */
export interface EffectFact extends Placed {
  readonly kind: 'effect';
  readonly turns: string;
  /** Cycles of slots: what is in the first goes to the second, and what is in the last to the first. */
  readonly corners: readonly (readonly string[])[];
  readonly edges: readonly (readonly string[])[];
  readonly centres: readonly (readonly string[])[];
  /** Slots whose piece stays but is turned. */
  readonly twisted: readonly string[];
  readonly flipped: readonly string[];
  readonly order: number;
}

export interface CountsFact extends Placed {
  readonly kind: 'counts';
  readonly turns: string;
  /** Face and wide turns one, slices two, rotations none; and in quarter turns. */
  readonly obtm: number;
  readonly qtm: number;
}

/** Another sequence that belongs to one: its inverse, or its mirror image for the other hand. */
export interface RelatedFact extends Placed {
  readonly kind: 'related';
  readonly relation: 'inverse' | 'mirror';
  readonly turns: string;
  readonly other: string;
}

/** The last layer as a person recognises it; all layers below it are done. */
export interface CaseFact extends Placed {
  readonly kind: 'case';
  readonly base: Colour;
  readonly edges: 'dot' | 'line' | 'angle' | 'cross';
  readonly cornersRight: number;
  /** Only where all pieces of the layer are turned right. */
  readonly swap: 'right' | 'adjacent' | 'diagonal' | undefined;
  readonly letter: string | undefined;
}

/** How a person holds the cube for the next sequence, and which sequence it is. */
export interface HoldFact extends Placed {
  readonly kind: 'hold';
  readonly regrip: string;
  /** After the regrip. */
  readonly up: Colour;
  readonly front: Colour;
  /** A turn of the top before the sequence; may be empty. */
  readonly setup: string;
  readonly sequence: string;
  readonly times: number;
}

/** Turns after which nothing that another sequence does is different, centres and holding included. */
export interface ShorterFact extends Placed {
  readonly kind: 'shorter';
  readonly turns: string;
  /** Undefined: none was found. */
  readonly other: string | undefined;
  /** Face turns that the given sequence counts (slices as two), and the other one. */
  readonly count: number;
  readonly otherCount: number | undefined;
  /** No sequence of at most so many face turns has the same effect. */
  readonly provenTo: number;
}

export interface TermFact extends Placed {
  readonly kind: 'term';
  readonly term: string;
  readonly meaning: string;
}

/** Sides of the last layer, in the hands, whose two corners show one colour, and those whose edge shows it, too. */
export interface SidesFact extends Placed {
  readonly kind: 'sides';
  readonly base: Colour;
  readonly agree: readonly Face[];
  readonly finished: readonly Face[];
}

/** Whether pieces can be wrong in this way and nothing else. */
export interface FlawFact extends Placed {
  readonly kind: 'flaw';
  readonly pieces: 'edges' | 'corners';
  readonly what: 'flipped' | 'twisted' | 'swapped';
  readonly count: number;
  readonly possible: boolean;
}

/** Whether turns alone can lead from the cube at the place to the solved one. */
export interface SolvableFact extends Placed {
  readonly kind: 'solvable';
  readonly solvable: boolean;
  readonly problems: readonly ('twisted-corner' | 'flipped-edge' | 'swapped-pieces')[];
}

export interface CompareFact extends Placed {
  readonly kind: 'compare';
  readonly first: string;
  readonly second: string;
  /** Every cube is the same after either, centres and holding included. */
  readonly same: boolean;
  readonly counts: readonly [number, number];
  /** By a rough measure of the hand: which is easier; undefined if neither. */
  readonly easier: 'first' | 'second' | undefined;
}

/** A sequence repeated on the cube at the place until something of the goal that is due is reached. */
export interface RepeatFact extends Placed, GoalName {
  readonly kind: 'repeat';
  readonly turns: string;
  /** After so many times everything is back as it was before. */
  readonly order: number;
  /** Undefined: no number of times below the order does it. */
  readonly times: number | undefined;
  /** The goal is reached, or these pieces come home while goals before it hold. */
  readonly effect: 'goal' | 'home' | undefined;
  readonly pieces: readonly PieceName[];
}

/** Which way a turn goes: what lies in a slot comes to another. */
export interface WayFact extends Placed {
  readonly kind: 'way';
  readonly turn: string;
  readonly from: string;
  readonly to: string;
}

/** One change of the written turns after which the block ends solved. */
export interface SlipFact extends Placed {
  readonly kind: 'slip';
  readonly change: 'insert' | 'replace' | 'remove' | 'swap';
  /** The turns done in addition or instead; empty for `remove`. */
  readonly turns: string;
  /** The turn that is replaced, left out or first of two to swap; for `insert` the one before. */
  readonly at: TurnName;
}

export interface NoSlipFact extends Placed {
  readonly kind: 'no-slip';
  readonly why: 'solved' | 'none' | 'unknown';
}

/** A stretch of the written turns. */
export interface SpanFact extends Placed {
  readonly kind: 'span';
  readonly first: TurnName;
  readonly last: TurnName;
  readonly turns: string;
}

/** Turns close to proposed ones that do what those fail to do: so the kind of mistake is told, never guessed. */
export interface NearFact extends Placed, GoalName {
  readonly kind: 'near';
  readonly turns: string;
  readonly other: string;
  readonly mistake: 'prime' | 'mirror' | 'setup' | 'unfinished' | 'rotation' | 'wide';
  /** After `other` the goal holds, or these pieces are home; and all that held before holds. */
  readonly effect: 'goal' | 'home';
  readonly pieces: readonly PieceName[];
}

/** The way of a piece through the written turns up to the place; only turns that move it. */
export interface JourneyFact extends Placed {
  readonly kind: 'journey';
  readonly piece: PieceName;
  /** The last of them, in order. */
  readonly steps: readonly {
    readonly turn: TurnName;
    readonly from: string;
    readonly to: string;
  }[];
  /** All of them. */
  readonly count: number;
  /** The last turn that took it out of its home, turned right; undefined if none did. */
  readonly left: TurnName | undefined;
}

/** Where a stage of the text begins and ends, and whether its goal is reached there. */
export interface StageFact extends Placed, GoalName {
  readonly kind: 'stage';
  /** Undefined: it has no turns. */
  readonly first: TurnName | undefined;
  readonly last: TurnName | undefined;
  readonly reached: boolean;
  readonly obtm: number;
}

/** Whether a piece may be taken next: goals are worked on in their order, the pieces of one in any. */
export interface OrderFact extends Placed, GoalName {
  readonly kind: 'order';
  readonly piece: PieceName;
  /** `due`: a piece of the goal that is due (which the fact names); `later`: of this later goal; `made`: it is home already. */
  readonly when: 'due' | 'later' | 'made';
}

/** The start that is written before the place is no possible cube: why not, and the remedy, as the finding says it. */
export interface ImpossibleFact extends Placed {
  readonly kind: 'impossible';
  readonly message: string;
}
