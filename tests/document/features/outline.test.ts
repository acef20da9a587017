/** Outline, folding and growing selections: the text as its author divides it. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/document/analyse.ts';
import {
  documentSymbols,
  foldingRanges,
  selectionRanges,
  type OutlineSymbol,
} from '../../../engine/document/features/index.ts';
import { comparePositions } from '../../../engine/document/features/text.ts';
import { CASES } from '../analyse-cases.ts';
import { cutOut, withCursor } from './support.ts';

const TEXT = `goal: corner of mine = DFR
solve: Saturday
scramble: R U' R'
base: yellow
cross:
  U U'
aside: the long way
  R U2 R'
end:
corners:
  R U R'
  U

sequence: in
  R U R'`;

function told(symbols: readonly OutlineSymbol[], depth = 0): string[] {
  return symbols.flatMap(({ kind, name, detail, children }) => [
    `${'  '.repeat(depth)}${kind} ${name}: ${detail}`,
    ...told(children, depth + 1),
  ]);
}

describe('the outline', () => {
  test('blocks hold their stages, and a stage the asides that branch off in it', () => {
    expect(told(documentSymbols(analyse(TEXT)))).toEqual([
      'goal corner of mine: DFR',
      'solve Saturday: 6 turns',
      '  stage cross: 2 turns',
      '    aside the long way: 3 turns',
      '  stage corners: 4 turns',
      'sequence in: 3 turns',
    ]);
  });

  test('a label behind the turns begins where its turns do', () => {
    const text = "scramble: R U' R'\nbase: yellow\nU U' // cross\nR U\nR' // corners";
    const [solve] = documentSymbols(analyse(text));
    expect(
      solve.children.map(({ name, range }) => `${name} ${range.start.line}-${range.end.line}`),
    ).toEqual(['cross 2-2', 'corners 3-4']);
  });

  test('what is named lies within its range, children within their parents', () => {
    const inside = (symbol: OutlineSymbol): void => {
      const { range, selection, children } = symbol;
      expect(comparePositions(range.start, selection.start)).toBeLessThanOrEqual(0);
      expect(comparePositions(selection.end, range.end)).toBeLessThanOrEqual(0);
      for (const child of children) {
        expect(comparePositions(range.start, child.range.start)).toBeLessThanOrEqual(0);
        expect(comparePositions(child.range.end, range.end)).toBeLessThanOrEqual(0);
        inside(child);
      }
    };
    for (const { text, nearly } of CASES)
      for (const one of [text, nearly]) documentSymbols(analyse(one)).forEach(inside);
  });
});

describe('folding', () => {
  test('blocks, stages, comments and nets; blank lines at the end stay visible', () => {
    const folds = foldingRanges(analyse(`// one\n// two\n${TEXT}`));
    expect(folds.map(({ kind, first, last }) => `${kind} ${first}-${last}`)).toEqual([
      'comment 0-1',
      'block 3-13',
      'stage 6-10',
      'block 8-9',
      'stage 11-13',
      'block 15-16',
    ]);
  });
});

describe('a selection grows', () => {
  const grown = (marked: string): string[] => {
    const { text, position } = withCursor(marked);
    const analysis = analyse(text);
    return selectionRanges(analysis, position).map((range) => cutOut(analysis, range));
  };

  test('from the turn to the bracket, the turns, the line, the stage, the solve, the text', () => {
    const rows = grown('solve: a\ncross:\n  R [F: |U R] // two\ncorners:\n  U\nsolve: b\n  R');
    expect(rows).toEqual([
      'U',
      '[F: U R]',
      'R [F: U R]',
      'R [F: U R] // two',
      '  R [F: U R] // two',
      'cross:⏎  R [F: U R] // two',
      'solve: a⏎cross:⏎  R [F: U R] // two⏎corners:⏎  U',
      'solve: a⏎cross:⏎  R [F: U R] // two⏎corners:⏎  U⏎solve: b⏎  R',
    ]);
  });

  test('in a comment from the word', () => {
    expect(grown('R U // white-|red edge').slice(0, 3)).toEqual([
      'white-red',
      'white-red edge',
      '// white-red edge',
    ]);
  });

  test('each step takes in the one before, at any place of any text', () => {
    for (const { text } of CASES) {
      const analysis = analyse(text);
      analysis.lines.forEach((row, line) => {
        for (let character = 0; character <= row.length; character += 3) {
          const ranges = selectionRanges(analysis, { line, character });
          expect(ranges.length).toBeGreaterThan(0);
          ranges.slice(1).forEach(({ start, end }, index) => {
            expect(comparePositions(start, ranges[index].start)).toBeLessThanOrEqual(0);
            expect(comparePositions(ranges[index].end, end)).toBeLessThanOrEqual(0);
          });
        }
      });
    }
  });
});
