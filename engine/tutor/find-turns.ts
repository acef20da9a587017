/**
 * The step that a person would take, and turns for a goal. The file's own turns come first, then the
 * person's way; only where a method has no such way is anything searched for, with a small budget.
 */
import { applyTurns } from '../cube/state.ts';
import { sumProblems } from '../cube/possible.ts';
import { printTurns } from '../notation/print.ts';
import { goalHolds } from '../goals/judge.ts';
import { searchGoal } from '../search/goal-search.ts';
import { nextStep } from '../search/person/solve.ts';
import type { PersonStep } from '../search/person/step.ts';
import type { Search } from '../search/step.ts';
import type { TurnsFact } from './facts.ts';
import { isOffset } from './gather-next.ts';
import { nameGoal, namePiece, type Scene } from './scene.ts';

/** The step of a person's way that serves the due goal; undefined if the method has none, or no turns can solve this cube. */
export function personStep(scene: Scene, due: number): PersonStep | undefined {
  if (sumProblems(scene.state).length > 0) return undefined;
  const goal = scene.goals[due];
  if (isOffset(scene, goal)) return undefined;
  const known = scene.block.method.startsWith('layers') || goal.name === 'cross';
  const step = known ? nextStep(scene.state, scene.base) : undefined;
  return step?.stage === goal.name ? step : undefined;
}

/** Nodes that an answer may cost, and the longest sequence that is still worth showing. */
const BUDGET = 200_000;
const LONGEST = 12;

export function* findTurns(
  scene: Scene,
  due: number,
  step: PersonStep | undefined,
): Search<TurnsFact | undefined> {
  const goal = scene.goals[due];
  const common = {
    kind: 'turns' as const,
    place: scene.place,
    ...nameGoal(scene.block.method, goal, scene.base),
  };
  if (step) {
    const after = applyTurns(scene.state, step.turns);
    const piece = step.piece === undefined ? [] : [namePiece(step.piece, scene.base)];
    const moved = step.arrives ? 'home' : 'up';
    const effect = goalHolds(goal, after) ? 'goal' : step.piece === undefined ? 'shape' : moved;
    const turns = printTurns(step.turns);
    return {
      ...common,
      turns,
      regrip: printTurns(step.regrip),
      effect,
      pieces: piece,
      from: 'person',
    };
  }
  if (sumProblems(scene.state).length > 0 || isOffset(scene, goal)) return undefined;
  const result = yield* searchGoal(scene.state, goal, scene.goals.slice(0, due), {
    budget: BUDGET,
    maxTurns: LONGEST,
    rightHanded: true,
  });
  if (result.kind !== 'found') return undefined;
  // Nothing with turns is shown before it has been replayed.
  const after = applyTurns(scene.state, result.turns);
  if (!scene.goals.slice(0, due + 1).every((one) => goalHolds(one, after))) return undefined;
  return {
    ...common,
    turns: printTurns(result.turns),
    regrip: '',
    effect: 'goal',
    pieces: [],
    from: 'search',
  };
}
