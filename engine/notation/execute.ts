/**
 * Executes a sequence: the turns one after the other, with the text each comes from.
 *
 * Every node is visited once; repeats, and the way back of commutators and conjugates, copy what
 * has been executed already. So the time is linear in the text and the turns that come out. A
 * bracket or name that would pass the limit becomes one step with its effect, computed by powers.
 */
import type { Span } from '../cube/place.ts';
import type { State } from '../cube/state.ts';
import { invertTurn } from '../cube/turn.ts';
import type { Tally } from './count.ts';
import { Measures, magnitudeOf, repeated, type Measure, type Resolve } from './measure.ts';
import type { NameNode, SequenceNode } from './tree.ts';

export type { Resolve } from './measure.ts';

/** In `codes`: no single turn; look the step up in `jumps`. */
export const JUMP = -1;

export type SequenceJump =
  /** A repeat done as one step. */
  | { readonly kind: 'power'; readonly effect: State; readonly tally: Tally }
  /** An unknown stretch. */
  | { readonly kind: 'gap' };

/** The executed turns as columns of equal length. */
export interface Execution {
  /** Turn codes or `JUMP`. */
  readonly codes: readonly number[];
  /** Where in the line the turn stands (a turn of a named sequence: where the name stands). */
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /**
   * The offset from which on the turn counts as done: its end in the first pass; for later passes
   * and ways back the end of the bracket that makes them.
   */
  readonly dues: readonly number[];
  readonly jumps: ReadonlyMap<number, SequenceJump>;
  /** Names that are unknown or contain themselves; nothing is executed for them. */
  readonly unresolved: readonly NameNode[];
  /** Whether the limit was passed. */
  readonly tooLong: boolean;
}

export interface ExecuteOptions {
  /**
   * Called once for each name, as what was found is kept with this function: pass the same one for
   * all lines of a block, and another one when a name stands for something else.
   */
  readonly resolve: Resolve;
  /** Steps this line may still execute. Single turns as written are always executed. */
  readonly limit: number;
}

/** Measures by the function that resolves their names, so that a block measures each name once. */
const MEASURES = new WeakMap<Resolve, Measures>();

export function execute(items: readonly SequenceNode[], options: ExecuteOptions): Execution {
  let measures = MEASURES.get(options.resolve);
  if (measures === undefined) {
    measures = new Measures(options.resolve);
    MEASURES.set(options.resolve, measures);
  }
  measures.measure(items);
  return new Executor(measures, options.limit).run(items);
}

/** How many of the turns count as done at an offset of the line. */
export function placeAt(execution: Execution, offset: number): number {
  const first = execution.dues.findIndex((due) => due > offset);
  return first < 0 ? execution.dues.length : first;
}

/** A list to be executed, forwards or backwards, and what is to be done when it is through. */
interface Task {
  readonly items: readonly SequenceNode[];
  readonly back: boolean;
  index: number;
  readonly then: (() => void) | undefined;
}

class Executor {
  readonly codes: number[] = [];
  readonly starts: number[] = [];
  readonly ends: number[] = [];
  readonly dues: number[] = [];
  readonly jumps = new Map<number, SequenceJump>();
  readonly unresolved: NameNode[] = [];
  readonly measures: Measures;
  readonly limit: number;
  readonly tasks: Task[] = [];
  /** Where one pass of a name stands in the columns, and whether it was done backwards. */
  readonly passes = new Map<string, { first: number; end: number; back: boolean }>();
  /** The name of the calling line whose turns are being executed. */
  caller: Span | undefined;
  tooLong = false;

  constructor(measures: Measures, limit: number) {
    this.measures = measures;
    this.limit = limit;
  }

  run(items: readonly SequenceNode[]): Execution {
    this.push(items, false);
    for (let task = this.tasks.at(-1); task !== undefined; task = this.tasks.at(-1)) {
      if (task.index < task.items.length) {
        const index = task.back ? task.items.length - 1 - task.index : task.index;
        task.index++;
        this.visit(task.items[index], task.back);
      } else {
        this.tasks.pop();
        task.then?.();
      }
    }
    const { codes, starts, ends, dues, jumps, unresolved } = this;
    return {
      codes,
      starts,
      ends,
      dues,
      jumps,
      unresolved,
      tooLong: this.tooLong || codes.length > this.limit,
    };
  }

  push(items: readonly SequenceNode[], back: boolean, then?: () => void): void {
    this.tasks.push({ items, back, index: 0, then });
  }

  visit(node: SequenceNode, back: boolean): void {
    switch (node.kind) {
      case 'turn':
        this.emit(back ? invertTurn(node.turn) : node.turn, node.span);
        break;
      case 'gap':
        this.jumps.set(this.codes.length, { kind: 'gap' });
        this.emit(JUMP, node.span);
        break;
      case 'pause':
      case 'unknown':
        break;
      default:
        this.visitRepeated(node, back);
    }
  }

  visitRepeated(node: Extract<SequenceNode, { times: bigint }>, back: boolean): void {
    if (node.kind === 'name' && !this.isKnown(node)) return;
    const measure = this.measures.of(node);
    if (measure.steps === 0) return;
    const backwards = back !== node.times < 0n;
    const times = magnitudeOf(node.times);
    // A group done once is not longer than its text; its parts may still be steps of their own.
    const asWritten = node.kind === 'group' && times === 1;
    if (!asWritten && this.codes.length + measure.steps > this.limit) {
      this.jump(node, back, measure);
      return;
    }
    const first = this.codes.length;
    const repeat = (): void => {
      const end = this.codes.length;
      for (let pass = 1; pass < times; pass++) this.copy(first, end, false, node.span.end);
    };
    if (node.kind === 'name') this.visitName(node, backwards, repeat);
    else if (node.kind === 'group') this.push(node.items, backwards, repeat);
    else if (node.kind === 'commutator') {
      // (A B A' B')' = B A B' A'.
      const [a, b] = backwards ? [node.second, node.first] : [node.first, node.second];
      this.push(a, false, () => {
        const middle = this.codes.length;
        this.push(b, false, () => {
          const end = this.codes.length;
          this.copy(first, middle, true, node.span.end);
          this.copy(middle, end, true, node.span.end);
          repeat();
        });
      });
    } else {
      this.push(node.setup, false, () => {
        const middle = this.codes.length;
        this.push(node.core, backwards, () => {
          this.copy(first, middle, true, node.span.end);
          repeat();
        });
      });
    }
  }

  isKnown(node: NameNode): boolean {
    const { names, cyclic } = this.measures;
    const known = names.has(node.name) && !cyclic.has(node.name);
    if (!known && this.caller === undefined) this.unresolved.push(node);
    return known;
  }

  visitName(node: NameNode, backwards: boolean, repeat: () => void): void {
    const outermost = this.caller === undefined;
    this.caller ??= node.span;
    const first = this.codes.length;
    const finish = (): void => {
      this.passes.set(node.name, { first, end: this.codes.length, back: backwards });
      repeat();
      if (outermost) this.caller = undefined;
    };
    const pass = this.passes.get(node.name);
    if (pass !== undefined) {
      this.copy(pass.first, pass.end, pass.back !== backwards, node.span.end);
      finish();
      return;
    }
    this.push(this.measures.contentOf(node.name) ?? [], backwards, finish);
  }

  /** The whole node as one step. */
  jump(node: SequenceNode, back: boolean, measure: Measure): void {
    this.tooLong = true;
    let jump: SequenceJump = { kind: 'gap' };
    if (!measure.gap) {
      const effect = repeated(this.measures.effectOf([node]), back ? -1n : 1n);
      jump = { kind: 'power', effect, tally: measure.tally };
    }
    this.jumps.set(this.codes.length, jump);
    this.emit(JUMP, node.span);
  }

  emit(code: number, span: Span): void {
    const { start, end } = this.caller ?? span;
    this.codes.push(code);
    this.starts.push(start);
    this.ends.push(end);
    this.dues.push(end);
  }

  /** Executes once more what stands in the columns from `first` to before `end`, or its inverse. */
  copy(first: number, end: number, inverted: boolean, due: number): void {
    for (let step = 0; step < end - first; step++) {
      const from = inverted ? end - 1 - step : first + step;
      const code = this.codes[from];
      // Within the limit only gaps are no turns, and the inverse of a gap is a gap.
      if (code === JUMP) this.jumps.set(this.codes.length, { kind: 'gap' });
      this.codes.push(code === JUMP || !inverted ? code : invertTurn(code));
      this.starts.push(this.caller?.start ?? this.starts[from]);
      this.ends.push(this.caller?.end ?? this.ends[from]);
      this.dues.push(this.caller?.end ?? due);
    }
  }
}
