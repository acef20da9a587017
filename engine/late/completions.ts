/** Turns that complete a stage which ends before its goal: offered where no slip explains it. */
import type { Block } from '../document/analysis.ts';
import { goalTitle } from '../goals/titles.ts';
import { printTurns } from '../notation/print.ts';
import { searchGoal } from '../search/goal-search.ts';
import type { Search } from '../search/step.ts';
import type { LateFix } from './slips.ts';
import { faults, tryEdits, type Source } from './trial.ts';
import { findingsOf } from './wanted.ts';
import { writeAfter, writtenTurns } from './written.ts';

/** Nodes for the proof that nothing shorter does it; without the proof nothing is offered. */
const BUDGET = 1_000_000;

/** The shortest turns after the stage's last one that reach its goal and keep what was reached, tried on the text. */
export function* completion(source: Source, block: Block, stage: number): Search<LateFix[]> {
  const { timeline, course } = block;
  const { goal: index, first, end } = timeline.stages[stage];
  const state = course.stateAt(end);
  const written =
    first < end ? writtenTurns(source.analysis.lines, block, end - 1, end) : undefined;
  const last = written?.at(0);
  if (state === undefined || !last?.literal) return [];
  const kept = timeline.outcomes.flatMap(({ goal, guardedFrom }) =>
    goal !== index && guardedFrom !== undefined && guardedFrom <= first
      ? [timeline.judged[goal]]
      : [],
  );
  const found = yield* searchGoal(state, timeline.judged[index], kept, { budget: BUDGET });
  if (found.kind !== 'found' || found.turns.length === 0) return [];
  const edits = [writeAfter(last, found.turns)];
  const trial = tryEdits(source, block, edits);
  if (trial?.block.timeline.outcomes[index]?.reached !== true) return [];
  const left = faults(trial.findings);
  if (left > faults(findingsOf(source.analysis, block))) return [];
  const { name } = timeline.goals[index];
  const title = `Add ${printTurns(found.turns)}: then ${goalTitle(name)} is reached`;
  return [{ title, edits, score: 0, text: trial.text, left }];
}
