/** Where a piece is, where it belongs, whether it is turned right. */
import type { Fact, OverHomeFact, PieceFact, StandFact } from './facts.ts';
import { capital, explainTurn, sayPiece, sayShows, saySlot, sayTurn } from './say.ts';
import { all, one } from './select.ts';

export function sayWhereabouts(fact: PieceFact): string {
  const piece = capital(sayPiece(fact.piece));
  const shows = sayShows(fact.shows);
  switch (fact.status) {
    case 'placed':
      return `${piece} is home: at ${saySlot(fact.slot)} and turned right.`;
    case 'turned':
      return `${piece} is in its own slot ${saySlot(fact.slot)}, but turned: it shows ${shows}.`;
    case 'elsewhere':
      return `${piece} is at ${saySlot(fact.slot)}, showing ${shows}; its home is ${saySlot(fact.home)}.`;
  }
}

export function sayOverHome({ piece, turn, slot }: OverHomeFact): string {
  // With the base down it lies above its home, however the base is held across from it.
  const where = slot.includes('U')
    ? 'right above'
    : slot.includes('D')
      ? 'right below'
      : 'straight across from';
  if (turn === '')
    return `${capital(sayPiece(piece))} already lies ${where} its home, at ${saySlot(slot)}.`;
  return `${explainTurn(turn)} brings it ${where} its home, to ${saySlot(slot)}.`;
}

/** After which turn, and how held. */
export function sayStand({ last, up, front, place }: StandFact): string {
  const holding = `held with ${up} up and ${front} in front`;
  const where = last ? `after ${sayTurn(last)}` : 'before the first turn';
  const then = place.then === '' ? '' : ` and then ${place.then}`;
  return `This is ${where}${then}, ${holding}.`;
}

export function renderWhere(facts: readonly Fact[]): string[] {
  const result: string[] = [];
  const over = all(facts, 'over-home');
  for (const fact of all(facts, 'piece')) {
    result.push(sayWhereabouts(fact));
    const turn = over.find(({ piece }) => piece.join() === fact.piece.join());
    if (turn) result.push(sayOverHome(turn));
  }
  const stand = one(facts, 'stand');
  if (stand) result.push(sayStand(stand));
  return result;
}
