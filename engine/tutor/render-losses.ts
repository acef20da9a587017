/** Why and where a goal was lost, and whether it came back. */
import type { AcrossFact, Fact, LossFact, MendFact, NeverLostFact, WithoutFact } from './facts.ts';
import { sayMissing } from './render-goals.ts';
import { capital, isWhole, listed, sayGoal, sayPiece, saySlot, sayState, sayTurn } from './say.ts';
import { all } from './select.ts';

/** Pieces whose way is told; the rest are left to the facts. */
const WAYS_TOLD = 3;

function sayWays({ pieces, turn }: LossFact): string {
  const told = pieces.slice(0, WAYS_TOLD);
  const ways = told
    .filter(({ from, to }) => from !== to)
    .map(({ piece, from, to }) => `${sayPiece(piece)} from ${saySlot(from)} to ${saySlot(to)}`);
  // A wide turn or slice takes the centres along and leaves the piece where it lies in the hands.
  const left = told.filter(({ from, to }) => from === to).map(({ piece }) => sayPiece(piece));
  const sentences = [
    ...(ways.length > 0 ? [`${turn.text} takes ${listed(ways)}.`] : []),
    ...(left.length > 0 ? [`${turn.text} turns the centres away from ${listed(left)}.`] : []),
  ];
  return sentences.join(' ');
}

function sayLoss(loss: LossFact): string[] {
  const goal = sayGoal(loss);
  const turn = sayTurn(loss.turn);
  const ways = sayWays(loss);
  switch (loss.fate) {
    case 'lasting':
      return [`${capital(goal)} breaks with ${turn} and does not come back.`, ways];
    case 'open':
      return [`${turn} opens ${goal}, and the text ends before it comes back.`, ways];
    case 'carried':
      return [
        `${capital(goal)} breaks with ${turn}, and comes back only in a later stage${loss.back ? `, with ${sayTurn(loss.back)}` : ''}.`,
        ways,
      ];
    case 'passing':
      return [
        `${capital(goal)} is only opened for a moment: ${turn} opens it${loss.back ? ` and ${sayTurn(loss.back)} closes it again` : ''}, within one stage, so nothing is lost.`,
        ways,
      ];
    case 'unguarded':
      return [
        `${turn} undoes ${goal}, but that was before its own stage was finished.`,
        ways,
        loss.back ? `It holds again after ${sayTurn(loss.back)}.` : 'It does not hold again later.',
      ];
  }
}

function sayAcross({ turn, before, after, ...goal }: AcrossFact): string {
  const name = sayGoal(goal);
  const which = `Turn ${turn.number} (${turn.text}, line ${turn.line})`;
  if (before && after)
    return `${which} did not break ${name}: it holds before and after that turn.`;
  if (!before && after) return `${which} did not break ${name}: that turn brings it about.`;
  return `${which} did not break ${name}: it does not hold before that turn either.`;
}

function sayNeverLost(fact: NeverLostFact): string {
  const name = sayGoal(fact);
  if (fact.reached === undefined && isWhole(fact.goal)) {
    return 'The cube is never solved in this text, so no turn spoils that.';
  }
  if (fact.reached === undefined)
    return `${capital(name)} is never made in this text, so no turn breaks it.`;
  const reached =
    fact.reached === 'start'
      ? 'it holds from the beginning'
      : `it is made with ${sayTurn(fact.reached)}`;
  return `No turn breaks ${name}: ${reached}${fact.holdsAtEnd ? ' and holds to the end' : ''}.`;
}

function sayWithout({ turn, holds, ...goal }: WithoutFact): string {
  return holds
    ? `Without that turn (${turn.text}) ${sayGoal(goal)} would hold at the end of the stage.`
    : `Leaving out that turn (${turn.text}) alone would not keep ${sayGoal(goal)} to the end of the stage.`;
}

function sayMend({ change, turn, at }: MendFact): string {
  const end = 'it would hold at the end of the stage';
  switch (change) {
    case 'insert':
      return `With ${turn} after ${sayTurn(at)} ${end}.`;
    case 'replace':
      return `With ${turn} in place of ${sayTurn(at)} ${end}.`;
    case 'remove':
      return `Without ${sayTurn(at)} ${end}.`;
  }
}

export function renderLoss(facts: readonly Fact[]): string[] {
  const result: string[] = [];
  for (const fact of facts) {
    switch (fact.kind) {
      case 'no-loss':
        result.push(
          fact.line === undefined
            ? 'No goal that was reached breaks in this text.'
            : `No goal that was reached breaks in line ${fact.line}.`,
        );
        break;
      case 'across':
        result.push(sayAcross(fact));
        break;
      case 'loss':
        result.push(...sayLoss(fact));
        break;
      case 'never-lost':
        result.push(sayNeverLost(fact));
        break;
      case 'without':
        result.push(sayWithout(fact));
        break;
      case 'mend':
        result.push(sayMend(fact));
        break;
      default:
        break;
    }
  }
  for (const goal of all(facts, 'goal')) {
    result.push(`But at the end of its stage ${sayState(goal, goal.holds)}${sayMissing(goal)}.`);
  }
  return result.filter((sentence) => sentence !== '');
}
