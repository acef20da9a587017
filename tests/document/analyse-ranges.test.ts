/** Ranges are the editor's whatever ends the lines and whatever else stands in them. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { firstBlock, found, only, underlined } from './analyse-support.ts';

const LINES = [
  "scramble: R U' R'",
  'base: yellow',
  'cross:',
  'corners:',
  '  R U R',
  'middle:',
  '  U',
];

describe.each([
  ['\n', 'line feeds'],
  ['\r\n', 'carriage returns and line feeds'],
  ['\r', 'carriage returns'],
])('with %j (%s)', (lineEnd) => {
  test('a finding stands at the same line and character', () => {
    const { range } = only(LINES.join(lineEnd), 'goal-broken');
    expect(range).toEqual({ start: { line: 4, character: 2 }, end: { line: 4, character: 3 } });
  });

  test('mixed with others as well', () => {
    const text = LINES.slice(0, 3).join('\r') + '\n' + LINES.slice(3).join(lineEnd);
    expect(only(text, 'goal-broken').range.start).toEqual({ line: 4, character: 2 });
  });
});

describe('characters count as the editor counts them, in UTF-16', () => {
  test.each([
    ['a byte order mark', '\uFEFFscramble: R\nR U2D5', 'unknown-turn 2|U2D5'],
    ['a byte order mark before a turn', '\uFEFFU2D5 R', 'unknown-turn 1|U2D5'],
    ['tabs', "scramble: R\n\tR'\tU2D5\t", 'unknown-turn 2|U2D5'],
    ['emoji', 'scramble: R\n🟩🟥 U2D5 R', 'unknown-turn 2|🟩🟥'],
    ['non-Latin words', 'scramble: R\nU2D5 R // первый слой, 手順', 'unknown-turn 2|U2D5'],
    ['accents put together', 'scramble: R\nU2D5 R // e\u0301tape', 'unknown-turn 2|U2D5'],
  ])('%s', (_what, text, expected) => {
    expect(found(text)).toContain(expected);
  });

  test('behind an emoji, which is two units long', () => {
    const { range } = only('scramble: R\n🟩 Ri', 'spelling');
    expect(range).toEqual({ start: { line: 1, character: 3 }, end: { line: 1, character: 5 } });
  });

  test('a title in any language is the title', () => {
    expect(firstBlock("title: Решение №2 🎉\nscramble: R\nR'").title).toBe('Решение №2 🎉');
  });
});

describe('places of turns', () => {
  const text = 'scramble: R\n// a remark\n\tR U (F\tD)2 @a [R, U]\nsequence: a\n  L L';
  const analysis = analyse(text);
  const [block] = analysis.blocks;

  test('a turn is where it is written, in a repeat each time, in a name where the name stands', () => {
    const written = Array.from({ length: block.course.length }, (_, turn) =>
      underlined(analysis, block.rangeOf(turn)),
    );
    expect(written).toEqual(['R', 'U', 'F', 'D', 'F', 'D', '@a', '@a', 'R', 'U', 'R', 'U']);
  });

  test('counts once its last character is at or before the place; inside a repeat the first pass', () => {
    const line = '\tR U (F\tD)2 @a [R, U]';
    const placeAt = (before: string): number =>
      block.placeAt({ line: 2, character: line.indexOf(before) + before.length });
    expect(['\t', 'R', 'R U', '(F', 'D', ')2', '@a'].map(placeAt)).toEqual([0, 1, 2, 3, 4, 6, 8]);
    expect(block.placeAt({ line: 1, character: 5 })).toBe(0);
    expect(block.placeAt({ line: 3, character: 0 })).toBe(12);
  });

  test('a block holds the lines from its first to its last', () => {
    expect(analysis.blockAt({ line: 2, character: 4 })).toBe(block);
    expect(analysis.blockAt({ line: 4, character: 0 })?.kind).toBe('sequence');
  });

  test('a comment belongs to the turns of its line', () => {
    const own = firstBlock('R U // two\nF');
    expect([own.commentOn(0), own.commentOn(1), own.commentOn(2)]).toEqual([
      'two',
      'two',
      undefined,
    ]);
  });
});

describe('a block that moved in the text', () => {
  test('keeps its findings, at their new places, and its sentences speak of the new lines', () => {
    const before = analyse(LINES.join('\n'));
    const moved = `solve: first\nscramble: U\nU'\nsolve: second\n${LINES.join('\n')}`;
    const direct = analyse(moved);
    const after = analyse(`\n${moved}`, {}, analyse(moved, {}, before));
    const line = (analysis: typeof before): [number, string] => {
      const finding = analysis.findings.find(({ code }) => code === 'goal-broken');
      return [finding?.range.start.line ?? -1, finding?.message ?? ''];
    };
    expect(line(direct)[0]).toBe(8);
    expect(line(after)[0]).toBe(9);
    expect(line(after)[1]).toContain('R (turn 1, line 10)');
  });

  test('is not judged anew: typing in one block costs that block', () => {
    const text = "solve: one\nscramble: R\nR'\nsolve: two\nscramble: U\nU'";
    const before = analyse(text);
    const after = analyse(text.replace("U'", 'U2'), {}, before);
    expect(after.blocks[0].course).toBe(before.blocks[0].course);
    expect(after.blocks[1].course).not.toBe(before.blocks[1].course);
  });

  test('what it uses of other blocks counts: a named sequence that changed', () => {
    const text = "sequence: a\n  R\nsolve: one\nscramble: R\n@a'";
    const before = analyse(text);
    const after = analyse(text.replace('  R', '  U'), {}, before);
    expect([before.blocks[1].solved, after.blocks[1].solved]).toEqual([true, false]);
  });
});
