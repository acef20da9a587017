/** Whether a goal is done, what is missing, and which goals hold. */
import type { CrossOffsetFact, CrossOrderFact, Fact, GoalFact, MidwayFact } from './facts.ts';
import { sayStand, sayWhereabouts } from './render-where.ts';
import { capital, explainTurn, listed, sayGoal, sayPieces, sayState, sayTurn } from './say.ts';
import { all, one } from './select.ts';

export function sayMissing({ missing }: GoalFact): string {
  if (missing.length === 0) return '';
  return `: ${sayPieces(missing)} ${missing.length === 1 ? 'is' : 'are'} still missing`;
}

export function sayOffset({ base, turn }: CrossOffsetFact): string {
  return `All four ${base} edges are in the right order and only turned against the sides: ${explainTurn(turn)} brings all of them home.`;
}

export function sayOrder({ base, most }: CrossOrderFact): string {
  const home = most === 0 ? 'none' : `no more than ${most}`;
  return `All four ${base} edges show ${base}, but in the wrong order: a turn of their layer brings ${home} home at once.`;
}

export function sayMidway({ opened, back }: MidwayFact): string {
  return `It is open only for a moment: ${sayTurn(opened)} opens it and ${sayTurn(back)} closes it again.`;
}

export function renderDone(facts: readonly Fact[]): string[] {
  const result: string[] = [];
  const goals = all(facts, 'goal');
  for (const fact of goals) {
    const same = ({ goal, base }: { goal: string; base: string }): boolean =>
      goal === fact.goal && base === fact.base;
    result.push(
      `${fact.holds ? 'Yes' : 'No'}, ${sayState(fact, fact.holds)}${fact.holds ? '' : sayMissing(fact)}.`,
    );
    const since = all(facts, 'since').find(same);
    if (since) {
      result.push(
        since.turn
          ? `It has been so since ${sayTurn(since.turn)}.`
          : 'It has been so from the beginning.',
      );
    }
    const midway = all(facts, 'midway').find(same);
    if (midway) result.push(sayMidway(midway));
    if (fact.goal === 'cross') {
      const offset = all(facts, 'cross-offset').find(({ base }) => base === fact.base);
      const order = all(facts, 'cross-order').find(({ base }) => base === fact.base);
      if (offset) result.push(sayOffset(offset));
      if (order) result.push(sayOrder(order));
    }
    const loss = all(facts, 'loss').find(same);
    if (loss) result.push(`It was lost with ${sayTurn(loss.turn)}.`);
  }
  for (const piece of all(facts, 'piece')) result.push(sayWhereabouts(piece));
  const stand = one(facts, 'stand');
  if (stand) result.push(sayStand(stand));
  return result;
}

export function renderHolding(facts: readonly Fact[]): string[] {
  const goals = all(facts, 'goal');
  const done = goals.filter(({ holds }) => holds);
  const left = goals.filter(({ holds }) => !holds);
  const result: string[] = [];
  if (left.length === 0) result.push('All goals hold: the cube is solved.');
  else {
    result.push(
      done.length === 0
        ? 'No goal of the method holds here yet.'
        : `Done here: ${listed(done.map(sayGoal))}.`,
    );
    const [next] = left;
    result.push(`Next comes ${sayGoal(next)}${sayMissing(next)}.`);
    const offset = one(facts, 'cross-offset');
    const order = one(facts, 'cross-order');
    if (offset) result.push(sayOffset(offset));
    if (order) result.push(sayOrder(order));
    if (left.length > 1) result.push(`Also not yet: ${listed(left.slice(1).map(sayGoal))}.`);
  }
  const stand = one(facts, 'stand');
  if (stand) result.push(sayStand(stand));
  return result.map(capital);
}
