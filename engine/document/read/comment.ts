/**
 * Where the comment of a line begins. `//`, `#`, `;` and a dash between blanks are taken as marks,
 * but not all of them everywhere: a title may hold `#2` and a note keeps every sign.
 *
 * | in | marks |
 * | --- | --- |
 * | turns, headings, `scramble`, `end` | all; a dash if what follows it, up to the next mark, is no turns |
 * | values of fixed form | all |
 * | `method`, `goal` | all but the dash |
 * | titles, names, dates, file names | `//` after a blank |
 * | `note` | none |
 */
import { isSpace } from '../../notation/letters.ts';
import { weighStretch } from './body.ts';
import { protectedIn } from './ignored.ts';
import type { Comment, CommentMark } from './tree.ts';
import { trimmed } from './words.ts';

export type CommentMarks = 'turns' | 'value' | 'list' | 'name' | 'none';

const DASHES = '-–—−';
const MARK = /\/\/|[#;]|[-–—−]/;
const MARKS = /\/\/|[#;]|[-–—−]+/g;

interface Found {
  readonly style: CommentMark;
  readonly start: number;
  readonly end: number;
}

/** The comment between `start` and `end`, if any; it reaches to `end`. */
export function findComment(
  text: string,
  start: number,
  end: number,
  marks: CommentMarks,
): Comment | undefined {
  if (marks === 'none') return undefined;
  const found = findMark(text, start, end, marks);
  if (found === undefined) return undefined;
  const words = trimmed(text, found.end, end);
  return { style: found.style, mark: { start: found.start, end: found.end }, ...words };
}

function findMark(
  text: string,
  start: number,
  end: number,
  marks: CommentMarks,
): Found | undefined {
  // A dash waits until it is known where its text ends: at the next dash or mark.
  let dash: Found | undefined;
  for (const next of marksIn(text, start, end, marks)) {
    if (dash !== undefined && isRemark(text, dash.end, next.start, marks)) return dash;
    dash = undefined;
    if (next.style !== '-') return next;
    dash = next;
  }
  return dash !== undefined && isRemark(text, dash.end, end, marks) ? dash : undefined;
}

function isRemark(text: string, start: number, end: number, marks: CommentMarks): boolean {
  if (trimmed(text, start, end).text === '') return false;
  if (marks !== 'turns') return true;
  const { kind } = weighStretch(text, start, end);
  return kind === 'prose' || kind === 'spoken';
}

function* marksIn(text: string, start: number, end: number, marks: CommentMarks): Generator<Found> {
  const part = text.slice(start, end);
  if (!MARK.test(part)) return;
  const spans = protectedIn(text, start, end);
  let next = 0;
  for (const match of part.matchAll(MARKS)) {
    const at = start + match.index;
    const after = at + match[0].length;
    while (next < spans.length && spans[next].end <= at) next++;
    if (next < spans.length && spans[next].start <= at) continue;
    const blankBefore = at === start || isSpace(text[at - 1]);
    if (DASHES.includes(match[0][0])) {
      const alone = blankBefore && (after === end || isSpace(text[after]));
      if (alone && (marks === 'turns' || marks === 'value'))
        yield { style: '-', start: at, end: after };
    } else if (marks !== 'name') {
      if (match[0] === '//' && text[at - 1] === ':' && at > start) continue;
      yield { style: match[0] as CommentMark, start: at, end: after };
    } else if (match[0] === '//' && blankBefore) {
      yield { style: '//', start: at, end: after };
    }
  }
}
