/** Slips as a person reads them: the likeliest first. */
import type { SlipsJson } from '../json-searches.ts';
import type { Page } from './page.ts';
import { harmless, plural, wrap } from './words.ts';

export function slipsText({ slips, solve }: SlipsJson, page: Page): string {
  if (solve === null) {
    return `${page.tone('good', 'Every solve ends as it claims; there is no slip to look for.')}\n`;
  }
  const title = solve.title === '' ? 'The solve' : harmless(solve.title);
  const head = `${page.strong(title)} ${page.tone('quiet', `line ${solve.line + 1}`)}`;
  if (slips.length === 0) {
    return `${head}\n  No slip of one or two turns explains what is wrong.\n`;
  }
  const rows = slips.flatMap((slip, index) => {
    const left = slip.left === 0 ? '' : ` (${plural(Math.ceil(slip.left), 'finding')} left)`;
    return wrap(`${slip.title}${left}`, page.width - 6).map((line, i) =>
      i === 0 ? `  ${index + 1}.  ${line}` : `      ${line}`,
    );
  });
  return `${[head, ...rows].join('\n')}\n`;
}
