/**
 * The one analysis that every view reads: diagnostics, hovers, the cube view, the goal strip, the
 * tutor and the terminal command. Made once for a version of a text, synchronously, and never changed.
 */
import type { Holding } from '../cube/holding.ts';
import type { Position, Range } from '../cube/place.ts';
import type { State } from '../cube/state.ts';
import type { Course } from '../goals/course.ts';
import type { Counts } from '../notation/count.ts';
import type { Timeline } from '../goals/timeline-types.ts';
import type { Method } from '../goals/methods.ts';
import type { OwnGoal } from '../goals/own-methods.ts';
import type { Finding, Severity } from './finding.ts';
import type { Names } from './names.ts';
import type { DocumentBlocks, DocumentTree } from './read/tree.ts';

export type { Counts };

/** What a stand-alone sequence does, from any state. */
export interface SequenceFacts {
  /** How often until the cube, its centres and its holding are as before. */
  readonly order: number;
  /** All goals of the method, with the base that faces down at the start. */
  readonly keeps: readonly { readonly goal: string; readonly holds: boolean }[];
  /** Sticker cycles, first goes to second; rotations taken out. */
  readonly does: string;
}

/** Where the text names a stage. */
export interface WrittenStage {
  /** Index of its goal among the goals of the timeline. */
  readonly goal: number;
  readonly range: Range;
  readonly how: 'heading' | 'label' | 'closing label';
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
  /** Colour index of the base. */
  readonly base: number;
  readonly timeline: Timeline;
  /** One for each of `timeline.stages`. */
  readonly stages: readonly WrittenStage[];
  /** The method as judged (perhaps a variant of `method`), all methods and own goals that can be named here. */
  readonly scope: {
    readonly method: Method;
    readonly methods: readonly Method[];
    readonly goals: readonly OwnGoal[];
    readonly holding: Holding;
  };
  /** First turn of the block itself; before it an aside has those of the line it branches off from. */
  readonly ownFrom: number;
  readonly counts: Counts;
  readonly solved: boolean;
  /** For sequences. */
  readonly sequence: SequenceFacts | undefined;
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
  /** The lines as read, and as cut into blocks. */
  readonly tree: DocumentTree;
  readonly cut: DocumentBlocks;
  /** The sequences that can be called by name. */
  readonly names: Names;
  readonly blocks: readonly Block[];
  /** In the order of the text, those that are off included; of either sort at most `MOST_FINDINGS`. */
  readonly findings: readonly Finding[];
  /** How many there are beyond these, by severity. */
  readonly more: Readonly<Record<Severity, number>>;
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
