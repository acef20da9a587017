/** What the timeline is asked and what it answers; the meaning of each word is in DEVELOPERS.md. */
import type { Piece } from '../cube/piece.ts';
import type { Course } from './course.ts';
import type { Goal } from './goal.ts';

/** A stage as the text opens and closes it. */
export interface StageSpan {
  /** Index of its goal in the goals of the timeline. */
  readonly goal: number;
  /** Its turns, `first` to before `end`; equal for a skip. */
  readonly first: number;
  readonly end: number;
  /** Places (turn counts) at the end of each line of turns of the stage: the ends of its steps. */
  readonly stepEnds: readonly number[];
  /** `opens: cross until 4th pair`: breaks of `goal` are wanted until the goal `until` (or the stage's end) is reached. */
  readonly opens: readonly { readonly goal: number; readonly until: number | undefined }[];
}

export interface TimelineInput {
  readonly course: Course;
  /** All goals of the method in its order, for the base of this solve. */
  readonly goals: readonly Goal[];
  /** In the order of the text. */
  readonly stages: readonly StageSpan[];
}

export type BreakKind = 'passing' | 'carried' | 'lasting' | 'open';

export interface Break {
  /** Index of the most basic goal that the turn broke, of those that fared the same. */
  readonly goal: number;
  readonly kind: BreakKind;
  /** Index of the turn that opened it. */
  readonly turn: number;
  /** Pieces of the goal that are misplaced right after that turn. */
  readonly pieces: readonly Piece[];
  /** Index of the turn that made the goal true again for the first time, anywhere later. */
  readonly restoredAt: number | undefined;
  /** A part of the stage's own goal, not a goal reached before. */
  readonly part: boolean;
  /** The author wrote `opens:` for it. */
  readonly wanted: boolean;
  /** Index into `stages` of the stage in which it was opened. */
  readonly stage: number | undefined;
}

export interface StageOutcome {
  readonly goal: number;
  readonly reached: boolean;
  /** Reached, and no carried or lasting break of it after. */
  readonly kept: boolean;
  readonly firstTurn: number | undefined;
  readonly lastTurn: number | undefined;
  /** Place from which the goal is guarded; undefined if it never was. */
  readonly guardedFrom: number | undefined;
}

export interface Timeline {
  readonly goals: readonly Goal[];
  /** `held[goal][place]`: 1 it holds, 0 it does not, 2 the state is unknown; `course.length + 1` places. */
  readonly held: readonly Uint8Array[];
  readonly stages: readonly StageSpan[];
  /** One per goal of the method, whether opened in the text or not. */
  readonly outcomes: readonly StageOutcome[];
  /** The goals as they are judged once guarded: the pairs that were made, the side that was chosen. */
  readonly judged: readonly Goal[];
  /** By turn, then by goal. */
  readonly breaks: readonly Break[];
}
