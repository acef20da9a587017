/** A learner's cube that no longer looks like the solve's: where it is, what happened, and the way back. */
import { isRotation } from '../cube/turn.ts';
import { printTurns } from '../notation/print.ts';
import type { State } from '../cube/state.ts';
import type { Block } from '../document/analysis.ts';
import { findStray } from '../search/strays.ts';
import type { Search } from '../search/step.ts';
import { saySlip } from './slip-text.ts';
import { writtenTurns } from './written.ts';

export interface StrayAnswer {
  /** Places (turns done) at which the solve looks just so, the nearest first. */
  readonly places: readonly { readonly turns: number; readonly number: number }[];
  /** What may have been done instead of what is written, each a sentence; only where no place fits. */
  readonly slips: readonly string[];
  /** Turns from that cube, held as the solve is there, to the solve at the place. */
  readonly back: { readonly turns: string; readonly optimal: boolean } | undefined;
}

const MOST_SLIPS = 5;
/** Longer solves are not compared. */
const MOST_TURNS = 1_000;

/** Undefined where the solve's turns or its start are not known. `expected`: turns done, as the learner thinks. */
export function* strayIn(
  lines: readonly string[],
  block: Block,
  cube: State,
  expected: number,
): Search<StrayAnswer | undefined> {
  const written = writtenTurns(lines, block);
  if (written === undefined || block.start === undefined || written.length > MOST_TURNS)
    return undefined;
  const codes = written.map(({ turn }) => turn);
  const { places, slips, back } = yield* findStray(block.start, codes, cube, expected);
  const said = new Set(
    slips
      .filter(({ edit }) => !edit.turns.every(isRotation) || edit.remove > 0)
      .map(({ edit }) => saySlip(written, { edits: [edit] })),
  );
  return {
    places: places.map((turns) => ({ turns, number: turns === 0 ? 0 : block.numberOf(turns - 1) })),
    slips: [...said].slice(0, MOST_SLIPS),
    back: back && { turns: printTurns(back.turns), optimal: back.optimal },
  };
}
