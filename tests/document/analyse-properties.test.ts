/**
 * The analysis of solves written at random, confirmed by an implementation on stickers that replays
 * from the start for every place; and what must hold of any text whatever.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pieceName } from '../../engine/cube/piece.ts';
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis, Block } from '../../engine/document/analysis.ts';
import { cfopOf, layersOf } from '../naive/goals.ts';
import { replay, SOLVED_CUBE } from '../naive/stickers.ts';
import { naiveTimeline, Tie } from '../naive/timeline.ts';
import { CASES } from './analyse-cases.ts';
import { applied, breaks, reached, spans } from './analyse-support.ts';
import { writtenSolve } from './analyse-texts.ts';

const GOALS = { layers: () => layersOf('yellow'), CFOP: () => cfopOf('yellow') };

const named = (pieces: readonly number[]): string =>
  pieces
    .map((piece) => pieceName(piece).split('-').sort().join('-'))
    .sort()
    .join(' ');

describe('a written solve, against stickers', () => {
  test('breaks, restorations, misplaced pieces, stages reached and kept, first and last turns', () => {
    const seen = { passing: 0, carried: 0, lasting: 0, open: 0, reached: 0, notReached: 0 };
    let long = 0;
    fc.assert(
      fc.property(writtenSolve, (solve) => {
        const [block] = analyse(solve.text).blocks;
        const start = replay(SOLVED_CUBE, solve.scramble.length > 0 ? solve.scramble : ['U', "U'"]);
        const goals = GOALS[solve.method]();
        let expected: ReturnType<typeof naiveTimeline>;
        try {
          expected = naiveTimeline(start, SOLVED_CUBE, solve.turns, goals, solve.stages);
        } catch (error) {
          if (error instanceof Tie) return;
          throw error;
        }
        expect(block.course.length).toBe(solve.turns.length);
        if (solve.turns.length >= 55) long++;
        expect(solve.turns.map((_, turn) => block.textOf(turn))).toEqual(solve.turns);

        const key = (one: {
          turn: number;
          goal: number;
          part: boolean;
          kind: string;
          restoredAt: number | undefined;
        }): string => [one.turn, one.goal, one.part, one.kind, one.restoredAt].join(' ');
        // In which order parts of one step come to be guarded is the engine's choice.
        const whole = block.timeline.breaks.filter((one) => !one.part);
        const other = expected.breaks.filter((one) => !one.part);
        expect(whole.map(key).sort()).toEqual(other.map(key).sort());
        for (const one of whole) {
          const same = other.filter((two) => key(two) === key(one));
          expect(same.flatMap(({ pieces }) => pieces)).toContain(named(one.pieces));
          seen[one.kind]++;
        }

        for (const { goal, first, end } of solve.stages) {
          const outcome = block.timeline.outcomes[goal];
          expect([outcome.firstTurn, outcome.lastTurn]).toEqual([first, end - 1]);
          const isReached = expected.held[goal][end] === true;
          expect(outcome.reached).toBe(isReached);
          seen[isReached ? 'reached' : 'notReached']++;
          const isLost = expected.breaks.some(
            (one) => one.goal === goal && ['carried', 'lasting'].includes(one.kind),
          );
          if (isLost) expect(outcome.kept).toBe(false);
        }

        // Each lasting break that is told stands at the turn after which the goal never holds again.
        for (const finding of analyse(solve.text).findings) {
          if (finding.code !== 'goal-broken') continue;
          const turn = turnAt(block, finding.range.start);
          const goal = goals.findIndex(({ name }) => name === finding.goal);
          const lasting = expected.breaks.find(
            (one) => one.kind === 'lasting' && one.turn === turn && one.goal === goal,
          );
          expect(lasting, finding.message).toBeDefined();
        }
      }),
      { numRuns: 250, seed: 7 },
    );
    for (const [what, times] of Object.entries(seen)) expect(times, what).toBeGreaterThan(10);
    expect(long).toBeGreaterThan(20);
  }, 120_000);
});

test('a fix of a goal that was lost or missed, applied: the finding is gone, and no error comes', () => {
  let tried = 0;
  fc.assert(
    fc.property(writtenSolve, ({ text }) => {
      const before = analyse(text);
      for (const { code, goal, range, fixes } of before.findings) {
        if (
          !['goal-broken', 'goal-not-reached', 'cross-not-aligned', 'last-turn-missing'].includes(
            code,
          )
        )
          continue;
        for (const { edits } of fixes) {
          tried++;
          const after = analyse(applied(text, edits));
          const same = after.findings.filter(
            (one) =>
              one.code === code &&
              one.goal === goal &&
              one.range.start.line === range.start.line &&
              one.range.start.character === range.start.character,
          );
          expect(same, text).toEqual([]);
          expect(errors(after), text).toBeLessThanOrEqual(errors(before));
        }
      }
    }),
    { numRuns: 200, seed: 8 },
  );
  expect(tried).toBeGreaterThan(30);
}, 60_000);

function errors({ findings }: Analysis): number {
  return findings.filter(({ severity }) => severity === 'error').length;
}

function turnAt(block: Block, { line, character }: { line: number; character: number }): number {
  for (let turn = 0; turn < block.course.length; turn++) {
    const { start } = block.rangeOf(turn);
    if (start.line === line && start.character === character) return turn;
  }
  return -1;
}

const WORDS = [
  ...CASES.map(({ text }) => text),
  'R',
  "U'",
  'F2',
  'M',
  'x',
  "y'",
  'r u',
  '(',
  ')2',
  '[R: U, F]',
  '…',
  '???',
  '~',
  '@a',
  "@b'",
  'Ri',
  '(R U) x2',
  '// cross',
  '// F2L + OLL',
  'cross:',
  'pair:',
  'PLL:',
  'solved:',
  'scramble: R U2 F',
  'start:',
  '    www',
  'ooo ggg rrr bbb',
  'holding: red up, white front',
  'base: green',
  'method: Roux',
  'method: mine = cross, block, solved',
  'goal: block = DL FL',
  'solve: two',
  'sequence: a',
  'sequence: b',
  'aside: c',
  'end:',
  'keeps: cross',
  'opens: cross until 4th pair',
  'does: (UF UR)',
  'order: 4',
  'check: corners, solved',
  'use: other',
  'time: 3',
  'hello my old friend',
  'R prime U two',
  'https://example.org/R/U',
  '🟩',
  'привет',
  '手順',
  '\t',
  '\uFEFF',
];
const SEPARATORS = ['\n', '\n', '\r\n', '\r', ' ', ' '];

const anyText: fc.Arbitrary<string> = fc
  .array(
    fc.tuple(
      fc.oneof(
        { weight: 8, arbitrary: fc.constantFrom(...WORDS) },
        { weight: 1, arbitrary: fc.string({ maxLength: 12, unit: 'binary' }) },
      ),
      fc.constantFrom(...SEPARATORS),
    ),
    { maxLength: 30 },
  )
  .map((parts) => parts.flat().join(''));

function expectRangesInside({ lines, findings }: Analysis): void {
  const inside = ({ start, end }: Analysis['findings'][number]['range']): boolean =>
    start.line >= 0 &&
    end.line < lines.length &&
    (start.line < end.line || (start.line === end.line && start.character <= end.character)) &&
    start.character >= 0 &&
    start.character <= lines[start.line].length &&
    end.character <= lines[end.line].length;
  for (const { range, related, fixes, message } of findings) {
    expect(inside(range), message).toBe(true);
    for (const other of related) expect(inside(other.range), other.message).toBe(true);
    for (const { edits } of fixes)
      for (const edit of edits) expect(inside(edit.range), message).toBe(true);
  }
}

/** All that an analysis says, to be compared. */
function told({ findings, more, blocks }: Analysis): unknown {
  const block = (one: Block): unknown => [
    one.kind,
    one.title,
    one.line,
    one.range,
    one.method,
    one.base,
    one.solved,
    one.counts,
    one.sequence,
    spans(one),
    breaks(one),
    reached(one),
    one.timeline.held.map((held) => held.join('')),
    one.asides.map(block),
  ];
  return [findings, more, blocks.map(block)];
}

describe('any text whatever', () => {
  test('gives an analysis, every place of which lies in the text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const analysis = analyse(text);
        expectRangesInside(analysis);
        for (const { fixes } of analysis.findings)
          for (const { edits } of fixes) expectRangesInside(analyse(applied(text, edits)));
      }),
      { numRuns: 300, seed: 11 },
    );
  }, 120_000);

  test('noise from the keyboard as well', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        expectRangesInside(analyse(text));
      }),
      { numRuns: 500, seed: 12 },
    );
  });

  test('typed on, it gives what it gives from scratch', () => {
    let kept = 0;
    fc.assert(
      fc.property(
        anyText,
        fc.array(
          fc.record({
            at: fc.double({ min: 0, max: 1, noNaN: true }),
            gone: fc.nat({ max: 6 }),
            newText: fc.oneof(fc.constantFrom(...WORDS), fc.string({ maxLength: 3 })),
          }),
          { minLength: 1, maxLength: 5 },
        ),
        (text, edits) => {
          let now = text;
          let analysis = analyse(now);
          for (const { at, gone, newText } of edits) {
            const from = Math.floor(at * now.length);
            now = now.slice(0, from) + newText + now.slice(from + gone);
            const next = analyse(now, {}, analysis);
            if (next.blocks.some((one) => analysis.blocks.some((old) => old.course === one.course)))
              kept++;
            expect(told(next)).toEqual(told(analyse(now)));
            analysis = next;
          }
        },
      ),
      { numRuns: 200, seed: 13 },
    );
    // Blocks must have been taken over, or nothing was tried.
    expect(kept).toBeGreaterThan(50);
  }, 120_000);
});
