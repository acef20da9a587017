/** A goal of a method found by any of the names that are in use for it. */
import { goalNamed } from '../document/check-claims.ts';
import type { Goal } from '../goals/goal.ts';
import { findMethod, goalsFor, LAYERS } from '../goals/methods.ts';

/** Index among `goals`, which are those of the method (by its name) for the base; −1 if it is none of them. */
export function goalIndex(
  text: string,
  goals: readonly Goal[],
  method: string,
  base: number,
): number {
  const wanted = text.trim().toLowerCase();
  const index = goals.findIndex(({ name }) => name.toLowerCase() === wanted);
  if (index >= 0) return index;
  const known = findMethod(method) ?? LAYERS;
  const name = goalNamed(text, known, goalsFor(known, base), [], base)?.name;
  return goals.findIndex((goal) => goal.name === name);
}
