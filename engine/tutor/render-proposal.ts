/** The judgement on proposed turns: the verdict first, then what they reach, gain, lose and bring back. */
import type { Fact, LostInFact, VerdictFact } from './facts.ts';
import { sayOffset, sayOrder } from './render-goals.ts';
import { sayStand } from './render-where.ts';
import { capital, sayGoal, sayPieces, sayReaching, sayState } from './say.ts';
import { all, one } from './select.ts';

function ordinal(n: number): string {
  const tens = n % 100;
  const suffix = tens >= 11 && tens <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return `${n}${suffix}`;
}

function sayVerdict(fact: VerdictFact, lost: readonly LostInFact[]): string {
  const { turns, gained, dropped } = fact;
  const verb = gained.length === 1 ? 'comes' : 'come';
  switch (fact.verdict) {
    case 'reaches':
      return `Yes, that is right: ${turns} ${sayReaching(fact)}.`;
    case 'gains':
      return `Yes, that works: with ${turns} ${sayPieces(gained)} ${verb} home, and nothing that was done is lost.`;
    case 'keeps':
      return `That does no harm: ${sayState(fact, true)} before and after ${turns}.`;
    case 'nothing':
      return `No, not by itself: ${turns} brings no new piece of ${sayGoal(fact)} home, and loses nothing that was done.`;
    case 'trades':
      return gained.length > 0 && dropped.length > 0
        ? `Not quite: with ${turns} ${sayPieces(gained)} ${verb} home, but ${sayPieces(dropped)} ${dropped.length === 1 ? 'leaves' : 'leave'}.`
        : `Not quite: ${turns} ${sayReaching(fact)}, but something that was done is lost.`;
    case 'loses': {
      const [first] = lost;
      if (first) return `No: ${turns} loses ${sayGoal(first)}.`;
      return dropped.length > 0
        ? `No: with ${turns} ${sayPieces(dropped)} ${dropped.length === 1 ? 'leaves' : 'leave'} home.`
        : `No: after ${turns} ${sayState(fact, false)} any more.`;
    }
  }
}

export function sayLostIn(fact: LostInFact): string {
  const goal = capital(sayGoal(fact));
  const opened = `its ${ordinal(fact.at)} turn, ${fact.atText}`;
  if (fact.back !== undefined && fact.backText !== undefined) {
    return `${goal} is opened for a moment by ${opened}, and is back with the ${ordinal(fact.back)}, ${fact.backText}.`;
  }
  const away =
    fact.missing.length === 0
      ? ''
      : `: ${sayPieces(fact.missing)} ${fact.missing.length === 1 ? 'is' : 'are'} missing then`;
  return `${goal} goes with ${opened}, and is not restored${away}.`;
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
    result.push(`It brings ${sayPieces(verdict.gained)} home.`);
  }
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
