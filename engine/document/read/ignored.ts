/**
 * Pieces of a pasted line that by their form are no turns: web addresses, list numbers and bullets,
 * counts and speeds, forum tags. Every expression here has bounded repeats, so that a line of a
 * megabyte is read in one pass.
 */
import type { Span } from '../../cube/place.ts';

const ADDRESS = /(?:https?:\/\/|www\.)\S+/gi;
/** Addresses and characters as web pages write them (`&#39;`): no comment begins inside. */
const PROTECTED = /(?:https?:\/\/|www\.)\S+|&#?\w{1,8};/gi;
const UNIT = '(?:s|secs?|seconds?|moves?|turns?|o?btm|htm|etm|stm|qtm|tps)';
const FORMS: readonly RegExp[] = [
  ADDRESS,
  // Forum tags; a single letter only in lower case and without more, for `[B, U]` is a commutator.
  /\[\/?[bius]\]|\[\*\]/g,
  /\[\/?(?:spoiler|quote|url|img|code|colou?r|size|font|cent(?:er|re)|left|right|list|hide|table|t[rdh])(?:[= ][^[\]]{0,200})?\]/gi,
  /<\/?(?:[bpiu]|br|em|strong|div|span|pre|code|li|ul|ol)(?: [^<>]{0,200})?\/?>/gi,
  // Counts in brackets: (8), (8/24), (8, 3.4 s), [8], (7 moves).
  new RegExp(
    `[([]\\s{0,3}\\d[\\d.,/:=+ ]{0,30}(?:${UNIT}\\b[ ,/]{0,3}[\\d.,/: ]{0,12}){0,2}[)\\]]`,
    'gi',
  ),
  // Emphasis and ruled lines.
  /```\w{0,20}|\*\*|__|(?:^|(?<=\s))[-–—=_*]{3,}(?=\s|$)/g,
];
/** Without any of these no form is there; most lines are passed by that. */
const HINT = /[[(<*_=]|[-–—]{3}|```|:\/\/|www\./i;
const LIST_START =
  /^\s{0,40}(?:>[>\s]{0,20})?(?:[-*•‣·–—+](?=\s)\s{0,8})?(?:\d{1,3}[.)](?![\d)]))?/;
const TOKEN = /\S+/g;
const SPEED =
  /^[=≈~]?\d[\d.,:]{0,9}(?:[/=≈][\d.,:]{1,10}){0,3}(?:s|sec|tps|htm|etm|stm|qtm)?[,;.]?$/i;

/** Stretches between `start` and `end` in which no comment begins: addresses and `&#39;`. */
export function protectedIn(text: string, start: number, end: number): Span[] {
  return Array.from(text.slice(start, end).matchAll(PROTECTED), (match) => ({
    start: start + match.index,
    end: start + match.index + match[0].length,
  }));
}

/** Spans in order, not overlapping. `atLineStart`: list numbers and bullets are looked for. */
export function ignoredIn(text: string, start: number, end: number, atLineStart: boolean): Span[] {
  const part = text.slice(start, end);
  const found: Span[] = [];
  const add = (from: number, to: number): void => {
    found.push({ start: start + from, end: start + to });
  };
  if (atLineStart) {
    const match = LIST_START.exec(part);
    if (match !== null && match[0].trim() !== '') {
      add(match[0].length - match[0].trimStart().length, match[0].trimEnd().length);
    }
  }
  if (HINT.test(part)) {
    for (const form of FORMS) {
      for (const match of part.matchAll(form)) add(match.index, match.index + match[0].length);
    }
  }
  if (/\d/.test(part)) {
    for (const match of part.matchAll(TOKEN)) {
      const token = match[0];
      if (token.length > 40) continue;
      const speed = SPEED.test(token) && /\d[./:=≈,]+\d|\d(?:s|tps|[hesq]tm)/i.test(token);
      if (speed || /^\d{1,3}\.$/.test(token)) add(match.index, match.index + token.length);
    }
  }
  return found.length === 0 ? found : withoutOverlaps(found);
}

function withoutOverlaps(found: Span[]): Span[] {
  found.sort((a, b) => a.start - b.start || b.end - a.end);
  const spans: Span[] = [];
  let reached = 0;
  for (const span of found) {
    if (span.start < reached) continue;
    spans.push(span);
    reached = span.end;
  }
  return spans;
}
