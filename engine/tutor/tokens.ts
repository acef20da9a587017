/**
 * A question as tokens: turns, numbers, and words in lower case with contractions opened and typing
 * errors mended. Turns are found before words, because to a word splitter `R' U2` is rubble.
 */
import distance from 'damerau-levenshtein';
import { findTurns } from './turns-in-text.ts';
import type { TurnsRef } from './intents.ts';
import { CONCEPT_WORDS } from './concepts.ts';
import { COMMON_WORDS, KNOWN_WORDS, OPENED, TERMS } from './words.ts';

export type Token =
  | { readonly kind: 'turns'; readonly text: string; readonly turns: TurnsRef }
  | { readonly kind: 'number'; readonly text: string; readonly value: number }
  | { readonly kind: 'word'; readonly text: string; readonly raw: string }
  | { readonly kind: 'mark'; readonly text: string };

const ORDINAL = /^(\d+)(?:st|nd|rd|th)$/;
const SEGMENTER = new Intl.Segmenter('en', { granularity: 'word' });
const TERM_LIST = [...new Set([...TERMS, ...CONCEPT_WORDS])];
const TARGETS = new Set(TERM_LIST);

/** The term that was probably meant: one slip of the keyboard in four to six letters, two in longer words. */
export function mended(word: string): string {
  if (word.length < 4 || TARGETS.has(word) || KNOWN_WORDS.has(word) || COMMON_WORDS.has(word))
    return word;
  let best = word;
  let least = word.length < 7 ? 2 : 3;
  for (const term of TERM_LIST) {
    if (Math.abs(term.length - word.length) >= least || term.length < 3) continue;
    // The first letter is rarely the wrong one.
    if (!term.startsWith(word.charAt(0)) && word.length < 6) continue;
    const { steps } = distance(word, term);
    if (steps < least) [best, least] = [term, steps];
  }
  return best;
}

function pushWords(text: string, into: Token[]): void {
  // Joined by hyphens or slashes are colours and slots; the segmenter keeps "isn't" whole.
  for (const { segment, isWordLike } of SEGMENTER.segment(text.replace(/[’‘`´]/g, "'"))) {
    if (segment.trim() === '') continue;
    const lower = segment.toLowerCase();
    if (!isWordLike) {
      into.push({ kind: 'mark', text: lower });
    } else if (/^\d+$/.test(lower)) {
      into.push({ kind: 'number', text: lower, value: Number(lower) });
    } else if (ORDINAL.test(lower)) {
      into.push({ kind: 'word', text: lower, raw: segment });
    } else {
      const opened = OPENED.get(lower) ?? lower.replace(/'s$/, '');
      for (const word of opened.split(' ')) {
        into.push({ kind: 'word', text: mended(word), raw: segment });
      }
    }
  }
}

/** The tokens of one question. */
export function tokenize(text: string): Token[] {
  const result: Token[] = [];
  let at = 0;
  for (const { start, end, turns } of findTurns(text)) {
    pushWords(text.slice(at, start), result);
    result.push({ kind: 'turns', text: turns.text, turns });
    at = end;
  }
  pushWords(text.slice(at), result);
  return result;
}
