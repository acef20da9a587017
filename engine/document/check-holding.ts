/** `holding:` after turns: a claim about how the cube is held there. */
import { COMPOSE_HOLDINGS, INVERSE_HOLDING, colourAt, type Holding } from '../cube/holding.ts';
import type { Range } from '../cube/place.ts';
import { SOLVED, applyTurns, held } from '../cube/state.ts';
import { makeTurn, printTurn, type Turn } from '../cube/turn.ts';
import type { Judged } from './judged.ts';
import type { RawFinding } from './raw-finding.ts';

/** Rotations of at most two turns that lead from one holding to another; the shortest. */
function rotationBetween(from: Holding, to: Holding): string | undefined {
  const rotations = ['x', 'y', 'z'] as const;
  const single: Turn[] = rotations.flatMap((family) =>
    [1, 2, 3].map((amount) => makeTurn(family, amount)),
  );
  const wanted = COMPOSE_HOLDINGS[INVERSE_HOLDING[from]][to];
  const leads = (turns: readonly Turn[]): boolean =>
    applyTurns(held(SOLVED, 0), turns).holding === wanted;
  const one = single.find((turn) => leads([turn]));
  if (one !== undefined) return printTurn(one);
  for (const first of single) {
    const second = single.find((turn) => leads([first, turn]));
    if (second !== undefined) return `${printTurn(first)} ${printTurn(second)}`;
  }
  return undefined;
}

export function heldOtherwise(
  judged: Judged,
  place: number,
  claimed: Holding,
  range: Range,
): RawFinding[] {
  // After an unknown stretch the key sets the holding.
  if (judged.script.jumps.get(place - 1)?.kind === 'gap') return [];
  const state = judged.course.stateAt(place);
  if (state === undefined || state.holding === claimed) return [];
  const { holding } = state;
  const rotation = rotationBetween(holding, claimed);
  const line = { line: range.start.line, character: 0 };
  const [up, front] = [colourAt(holding, 0), colourAt(holding, 2)];
  const asItIs = `${up} up, ${front} front`;
  const fixes = [{ title: `Write ${asItIs}`, edits: [{ range, newText: asItIs }] }];
  if (rotation !== undefined) {
    fixes.unshift({
      title: `Insert ${rotation}`,
      edits: [{ range: { start: line, end: line }, newText: `${rotation}\n` }],
    });
  }
  return [
    {
      args: {
        code: 'holding-differs',
        up,
        front,
        rotation,
      },
      range,
      fixes,
    },
  ];
}
