/**
 * Searches as generators: each step visits at most `STEP_NODES` nodes and then yields its progress.
 *
 * The engine knows neither clock nor cancel. Whoever runs a search decides between two steps whether
 * to go on, to drop the generator (cancel), or to send `'stop'`: finish with what was found so far.
 * Budgets are counted in nodes, so the same input gives the same output on any machine.
 */
import type { Problem } from '../cube/possible.ts';
import type { Turn } from '../cube/turn.ts';

export const STEP_NODES = 10_000;
/** Nodes in a step where each of them composes whole states, which takes some ten times as long. */
export const STEP_STATES = 1_000;

export interface Progress {
  /** Nodes visited so far (entries made, while a table is built). */
  readonly nodes: number;
  /** Number of turns being tried, or depth of the table being built. */
  readonly depth: number;
  /** Best turns so far, where a search improves its answer. */
  readonly best?: readonly Turn[];
}

export type Signal = 'stop' | undefined;

export type Search<Result> = Generator<Progress, Result, Signal>;

export type SearchResult =
  | {
      readonly kind: 'found';
      readonly turns: readonly Turn[];
      /** True only if it is proven that no shorter sequence of the allowed turns does it. */
      readonly optimal: boolean;
      readonly nodes: number;
    }
  /** Proven: no sequence of at most `bound` allowed turns does it. */
  | { readonly kind: 'exhausted'; readonly bound: number; readonly nodes: number }
  /** The budget ended before an answer; proven only that no sequence of at most `bound` turns does it. */
  | { readonly kind: 'out-of-budget'; readonly bound: number; readonly nodes: number }
  /** The state cannot be reached by turns; nothing was searched. */
  | { readonly kind: 'impossible'; readonly problems: readonly Problem[] };

/** Runs a search to its end. */
export function complete<Result>(search: Search<Result>): Result {
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}

/**
 * Runs a search as long as `goOn` says so between two steps, then asks it to stop with what it has.
 * The clock, if any, is in `goOn`.
 */
export function runWhile<Result>(
  search: Search<Result>,
  goOn: (progress: Progress) => boolean,
): Result {
  let step = search.next();
  let stopped = false;
  while (!step.done) {
    stopped ||= !goOn(step.value);
    step = search.next(stopped ? 'stop' : undefined);
  }
  return step.value;
}
