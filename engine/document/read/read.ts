/**
 * From the text to a tree: total, line by line, in time linear in the text. Every line gets a
 * content whatever it holds, and only two things reach from one line to the next: the row that a
 * `scramble:` without value takes, and the rows of a net after `start:`.
 *
 * ```ts
 * const tree = readDocument('scramble: R U\ncross:\n  F2 // done');
 * tree.lines[2].content.kind; // 'turns'
 * ```
 */
import { isSpace } from '../../notation/letters.ts';
import { readBody } from './body.ts';
import { findComment } from './comment.ts';
import { ignoredIn } from './ignored.ts';
import { readBareHeading, readKeyLine, type KeyContext } from './key.ts';
import { splitLines } from './lines.ts';
import { NET_STICKERS, netStickers } from './net.ts';
import { definedStages, stageWords } from './stages.ts';
import { makeSuggest } from './suggest.ts';
import type { DocumentTree, Line, LineContent } from './tree.ts';
import { trimmed } from './words.ts';

/** `imported`: names of goals and stages that files named by `use:` define. */
export function readDocument(text: string, imported: readonly string[] = []): DocumentTree {
  const raw = splitLines(text);
  const stages = stageWords([...definedStages(raw), ...imported]);
  const context = { stages, suggest: makeSuggest(stages) };
  const follow = new Follower();
  const lines = raw.map(({ text: line, lineEnd }): Line => {
    const content = follow.netRow(line) ?? follow.scramble(readLine(line, context));
    follow.note(content);
    return { text: line, lineEnd, content };
  });
  return { lines };
}

/** What the lines before expect of the next one. */
class Follower {
  /** Stickers of the net still to come; 0 outside of nets. */
  stickersToCome = 0;
  scrambleToCome = false;

  netRow(text: string): LineContent | undefined {
    if (this.stickersToCome === 0) return undefined;
    const mark = findComment(text, 0, text.length, 'list');
    const words = trimmed(text, 0, mark?.mark.start ?? text.length);
    const stickers = netStickers(words.text);
    if (stickers === 0) return undefined;
    this.stickersToCome = Math.max(0, this.stickersToCome - stickers);
    return { kind: 'net-row', ...words, comment: mark };
  }

  scramble(content: LineContent): LineContent {
    if (!this.scrambleToCome) return content;
    if (content.kind !== 'turns' && content.kind !== 'spoken') return content;
    if (content.kind === 'turns' && content.turns.items.length === 0) return content;
    this.scrambleToCome = false;
    const { comment, ...body } = content;
    return { kind: 'scramble', body, comment };
  }

  note(content: LineContent): void {
    if (content.kind === 'blank' || content.kind === 'comment' || content.kind === 'net-row')
      return;
    const empty = content.kind === 'turns' && content.turns.items.length === 0;
    if (empty) return;
    this.stickersToCome = 0;
    this.scrambleToCome = false;
    if (content.kind !== 'key') return;
    if (content.key === 'scramble') this.scrambleToCome = content.value.text === '';
    if (content.key === 'start') {
      this.stickersToCome = NET_STICKERS - netStickers(content.value.text);
    }
  }
}

function readLine(text: string, context: KeyContext): LineContent {
  let start = 0;
  while (start < text.length && isSpace(text[start])) start++;
  if (start === text.length) return { kind: 'blank' };
  const head = nameStart(text, start);
  const keyed =
    readKeyLine(text, head, context) ?? readBareHeading(text, head, text.length, context);
  if (keyed !== undefined) return keyed;
  const comment = findComment(text, start, text.length, 'turns');
  const end = comment?.mark.start ?? text.length;
  if (comment !== undefined) {
    if (comment.mark.start === start) return { kind: 'comment', comment };
    const bare = readBareHeading(text, head, end, context);
    if (bare?.kind === 'key' || bare?.kind === 'stage') return { ...bare, comment };
  }
  const body = readBody(text, start, end, true);
  // Only a comment can leave nothing, and it was handled above.
  return body === undefined ? { kind: 'blank' } : { ...body, comment };
}

/** Where a key may begin: after a bullet, a list number or forum tags. */
function nameStart(text: string, start: number): number {
  const character = text[start];
  if (/[\p{L}/#;]/u.test(character)) return start;
  let at = start;
  for (const { start: from, end } of ignoredIn(
    text,
    start,
    Math.min(text.length, start + 300),
    true,
  )) {
    if (trimmed(text, at, from).text !== '') break;
    at = end;
  }
  while (at < text.length && isSpace(text[at])) at++;
  return at;
}
