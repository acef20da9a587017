/** What is said when a question is not understood, or cannot be settled or answered at its place. */
import type { Fact, Refusal } from './facts.ts';
import { capital, listed, sayPiece } from './say.ts';
import { one } from './select.ts';

const REASONS: Readonly<Record<Refusal, string>> = {
  empty: 'There is no question here.',
  'too-long': 'That is too long for a question: a sentence or two will do.',
  unreadable: 'That is no readable text.',
  'not-understood': 'That is not a question I can answer.',
  'no-cube': 'There is no cube here yet: write a scramble or some turns first.',
  'state-unknown': 'The cube is not known at this place, so nothing can be said of it.',
  'no-turns-named': 'Which turns are meant? Write them behind the question.',
  'turns-unread': 'These turns can’t be followed: at most 200 single turns without names or gaps.',
  'two-sequences': 'Two sequences are needed for that: write both behind the question.',
  'no-goal': 'That goal is not known here.',
};

function sayOffers(facts: readonly Fact[]): string[] {
  const offer = one(facts, 'offer');
  if (offer === undefined || offer.questions.length === 0) return [];
  return [
    `You can ask here: ${listed(
      offer.questions.map((question) => `“${question}”`),
      'or',
    )}.`,
  ];
}

export function renderRefusal(facts: readonly Fact[]): string[] {
  const refusal = one(facts, 'refusal');
  return [...(refusal ? [REASONS[refusal.reason]] : []), ...sayOffers(facts)];
}

/** Pieces that don't exist or could be several, places that are not there; they come before anything else. */
export function renderUnsettled(facts: readonly Fact[]): string[] {
  const impossible = one(facts, 'impossible');
  if (impossible) return [impossible.message];
  const noPiece = one(facts, 'no-piece');
  if (noPiece) {
    const [a, b, c] = noPiece.colours;
    const name = noPiece.colours.join('-');
    if (noPiece.reason === 'twice')
      return [
        `No piece has the same colour twice, so there is no ${name} piece.`,
        ...sayOffers(facts),
      ];
    return [
      a === undefined
        ? 'There is no such slot on a cube.'
        : `There is no ${name} piece: ${c === undefined && b !== undefined ? `${a} and ${b} are` : 'two of these colours are'} on opposite sides.`,
      ...sayOffers(facts),
    ];
  }
  const which = one(facts, 'which-piece');
  if (which) {
    return [
      `Which ${which.colours.join('-')} piece is meant: ${listed(which.options.map(sayPiece), 'or')}?`,
    ];
  }
  const noTurn = one(facts, 'no-turn');
  if (noTurn) {
    return noTurn.what === 'turn'
      ? [
          `There is no turn ${noTurn.number} here: the last one is turn ${noTurn.last}.`,
          ...sayOffers(facts),
        ]
      : [`There are no turns in line ${noTurn.number}.`, ...sayOffers(facts)];
  }
  const refusal = one(facts, 'refusal');
  return refusal ? renderRefusal(facts).map(capital) : [];
}
