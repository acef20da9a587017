/** Texts for a terminal: made harmless, measured in columns, wrapped and counted. */

/**
 * Text of a file may hold characters that a terminal obeys; they are shown as a sign instead. Tabs
 * become spaces. Marks that turn the direction of writing around go the same way.
 */
export function harmless(text: string): string {
  return text
    .replaceAll('\t', '  ')
    .replaceAll(/[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '\u00b7');
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
const WIDE =
  /\p{Emoji_Presentation}|\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}|[\uff01-\uff60]|\ufe0f/u;

/** Columns that a text takes: two for an emoji or a wide letter of East Asia. */
export function columns(text: string): number {
  // Printable ASCII needs no look at its letters.
  if (/^[ -~]*$/u.test(text)) return text.length;
  let sum = 0;
  for (const { segment } of graphemes.segment(text)) {
    if (/^\p{M}+$/u.test(segment)) continue;
    sum += WIDE.test(segment) ? 2 : 1;
  }
  return sum;
}

export function padEnd(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columns(text)));
}

/** Lines of at most `width` columns where words allow it. */
export function wrap(text: string, width: number): string[] {
  return text.split('\n').flatMap((paragraph) => {
    const lines: string[] = [];
    let line = '';
    for (const word of harmless(paragraph).split(' ')) {
      if (line !== '' && columns(line) + 1 + columns(word) > width) {
        lines.push(line);
        line = word;
      } else line = line === '' ? word : `${line} ${word}`;
    }
    return [...lines, line];
  });
}

/** `1 error`, `3 turns`. */
export function plural(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** `cross, corners and middle`. */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}
