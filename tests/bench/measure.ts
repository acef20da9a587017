/** Figures and their bounds, printed as a table. */
import { cpus, totalmem } from 'node:os';
import type { Search } from '../../engine/search/step.ts';

export interface Figure {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  /** The value must be at most (or for `'atLeast'` at least) this. */
  readonly bound: number;
  readonly atLeast?: true;
}

/** A bound counts as missed by far beyond this factor: machines differ, and others run on them. */
const FAR = 3;

export function isMet({ value, bound, atLeast }: Figure, factor = 1): boolean {
  return atLeast ? value >= bound : value <= bound * factor;
}

/** Counts and lengths have no excuse; only times may be off by a factor. */
export function isMissedByFar(figure: Figure): boolean {
  return !isMet(figure, figure.unit === 'ms' ? FAR : 1);
}

export function printMachine(): void {
  const all = cpus();
  const gigabytes = (totalmem() / 2 ** 30).toFixed(0);
  console.log(
    `${all[0].model.trim()}, ${String(all.length)} cores, ${gigabytes} GB, Node ${process.version}\n`,
  );
}

export function printFigure(figure: Figure): void {
  const { what, value, unit, bound, atLeast } = figure;
  const mark = isMet(figure) ? 'ok  ' : 'MISS';
  const sign = atLeast ? '≥' : '≤';
  const shown = value < 10 ? value.toPrecision(3) : value.toFixed(value < 100 ? 1 : 0);
  console.log(
    `${mark} ${what.padEnd(62)} ${shown.padStart(8)} ${unit.padEnd(5)} ${sign} ${String(bound)}`,
  );
}

/** Milliseconds that `work` takes. */
export function time(work: () => void): number {
  const before = performance.now();
  work();
  return performance.now() - before;
}

/** The value below which the given share (0 … 1) of the values lies. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))];
}

/** Runs a search to its end and gives the longest of its steps, in milliseconds: what cancel waits for. */
export function longestStep<Result>(search: Search<Result>): number {
  let longest = 0;
  for (let done = false; !done;) {
    longest = Math.max(
      longest,
      time(() => {
        done = search.next().done === true;
      }),
    );
  }
  return longest;
}
