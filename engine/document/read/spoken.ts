/**
 * Recognising turns as people say them: `R prime U two R prime`. Only recognising: a line is spoken
 * if it has turn letters and words for amounts, and nothing but such and filling words.
 */
const AMOUNTS = new Set([
  'prime',
  'primed',
  'inverse',
  'inverted',
  'reverse',
  'two',
  'twice',
  'double',
  'half',
  'squared',
  'counterclockwise',
  'anticlockwise',
  'counter-clockwise',
  'anti-clockwise',
  'clockwise',
  'wide',
  'inverso',
  'three',
]);
const FILLERS = new Set([
  'and',
  'then',
  'now',
  'next',
  'again',
  'do',
  'a',
  'the',
  'turn',
  'turns',
  'slice',
  'counter',
  'anti',
  'wise',
  'finally',
  'so',
  'after',
  'that',
  'it',
  'by',
  'go',
  'first',
  'with',
  'layer',
  'lower',
  'case',
  'small',
  'little',
  'rotate',
  'rotation',
  'you',
  'we',
  'i',
]);
const FACES = new Set(['right', 'left', 'up', 'down', 'front', 'back', 'middle']);
const LETTER = /^[UDLRFBMESXYZudlrfbmesxyz]w?$/;

/** A line of a megabyte that begins like speech is read once, word by word. */
export function looksSpoken(
  tokens: readonly string[],
  isTurns: (token: string) => boolean,
): boolean {
  let letters = 0;
  let amounts = 0;
  for (const token of tokens) {
    const word = token.replace(/[.;!?]$/, '');
    const lower = word.toLowerCase();
    if (AMOUNTS.has(lower)) amounts++;
    else if (LETTER.test(word) || FACES.has(lower)) letters++;
    else if (!FILLERS.has(lower) && !isTurns(word) && !/^[23]$/.test(word) && word !== '')
      return false;
  }
  return letters > 0 && amounts > 0;
}
