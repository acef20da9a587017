/**
 * The ladder of three: what to look at (no notation), then why and by which cue, then the turns.
 */
import type { Fact, NextFact, PieceFact, TurnsFact } from './facts.ts';
import { sayOffset, sayOrder } from './render-goals.ts';
import { sayOverHome, sayWhereabouts } from './render-where.ts';
import {
  capital,
  sayGoal,
  sayPieces,
  sayReaching,
  sayShows,
  sayState,
  sayTurn,
  slotWords,
} from './say.ts';
import { all, one } from './select.ts';

export function renderNext(facts: readonly Fact[], level: number): string[] {
  const next = one(facts, 'next');
  if (next === undefined) {
    const goal = one(facts, 'goal');
    return goal?.holds
      ? [`Nothing is left to do: ${sayState(goal, true)}.`]
      : ['There is no goal to work towards here.'];
  }
  const midway = one(facts, 'midway');
  if (midway && level < 3) {
    const open = `${capital(sayGoal(midway))} is open only for a moment here`;
    if (level === 1)
      return [
        `${open}, in the middle of a step: finish that step first.`,
        'The text goes on to close it.',
      ];
    return [
      `${open}: ${sayTurn(midway.opened)} opened it, and ${sayTurn(midway.back)} closes it again. Finish that step first.`,
    ];
  }
  if (level === 1) return firstHint(facts, next);
  return level === 2 ? secondHint(facts, next) : thirdHint(facts, next);
}

function sayLayer({ layer }: PieceFact): string {
  return layer === undefined ? 'the middle layer' : `the ${layer} layer`;
}

function sayMade({ made, of }: NextFact): string {
  return of === 0 ? '' : ` (${made} of ${of} made)`;
}

function sayPatterns(facts: readonly Fact[]): string[] {
  const result: string[] = [];
  for (const fact of facts) {
    if (fact.kind === 'pattern') {
      const seen =
        fact.shape === 'dot'
          ? `none of them does, so only the ${fact.colour} centre shows`
          : `they form ${fact.shape === 'angle' ? 'an angle' : `a ${fact.shape}`}`;
      result.push(
        `Look which edges of the ${fact.colour} layer show ${fact.colour} like their centre: ${seen}.`,
      );
    } else if (fact.kind === 'facing') {
      const count = fact.count === 0 ? 'none does' : `${fact.count} of 4 do`;
      result.push(
        `Look which ${fact.colour} ${fact.pieces} show ${fact.colour} on the ${fact.colour} face: ${count}.`,
      );
    } else if (fact.kind === 'arranged') {
      const count = fact.count === 0 ? 'none can be brought' : `${fact.count} of 4 can be brought`;
      result.push(
        `Look which ${fact.colour} ${fact.pieces} belong where they are: with the layer turned at best, ${count} home.`,
      );
    }
  }
  return result;
}

function firstHint(facts: readonly Fact[], next: NextFact): string[] {
  const order = one(facts, 'cross-order');
  if (next.reason === 'offset') {
    return [
      `${capital(sayGoal(next))} is nearly done: its edges are in the right order, but they don’t match the centres of the sides.`,
      'Look which way their layer has to turn.',
    ];
  }
  if (next.reason === 'pattern') return [`Next comes ${sayGoal(next)}.`, ...sayPatterns(facts)];
  const result = [`Look for ${sayPieces(next.pieces)}: next for ${sayGoal(next)}${sayMade(next)}.`];
  for (const piece of all(facts, 'piece')) {
    result.push(
      piece.status === 'turned'
        ? `It is in its own slot, ${slotWords(piece.slot)}, but turned.`
        : `${next.pieces.length > 1 ? capital(sayPieces([piece.piece])) : 'It'} lies in ${sayLayer(piece)}, at ${slotWords(piece.slot)}.`,
    );
  }
  if (order) result.push('The edges show their colour, but in the wrong order.');
  return result;
}

function sayReason(next: NextFact, facts: readonly Fact[]): string {
  const [piece] = all(facts, 'piece');
  switch (next.reason) {
    case 'last-one':
      return 'It is the last one that is missing.';
    case 'in-top':
      return piece ? `It comes first because it lies in ${sayLayer(piece)}.` : '';
    case 'in-middle':
      return 'None that is missing lies wholly in the layer across from the base, so it has to come out of the middle layer first.';
    case 'in-base':
      return 'All that are missing lie in the base’s own layer, so it has to come out first.';
    case 'offset':
    case 'pattern':
      return '';
  }
}

function secondHint(facts: readonly Fact[], next: NextFact): string[] {
  const result: string[] = [];
  const order = one(facts, 'cross-order');
  if (next.reason === 'offset') {
    const offset = one(facts, 'cross-offset');
    return offset
      ? [
          `All four ${offset.base} edges are in the right order, so one turn of their layer matches all sides at once.`,
        ]
      : [];
  }
  if (next.reason === 'pattern') {
    return [
      `${capital(sayGoal(next))} comes next, because all goals before it hold.`,
      ...sayPatterns(facts),
    ];
  }
  result.push(
    `${capital(sayPieces(next.pieces))} ${next.pieces.length === 1 ? 'is' : 'are'} next for ${sayGoal(next)}${sayMade(next)}.`,
  );
  const pieces = all(facts, 'piece');
  for (const piece of pieces) result.push(sayWhereabouts(piece));
  if (next.pieces.length === 1) result.push(sayReason(next, facts));
  const over = one(facts, 'over-home');
  if (over) result.push(sayOverHome(over));
  if (order) result.push(sayOrder(order));
  const [piece] = pieces;
  if (over && piece)
    result.push(
      `Watch how it shows its colours (${sayShows(piece.shows)}): that decides how it goes in.`,
    );
  return result.filter((sentence) => sentence !== '');
}

function sayTurnsFound(fact: TurnsFact): string {
  const source = fact.from === 'written' ? 'The text goes on with' : 'Turn';
  const effect = fact.reaches
    ? `that ${sayReaching(fact)}`
    : `that brings ${sayPieces(fact.pieces)} home`;
  return `${source} ${fact.turns}: ${effect}.`;
}

function thirdHint(facts: readonly Fact[], next: NextFact): string[] {
  const turns = one(facts, 'turns');
  const offset = one(facts, 'cross-offset');
  if (turns) return [sayTurnsFound(turns)];
  if (next.reason === 'offset' && offset) return [sayOffset(offset)];
  const result = [
    `No turns for ${sayGoal(next)} are at hand here: finding them takes a search, which this tutor does not have yet.`,
  ];
  for (const piece of all(facts, 'piece')) result.push(sayWhereabouts(piece));
  for (const over of all(facts, 'over-home')) result.push(sayOverHome(over));
  return result;
}
