/**
 * The ladder of three: what to look at (no notation), then why and by which cue, then the turns.
 */
import { sayCue } from './render-cue.ts';
import { sayLostIn } from './render-proposal.ts';
import type { Fact, NextFact, PieceFact, TurnsFact } from './facts.ts';
import { sayOffset, sayOrder } from './render-goals.ts';
import { sayOverHome, sayWhereabouts } from './render-where.ts';
import {
  capital,
  isWhole,
  sayGoal,
  sayPieces,
  sayReaching,
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
    const name = next.pieces.length > 1 ? capital(sayPieces([piece.piece])) : 'It';
    if (piece.status === 'placed') continue;
    result.push(
      piece.status === 'turned'
        ? `${name} is in its own slot, ${slotWords(piece.slot)}, but turned.`
        : `${name} lies in ${sayLayer(piece)}, at ${slotWords(piece.slot)}.`,
    );
  }
  if (order) result.push('The edges show their colour, but in the wrong order.');
  result.push(
    next.reason === 'last-one'
      ? 'It is the last one that is missing.'
      : isWhole(next.goal)
        ? 'All goals before it hold.'
        : `${capital(sayGoal(next))} is the first goal that isn’t done yet.`,
  );
  return result;
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
      ...all(facts, 'cue').map(sayCue),
    ];
  }
  result.push(
    `${capital(sayPieces(next.pieces))} ${next.pieces.length === 1 ? 'is' : 'are'} next for ${sayGoal(next)}${sayMade(next)}.`,
  );
  const pieces = all(facts, 'piece');
  for (const piece of pieces) result.push(sayWhereabouts(piece));
  if (next.reason === 'last-one') result.push('It is the last one that is missing.');
  const cue = one(facts, 'cue');
  if (cue) result.push(sayCue(cue));
  const over = one(facts, 'over-home');
  if (over) result.push(sayOverHome(over));
  if (order) result.push(sayOrder(order));
  return result.filter((sentence) => sentence !== '');
}

function sayTurnsFound(fact: TurnsFact): string[] {
  const { turns, regrip, pieces } = fact;
  const source = fact.from === 'written' ? 'The text goes on with' : 'Turn';
  const result = [`${source} ${turns}: ${sayEffect(fact)}.`];
  if (regrip !== '') result.push(`It begins with a regrip of the whole cube, ${regrip}.`);
  if (fact.effect === 'goal' && pieces.length > 0) {
    result.push(`With it ${sayPieces(pieces)} ${pieces.length === 1 ? 'comes' : 'come'} home.`);
  }
  if (fact.from === 'search') result.push('It was found by a search.');
  if (fact.name !== undefined) result.push(`That is the text’s own sequence @${fact.name}.`);
  return result;
}

function sayEffect(fact: TurnsFact): string {
  switch (fact.effect) {
    case 'goal':
      return `that ${sayReaching(fact)}`;
    case 'home':
      return `that brings ${sayPieces(fact.pieces)} home`;
    case 'up':
      return `that brings ${sayPieces(fact.pieces)} out into the layer across from the base, and from there it can go in`;
    case 'shape':
      return `that is a step towards ${sayGoal(fact)}, which isn’t done after it; look again then`;
  }
}

function thirdHint(facts: readonly Fact[], next: NextFact): string[] {
  const turns = one(facts, 'turns');
  const offset = one(facts, 'cross-offset');
  if (turns) return [...sayTurnsFound(turns), ...all(facts, 'lost-in').map(sayLostIn)];
  if (next.reason === 'offset' && offset) return [sayOffset(offset)];
  const result = [`I have found no turns for ${sayGoal(next)} here.`];
  for (const piece of all(facts, 'piece')) result.push(sayWhereabouts(piece));
  return result;
}
