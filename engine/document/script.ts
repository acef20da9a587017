/**
 * A block as a script: its turns executed one after the other, each with its place in the text, and
 * between them what the text says (headings, labels, claims) at the place where it says so.
 *
 * Lines are counted from the block's first line, so that a script stays valid where the block moves.
 */
import type { Span } from '../cube/place.ts';
import { isRotation } from '../cube/turn.ts';
import { readStageName, claimLabels, type StageName } from '../goals/stage-names.ts';
import type { Method } from '../goals/methods.ts';
import {
  execute,
  JUMP,
  type Execution,
  type Resolve,
  type SequenceJump,
} from '../notation/execute.ts';
import type { SequenceMark, SequenceTree } from '../notation/tree.ts';
import {
  executedBody,
  rotatesOnly,
  type BlockTree,
  type Body,
  type DocumentTree,
  type KeyLine,
  type LineContent,
  type UnknownKeyLine,
  type Words,
} from './read/index.ts';

/** Turns that one block may execute (design: beyond that it is `too-long`). */
export const TURN_LIMIT = 100_000;

/** Something said between turns; `place` is how many turns come before it. */
export type ScriptEvent = { readonly line: number; readonly place: number } & (
  | {
      readonly kind: 'heading';
      readonly name: StageName | undefined;
      readonly span: Span;
      readonly count: { readonly value: number; readonly span: Span } | undefined;
    }
  /**
   * A comment that is nothing but stage names; `before` is the place where its line's turns begin.
   * `done`: it says so in a word.
   */
  | {
      readonly kind: 'label';
      readonly names: readonly StageName[];
      readonly span: Span;
      readonly before: number;
      readonly done: boolean;
    }
  /** A line of turns; `place` is where it begins. */
  | { readonly kind: 'turns'; readonly end: number }
  | { readonly kind: 'key'; readonly content: KeyLine }
  | { readonly kind: 'net-row'; readonly words: Words }
  | { readonly kind: 'scramble'; readonly body: Body; readonly span: Span }
);

/** What single lines bring up by themselves. */
export type LineNote = { readonly line: number } & (
  | { readonly kind: 'mark'; readonly mark: SequenceMark; readonly text: string }
  | { readonly kind: 'prose' | 'spoken'; readonly words: Words }
  | { readonly kind: 'unknown-key'; readonly content: UnknownKeyLine }
  | { readonly kind: 'name-unknown'; readonly name: string; readonly span: Span }
  | { readonly kind: 'too-long'; readonly span: Span }
);

export interface Script {
  readonly codes: number[];
  readonly lines: number[];
  readonly starts: number[];
  readonly ends: number[];
  /** See `Execution.dues`. */
  readonly dues: number[];
  readonly jumps: Map<number, SequenceJump>;
  readonly events: ScriptEvent[];
  readonly notes: LineNote[];
  /** Comments on lines of turns, by line. */
  readonly comments: Map<number, string>;
  /** Trees of the lines of turns, by line. */
  readonly trees: Map<number, SequenceTree>;
}

export interface ScriptContext {
  readonly methods: readonly Method[];
  readonly resolve: Resolve;
  readonly budget: Budget;
}

/** Turns that may still be executed in the whole text. */
export interface Budget {
  left: number;
  /** Whether that was too few somewhere, so that the outcome depends on what came before. */
  bound: boolean;
}

export function emptyScript(): Script {
  return {
    codes: [],
    lines: [],
    starts: [],
    ends: [],
    dues: [],
    jumps: new Map(),
    events: [],
    notes: [],
    comments: new Map(),
    trees: new Map(),
  };
}

/** How many turns come before a line. */
export function placeOfLine({ lines }: Script, line: number): number {
  let low = 0;
  let high = lines.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (lines[middle] < line) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The part of a script before a line, for an aside that branches off there. */
export function scriptUntil(script: Script, line: number, place: number): Script {
  return {
    codes: script.codes.slice(0, place),
    lines: script.lines.slice(0, place),
    starts: script.starts.slice(0, place),
    ends: script.ends.slice(0, place),
    dues: script.dues.slice(0, place),
    jumps: new Map([...script.jumps].filter(([index]) => index < place)),
    events: script.events.filter((event) => event.line < line),
    notes: [],
    comments: new Map(),
    trees: new Map(),
  };
}

/** Executes the lines of a block; `script` holds what comes before an aside. */
export function writeScript(
  tree: DocumentTree,
  block: BlockTree,
  context: ScriptContext,
  script: Script = emptyScript(),
  origin = block.first,
): Script {
  for (const line of block.lines)
    new LineWriter(script, context, line - origin).write(
      tree.lines[line].text,
      tree.lines[line].content,
    );
  return script;
}

class LineWriter {
  readonly script: Script;
  readonly context: ScriptContext;
  readonly line: number;

  constructor(script: Script, context: ScriptContext, line: number) {
    this.script = script;
    this.context = context;
    this.line = line;
  }

  get at(): { line: number; place: number } {
    return { line: this.line, place: this.script.codes.length };
  }

  write(text: string, content: LineContent): void {
    const { events, notes } = this.script;
    const before = this.script.codes.length;
    switch (content.kind) {
      case 'blank':
        return;
      case 'comment':
        this.label(content.comment.text, content.comment.span, before);
        return;
      case 'stage': {
        const name = readStageName(content.name.text, this.context.methods);
        events.push({
          kind: 'heading',
          ...this.at,
          name,
          span: content.heading.span,
          count: content.count,
        });
        if (content.body) this.body(text, content.body);
        break;
      }
      case 'key':
        if (content.key === 'scramble') {
          const { body, value } = content;
          if (body) this.scramble(text, body, value.span);
          else events.push({ kind: 'key', ...this.at, content });
          return;
        }
        events.push({ kind: 'key', ...this.at, content });
        if (content.body) this.body(text, content.body);
        break;
      case 'scramble':
        this.scramble(text, content.body, content.body.span);
        return;
      case 'net-row':
        events.push({ kind: 'net-row', ...this.at, words: content });
        return;
      case 'unknown-key':
        if (!rotatesOnly(content.body))
          notes.push({ kind: 'unknown-key', line: this.line, content });
        if (content.body && executedBody(content)) this.body(text, content.body);
        break;
      default:
        this.body(text, content);
    }
    if (content.comment && this.script.codes.length > before) {
      this.script.comments.set(this.line, content.comment.text);
      this.label(content.comment.text, content.comment.span, before);
    }
  }

  label(text: string, span: Span, before: number): void {
    const names = claimLabels(text, this.context.methods);
    if (names === undefined) return;
    const done = /\b(?:done|completed?)\b/i.test(text);
    this.script.events.push({ kind: 'label', ...this.at, names, span, before, done });
  }

  scramble(text: string, body: Body, span: Span): void {
    this.script.events.push({ kind: 'scramble', ...this.at, body, span });
    if (body.kind === 'turns') this.marks(text, body.turns);
  }

  marks(text: string, tree: SequenceTree): void {
    for (const mark of tree.marks) {
      const { start, end } = mark.span;
      this.script.notes.push({ kind: 'mark', line: this.line, mark, text: text.slice(start, end) });
    }
  }

  body(text: string, body: Body): void {
    if (body.kind === 'turns') this.turns(text, body.turns, body.span);
    else this.script.notes.push({ kind: body.kind, line: this.line, words: body });
  }

  turns(text: string, tree: SequenceTree, span: Span): void {
    const { script, context, line } = this;
    this.marks(text, tree);
    script.trees.set(line, tree);
    const first = script.codes.length;
    const limit = Math.max(0, Math.min(TURN_LIMIT - first, context.budget.left));
    const execution = execute(tree.items, { resolve: context.resolve, limit });
    for (const node of execution.unresolved) {
      script.notes.push({ kind: 'name-unknown', line, name: node.name, span: node.span });
    }
    if (execution.tooLong) {
      script.notes.push({ kind: 'too-long', line, span });
      context.budget.bound ||= context.budget.left < TURN_LIMIT - first;
    }
    append(script, execution, line);
    context.budget.left = Math.max(0, context.budget.left - execution.codes.length);
    if (script.codes.length > first) {
      script.events.push({ kind: 'turns', line, place: first, end: script.codes.length });
    }
  }
}

function append(script: Script, execution: Execution, line: number): void {
  const first = script.codes.length;
  for (let index = 0; index < execution.codes.length; index++) {
    script.codes.push(execution.codes[index]);
    script.lines.push(line);
    script.starts.push(execution.starts[index]);
    script.ends.push(execution.ends[index]);
    script.dues.push(execution.dues[index]);
  }
  for (const [index, jump] of execution.jumps) script.jumps.set(first + index, jump);
}

/** Turns of the beginning that are rotations only: inspection. */
export function inspectionEnd(script: Script): number {
  const first = script.codes.findIndex((code) => code === JUMP || !isRotation(code));
  return first < 0 ? script.codes.length : first;
}
