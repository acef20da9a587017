/** What the editor side and the worker say to each other. Plain data: it is copied, never shared. */
import type { Position } from '../../engine/cube/place.ts';
import type { AnalysisOptions } from '../../engine/document/analysis.ts';

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
  /** The question that asks for the next level of the hint, where there is one. */
  readonly deeper?: { readonly question: string; readonly label: string };
  readonly memory: unknown;
}

export type WorkerRequest = AskRequest;
export type WorkerReply = AskReply;

/** Every request has a number, which its reply repeats; `failed` is for mistakes of the program. */
export interface Numbered<Body> {
  readonly id: number;
  readonly body: Body;
}
export type WorkerResult = Numbered<WorkerReply> | { readonly id: number; readonly failed: string };
