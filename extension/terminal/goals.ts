/** The goal that an option names, by any of its names in use. */
import type { Goal } from '../../engine/goals/goal.ts';
import { goalIndex } from '../../engine/late/goal-names.ts';
import { refused, type Refusal } from './command.ts';
import { listed } from './render/words.ts';

export interface NamedGoal {
  readonly kind: 'goal';
  readonly goal: Goal;
  /** Among the goals given. */
  readonly index: number;
}

/** `goals`: those of the method, or of a text's own, in their order. */
export function readGoal(
  text: string,
  goals: readonly Goal[],
  method: string,
  base: number,
): NamedGoal | Refusal {
  const index = goalIndex(text, goals, method, base);
  if (index >= 0) return { kind: 'goal', goal: goals[index], index };
  const names = listed(goals.map(({ name }) => `"${name}"`));
  return refused(`The method ${method} has no goal "${text.trim()}"; it has ${names}.`);
}
