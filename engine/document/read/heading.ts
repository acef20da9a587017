/**
 * The part of a line before a colon as a stage heading: `cross`, `F2L #1 (7)`, `cross, 3.4 s`,
 * `2nd pair (8 moves, 12.3 s)`. Count and time are taken off its end; what remains must be a stage.
 */
import type { Span } from '../../cube/place.ts';
import type { StageLine, StageWords, Words } from './tree.ts';
import { trimmed } from './words.ts';

export type Heading = Pick<StageLine, 'heading' | 'name' | 'time' | 'count'>;

/** Longer stretches are no headings; it bounds the work on a line. */
export const LONGEST_HEADING = 80;

const TAIL = /[([]([^()[\]]{1,40})[)\]]$/;
const NUMBER =
  /(?:(\d{1,3}):)?(\d{1,4}(?:[.,]\d{1,3})?)\s{0,3}(s|secs?|seconds?|"|moves?|turns?|o?btm|htm|etm|stm|qtm)?$/i;
const LOOSE = /(?:[,;@–—-]|\bat|\bin)\s{0,3}$/i;

type Claim = { readonly kind: 'time' | 'count'; readonly value: number; readonly span: Span };

export function readHeading(heading: Words, stages: StageWords): Heading | undefined {
  if (heading.text === '' || heading.text.length > LONGEST_HEADING) return undefined;
  const { text, span } = heading;
  let best: Heading | undefined;
  let rest = text;
  let time: Heading['time'];
  let count: Heading['count'];
  // The shortest name wins: the names of stages may be read with their counts on as well.
  for (;;) {
    const name = trimmed(rest, 0, rest.length);
    if (name.text !== '' && stages.isStage(name.text)) {
      const start = span.start + name.span.start;
      const place = { start, end: start + name.text.length };
      best = { heading, name: { text: name.text, span: place }, time, count };
    }
    const tail = readTail(rest, span.start);
    if (tail === undefined) return best;
    for (const { kind, value, span: place } of tail.claims) {
      if (kind === 'time') time ??= { seconds: value, span: place };
      else count ??= { value, span: place };
    }
    rest = tail.rest;
  }
}

/** Takes one bracket, or one number after a comma or dash, off the end. */
function readTail(text: string, offset: number): { rest: string; claims: Claim[] } | undefined {
  const bracket = TAIL.exec(text);
  if (bracket !== null) {
    const claims: Claim[] = [];
    let at = bracket.index + 1;
    for (const part of bracket[1].split(/[;/]|,(?!\d)/)) {
      const claim = readClaim(part, offset + at);
      if (claim === undefined) return undefined;
      claims.push(claim);
      at += part.length + 1;
    }
    return { rest: text.slice(0, bracket.index).trimEnd(), claims };
  }
  const number = NUMBER.exec(text);
  if (number === null) return undefined;
  const before = text.slice(0, number.index);
  const loose = LOOSE.exec(before);
  const claim = readClaim(number[0], offset + number.index);
  if (loose === null || claim === undefined) return undefined;
  return { rest: before.slice(0, loose.index).trimEnd(), claims: [claim] };
}

function readClaim(text: string, offset: number): Claim | undefined {
  const words = trimmed(text, 0, text.length);
  const number = NUMBER.exec(words.text);
  if (number === null || number.index > 0) return undefined;
  const [, minutes, digits, unit] = number;
  const value = Number(digits.replace(',', '.')) + 60 * Number(minutes ?? 0);
  const start = offset + words.span.start;
  const span = { start, end: start + words.text.length };
  const isTime =
    minutes !== undefined ||
    /[.,]/.test(digits) ||
    (/^(?:s|"$)/i.test(unit ?? '') && !/^stm$/i.test(unit ?? ''));
  return { kind: isTime ? 'time' : 'count', value, span };
}
