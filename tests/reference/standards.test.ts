/** Notation and metrics of the WCA Regulations, and what common practice adds to them. */
import { describe, expect, test } from 'vitest';
import { makeFaces } from '../../engine/cube/facelets.ts';
import { colourAt, holdingFrom } from '../../engine/cube/holding.ts';
import { ALL_CORNERS, ALL_EDGES, PIECES, faceletsOf, piecesIn } from '../../engine/cube/piece.ts';
import { SOLVED, sameState } from '../../engine/cube/state.ts';
import { COLOURS, OPPOSITE, faceIndex } from '../../engine/cube/vocabulary.ts';
import { countTurns } from '../../engine/notation/count.ts';
import { after, turns } from '../support/turns.ts';

const same = (a: string, b: string): boolean => sameState(after(a), after(b));

describe('WCA Regulations, Article 12a', () => {
  test('12a1: R, L, U, D, F, B turn a face clockwise as seen at it', () => {
    // Seen at the face, clockwise takes its upper neighbour to the right: what is above goes right.
    expect(makeFaces(after('F')).R.charAt(0)).toBe('w');
    expect(makeFaces(after('R')).B.charAt(0)).toBe('w');
    expect(makeFaces(after('B')).L.charAt(0)).toBe('w');
    expect(makeFaces(after('L')).F.charAt(0)).toBe('w');
    expect(makeFaces(after('U')).R.charAt(0)).toBe('b');
    expect(makeFaces(after('D')).R.charAt(8)).toBe('g');
  });

  test('12a2: a wide turn is the face and the slice beside it', () => {
    expect(same('Rw', "R M'")).toBe(true);
    expect(same('Lw', 'L M')).toBe(true);
    expect(same('Uw', "U E'")).toBe(true);
    expect(same('Dw', 'D E')).toBe(true);
    expect(same('Fw', 'F S')).toBe(true);
    expect(same('Bw', "B S'")).toBe(true);
  });

  test('12a4: x goes with R, y with U, z with F', () => {
    expect(same('x', "R M' L'")).toBe(true);
    expect(same('y', "U E' D'")).toBe(true);
    expect(same('z', "F S B'")).toBe(true);
  });

  test('12a5 and 12a6: a face or wide turn counts 1, a rotation 0, or 1 in ETM', () => {
    expect(countTurns(turns("R Uw2 F' x y2"))).toMatchObject({ obtm: 3, etm: 5 });
  });

  test('4d1: white on top and green in front; red is then on the right (common practice)', () => {
    expect(holdingFrom('white', 'green')).toBe(SOLVED.holding);
    expect(colourAt(SOLVED.holding, faceIndex('R'))).toBe('red');
  });
});

describe('common practice', () => {
  test('slices: M as L, E as D, S as F; they count 1 in STM and, in quarter turns, M 2 and M2 4', () => {
    expect(same('M', "x' R L'")).toBe(true);
    expect(same('E', "y' U D'")).toBe(true);
    expect(same('S', "z F' B")).toBe(true);
    expect(countTurns(turns('M'))).toMatchObject({ stm: 1, qtm: 2, obtm: 2 });
    expect(countTurns(turns('M2'))).toMatchObject({ stm: 1, qtm: 4, obtm: 2 });
  });

  test('r = L x', () => {
    expect(same('r', 'L x')).toBe(true);
  });

  test('8 corners with 3 stickers, 12 edges with 2; white opposite yellow, green blue, red orange', () => {
    expect(piecesIn(ALL_CORNERS).map((piece) => faceletsOf(piece).length)).toEqual(
      Array(8).fill(3),
    );
    expect(piecesIn(ALL_EDGES).map((piece) => faceletsOf(piece).length)).toEqual(Array(12).fill(2));
    expect(PIECES).toBe(20);
    const opposite = (colour: (typeof COLOURS)[number]): string =>
      COLOURS[OPPOSITE[COLOURS.indexOf(colour)]];
    expect(['white', 'green', 'red'].map((c) => opposite(c as 'white'))).toEqual([
      'yellow',
      'blue',
      'orange',
    ]);
  });
});
