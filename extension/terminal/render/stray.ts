/** Where a learner's cube went astray, as a person reads it. */
import type { StrayJson } from '../json-searches.ts';
import type { Page } from './page.ts';
import { wrap } from './words.ts';

export function strayText({ stray }: StrayJson, page: Page): string {
  const { places, slips, back } = stray;
  const lines = [
    ...places.map(({ turns, number }) =>
      turns === 0
        ? 'The cube looks as it does before the first turn.'
        : `The cube looks as it does after turn ${number}.`,
    ),
    ...(slips.length > 0 ? ['Perhaps you did:'] : []),
    ...slips.map((slip) => `  ${slip}`),
  ];
  if (places.length === 0 && slips.length === 0)
    lines.push('No single slip on the way here explains this cube.');
  if (back !== null) {
    const proof = back.optimal ? ', the shortest way' : '';
    lines.push(`Back to the solve at this place${proof}: ${back.turns}`);
  }
  return lines
    .flatMap((line) => wrap(line, page.width))
    .map((line) => `${line}\n`)
    .join('');
}
