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
    ...KEYS.map((text) => ({ kind: 'key' as const, text, lower: text })),
    ...stages.names.map((text) => ({ kind: 'stage' as const, text, lower: text.toLowerCase() })),
  ];
  return (name) => {
    const wanted = normalName(name);
    if (known.has(wanted) || known.size >= MOST_LOOKUPS) return known.get(wanted);
    let best: UnknownKeyLine['suggestion'];
    let least = Infinity;
    for (const { kind, text, lower } of candidates) {
      const steps = stepsBetween(wanted, lower);
      if (steps !== undefined && steps < least) {
        best = { kind, text };
        least = steps;
      }
    }
    known.set(wanted, best);
    return best;
  };
}

/** Word by word, so that `my cross` is not taken for `ll cross`; undefined if too far. */
function stepsBetween(wanted: string, known: string): number | undefined {
  const first = wanted.split(' ');
  const second = known.split(' ');
  if (first.length !== second.length) return near(wanted, known, 1);
  let sum = 0;
  for (let i = 0; i < first.length; i++) {
    if (first[i] === second[i]) continue;
    const steps = near(
      first[i],
      second[i],
      allowedSteps(Math.max(first[i].length, second[i].length)),
    );
    if (steps === undefined) return undefined;
    sum += steps;
  }
  return sum;
}

function near(first: string, second: string, allowed: number): number | undefined {
  if (Math.abs(first.length - second.length) > allowed || allowed === 0) return undefined;
  const { steps } = distance(first, second);
  return steps <= allowed ? steps : undefined;
}

/** Short words are near to everything: `use`, `end` and `EO` get no suggestions. */
function allowedSteps(length: number): number {
  return length <= 3 ? 0 : length <= 6 ? 1 : 2;
}
