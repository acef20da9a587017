/** Whether a goal holds at a place, and which pieces stand in its way. */
import { goalHolds, goalMissing } from '../goals/judge.ts';
import type { GoalFact } from './facts.ts';
import type { MeantGoal } from './referents.ts';
import { nameGoal, namePieces, type Scene } from './scene.ts';

export function goalFact(scene: Scene, { goal, method, base }: MeantGoal): GoalFact {
  const holds = goalHolds(goal, scene.state);
  return {
    kind: 'goal',
    place: scene.place,
    ...nameGoal(method, goal, base),
    holds,
    missing: holds ? [] : namePieces(goalMissing(goal, scene.state), base),
  };
}
