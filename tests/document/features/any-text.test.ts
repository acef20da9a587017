/** Whatever the text and the place: every feature answers, within the text, and quickly. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Position, Range } from '../../../engine/cube/place.ts';
import { analyse } from '../../../engine/document/analyse.ts';
import * as features from '../../../engine/document/features/index.ts';
import { CASES } from '../analyse-cases.ts';
import { applied } from '../analyse-support.ts';

/** All that is shown or offered at a place, with the ranges that it speaks of. */
function everything(text: string, position: Position): Range[] {
  const analysis = analyse(text);
  const selection = {
    start: { line: position.line, character: 0 },
    end: { line: position.line, character: analysis.lines[position.line].length },
  };
  const at = { start: position, end: position };
  const last = analysis.lines.length - 1;
  const whole = {
    start: { line: 0, character: 0 },
    end: { line: last, character: analysis.lines[last].length },
  };
  const files = { 'a.moves': text, 'b.moves': 'use: a.moves\n@a' };
  const edits = [selection, at, whole].flatMap((range) =>
    features.refactorings(analysis, range).map((one) => one.edits),
  );
  for (const block of analysis.blocks) {
    edits.push(features.noteEdits(analysis, block));
    edits.push(features.numberStages(analysis, block) ?? []);
    edits.push(features.proposeStages(analysis, block, { notes: true })?.edits ?? []);
  }
  edits.push(features.format(analysis));
  // Edits can be made: the text that comes out can be analysed.
  for (const one of edits) analyse(applied(text, one));
  const symbols = features.documentSymbols(analysis);
  const hover = features.hoverAt(analysis, position);
  return [
    ...edits.flat().map(({ range }) => range),
    ...symbols.map(({ range }) => range),
    ...features.foldingRanges(analysis).map(({ first, last }) => ({
      start: { line: first, character: 0 },
      end: { line: last, character: 0 },
    })),
    ...features.selectionRanges(analysis, position),
    ...features.lenses(analysis).map(({ range }) => range),
    ...features.completionsAt(analysis, position).map(({ range }) => range),
    ...features
      .inlayHints(analysis, { counts: true, claims: true, cursor: position })
      .map((hint) => ({ start: hint.position, end: hint.position })),
    ...features.semanticTokens(analysis).map(({ line, start, length }) => ({
      start: { line, character: start },
      end: { line, character: start + length },
    })),
    ...features.referencesAt(files, 'a.moves', position, true).map(({ range }) => range),
    ...(hover ? [hover.range] : []),
  ];
}

function mustFit(text: string, place: number): void {
  const lines = analyse(text).lines;
  const line = place % lines.length;
  const position = { line, character: place % (lines[line].length + 1) };
  for (const { start, end } of everything(text, position)) {
    expect(start.line).toBeGreaterThanOrEqual(0);
    expect(end.line).toBeLessThan(lines.length);
    expect(start.character).toBeLessThanOrEqual(lines[start.line].length);
    expect(end.character).toBeLessThanOrEqual(lines[end.line].length);
  }
}

describe('any text', () => {
  const pieces = fc.constantFrom(
    ...[
      'R',
      "U'",
      ' ',
      '\n',
      '\n',
      'cross:',
      'corners:',
      '// cross',
      '# x',
      '(',
      ')2',
      '[',
      ',',
      ':',
      ']',
    ],
    ...[
      'sequence: a',
      '@a',
      'solve:',
      'aside: b',
      'end:',
      'scramble: R U',
      'start:',
      'www',
      '…',
      '~',
    ],
    ...[
      'goal: g = UF',
      'method: m = g, solved',
      'g:',
      'keeps: g',
      'M2',
      'x',
      '(R)99999999',
      'Q7',
      '🙂',
    ],
  );

  test('of any pieces of the language', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 30 }), fc.nat({ max: 500 }), (parts, place) => {
        mustFit(parts.join(''), place);
        mustFit(parts.join(' '), place);
      }),
      { numRuns: 250 },
    );
  });

  test('with any finding', () => {
    for (const { text, nearly } of CASES)
      for (const place of [1, 7, 23]) {
        mustFit(text, place);
        mustFit(nearly, place);
      }
  });

  test('nested ten thousand deep, or very long', () => {
    const deep = `${'[R: ('.repeat(10_000)}U${')]'.repeat(10_000)}`;
    mustFit(`scramble: R\n${deep}`, 1);
    const long = `scramble: R\ncross:\n${"R U R' U' ".repeat(5_000)}`;
    mustFit(long, 2);
  });
});
