/** A dialogue as a person reads it: question, answer, and what can be asked next. */
import type { AskJson } from '../json.ts';
import type { Page } from './page.ts';
import { harmless, wrap } from './words.ts';

const INDENT = '  ';

export function askText({ answers }: AskJson, page: Page): string {
  const blocks = answers.map(({ question, text, followUps }, i) => {
    const lines = [`${page.tone('title', '?')} ${page.strong(harmless(question))}`];
    lines.push(
      ...wrap(text, page.width - INDENT.length).map((line) => `${INDENT}${line}`.trimEnd()),
    );
    // Only the last answer's offers can still be taken up.
    if (i === answers.length - 1 && followUps.length > 0) {
      lines.push('', page.tone('quiet', 'You can go on with:'));
      lines.push(
        ...followUps.map((offer) => `${INDENT}${page.tone('title', '?')} ${harmless(offer)}`),
      );
    }
    return lines.join('\n');
  });
  return `${blocks.join('\n\n')}\n`;
}
