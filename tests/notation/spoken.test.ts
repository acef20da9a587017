import { describe, expect, it } from 'vitest';
import { readSpoken } from '../../engine/notation/spoken.ts';

describe('spoken notation', () => {
  it.each([
    ['R prime U two', "R' U2"],
    ['r prime u two', "R' U2"],
    ['right prime, up, left two', "R' U L2"],
    ['Right up right-prime up-prime', "R U R' U'"],
    ['R counter-clockwise then U twice', "R' U2"],
    ['double R, wide L inverted', "R2 Lw'"],
    ['R wide prime', "Rw'"],
    ['M prime U two M', "M' U2 M"],
    ['x prime y', "x' y"],
    ['R two prime U', 'R2 U'],
    ['turn the front face clockwise, then the right face anticlockwise', "F R'"],
    ["F R U R' U' F prime", "F R U R' U' F'"],
    ['F R U R prime\nU prime F prime', "F R U R'\nU' F'"],
  ])('"%s" is rewritten', (text, turns) => {
    expect(readSpoken(text)?.newText).toBe(turns);
  });

  it.each([
    '',
    "R U R' U'",
    'the cross is done',
    'look at the front',
    'up front',
    'R prime cross',
    'turn it twice',
    'left two corners',
    'wide x prime',
  ])('"%s" is something else', (text) => {
    expect(readSpoken(text)).toBeUndefined();
  });

  it('says where in the text it stands', () => {
    expect(readSpoken('  R prime U two ')?.span).toEqual({ start: 2, end: 15 });
  });
});
