/**
 * What a command of the terminal is: options as `parseArgs` of Node reads them, and a function from
 * them to an outcome. A command computes data (`json`) and says apart from it how a person reads
 * them (`text`), so that both forms always tell the same.
 */
import type { ParseArgsOptionsConfig } from 'node:util';
import type { Page } from './render/page.ts';

export interface Arguments {
  readonly words: readonly string[];
  /** The value of an option that takes one; undefined if it is not given. */
  value(name: string): string | undefined;
  /** Whether an option without a value is given. */
  has(name: string): boolean;
}

export type Outcome =
  | {
      readonly kind: 'done';
      readonly json: unknown;
      text(page: Page): string;
      /** 1 if the command found an error-level finding. */
      readonly status: 0 | 1;
    }
  | Refusal;

/** Wrong use or input that cannot be read: one sentence for standard error, exit status 2. */
export interface Refusal {
  readonly kind: 'refused';
  readonly sentence: string;
}

export interface Command {
  readonly name: string;
  /** As one types it: `state FILE [--at LINE:CHAR]`. */
  readonly usage: readonly string[];
  readonly summary: string;
  /** Apart from `--json` and `--help`, which every command has. */
  readonly options: ParseArgsOptionsConfig;
  run(args: Arguments): Promise<Outcome>;
}

export function refused(sentence: string): Refusal {
  return { kind: 'refused', sentence };
}
