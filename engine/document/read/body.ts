/**
 * Telling turns from prose. A line of turns goes to the notation reader as a whole, with what is
 * prose by its form blanked out; a line of words executes nothing, lest `Bad luck` turns a cube.
 */
import type { Span } from '../../cube/place.ts';
import { looksLikeTurns, readSequence } from '../../notation/read.ts';
import { ignoredIn } from './ignored.ts';
import { looksSpoken } from './spoken.ts';
import type { Body } from './tree.ts';
import { blanked, trimmed } from './words.ts';

/** Brackets, commas and colons stand between tokens; they belong to turns and to prose alike. */
const TOKEN = /[^\s\u200b\u2060()[\]{},:：]+/g;
/** Repeats and stray primes say nothing either way. */
const NEUTRAL = /^(?:[×*^]?\d{1,20}['’′´`‘]?|['’′´`‘]{1,3}|[-–—|=]{1,3})$/i;
const STILL = /^(?:~+|…+|\.{3,}|\?{3,})$/;
const TURN_LETTERS = /[UDLRFBMESXYZ]/gi;
const WORD = /\p{L}{3}/u;
const PLAIN = /^[\p{L}\p{M}\p{P}\p{S}\d]*$/u;
const TURN_SIGNS = /[UDLRFBMESudlrfbxyz]['’′´`‘2]/;

export interface Weight {
  /** Turns in the tokens that can be turns. */
  readonly turns: number;
  /** Words of three or more letters that cannot be turns. */
  readonly words: number;
  /** Other tokens that cannot be turns. */
  readonly others: number;
  readonly kind: 'empty' | 'turns' | 'prose' | 'spoken';
}

/** Texts say the same few tokens over and over; short ones are remembered, not without end. */
const remembered = new Map<string, boolean>();
const MOST_REMEMBERED = 2000;

/** Whether a token between blanks and brackets can be turns. */
export function isTurnToken(token: string): boolean {
  const known = remembered.get(token);
  if (known !== undefined) return known;
  const found =
    STILL.test(token) || (token.length > 1 && token.startsWith('@')) || looksLikeTurns(token);
  if (token.length <= 8 && remembered.size < MOST_REMEMBERED) remembered.set(token, found);
  return found;
}

/**
 * Weighs a stretch without pieces to be ignored: a line with at least as many words as turns is
 * prose, unless it is spoken; a line of nothing but turns never is.
 */
export function weigh(text: string): Weight {
  const tokens = text.match(TOKEN) ?? [];
  let turns = 0;
  let words = 0;
  let others = 0;
  let still = 0;
  let signs = 0;
  for (const token of tokens) {
    if (NEUTRAL.test(token)) continue;
    if (isTurnToken(token)) {
      if (STILL.test(token)) still++;
      else if (token.startsWith('@')) turns++;
      else turns += token.match(TURN_LETTERS)?.length ?? 0;
    } else if (TURN_SIGNS.test(token) && !/\p{L}{4}/u.test(token)) {
      // `R'U2Qx` is a slip of the pen in turns, no word.
      others++;
      signs++;
    } else if (WORD.test(token)) words++;
    else {
      others++;
      if (!PLAIN.test(token)) signs++;
    }
  }
  const weight = { turns, words, others };
  if (tokens.length === 0) return { ...weight, kind: text.trim() === '' ? 'empty' : 'turns' };
  if (words === 0 && others === 0)
    return { ...weight, kind: turns + still > 0 ? 'turns' : 'prose' };
  if (looksSpoken(tokens, isTurnToken)) return { ...weight, kind: 'spoken' };
  if (words > 0) return { ...weight, kind: words >= turns ? 'prose' : 'turns' };
  return { ...weight, kind: turns + still + signs > 0 ? 'turns' : 'prose' };
}

/** Reads a stretch of a line without its comment; undefined if nothing is there. */
export function readBody(
  text: string,
  start: number,
  end: number,
  atLineStart = false,
): Body | undefined {
  const { text: words, span } = trimmed(text, start, end);
  if (words === '') return undefined;
  const ignored = ignoredIn(text, span.start, span.end, atLineStart);
  const line = blanked(text, ignored);
  const { kind } = weigh(line.slice(span.start, span.end));
  if (kind === 'prose' || kind === 'spoken') return { kind, text: words, span };
  return { kind: 'turns', span, turns: readSequence(line, span.start, span.end), ignored };
}

/** How a stretch would be read, without reading it. */
export function weighStretch(text: string, start: number, end: number): Weight {
  const ignored: readonly Span[] = ignoredIn(text, start, end, false);
  return weigh(blanked(text, ignored).slice(start, end));
}
