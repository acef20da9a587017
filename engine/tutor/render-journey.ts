/** The way of a piece through the text, and where a stage stands in it. */
import type { Fact, JourneyFact, OrderFact, StageFact } from './facts.ts';
import { sayWhereabouts } from './render-where.ts';
import { capital, listed, sayGoal, sayPiece, sayState, saySlot, sayTurn } from './say.ts';
import { all } from './select.ts';

function sayJourney({ piece, steps, count, left }: JourneyFact): string[] {
  if (count === 0) return [`No turn before this place moves ${sayPiece(piece)}.`];
  const ways = steps.map(({ turn, from, to }, i) => {
    // Only a regrip moves a piece in the hands without a turn of its own.
    const regripped = i > 0 && steps[i - 1].to !== from ? 'after a regrip ' : '';
    return from === to
      ? `${regripped}${sayTurn(turn)} turns it over at ${saySlot(from)}`
      : `${regripped}${sayTurn(turn)} takes it from ${saySlot(from)} to ${saySlot(to)}`;
  });
  return [
    `${count > steps.length ? `Of ${count} turns that move it the last are told: ` : ''}${listed(ways)}.`,
    ...(left ? [`It last left its home with ${sayTurn(left)}.`] : []),
  ].map(capital);
}

export function renderJourney(facts: readonly Fact[]): string[] {
  const pieces = all(facts, 'piece').map(sayWhereabouts);
  return [...pieces, ...all(facts, 'journey').flatMap(sayJourney)];
}

export function sayStage(fact: StageFact): string[] {
  const { first, last, reached, obtm } = fact;
  if (first === undefined || last === undefined)
    return [`The stage of ${sayGoal(fact)} has no turns in this text.`];
  return [
    `The stage of ${sayGoal(fact)} begins with ${sayTurn(first)} and ends with ${sayTurn(last)}: ${obtm} ${obtm === 1 ? 'turn' : 'turns'}.`,
    `At its end ${sayState(fact, reached)}.`,
  ];
}

function sayOrder(fact: OrderFact): string {
  const piece = sayPiece(fact.piece);
  switch (fact.when) {
    case 'made':
      return `There is no need: ${piece} is home already.`;
    case 'due':
      return `Yes: ${piece} belongs to ${sayGoal(fact)}, which is due, and its pieces can go in any order.`;
    case 'later':
      return `Not yet: ${piece} belongs to ${sayGoal(fact)}, and a goal before that is still open.`;
  }
}

export function renderOrder(facts: readonly Fact[]): string[] {
  return [...all(facts, 'order').map(sayOrder), ...all(facts, 'piece').map(sayWhereabouts)];
}
