/**
 * The tree of a `.moves` text: one content for each line, with offsets in that line. Nothing in a
 * line's content speaks of other lines, so a block that moved in the text keeps its lines' contents.
 *
 * The tree says how a line is read, not whether it is right: values, nets and names are judged later.
 */
import type { Span } from '../../cube/place.ts';
import type { SequenceTree } from '../../notation/tree.ts';

export const KEYS = [
  'title',
  'solver',
  'date',
  'time',
  'scramble',
  'start',
  'holding',
  'base',
  'method',
  'note',
  'solve',
  'sequence',
  'aside',
  'end',
  'use',
  'goal',
  'keeps',
  'opens',
  'does',
  'order',
  'check',
] as const;
export type Key = (typeof KEYS)[number];

/** A stretch of a line without blanks around it; empty where nothing stands (`start === end`). */
export interface Words {
  readonly text: string;
  readonly span: Span;
}

export type CommentMark = '//' | '#' | ';' | '-';

export interface Comment {
  /** The kind of mark; `-` stands for any dash between blanks. */
  readonly style: CommentMark;
  readonly mark: Span;
  /** What follows the mark, trimmed. */
  readonly text: string;
  readonly span: Span;
}

/** Turns as written. `ignored` are pieces in between that are prose by their form: counts, list numbers, forum tags, addresses. */
export interface TurnsBody {
  readonly kind: 'turns';
  readonly span: Span;
  readonly turns: SequenceTree;
  readonly ignored: readonly Span[];
}

/** Words that are no turns: nothing executes. */
export interface ProseBody extends Words {
  readonly kind: 'prose';
}

/** `R prime U two`: turns as people say them; nothing executes until a fix has rewritten them. */
export interface SpokenBody extends Words {
  readonly kind: 'spoken';
}

export type Body = TurnsBody | ProseBody | SpokenBody;

interface Commented {
  readonly comment: Comment | undefined;
}

export interface KeyLine extends Commented {
  readonly kind: 'key';
  readonly key: Key;
  /** The key as written. */
  readonly name: Words;
  /** The colon; undefined where the key is the whole line. */
  readonly colon: Span | undefined;
  /** All that follows the colon, before the comment. For `solve:` and the like it is the name unless `body` is there. */
  readonly value: Words;
  /** The value read as turns: for `scramble`, and for `solve`, `sequence`, `aside`, `end` where it is turns and no name. */
  readonly body: Body | undefined;
}

export interface StageLine extends Commented {
  readonly kind: 'stage';
  /** All before the colon. */
  readonly heading: Words;
  /** The heading without finishing time and count, with ordinal and colour: `F2L #1`, `yellow cross`. */
  readonly name: Words;
  /** `cross, 3.4 s:` the time at which the stage was finished, in seconds. */
  readonly time: { readonly seconds: number; readonly span: Span } | undefined;
  /** `F2L #1 (7):` the count that the author claims. */
  readonly count: { readonly value: number; readonly span: Span } | undefined;
  readonly colon: Span | undefined;
  /** Turns (or prose) on the same line. */
  readonly body: Body | undefined;
}

export interface UnknownKeyLine extends Commented {
  readonly kind: 'unknown-key';
  readonly name: Words;
  readonly colon: Span;
  readonly value: Words;
  /** The nearest known key or stage name, if one is near. */
  readonly suggestion: { readonly kind: 'key' | 'stage'; readonly text: string } | undefined;
  /** The value as turns, if it has turns and no words: to be executed only where a stage name was misspelt. */
  readonly body: TurnsBody | undefined;
}

export type LineContent =
  | { readonly kind: 'blank' }
  | { readonly kind: 'comment'; readonly comment: Comment }
  | KeyLine
  | StageLine
  | UnknownKeyLine
  | (TurnsBody & Commented)
  | (ProseBody & Commented)
  | (SpokenBody & Commented)
  /** The line that a `scramble:` without value takes. */
  | ({ readonly kind: 'scramble'; readonly body: Body } & Commented)
  /** A row of the net after `start:`, not judged yet. */
  | ({ readonly kind: 'net-row' } & Words & Commented);

export interface Line {
  readonly text: string;
  /** `\n`, `\r\n`, `\r`, or nothing after the last line. */
  readonly lineEnd: string;
  readonly content: LineContent;
}

export interface DocumentTree {
  /** At least one; texts and line ends in order make up the whole text, a byte order mark included. */
  readonly lines: readonly Line[];
}

/** What the reader must know about stages; see `stages.ts` for the usual one. */
export interface StageWords {
  /** Whether a text names a stage of any method: ordinal and colour included, time and count taken off. */
  isStage(text: string): boolean;
  /** Names and aliases, for suggestions. */
  readonly names: readonly string[];
}

/** A block as a set of lines. */
export interface BlockTree {
  readonly kind: 'solve' | 'sequence' | 'aside';
  /** Line of the `solve:`, `sequence:`, `aside:` key; undefined for a solve that opens without. */
  readonly heading: number | undefined;
  /** Name as written, undefined where there is none. */
  readonly name: { readonly text: string; readonly line: number; readonly span: Span } | undefined;
  /** Lines from `first` to before `end`; asides lie inside. */
  readonly first: number;
  readonly end: number;
  /** Line numbers of the block itself in order, those of its asides left out. */
  readonly lines: readonly number[];
  /** In the order of the text; each is a branch from the place after the block's lines above it. */
  readonly asides: readonly BlockTree[];
}

export interface DocumentBlocks {
  /** Lines before the first block and before any turns: their method, base, holding, goals and uses hold for the whole file. */
  readonly header: readonly number[];
  readonly blocks: readonly BlockTree[];
}
