/** A way as a person reads it. The person's way is a `.moves` text, to be saved as it is. */
import type { WayJson } from '../json-searches.ts';
import type { Page } from './page.ts';
import { harmless, listed, plural, wrap } from './words.ts';

export function solveText(way: WayJson, page: Page): string {
  if (way.text !== undefined) return way.text;
  const { turns, counts, optimal, atLeast, keeps = [] } = way;
  if (turns === '') return `${page.tone('good', `Nothing to do: ${way.goal} holds.`)}\n`;
  const length = plural(counts.obtm ?? 0, 'turn');
  const proof = optimal
    ? `${length}, proven shortest`
    : atLeast === undefined
      ? `${length}, not proven shortest`
      : `${length}; proven that at least ${atLeast} are needed`;
  const kept = keeps.length === 0 ? '' : `, keeping ${listed(keeps)}`;
  return [
    ...wrap(turns, page.width).map((line) => page.strong(line)),
    ...wrap(harmless(`${goalOf(way)}${kept}: ${proof}.`), page.width),
  ]
    .map((line) => `${line}\n`)
    .join('');
}

function goalOf({ goal, method, base }: WayJson): string {
  return goal === 'solved' ? 'Solves the cube' : `Reaches ${goal} of ${method}, base ${base}`;
}
