import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FACELETS, colourFacelets } from '../../engine/cube/facelets.ts';
import { looksLikeNetRow, printNet, readNet } from '../../engine/cube/net.ts';
import { after } from '../support/turns.ts';

const SOLVED_NET = [
  '    www',
  '    www',
  '    www',
  'ooo ggg rrr bbb',
  'ooo ggg rrr bbb',
  'ooo ggg rrr bbb',
  '    yyy',
  '    yyy',
  '    yyy',
];

const anyColours = fc.array(fc.integer({ min: 0, max: 5 }), {
  minLength: FACELETS,
  maxLength: FACELETS,
});

describe('an unfolded net', () => {
  test('the solved cube, white up and green in front, has orange on the left and red on the right', () => {
    expect(printNet(colourFacelets(after('')))).toEqual(SOLVED_NET);
  });

  test('R takes the right column of the front up, and of the top to the back', () => {
    expect(printNet(colourFacelets(after('R')))).toEqual([
      '    wwg',
      '    wwg',
      '    wwg',
      'ooo ggy rrr wbb',
      'ooo ggy rrr wbb',
      'ooo ggy rrr wbb',
      '    yyb',
      '    yyb',
      '    yyb',
    ]);
  });

  test('any 54 colours are read back as printed', () => {
    fc.assert(
      fc.property(anyColours, (colours) => {
        const net = readNet(printNet(colours));
        expect(net.kind === 'net' && [...net.colours]).toEqual(colours);
      }),
    );
  });

  test('spaces, bars, blank lines, upper case and coloured squares make no difference', () => {
    const lines = [
      'W W W',
      '',
      'W | W | W',
      '⬜️⬜⬜',
      'OOOGGGRRRBBB',
      '🟧🟧🟧 🟩🟩🟩 🟥🟥🟥 🟦🟦🟦',
      'o o o  g g g  r r r  b b b',
      'yyy',
      '\t🟨🟨🟨',
      'y,y,y',
    ];
    const net = readNet(lines);
    expect(net.kind === 'net' && printNet(net.colours)).toEqual(SOLVED_NET);
  });

  test('a letter that is no colour is pointed at, and so is a row that is too short', () => {
    const lines = [...SOLVED_NET];
    lines[1] = '    wkw';
    lines[4] = 'ooo ggg rrr bb';
    expect(readNet(lines)).toEqual({
      kind: 'bad-net',
      problems: [
        { kind: 'unknown-colour', row: 1, span: { start: 5, end: 6 }, text: 'k' },
        { kind: 'row-length', row: 4, span: { start: 0, end: 14 }, found: 11, wanted: 12 },
      ],
    });
  });

  test('eight rows are one too few, ten one too many', () => {
    expect(readNet(SOLVED_NET.slice(0, 8))).toMatchObject({
      problems: [{ kind: 'row-count', row: 7, found: 8 }],
    });
    expect(readNet([...SOLVED_NET, '', 'yyy'])).toMatchObject({
      problems: [{ kind: 'row-count', row: 10, found: 10 }],
    });
    expect(readNet([])).toMatchObject({ problems: [{ kind: 'row-count', row: 0, found: 0 }] });
  });

  test('any text gives a net or at least one problem', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme' })), (lines) => {
        const net = readNet(lines);
        if (net.kind === 'bad-net') {
          expect(net.problems.length).toBeGreaterThan(0);
          for (const { row, span } of net.problems) {
            expect(span.end).toBeLessThanOrEqual(lines.length === 0 ? 0 : lines[row].length);
          }
        }
      }),
    );
  });

  test('a row of a net can be told from a key and from prose', () => {
    expect(looksLikeNetRow('   www')).toBe(true);
    expect(looksLikeNetRow('ooo gkg rrr bbb')).toBe(true);
    expect(looksLikeNetRow('cross:')).toBe(false);
    expect(looksLikeNetRow("R U R' U'")).toBe(false);
    expect(looksLikeNetRow('')).toBe(false);
  });
});
