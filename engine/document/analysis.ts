/**
 * The one analysis that every view reads: diagnostics, hovers, the cube view, the goal strip, the
 * tutor and the terminal command. Made once for a version of a text, synchronously, and never changed.
 */
import type { Holding } from '../cube/holding.ts';
import type { Position, Range } from '../cube/place.ts';
import type { State } from '../cube/state.ts';
import type { Course } from '../goals/course.ts';
import type { Timeline } from '../goals/timeline-types.ts';
import type { Finding } from './finding.ts';

/** Turn counts by metric; null above 2^53 − 1. OBTM: WCA Regulations 12a5 (slices, which it leaves open, 2). */
export interface Counts {
  readonly obtm: number | null;
  readonly etm: number | null;
  readonly stm: number | null;
  readonly qtm: number | null;
}

export interface Block {
  readonly kind: 'solve' | 'sequence' | 'aside';
  /** Title of the solve, name of the sequence or aside; may be empty. */
  readonly title: string;
  /** Line of its heading, or of its first line. */
  readonly line: number;
  readonly range: Range;
  readonly scramble: { readonly text: string; readonly range: Range } | undefined;
  /** Where the start comes from: `any` for a sequence (judged from a solved cube for show). */
  readonly startFrom: 'scramble' | 'net' | 'inverse' | 'any' | 'place' | 'unknown';
  /** The cube before the first turn, held as `holding:` says. */
  readonly start: State | undefined;
  readonly course: Course;
  readonly method: string;
  /** Colour index of the base; undefined if the solve has none. */
  readonly base: number;
  readonly timeline: Timeline;
  readonly counts: Counts;
  readonly solved: boolean;
  readonly asides: readonly Block[];
  /** The range in the text of an executed turn (inside a repeat: of the turn as written). */
  rangeOf(turn: number): Range;
  /** What people call the turn: counted from 1, without rotations and pauses. */
  numberOf(turn: number): number;
  /** How the turn reads in canonical spelling. */
  textOf(turn: number): string;
  /** The place (0…length) in the course that belongs to a position in the text: turns count once their last character is at or before it; inside a repeat the first pass. */
  placeAt(position: Position): number;
  /** Counts of the turns from `first` to before `end`. */
  countsOf(first: number, end: number): Counts;
  /** The text of the comment on the line of a turn, if any. */
  commentOn(turn: number): string | undefined;
}

export interface Analysis {
  readonly lines: readonly string[];
  readonly blocks: readonly Block[];
  /** All findings in the order of the text, those that are off included. */
  readonly findings: readonly Finding[];
  /** The block, or innermost aside, that holds a position. */
  blockAt(position: Position): Block | undefined;
}

export interface AnalysisOptions {
  /** Severities that the person's settings change. */
  readonly severities?: Readonly<Partial<Record<Finding['code'], Finding['severity']>>>;
  /** Texts of other files that `use:` names, by the name as written. */
  readonly imports?: Readonly<Record<string, string>>;
  readonly holding?: Holding;
}
