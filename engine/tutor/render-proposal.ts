/** The judgement on proposed turns: the verdict first, then what they reach, gain, lose and bring back. */
import type { Fact, LostInFact, NearFact, VerdictFact } from './facts.ts';
import { sayOffset, sayOrder } from './render-goals.ts';
import { sayStand } from './render-where.ts';
import { capital, sayGoal, sayPieces, sayReaching, sayState } from './say.ts';
import { all, one } from './select.ts';

function ordinal(n: number): string {
  const tens = n % 100;
  const suffix = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${suffix}`;
}

/** `the white-red edge comes home`; of a goal of colours on top: `… is turned right`. */
export function sayCome({ gained, facing }: VerdictFact): string {
  const one = gained.length === 1;
  if (facing) return `${sayPieces(gained)} then ${one ? 'shows' : 'show'} the top colour on top`;
  return `${sayPieces(gained)} ${one ? 'comes' : 'come'} home`;
}

export function sayLeave({ dropped, facing }: VerdictFact): string {
  const one = dropped.length === 1;
  if (facing)
    return `${sayPieces(dropped)} no longer ${one ? 'shows' : 'show'} the top colour on top`;
  return `${sayPieces(dropped)} ${one ? 'leaves' : 'leave'} home`;
}

function sayVerdict(fact: VerdictFact, lost: readonly LostInFact[]): string {
  const { turns, gained, dropped } = fact;
  const come = sayCome(fact);
  switch (fact.verdict) {
    case 'reaches':
      return `Yes, that is right: ${turns} ${sayReaching(fact)}.`;
    case 'gains':
      return `Yes, that works: with ${turns} ${come}, and nothing that was done is lost.`;
    case 'keeps':
      return `That does no harm: ${sayState(fact, true)} before and after ${turns}.`;
    case 'nothing':
      return `No, not by itself: ${turns} brings no new piece of ${sayGoal(fact)} into place, and loses nothing that was done.`;
    case 'trades':
      return gained.length > 0 && dropped.length > 0
        ? `Not quite: with ${turns} ${come}, but ${sayLeave(fact)}.`
        : `Not quite: ${turns} ${sayReaching(fact)}, but something that was done is lost.`;
    case 'loses': {
      const [first] = lost;
      if (first) return `No: ${turns} loses ${sayGoal(first)}.`;
      return dropped.length > 0
        ? `No: with ${turns} ${sayLeave(fact)}.`
        : `No: after ${turns} ${sayState(fact, false)} any more.`;
    }
  }
}

export function sayLostIn(fact: LostInFact): string {
  const goal = capital(sayGoal(fact));
  const opened = `the ${ordinal(fact.at)} turn, ${fact.atText}`;
  if (fact.back !== undefined && fact.backText !== undefined) {
    return `${goal} is opened for a moment by ${opened}, and is back with the ${ordinal(fact.back)}, ${fact.backText}.`;
  }
  const away =
    fact.missing.length === 0
      ? ''
      : `: ${sayPieces(fact.missing)} ${fact.missing.length === 1 ? 'is' : 'are'} missing then`;
  return `${goal} goes with ${opened}, and is not restored${away}.`;
}

const MISTAKES: Readonly<Record<NearFact['mistake'], string>> = {
  prime: 'One turn goes the other way',
  mirror: 'It is the mirror image',
  setup: 'A turn of the top before it is missing',
  unfinished: 'The last turn is missing',
  rotation: 'The cube has to be turned first',
  wide: 'One turn takes the wrong number of layers',
};

function sayNear(fact: NearFact): string {
  const does =
    fact.effect === 'goal'
      ? sayReaching(fact)
      : `brings ${sayPieces(fact.pieces)} home and keeps what was done`;
  return `${MISTAKES[fact.mistake]}: ${fact.other} ${does}.`;
}

export function renderProposal(facts: readonly Fact[]): string[] {
  const verdict = one(facts, 'verdict');
  if (verdict === undefined) return [];
  const losses = all(facts, 'lost-in');
  const result = [
    sayVerdict(
      verdict,
      losses.filter(({ back }) => back === undefined),
    ),
  ];
  const others = all(facts, 'goal').filter((fact) => fact.goal !== verdict.goal && fact.holds);
  for (const fact of others) result.push(`After it ${sayState(fact, true)}, too.`);
  if (verdict.verdict === 'reaches' && verdict.gained.length > 0) {
    result.push(`With it ${sayCome(verdict)}.`);
  }
  const near = one(facts, 'near');
  if (near) result.push(sayNear(near));
  for (const loss of losses) result.push(sayLostIn(loss));
  const offset = one(facts, 'cross-offset');
  const order = one(facts, 'cross-order');
  if (offset) result.push(sayOffset(offset));
  if (order) result.push(sayOrder(order));
  const after = all(facts, 'goal').find((fact) => fact.goal === verdict.goal);
  if (after && !after.holds && verdict.verdict !== 'loses' && after.missing.length > 0) {
    result.push(
      `After it ${sayState(after, false)} yet: ${sayPieces(after.missing)} ${after.missing.length === 1 ? 'is' : 'are'} missing.`,
    );
  }
  const stand = one(facts, 'stand');
  if (stand) result.push(sayStand(stand).replace('This is', 'Judged'));
  return result;
}
