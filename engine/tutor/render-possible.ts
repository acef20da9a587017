/** What turns can do, what terms mean, and where the written turns went wrong. */
import type { Fact, FlawFact, SidesFact, SlipFact, SolvableFact } from './facts.ts';
import { sayMissing, sayOffset, sayOrder } from './render-goals.ts';
import { renderLoss } from './render-losses.ts';
import { capital, listed, sayState, sayTurn } from './say.ts';
import { all, one } from './select.ts';

const COUNTS = ['no', 'one', 'two', 'three', 'four'];

function sayFlaw({ pieces, what, count, possible }: FlawFact): string[] {
  const single = count === 1;
  const subject = `${COUNTS[count]} ${single ? pieces.slice(0, -1) : pieces}`;
  const alone = `${subject} ${what} and nothing else wrong`;
  if (possible) {
    return what === 'twisted'
      ? [`Yes, ${alone} can be: the twists only have to add up to whole turns.`]
      : [`Yes, ${alone} can be.`];
  }
  switch (what) {
    case 'flipped':
      return [
        `No, ${alone} cannot come from turns: every turn flips an even number of edges.`,
        'Take an edge out and put it in the other way round.',
      ];
    case 'twisted':
      return [
        `No, ${alone} cannot come from turns: the twists of all corners always add up to whole turns.`,
        'Twist that corner by hand, or take the cube apart and put it together anew.',
      ];
    case 'swapped':
      return [
        `No, ${alone} cannot come from turns: every quarter turn changes the order of corners and edges alike.`,
        'Look once more; else the cube was put together wrong, and two pieces have to be exchanged by hand.',
      ];
  }
}

const PROBLEMS: Readonly<Record<SolvableFact['problems'][number], string>> = {
  'twisted-corner': 'a corner is twisted',
  'flipped-edge': 'an edge is flipped',
  'swapped-pieces': 'two pieces are swapped',
};

function saySolvable({ solvable, problems }: SolvableFact, alone: boolean): string {
  if (solvable)
    return alone
      ? 'Yes, this cube is possible: turns alone lead from it to the end.'
      : 'The cube at this place is possible.';
  return `${alone ? 'No, this' : 'This'} cube cannot come from turns: ${listed(problems.map((one) => PROBLEMS[one]))}.`;
}

export function renderPossible(facts: readonly Fact[]): string[] {
  const flaws = all(facts, 'flaw');
  return [
    ...flaws.flatMap(sayFlaw),
    ...all(facts, 'solvable').map((fact) => saySolvable(fact, flaws.length === 0)),
  ];
}

const SIDES: Readonly<Record<string, string>> = {
  U: 'top',
  D: 'bottom',
  F: 'front',
  B: 'back',
  L: 'left',
  R: 'right',
};

function saySides({ agree, finished }: SidesFact): string[] {
  const names = (faces: readonly string[]): string => listed(faces.map((face) => SIDES[face]));
  const side = (faces: readonly string[]): string => (faces.length === 1 ? 'side' : 'sides');
  return [
    agree.length === 0
      ? 'Here no side has two corners that agree.'
      : `Here the corners agree on the ${names(agree)} ${side(agree)}.`,
    ...(finished.length === 0
      ? []
      : [`The edge agrees, too, on the ${names(finished)} ${side(finished)}.`]),
  ];
}

export function renderTerm(facts: readonly Fact[]): string[] {
  return facts.flatMap((fact) => {
    switch (fact.kind) {
      case 'term':
        return [fact.meaning];
      case 'facing':
        return [
          `Here ${fact.count} of 4 ${fact.colour} ${fact.pieces} show ${fact.colour} on the ${fact.colour} face.`,
        ];
      case 'pattern':
        return [`They form ${fact.shape === 'angle' ? 'an angle' : `a ${fact.shape}`}.`];
      case 'sides':
        return saySides(fact);
      case 'goal':
        return [`Here ${sayState(fact, fact.holds)}${sayMissing(fact)}.`];
      case 'cross-offset':
        return [sayOffset(fact)];
      case 'cross-order':
        return [sayOrder(fact)];
      default:
        return [];
    }
  });
}

function saySlip({ change, turns, at }: SlipFact): string {
  switch (change) {
    case 'insert':
      return `with ${turns} after ${sayTurn(at)}`;
    case 'replace':
      return `with ${turns} in place of ${sayTurn(at)}`;
    case 'remove':
      return `without ${sayTurn(at)}`;
    case 'swap':
      return `with ${turns}, the other way round, from ${sayTurn(at)} on`;
  }
}

export function renderWrong(facts: readonly Fact[]): string[] {
  const slips = all(facts, 'slip');
  const none = one(facts, 'no-slip');
  const losses = renderLoss(facts);
  if (slips.length === 0) {
    if (none?.why === 'solved') return ['The written turns end solved.', ...losses];
    return none?.why === 'none'
      ? [...losses, 'No change of a single turn makes the text end solved.']
      : losses;
  }
  const [first, ...rest] = slips.map(saySlip);
  return [
    `${capital(first)} the text ends solved, so that is the likeliest slip.`,
    ...rest.map((way) => `It ends solved ${way}, too.`),
    ...losses,
  ];
}
