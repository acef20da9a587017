/** Fills of an unknown stretch (`…`) between two known states: the shortest turns, and familiar ones. */
import { printTurns } from '../notation/print.ts';
import type { Block } from '../document/analysis.ts';
import { familiarFills, fillGap } from '../search/gaps.ts';
import type { Search } from '../search/step.ts';
import { asFaceTurns } from '../notation/transform.ts';
import type { Turn } from '../cube/turn.ts';
import { isSolved, sameState, type State } from '../cube/state.ts';
import type { LateFix } from './slips.ts';
import { faults, tryEdits, type Source } from './trial.ts';

/** So many familiar fills are offered. */
const MOST_FAMILIAR = 3;

/** Turns in the place of the stretch, each tried on the text; none if its states are not known. */
export function* findFills(source: Source, block: Block, gap: number): Search<LateFix[]> {
  const before = block.course.stateAt(gap);
  const jump = block.course.jumps.get(gap);
  if (before === undefined || jump?.kind !== 'gap' || jump.after === undefined) return [];
  const { after } = jump;
  const ways: { readonly turns: readonly Turn[]; readonly title: string }[] = [];
  const shortest = yield* fillGap(before, after);
  const familiar = yield* familiarFills(before, after);
  if (shortest.kind === 'found') {
    const { turns, optimal } = shortest;
    const count = asFaceTurns(turns).length;
    const what = optimal ? 'the shortest turns that fit' : `${count} turns that fit`;
    ways.push({ turns, title: `${printTurns(turns)}: ${what}` });
  }
  for (const turns of familiar.slice(0, MOST_FAMILIAR)) {
    ways.push({ turns, title: `${printTurns(turns)}: familiar turns that fit` });
  }
  const found = new Map<string, LateFix>();
  const old = block.rangeOf(gap);
  for (const [index, { turns, title }] of ways.entries()) {
    if (turns.length === 0 || (yield { nodes: index, depth: 1 }) === 'stop') continue;
    const edits = [{ range: old, newText: printTurns(turns) }];
    const trial = tryEdits(source, block, edits);
    const state = trial?.block.course.stateAt(gap + turns.length);
    if (trial === undefined || !fits(state, after)) continue;
    const left = faults(trial.findings);
    const score = 1 / (1 + index);
    if (!found.has(trial.text))
      found.set(trial.text, { title, edits, score, text: trial.text, left });
  }
  return [...found.values()];
}

/** A solve that is taken to end solved leaves open in which holding. */
function fits(state: State | undefined, after: State): boolean {
  return state !== undefined && (sameState(state, after) || (isSolved(state) && isSolved(after)));
}
