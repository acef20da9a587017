/**
 * The part of a line before a colon as a key, and what follows it as the value. Keys are sought
 * before comment marks, so that a `#` in a heading or a title is no comment.
 */
import { isTurnToken, readBody, weighStretch } from './body.ts';
import { findComment, type CommentMarks } from './comment.ts';
import { LONGEST_HEADING, readHeading } from './heading.ts';
import type { Suggest } from './suggest.ts';
import {
  KEYS,
  type Key,
  type KeyLine,
  type LineContent,
  type StageWords,
  type UnknownKeyLine,
  type Words,
} from './tree.ts';
import { trimmed } from './words.ts';

const MARKS: Readonly<Record<Key, CommentMarks>> = {
  title: 'name',
  solver: 'name',
  date: 'name',
  note: 'none',
  use: 'name',
  solve: 'name',
  sequence: 'name',
  aside: 'name',
  scramble: 'turns',
  end: 'turns',
  method: 'list',
  goal: 'list',
  time: 'value',
  start: 'value',
  holding: 'value',
  base: 'value',
  keeps: 'value',
  opens: 'value',
  does: 'value',
  order: 'value',
  check: 'value',
};
const KEY_SET: ReadonlySet<string> = new Set(KEYS);
/** A heading may hold a colon of its own (`cross, 0:03.4:`), hardly more. */
const COLONS_TRIED = 3;
/** `My solve (45):` is a key with a count. */
const COUNT_TAIL = /\s{0,5}[([][^()[\]]{0,30}[)\]]$/;
const KEY_LIKE = /^\p{L}[\p{L}\p{M}\p{N} _'’.#&+/-]{0,39}$/u;

export interface KeyContext {
  readonly stages: StageWords;
  readonly suggest: Suggest;
}

/** A key, stage or unknown key whose name begins at `start`; undefined if the line begins otherwise. */
export function readKeyLine(
  text: string,
  start: number,
  context: KeyContext,
): LineContent | undefined {
  const limit = Math.min(text.length, start + LONGEST_HEADING + 1);
  let first: number | undefined;
  let colon = findColon(text, start, limit);
  for (let tried = 0; colon < limit && tried < COLONS_TRIED; tried++) {
    first ??= colon;
    const name = trimmed(text, start, colon);
    const key = keyOf(name.text);
    if (key !== undefined) return keyLine(text, key, name, colon);
    const heading = readHeading(name, context.stages);
    if (heading !== undefined) {
      return {
        kind: 'stage',
        ...heading,
        colon: colonSpan(colon),
        ...bodyAndComment(text, colon + 1),
      };
    }
    colon = findColon(text, colon + 1, limit);
  }
  return first === undefined ? undefined : unknownKeyLine(text, start, first, context);
}

/** A whole line, or all of it before its comment, that is a key or a stage. */
export function readBareHeading(
  text: string,
  start: number,
  end: number,
  context: KeyContext,
): LineContent | undefined {
  const name = trimmed(text, start, end);
  if (name.text.length === 0 || name.text.length > LONGEST_HEADING) return undefined;
  const key = keyOf(name.text);
  const nothing = trimmed(text, name.span.end, name.span.end);
  if (key !== undefined) {
    return {
      kind: 'key',
      key,
      name,
      colon: undefined,
      value: nothing,
      body: undefined,
      comment: undefined,
    };
  }
  const heading = readHeading(name, context.stages);
  return (
    heading && { kind: 'stage', ...heading, colon: undefined, body: undefined, comment: undefined }
  );
}

function findColon(text: string, from: number, limit: number): number {
  let at = from;
  while (at < limit && !(text[at] === '：' || (text[at] === ':' && !isInTime(text, at)))) at++;
  return at;
}

/** `0:12.4` is a time, and its colon ends no key. */
function isInTime(text: string, colon: number): boolean {
  return /^\d:\d/.test(text.slice(Math.max(0, colon - 1), colon + 2));
}

function colonSpan(colon: number): { start: number; end: number } {
  return { start: colon, end: colon + 1 };
}

function keyOf(name: string): Key | undefined {
  const key = name.toLowerCase();
  return KEY_SET.has(key) ? (key as Key) : undefined;
}

function bodyAndComment(text: string, from: number): Pick<KeyLine, 'body' | 'comment'> {
  const comment = findComment(text, from, text.length, 'turns');
  return { body: readBody(text, from, comment?.mark.start ?? text.length), comment };
}

function keyLine(text: string, key: Key, name: Words, colon: number): KeyLine {
  const from = colon + 1;
  const head = { kind: 'key', key, name, colon: colonSpan(colon) } as const;
  const marks = MARKS[key];
  const asTurns = findComment(text, from, text.length, 'turns');
  const turnsEnd = asTurns?.mark.start ?? text.length;
  if (
    marks === 'turns' ||
    ((key === 'solve' || key === 'aside' || key === 'sequence') &&
      isTurnsNotName(text, from, turnsEnd, key))
  ) {
    return { ...head, value: trimmed(text, from, turnsEnd), ...bodyAndComment(text, from) };
  }
  const comment = findComment(text, from, text.length, marks);
  const value = trimmed(text, from, comment?.mark.start ?? text.length);
  return { ...head, value, body: undefined, comment };
}

/** `solve: R U R'` are turns, `solve: my F solve` is a name, and so is `sequence: F`. */
function isTurnsNotName(text: string, start: number, end: number, key: Key): boolean {
  const { turns, words, others, kind } = weighStretch(text, start, end);
  if (kind !== 'turns' || turns === 0) return false;
  return key === 'sequence' ? words + others === 0 && turns > 1 : words + others < turns;
}

/** Words before a colon that are no turns: a key misspelt, or one that is not known here. */
function unknownKeyLine(
  text: string,
  start: number,
  colon: number,
  context: KeyContext,
): UnknownKeyLine | undefined {
  const name = trimmed(text, start, colon);
  const bare = name.text.replace(COUNT_TAIL, '');
  if (!KEY_LIKE.test(bare) || text.startsWith('//', colon + 1)) return undefined;
  const tokens = bare.split(/\s+/);
  if (tokens.length > 4 || tokens.every((token) => isTurnToken(token))) return undefined;
  const suggestion = context.suggest(bare) ?? stageBefore(tokens, context.stages);
  if (suggestion === undefined && (tokens.length > 2 || isTurnToken(tokens[0]))) return undefined;
  const comment = findComment(text, colon + 1, text.length, 'turns');
  const end = comment?.mark.start ?? text.length;
  const { words, turns } = weighStretch(text, colon + 1, end);
  const body = words === 0 && turns > 0 ? readBody(text, colon + 1, end) : undefined;
  return {
    kind: 'unknown-key',
    name,
    colon: colonSpan(colon),
    value: trimmed(text, colon + 1, end),
    suggestion,
    body: body?.kind === 'turns' ? body : undefined,
    comment,
  };
}

/** `OLL 45` and `PLL again` begin with a stage, which is what is meant. */
function stageBefore(tokens: readonly string[], stages: StageWords): UnknownKeyLine['suggestion'] {
  for (let length = tokens.length - 1; length > 0; length--) {
    const text = tokens.slice(0, length).join(' ');
    if (stages.isStage(text)) return { kind: 'stage', text };
  }
  return undefined;
}
