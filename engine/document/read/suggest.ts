/** The nearest known key or stage name to a word that is none. */
import distance from 'damerau-levenshtein';
import { KEYS, type StageWords, type UnknownKeyLine } from './tree.ts';
import { normalName } from './words.ts';

/** Comparing is the dearest thing the reader does; a text with more unknown keys than this is none to be helped. */
const MOST_LOOKUPS = 300;

export type Suggest = (name: string) => UnknownKeyLine['suggestion'];

/** A function with a memory and a budget, to be made once for a text. */
export function makeSuggest(stages: StageWords): Suggest {
  const known = new Map<string, UnknownKeyLine['suggestion']>();
  const candidates = [
    ...KEYS.map((text) => ({ kind: 'key' as const, text, lower: text as string })),
    ...stages.names.map((text) => ({ kind: 'stage' as const, text, lower: text.toLowerCase() })),
  ];
  return (name) => {
    const wanted = normalName(name);
    if (known.has(wanted) || known.size >= MOST_LOOKUPS) return known.get(wanted);
    let best: UnknownKeyLine['suggestion'];
    let least = Infinity;
    for (const { kind, text, lower } of candidates) {
      const allowed = allowedSteps(Math.max(wanted.length, lower.length));
      if (allowed === 0 || Math.abs(wanted.length - lower.length) > allowed) continue;
      const { steps } = distance(wanted, lower);
      if (steps <= allowed && steps < least) {
        best = { kind, text };
        least = steps;
      }
    }
    known.set(wanted, best);
    return best;
  };
}

/** Short words are near to everything: `use`, `end` and `EO` get no suggestions. */
function allowedSteps(length: number): number {
  return length <= 3 ? 0 : length <= 5 ? 1 : 2;
}
