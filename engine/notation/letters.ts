/**
 * The characters of the notation: which letters are turns, which marks mean a prime, how one turn
 * reads at a place of the text. Bracket structure is the business of `read.ts`.
 */
import { makeTurn, printTurn, type Family, type Turn } from '../cube/turn.ts';

/**
 * Apostrophes, primes, accents and quotation marks that keyboards, forums and word processors put
 * where a prime is meant.
 */
const PRIMES = new Set("'’‘‛′‵ʹʼʻʽʾʿˈˊˋ`´＇｀՚׳ꞌ΄᾽᾿´`ߴ❛❜");

/** Other ways of writing the inverse: `Ri`, `R-`. */
const INVERSE_LETTERS = new Set('i-−‐‑–');

const FACE_LETTERS = new Set('UDLRFB');
const WIDE_LETTERS = new Set('udlrfb');
const SLICES_AND_ROTATIONS = new Set('MESxyz');
const UPPER_ROTATIONS = new Set('XYZ');
const DIGITS = new Map([
  ['2', 2],
  ['3', 3],
  ['²', 2],
  ['³', 3],
]);

export function isPrime(character: string): boolean {
  return PRIMES.has(character);
}

export function isDigit(character: string): boolean {
  return character >= '0' && character <= '9' && character.length === 1;
}

/** Invisible characters that pasted text carries between words count as white space. */
export function isSpace(character: string): boolean {
  return character === ' ' || /^[\s\u200b\u2060]$/u.test(character);
}

export interface TurnRead {
  readonly turn: Turn;
  readonly end: number;
  /** Canonical spelling, where the text has another one. */
  readonly newText: string | undefined;
}

/** The turn that starts at `from` and ends before `end` at the latest; undefined if there is none. */
export function readTurn(text: string, from: number, end: number): TurnRead | undefined {
  let at = from;
  let unusual = false;
  // A number stands before a letter only with `w`.
  const layers = text[at] === '2' && at + 2 < end && text[at + 2] === 'w';
  if (layers) {
    unusual = true;
    at++;
  }
  const letter = text[at];
  let family: Family;
  if (FACE_LETTERS.has(letter)) {
    at++;
    family = letter as Family;
    if (at < end && text[at] === 'w') {
      family = `${letter}w` as Family;
      at++;
    }
  } else if (WIDE_LETTERS.has(letter)) {
    at++;
    family = `${letter.toUpperCase()}w` as Family;
    if (at < end && text[at] === 'w') {
      unusual = true;
      at++;
    }
  } else if (layers) {
    return undefined;
  } else if (SLICES_AND_ROTATIONS.has(letter)) {
    at++;
    family = letter as Family;
  } else if (UPPER_ROTATIONS.has(letter)) {
    at++;
    family = letter.toLowerCase() as Family;
    unusual = true;
  } else {
    return undefined;
  }
  const inverse = (): boolean => {
    if (at >= end) return false;
    const other = INVERSE_LETTERS.has(text[at]);
    if (!other && !isPrime(text[at])) return false;
    unusual ||= other;
    at++;
    return true;
  };
  let inverted = inverse();
  let amount = 1;
  const digit = at < end ? DIGITS.get(text[at]) : undefined;
  // In `R2Rw` the number belongs to the turn before it, as in `(A)2R`.
  if (digit !== undefined) {
    unusual ||= !isDigit(text[at]);
    amount = digit;
    at++;
    inverted ||= inverse();
  }
  const turn = makeTurn(family, inverted ? -amount : amount);
  return { turn, end: at, newText: unusual ? printTurn(turn) : undefined };
}

const NAME = /@([\p{L}\p{N}]+(?:[-_][\p{L}\p{N}]+)*)/uy;

/** `@name` at `from`: its name in lower case and where it ends. */
export function readName(
  text: string,
  from: number,
  end: number,
): { name: string; end: number } | undefined {
  NAME.lastIndex = from;
  const found = NAME.exec(text);
  if (found === null || from + found[0].length > end) return undefined;
  return { name: found[1].toLowerCase(), end: from + found[0].length };
}

/** `Right insert` → `right-insert`: what a sequence with this title is called after an `@`. */
export function sequenceName(title: string): string {
  return Array.from(title.toLowerCase())
    .filter((character) => !isPrime(character))
    .join('')
    .replace(/[^\p{L}\p{N}_]+/gu, '-')
    .replace(/^[-_]+|[-_]+$/gu, '');
}
