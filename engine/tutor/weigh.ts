/** Weighs the concepts of a sentence against the rules; words that nobody knows count against every intent. */
import { CONCEPT_WORDS, conceptsOf, conceptsOfWord } from './concepts.ts';
import type { Intent } from './intents.ts';
import { RULES } from './rules.ts';
import { COMMON_WORDS, KNOWN_WORDS, OPENED, TERMS } from './words.ts';

const OPEN: ReadonlySet<string> = new Set([...OPENED.values()].flatMap((text) => text.split(' ')));
const CONCEPTS: ReadonlySet<string> = new Set(CONCEPT_WORDS);

interface Compiled {
  readonly intent: Intent;
  readonly weight: number;
  readonly needs: readonly (readonly string[])[];
  readonly without: readonly string[];
}

const COMPILED: readonly Compiled[] = RULES.map(([intent, weight, needs, without = '']) => ({
  intent,
  weight,
  needs: needs.split(' ').map((word) => word.split('|')),
  without: without.split(' ').filter((word) => word !== ''),
}));

/** What a sentence must weigh at least. */
const ENOUGH = 4.5;
/** Each word that is not known takes so much; less where slots say that a cube is spoken of. */
const PER_UNKNOWN = 2;
const PER_UNKNOWN_WITH_SLOTS = 1;

export function isKnown(word: string): boolean {
  return (
    word.length < 3 ||
    COMMON_WORDS.has(word) ||
    KNOWN_WORDS.has(word) ||
    TERMS.has(word) ||
    OPEN.has(word) ||
    CONCEPTS.has(word) ||
    conceptsOfWord(word).size > 0
  );
}

export interface Weighed {
  readonly intent: Intent | undefined;
  readonly concepts: ReadonlySet<string>;
}

export function weigh(sentence: string): Weighed {
  const concepts = conceptsOf(sentence);
  const words = sentence.split(' ').filter((word) => /^\p{L}/u.test(word));
  const unknown = words.filter((word) => !isKnown(word)).length;
  const slots = /<(?:piece|goal|turns|slot|term|place)>/.test(sentence);
  const penalty = unknown * (slots ? PER_UNKNOWN_WITH_SLOTS : PER_UNKNOWN);
  let best: Compiled | undefined;
  for (const rule of COMPILED) {
    if (best !== undefined && rule.weight <= best.weight) continue;
    if (rule.without.some((concept) => concepts.has(concept))) continue;
    if (rule.needs.every((some) => some.some((concept) => concepts.has(concept)))) best = rule;
  }
  const enough = best !== undefined && best.weight - penalty >= ENOUGH;
  return { intent: enough ? best?.intent : undefined, concepts };
}
