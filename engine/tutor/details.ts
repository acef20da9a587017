/** What a question says besides its intent and slots: how much help, which side of a sequence, which flaw. */
import { conceptsOfWord } from './concepts.ts';
import type { Aspect, Flaw, HelpWanted, Memory } from './intents.ts';

export function helpWanted(
  sentence: string,
  concepts: ReadonlySet<string>,
  memory: Memory,
): HelpWanted {
  const has = (...wanted: string[]): boolean => wanted.some((concept) => concepts.has(concept));
  const asksTurns =
    /\b(?:turns|moves|solution|sequence|algorithm|algorithms|alg|algs|answer)\b/.test(sentence);
  if (asksTurns && has('show', 'just', 'wh')) return 3;
  if (/\bjust (?:show|tell|give|do)\b/.test(sentence)) return 3;
  if (has('more') || /\bnot enough\b|\bstill (?:stuck|lost|do not)\b|\bnext hint\b/.test(sentence))
    return memory.intent === 'next-step' ? 'more' : undefined;
  if (has('small') || /\bfirst hint\b/.test(sentence)) return 1;
  if (has('why', 'whythis') || /\bexplain|\bpiece place\b/.test(sentence)) return 2;
  return undefined;
}

export function aspectOf(concepts: ReadonlySet<string>): Aspect {
  if (concepts.has('inverse')) return 'inverse';
  if (concepts.has('mirror')) return 'mirror';
  if (concepts.has('order') || concepts.has('howoften')) return 'order';
  if (concepts.has('count') || concepts.has('howmanyturns')) return 'counts';
  return 'effect';
}

const COUNTS: ReadonlyMap<string, number> = new Map([
  ...['a', 'an', 'one', 'single', '1', 'just', 'only'].map((word) => [word, 1] as const),
  ...['two', '2', 'both', 'pair'].map((word) => [word, 2] as const),
  ...['three', '3'].map((word) => [word, 3] as const),
  ...['four', '4', 'all'].map((word) => [word, 4] as const),
]);

/** "only one edge is flipped", "two corners swapped", "a single twisted corner". */
export function flawIn(words: readonly string[]): Flaw | undefined {
  const swapped = words.some((word) => conceptsOfWord(word).has('swapped'));
  const turned = words.find((word) => conceptsOfWord(word).has('turned'));
  const corner =
    words.some((word) => /^corners?$/.test(word)) || turned?.startsWith('twist') === true;
  const pieces = corner ? 'corners' : 'edges';
  if (!swapped && turned === undefined) return undefined;
  if (
    !corner &&
    !words.some((word) => /^edges?$/.test(word)) &&
    !(turned ?? 'flip').startsWith('flip')
  )
    return undefined;
  const number = words.find((word) => (COUNTS.get(word) ?? 1) > 1);
  const plural = words.includes('edges') || words.includes('corners');
  const count = number === undefined ? (swapped || plural ? 2 : 1) : (COUNTS.get(number) ?? 1);
  return { pieces, what: swapped ? 'swapped' : corner ? 'twisted' : 'flipped', count };
}
