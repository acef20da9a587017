/** What the editor side and the worker say to each other. Plain data: it is copied, never shared. */
import type { Position } from '../../engine/cube/place.ts';
import type { AnalysisOptions } from '../../engine/document/analysis.ts';
import type { Fix } from '../../engine/document/finding.ts';
import type { LateFinding } from '../../engine/late/wanted.ts';

/** A question about a place of a text. */
export interface AskRequest {
  readonly kind: 'ask';
  readonly text: string;
  readonly options: AnalysisOptions;
  readonly position: Position;
  readonly question: string;
  /** What the dialogue remembered after its last answer, as it was given; undefined at its beginning. */
  readonly memory: unknown;
}

/** A turn that an answer speaks of, by its index in the block at the position. */
export interface AnswerPlace {
  readonly turn: number;
  readonly label: string;
}

export interface AskReply {
  readonly kind: 'answer';
  readonly text: string;
  readonly turns?: string;
  readonly followUps: readonly string[];
  readonly places: readonly AnswerPlace[];
  /** Pieces that the answer is about, as a set. */
  readonly marked: number;
  readonly memory: unknown;
}

/** What is to be searched in a text; places are those of the text as it is sent. */
export type SearchTask =
  /** The fixes of the block that begins at this line. */
  | { readonly kind: 'late'; readonly line: number }
  /** A way on from a place: to the goal of this name, or else to the solved cube. */
  | {
      readonly kind: 'way';
      readonly position: Position;
      readonly way: 'person' | 'short';
      readonly goal?: string;
    }
  /** Edits that explain why the block there does not end as it claims. */
  | { readonly kind: 'slips'; readonly position: Position }
  /** Fills of the unknown stretch nearest to a place. */
  | { readonly kind: 'fills'; readonly position: Position }
  /** Shorter ways for the turns between two places. */
  | { readonly kind: 'shorter'; readonly from: Position; readonly to: Position }
  /** A text with scrambles to practise a goal on. */
  | {
      readonly kind: 'practice';
      readonly goal: string;
      readonly method: string;
      /** Colour index. */
      readonly base: number;
      readonly seed: number;
      readonly count: number;
    };

export interface SearchRequest {
  readonly kind: 'search';
  readonly text: string;
  readonly options: AnalysisOptions;
  readonly task: SearchTask;
}

/** An edit, or turns to be shown, with a sentence on what they do. */
export interface FoundWay {
  readonly turns: string;
  readonly title: string;
  /** Undefined where there is no one place for the turns. */
  readonly edits?: Fix['edits'];
}

export type SearchReply =
  | { readonly kind: 'late'; readonly findings: readonly LateFinding[] }
  | {
      readonly kind: 'way';
      readonly turns: string;
      /** How good it is: "18 turns; proven that at least 11 are needed". */
      readonly title: string;
      /** The person's way as a text of its own. */
      readonly text?: string;
    }
  | { readonly kind: 'fixes'; readonly fixes: readonly Fix[] }
  | { readonly kind: 'ways'; readonly ways: readonly FoundWay[]; readonly title: string }
  | { readonly kind: 'text'; readonly text: string }
  /** There is nothing to search, or no answer: one sentence for people. */
  | { readonly kind: 'nothing'; readonly reason: string };

export type WorkerRequest = AskRequest | SearchRequest;
export type WorkerReply = AskReply | SearchReply;

/** Every request has a number, which its reply repeats. */
export interface Numbered<Body> {
  readonly id: number;
  readonly body: Body;
}

/** A search can be called off by its number. */
export type WorkerMessage = Numbered<WorkerRequest> | { readonly cancel: number };

export type WorkerResult =
  | Numbered<WorkerReply>
  | { readonly id: number; readonly progress: SearchProgress }
  | { readonly id: number; readonly cancelled: true }
  /** For mistakes of the program. */
  | { readonly id: number; readonly failed: string };

export interface SearchProgress {
  readonly nodes: number;
  readonly depth: number;
  /** Number of turns of the best answer so far. */
  readonly best?: number;
}
