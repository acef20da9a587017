/** What sequences do, how they compare, how often they are done, and which way turns go. */
import type {
  CompareFact,
  EffectFact,
  Fact,
  RepeatFact,
  ShorterFact,
  SpanFact,
  VerdictFact,
  WayFact,
} from './facts.ts';
import { sayCome, sayLeave, sayLostIn } from './render-proposal.ts';
import {
  capital,
  explainTurn,
  listed,
  sayGoal,
  sayPieces,
  sayReaching,
  saySlot,
  sayState,
  sayTurn,
} from './say.ts';
import { all, one } from './select.ts';

/** Cycles told in full; longer ones are counted. */
const LONGEST_CYCLE = 5;

function sayCycle(cycle: readonly string[], kind: string): string {
  if (cycle.length === 2) return `exchanges the ${kind} at ${cycle[0]} and ${cycle[1]}`;
  if (cycle.length > LONGEST_CYCLE) return `moves ${cycle.length} ${kind} in one round`;
  return `takes the ${kind} round from ${[...cycle, cycle[0]].join(' to ')}`;
}

const ONLY_ROTATIONS = /^[xyz]['2]?(?: [xyz]['2]?)*$/;

function sayEffect(fact: EffectFact): string[] {
  if (ONLY_ROTATIONS.test(fact.turns))
    return [`${fact.turns} turns the whole cube in the hands; no piece moves against another.`];
  const parts = [
    ...fact.corners.map((cycle) => sayCycle(cycle, 'corners')),
    ...fact.edges.map((cycle) => sayCycle(cycle, 'edges')),
    ...(fact.centres.length > 0 ? ['moves centres'] : []),
    ...(fact.twisted.length > 0 ? [`twists in place ${listed(fact.twisted)}`] : []),
    ...(fact.flipped.length > 0 ? [`flips in place ${listed(fact.flipped)}`] : []),
  ];
  if (parts.length === 0) return [`${fact.turns} leaves every cube as it was.`];
  return [
    `On any cube ${fact.turns} ${listed(parts)}.`,
    `Its order is ${fact.order}: done ${fact.order} times it brings everything back.`,
  ];
}

function saySpan({ first, last, turns }: SpanFact, verdict: VerdictFact): string {
  const where =
    first.index === last.index
      ? sayTurn(first)
      : `${turns}, from ${sayTurn(first)} to ${sayTurn(last)},`;
  switch (verdict.verdict) {
    case 'reaches':
      return `${where} ${sayReaching(verdict)}.`;
    case 'gains':
    case 'trades':
      return verdict.gained.length > 0
        ? `With ${where} ${sayCome(verdict)}.`
        : `${where} ${sayReaching(verdict)}, but something that was done is lost.`;
    case 'keeps':
      return `${where} changes nothing of ${sayGoal(verdict)}.`;
    case 'nothing':
      return `By itself ${where} brings no piece of ${sayGoal(verdict)} into place: it is part of a longer step, or a preparation.`;
    case 'loses':
      return verdict.dropped.length > 0
        ? `With ${where} ${sayLeave(verdict)}.`
        : `${where} undoes something that was done.`;
  }
}

export function renderEffect(facts: readonly Fact[]): string[] {
  const [span, verdict] = [one(facts, 'span'), one(facts, 'verdict')];
  if (span && verdict) {
    const others = all(facts, 'goal').filter((fact) => fact.goal !== verdict.goal && fact.holds);
    return [
      saySpan(span, verdict),
      ...others.map((fact) => `After it ${sayState(fact, true)}, too.`),
      ...all(facts, 'lost-in').map(sayLostIn),
    ];
  }
  return facts.flatMap((fact) => {
    switch (fact.kind) {
      case 'effect':
        return sayEffect(fact);
      case 'related':
        return fact.relation === 'inverse'
          ? [`The inverse of ${fact.turns} is ${fact.other}: after both everything is as before.`]
          : [`The mirror image of ${fact.turns}, left for right, is ${fact.other}.`];
      case 'counts':
        return [
          `${fact.turns} has ${fact.obtm} ${fact.obtm === 1 ? 'turn' : 'turns'} (slices count two, rotations none), ${fact.qtm} in quarter turns.`,
        ];
      default:
        return [];
    }
  });
}

const turnsCounted = (count: number): string =>
  `${count} ${count === 1 ? 'face turn' : 'face turns'}`;

export function sayShorter(fact: ShorterFact): string[] {
  const { turns, other, count, otherCount, provenTo } = fact;
  if (other === '') return [`Yes: ${turns} does nothing, so it can be left out.`];
  if (other !== undefined && otherCount !== undefined) {
    const proof =
      provenTo === otherCount - 1
        ? 'It is proven that no fewer face turns do.'
        : 'It was not proven that no fewer do.';
    return [
      `Yes: ${other} does the same as ${turns}, with ${turnsCounted(otherCount)} for ${count}.`,
      proof,
    ];
  }
  return provenTo >= count - 1
    ? [
        `No: nothing shorter than ${turns} does the same; all sequences of fewer than ${turnsCounted(count)} were ruled out.`,
      ]
    : [
        `I found no shorter way to do the same as ${turns}.`,
        `Sequences of up to ${turnsCounted(provenTo)} were ruled out; nothing longer was tried.`,
      ];
}

export function sayCompare({ first, second, same, counts, easier }: CompareFact): string[] {
  const [a, b] = counts;
  const result = [
    same
      ? `${first} and ${second} do the same to every cube.`
      : `${first} and ${second} do not do the same.`,
  ];
  result.push(
    a === b
      ? `Both have ${a} ${a === 1 ? 'turn' : 'turns'}.`
      : `${a < b ? first : second} is shorter: ${Math.min(a, b)} for ${Math.max(a, b)} turns.`,
  );
  if (easier !== undefined) {
    result.push(
      `By a rough measure ${easier === 'first' ? first : second} is easier on a right-handed person’s fingers.`,
    );
  }
  return result;
}

export function sayRepeat(fact: RepeatFact): string[] {
  const { turns, times, order, effect, pieces } = fact;
  const often = times === 1 ? 'once' : `${times ?? 0} times`;
  const back = `After ${order} times everything is back as it was.`;
  if (effect === 'goal') return [`Do ${turns} ${often} and stop: that ${sayReaching(fact)}.`, back];
  if (effect === 'home')
    return [
      `Do ${turns} ${often} and stop: then ${sayPieces(pieces)} ${pieces.length === 1 ? 'is' : 'are'} home, and all goals before hold.`,
      back,
    ];
  return [`Repeating ${turns} brings nothing more of ${sayGoal(fact)} home here.`, back];
}

export function sayWay({ turn, from, to }: WayFact): string {
  const explained = /^[UDLRFB]['2]?$/.test(turn) ? explainTurn(turn) : turn;
  return `${capital(explained)}: what is at ${saySlot(from)} goes to ${saySlot(to)}.`;
}
