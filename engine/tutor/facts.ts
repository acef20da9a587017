/**
 * Facts: everything the tutor may say, as plain data. A fact carries its place and all of its
 * arguments, so that it can be checked without anything else of the engine, and sentences are made
 * of facts alone.
 *
 * Pieces are named by colours (in the order in which people say them), slots by their place in the
 * hands at the fact's place, goals by their name in the method that the fact names.
 */
import type { Colour, Face } from '../cube/vocabulary.ts';
import type { Reason as Cue } from '../search/person/step.ts';
import type { GoalName, PieceName, Placed, TurnName } from './fact-names.ts';
import type {
  EffectFact,
  CountsFact,
  RelatedFact,
  CaseFact,
  HoldFact,
  ShorterFact,
  TermFact,
  SidesFact,
  FlawFact,
  SolvableFact,
  CompareFact,
  RepeatFact,
  WayFact,
  SlipFact,
  NoSlipFact,
  SpanFact,
  NearFact,
  JourneyFact,
  StageFact,
  OrderFact,
  ImpossibleFact,
} from './facts-sequences.ts';

export type * from './fact-names.ts';
export type * from './facts-sequences.ts';

/** Where the answer stands: after which turn, and how the cube is held. */
export interface StandFact extends Placed {
  readonly kind: 'stand';
  /** The last turn done that is no rotation; undefined at the beginning. */
  readonly last: TurnName | undefined;
  readonly up: Colour;
  readonly front: Colour;
}

/** `placed`: in its own slot and turned right; `turned`: in its own slot but turned. */
export type PieceStatus = 'placed' | 'turned' | 'elsewhere';

export interface PieceFact extends Placed {
  readonly kind: 'piece';
  readonly base: Colour;
  readonly piece: PieceName;
  readonly slot: string;
  readonly home: string;
  readonly status: PieceStatus;
  /** For each colour of the piece the face in the hands on which it is seen. */
  readonly shows: readonly { readonly colour: Colour; readonly face: Face }[];
  /** The colour whose layer the piece lies in, of the base's axis; undefined in the middle. */
  readonly layer: Colour | undefined;
}

/** A turn of the layer opposite the base that brings a piece over its own slot. */
export interface OverHomeFact extends Placed {
  readonly kind: 'over-home';
  readonly base: Colour;
  readonly piece: PieceName;
  /** Empty if the piece lies there already. */
  readonly turn: string;
  /** Where it lies after that turn. */
  readonly slot: string;
}

export interface GoalFact extends Placed, GoalName {
  readonly kind: 'goal';
  readonly holds: boolean;
  /** The pieces that stand in the way, in the way that leaves the fewest. */
  readonly missing: readonly PieceName[];
}

/** The base's edges show its colour but not their centres'; one turn of the layer brings all of them home. */
export interface CrossOffsetFact extends Placed {
  readonly kind: 'cross-offset';
  readonly base: Colour;
  readonly turn: string;
}

/** The base's edges show its colour, but no turn of the layer brings all of them home. */
export interface CrossOrderFact extends Placed {
  readonly kind: 'cross-order';
  readonly base: Colour;
  /** The most edges that one turn of the layer, or none, brings home at once. */
  readonly most: number;
}

/** The goal has held without interruption since after this turn (undefined: from the beginning). */
export interface SinceFact extends Placed, GoalName {
  readonly kind: 'since';
  readonly turn: TurnName | undefined;
}

/** A turn after which a goal that held does not hold. */
export interface LossFact extends Placed, GoalName {
  readonly kind: 'loss';
  readonly turn: TurnName;
  /** Pieces of the goal that the turn carried out of it, with their slots before and after it; these are the same where a wide turn or slice took the centres away instead. */
  readonly pieces: readonly {
    readonly piece: PieceName;
    readonly from: string;
    readonly to: string;
  }[];
  /** The turn after which the goal holds again for the first time; undefined if it never does. */
  readonly back: TurnName | undefined;
  /** `unguarded`: the goal's stage had not come yet. */
  readonly fate: 'passing' | 'carried' | 'lasting' | 'open' | 'unguarded';
  /** Name of the stage in which it happened, if any. */
  readonly stage: string | undefined;
}

/** Counterfactual: all turns up to the fact's place but one. */
export interface WithoutFact extends Placed, GoalName {
  readonly kind: 'without';
  readonly turn: TurnName;
  readonly holds: boolean;
}

/** A change of one turn after which the goal holds at the fact's place. */
export interface MendFact extends Placed, GoalName {
  readonly kind: 'mend';
  readonly change: 'insert' | 'replace' | 'remove';
  /** The turn done in addition or instead; empty for `remove`. */
  readonly turn: string;
  /** `insert`: after this turn; else the turn replaced or left out. */
  readonly at: TurnName;
}

/** Whether a goal holds before and after one turn. */
export interface AcrossFact extends Placed, GoalName {
  readonly kind: 'across';
  readonly turn: TurnName;
  readonly before: boolean;
  readonly after: boolean;
}

/** Whether a goal was ever lost up to the place, and when it was first reached. */
export interface NeverLostFact extends Placed, GoalName {
  readonly kind: 'never-lost';
  /** `start`: it holds before the first turn; undefined: it was not reached at all. */
  readonly reached: TurnName | 'start' | undefined;
  readonly holdsAtEnd: boolean;
}

/** No goal that was reached breaks (other than in passing) in the block; with `line`, none at all in that line, not even in passing. */
export interface NoLossFact extends Placed {
  readonly kind: 'no-loss';
  readonly line: number | undefined;
  readonly method: string;
  readonly base: Colour;
}

/** There is no such turn or line of turns. */
export interface NoTurnFact extends Placed {
  readonly kind: 'no-turn';
  readonly what: 'turn' | 'line';
  readonly number: number;
  /** Number of the last turn of the block. */
  readonly last: number;
}

/** The place lies between the opening of a goal and its return in the written solve. */
export interface MidwayFact extends Placed, GoalName {
  readonly kind: 'midway';
  readonly opened: TurnName;
  readonly back: TurnName;
}

/** The first goal of the method that does not hold, and the piece or pair to take next. */
export interface NextFact extends Placed, GoalName {
  readonly kind: 'next';
  readonly pieces: readonly PieceName[];
  /** Pieces or pairs that the goal adds to the goals before it, and how many of them are made. */
  readonly made: number;
  readonly of: number;
  /** `last-one`: all other pieces or pairs are made; `offset`: only the cross's layer is turned; `pattern`: it is not about one piece. */
  readonly reason: 'piece' | 'last-one' | 'offset' | 'pattern';
}

/** The shape of the top edges that show the top colour on top. */
export interface PatternFact extends Placed {
  readonly kind: 'pattern';
  readonly colour: Colour;
  readonly shape: 'dot' | 'line' | 'angle' | 'cross';
}

/** How many top corners or edges show the top colour on top. */
export interface FacingFact extends Placed {
  readonly kind: 'facing';
  readonly colour: Colour;
  readonly pieces: 'corners' | 'edges';
  readonly count: number;
}

/** How many pieces of a kind in the top layer are home, at best after one turn of that layer. */
export interface ArrangedFact extends Placed {
  readonly kind: 'arranged';
  readonly colour: Colour;
  readonly pieces: 'corners' | 'edges';
  readonly count: number;
  readonly turn: string;
}

/** Turns that were found and replayed on the cube at the fact's place. */
export interface TurnsFact extends Placed, GoalName {
  readonly kind: 'turns';
  /** All of them, regrips included. */
  readonly turns: string;
  /** Rotations at their beginning, by which the cube is held as the rest wants it; may be empty. */
  readonly regrip: string;
  /**
   * After them the goal holds; or the pieces are home; or they lie in the layer opposite the base; or,
   * in the last layer, the goal does not hold yet, but the goals before it do.
   */
  readonly effect: 'goal' | 'home' | 'up' | 'shape';
  readonly pieces: readonly PieceName[];
  readonly from: 'written' | 'named' | 'person' | 'search';
  /** Of a named sequence of the text. */
  readonly name?: string;
}

/** The situation that a person recognises, and that decides the next step. */
export interface CueFact extends Placed {
  readonly kind: 'cue';
  readonly base: Colour;
  readonly piece: PieceName | undefined;
  readonly cue: Cue;
}

export interface NoTurnsFact extends Placed {
  readonly kind: 'no-turns';
}

export const VERDICTS = ['reaches', 'gains', 'nothing', 'trades', 'loses', 'keeps'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** The judgement on proposed turns, against the goal that is due at the place before them. */
export interface VerdictFact extends Placed, GoalName {
  readonly kind: 'verdict';
  readonly turns: string;
  readonly verdict: Verdict;
  /** The goal asks of these pieces only which colour they show on top. */
  readonly facing: boolean;
  /** Pieces of the goal that come home or leave home by the turns (of `facing`: are then turned right, or no longer). */
  readonly gained: readonly PieceName[];
  readonly dropped: readonly PieceName[];
}

/** A goal that holds before proposed turns is lost in them. `at`, `back`: which of the turns, from 1, without rotations. */
export interface LostInFact extends Placed, GoalName {
  readonly kind: 'lost-in';
  readonly turns: string;
  readonly at: number;
  readonly atText: string;
  /** Undefined: it does not hold after the last of them. */
  readonly back: number | undefined;
  readonly backText: string | undefined;
  readonly missing: readonly PieceName[];
}

/** How words of the question were read where they could mean something else. */
export interface ReadingFact extends Placed {
  readonly kind: 'reading';
  readonly what: 'turns' | 'piece';
  readonly asked: string;
  readonly read: string;
}

export interface NoPieceFact extends Placed {
  readonly kind: 'no-piece';
  readonly colours: PieceName;
  readonly reason: 'opposite' | 'twice';
}

export interface WhichPieceFact extends Placed {
  readonly kind: 'which-piece';
  readonly colours: PieceName;
  readonly options: readonly PieceName[];
}

export const REFUSALS = [
  'empty',
  'too-long',
  'unreadable',
  'not-understood',
  'no-cube',
  'state-unknown',
  'no-turns-named',
  'turns-unread',
  'two-sequences',
  'no-goal',
] as const;
export type Refusal = (typeof REFUSALS)[number];

export interface RefusalFact extends Placed {
  readonly kind: 'refusal';
  readonly reason: Refusal;
  readonly text: string;
}

/** Questions that are understood at this place. */
export interface OfferFact extends Placed {
  readonly kind: 'offer';
  readonly questions: readonly string[];
}

export type Fact =
  | StandFact
  | PieceFact
  | OverHomeFact
  | GoalFact
  | CrossOffsetFact
  | CrossOrderFact
  | SinceFact
  | LossFact
  | WithoutFact
  | MendFact
  | AcrossFact
  | NeverLostFact
  | NoLossFact
  | NoTurnFact
  | MidwayFact
  | NextFact
  | PatternFact
  | FacingFact
  | ArrangedFact
  | TurnsFact
  | CueFact
  | NoTurnsFact
  | VerdictFact
  | LostInFact
  | EffectFact
  | CountsFact
  | RelatedFact
  | CaseFact
  | HoldFact
  | ShorterFact
  | TermFact
  | SidesFact
  | FlawFact
  | SolvableFact
  | CompareFact
  | RepeatFact
  | WayFact
  | SlipFact
  | NoSlipFact
  | SpanFact
  | NearFact
  | JourneyFact
  | StageFact
  | OrderFact
  | ImpossibleFact
  | ReadingFact
  | NoPieceFact
  | WhichPieceFact
  | RefusalFact
  | OfferFact;

export type FactKind = Fact['kind'];
export type FactOf<Kind extends FactKind> = Extract<Fact, { kind: Kind }>;
