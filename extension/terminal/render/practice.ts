/** States to practise as a person reads them: one scramble a line, ready to be copied. */
import type { PracticeJson } from '../json-searches.ts';
import type { Page } from './page.ts';
import { harmless } from './words.ts';

export function practiceText(practice: PracticeJson, page: Page): string {
  const { states, goal, method, base, seed } = practice;
  const head = `// ${harmless(goal)} of ${method}, base ${base}: scramble with white up and green in front (seed ${seed})`;
  const rows = states.map(({ scramble }) =>
    scramble === '' ? '// nothing to scramble' : scramble,
  );
  return `${[page.tone('quiet', head), ...rows].join('\n')}\n`;
}
