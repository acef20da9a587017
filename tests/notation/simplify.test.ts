import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SOLVED, applyTurns, sameState } from '../../engine/cube/state.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { readSequence } from '../../engine/notation/read.ts';
import { cancellations, simplify } from '../../engine/notation/simplify.ts';
import { turns } from './sequences.ts';

const codesOf = (text: string): number[] =>
  readSequence(text).items.flatMap((item) => (item.kind === 'turn' ? [item.turn] : [-1]));
const found = (text: string): string[] =>
  cancellations(codesOf(text)).map(
    ({ first, last, replacement }) =>
      `${String(first)}-${String(last)}: ${printTurns(replacement)}`,
  );

describe('turns that cancel', () => {
  it.each([
    ["R R'", ['0-1: ']],
    ['R R', ['0-1: R2']],
    ["F R2 R' U", ['1-2: R']],
    ["R L R'", ['0-2: L']],
    ["M M'", ['0-1: ']],
    ["x x'", ['0-1: ']],
    ["x R x'", ['0-2: R']],
    ["F U U' F'", ['0-3: ']],
    ["F U U' R", ['1-2: ']],
    ["R U U' L", ['1-2: ']],
    ["R U U' L R", ['0-4: R2 L']],
    ["R R' U U' F", ['0-1: ', '2-3: ']],
    ['R R R R', ['0-3: ']],
  ])('%s', (text, expected) => {
    expect(found(text)).toEqual(expected);
  });

  it.each(["R U R' U'", "R L'", "R M'", "r R'", 'F B U D', "R … R'"])(
    'there are none in %s',
    (text) => {
      expect(found(text)).toEqual([]);
    },
  );

  it('replacing one place keeps the effect of the whole', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        for (const { first, last, replacement } of cancellations(codes)) {
          const edited = [...codes.slice(0, first), ...replacement, ...codes.slice(last + 1)];
          expect(edited.length).toBeLessThan(codes.length);
          expect(sameState(applyTurns(SOLVED, edited), applyTurns(SOLVED, codes))).toBe(true);
        }
      }),
    );
  });
});

describe('simplified', () => {
  it.each([
    ["R M'", 'Rw'],
    ["r R'", "M'"],
    ["R M' L'", 'x'],
    ["F U U' F", 'F2'],
    ["R L R' L'", ''],
    ["R U R' U'", "R U R' U'"],
  ])('%s is %s', (text, expected) => {
    expect(printTurns(simplify(codesOf(text)))).toBe(expected);
  });

  it('the effect is the same, and nothing is longer', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        const short = simplify(codes);
        expect(short.length).toBeLessThanOrEqual(codes.length);
        expect(sameState(applyTurns(SOLVED, short), applyTurns(SOLVED, codes))).toBe(true);
      }),
    );
  });

  it('nothing is left that cancels', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        expect(cancellations(simplify(codes))).toEqual([]);
      }),
    );
  });
});
