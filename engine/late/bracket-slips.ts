/**
 * Slips inside brackets: a turn that a repeat, a commutator or a conjugate executes more than once, and
 * a repeat count that is off by one. One edit of the text changes several executed turns there, so
 * each edited line is read anew and composed with what stands before and after it.
 */
import type { Position } from '../cube/place.ts';
import { applyTurns } from '../cube/state.ts';
import { printTurn, type Turn } from '../cube/turn.ts';
import type { TextEdit } from '../document/finding.ts';
import { execute } from '../notation/execute.ts';
import { executable, readSequence } from '../notation/read.ts';
import type { SlipCourse } from '../search/slips/course.ts';
import { singleEdits } from '../search/slips/edits.ts';
import type { Search } from '../search/step.ts';
import { placeName, readSingle, textAt, type WrittenTurn } from './written.ts';

export interface BracketSlip {
  readonly edits: readonly TextEdit[];
  readonly title: string;
  readonly score: number;
}

/** Scrambles are mostly copied, solves written by hand. */
export const IN_SCRAMBLE = 0.7;
/** Lines read in a step; each takes as long as some hundred nodes. */
const STEP_LINES = 50;
/** Lines longer than this are not tried out letter by letter. */
const LONGEST_LINE = 400;

/** A line of turns: which part of it is turns, and which executed turns are its. */
interface TurnLine {
  readonly line: number;
  readonly first: number;
  readonly end: number;
  readonly from: number;
  readonly text: string;
  readonly scramble: boolean;
}

interface Candidate extends BracketSlip {
  /** The turns of the line as they would be. */
  readonly text: string;
}

/** Edits in brackets after which the turns solve the course's start. */
export function* bracketSlips(
  lines: readonly string[],
  written: readonly WrittenTurn[],
  course: SlipCourse,
): Search<BracketSlip[]> {
  const found: BracketSlip[] = [];
  let tried = 0;
  for (const line of turnLines(lines, written)) {
    for (const candidate of candidates(lines, written, line)) {
      const turns = turnsIn(candidate.text);
      const after = turns && applyTurns(course.before[line.first], turns);
      if (after && course.isSolvedBy(after, line.end)) found.push(candidate);
      tried++;
      if (tried % STEP_LINES === 0 && (yield { nodes: tried, depth: 1 }) === 'stop') return found;
    }
  }
  return found;
}

function turnsIn(text: string): readonly Turn[] | undefined {
  const tree = readSequence(text);
  if (!executable(tree)) return undefined;
  const { codes, jumps, unresolved } = execute(tree.items, {
    resolve: () => undefined,
    limit: 1_000,
  });
  return jumps.size === 0 && unresolved.length === 0 ? codes : undefined;
}

/** Lines with brackets, as far as they can be read by themselves. */
function turnLines(lines: readonly string[], written: readonly WrittenTurn[]): TurnLine[] {
  const result: TurnLine[] = [];
  for (let first = 0, end = 0; first < written.length; first = end) {
    const { line } = written[first].range.start;
    while (end < written.length && written[end].range.start.line === line) end++;
    const own = written.slice(first, end);
    const text = lines[line];
    if (text.length > LONGEST_LINE || own.every(({ literal }) => literal)) continue;
    const least = Math.min(...own.map(({ range }) => range.start.character));
    const most = Math.max(...own.map(({ range }) => range.end.character));
    const from = least - (/[([\s]*$/.exec(text.slice(0, least))?.[0].length ?? 0);
    const tail = /^[^/#;]*/.exec(text.slice(most))?.[0] ?? '';
    const part = text.slice(from, most + tail.length).trimEnd();
    const codes = turnsIn(part);
    const same =
      codes?.length === own.length && own.every(({ turn }, index) => turn === codes[index]);
    if (same) result.push({ line, first, end, from, text: part, scramble: own[0].scramble });
  }
  return result;
}

function* candidates(
  lines: readonly string[],
  written: readonly WrittenTurn[],
  line: TurnLine,
): Generator<Candidate> {
  const done = new Set<number>();
  for (const turn of written.slice(line.first, line.end)) {
    const { start, end } = turn.range;
    if (turn.literal || done.has(start.character)) continue;
    done.add(start.character);
    const single = readSingle(textAt(lines, turn.range));
    if (single === undefined) continue;
    for (const edit of singleEdits([single])) {
      const text = edit.turns.map(printTurn).join(' ');
      if (edit.remove === 1) {
        yield make(line, start.character, end.character, text, edit.weight, (new_) =>
          new_ === ''
            ? `without ${printTurn(single)}, ${placeName(turn)}`
            : `${new_} instead of ${printTurn(single)}, ${placeName(turn)}`,
        );
      } else {
        const at = edit.index === 0 ? start.character : end.character;
        const spaced = edit.index === 0 ? `${text} ` : ` ${text}`;
        const side = edit.index === 0 ? 'before' : 'after';
        yield make(line, at, at, spaced, edit.weight, () => {
          return `${text} ${side} ${printTurn(single)}, ${placeName(turn)}`;
        });
      }
    }
  }
  yield* counts(line);
}

/** Repeat counts one more and one less; a bracket without one may have been meant twice. */
function* counts(line: TurnLine): Generator<Candidate> {
  for (const match of line.text.matchAll(/[)\]](\d*)/g)) {
    const written = match[1] === '' ? 1 : Number(match[1]);
    const start = line.from + match.index + 1;
    for (const meant of [written - 1, written + 1]) {
      if (meant < 1 || meant > 99) continue;
      const text = meant === 1 ? '' : String(meant);
      const weight = written === 1 ? 0.3 : 0.7;
      yield make(line, start, start + match[1].length, text, weight, () => {
        return `the bracket ${times(meant)} instead of ${times(written)}, line ${line.line + 1}`;
      });
    }
  }
}

function times(count: number): string {
  return count === 1 ? 'once' : `${count} times`;
}

function make(
  { line, from, text, scramble }: TurnLine,
  start: number,
  end: number,
  newText: string,
  score: number,
  title: (newText: string) => string,
): Candidate {
  const at = (character: number): Position => ({ line, character });
  return {
    edits: [{ range: { start: at(start), end: at(end) }, newText }],
    title: title(newText),
    score: scramble ? score * IN_SCRAMBLE : score,
    text: text.slice(0, start - from) + newText + text.slice(end - from),
  };
}
