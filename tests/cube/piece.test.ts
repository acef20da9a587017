import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourFacelets, faceletIndex } from '../../engine/cube/facelets.ts';
import { FACE_OF, HOLDINGS } from '../../engine/cube/holding.ts';
import {
  PIECES,
  faceShowing,
  faceletsOf,
  pieceAt,
  pieceName,
  pieceOf,
  pieceTitle,
  piecesIn,
  placedSet,
  setOf,
  slotAt,
  slotName,
  whereIs,
} from '../../engine/cube/piece.ts';
import { COLOURS, colourIndex, faceIndex } from '../../engine/cube/vocabulary.ts';
import { anyState } from '../support/random.ts';
import { after } from '../support/turns.ts';

const piece = (...colours: string[]): number => pieceOf(colours.map(colourIndex)) ?? -1;
const everyPiece = Array.from({ length: PIECES }, (_, number) => number);

describe('names', () => {
  test('a piece is named by its colours, the base first, then as they lie with the base down', () => {
    expect(pieceTitle(piece('red', 'white'))).toBe('white-red edge');
    expect(pieceTitle(piece('orange', 'white', 'green'))).toBe('white-green-orange corner');
    expect(pieceName(piece('green', 'white', 'red'))).toBe('white-red-green');
    expect(pieceName(piece('yellow', 'green', 'red'))).toBe('yellow-red-green');
  });

  test('all twenty names differ, whatever the base, and name the colours of the piece', () => {
    for (let base = 0; base < COLOURS.length; base++) {
      const names = everyPiece.map((number) => pieceName(number, base));
      expect(new Set(names).size).toBe(PIECES);
      for (const number of everyPiece) {
        expect(piece(...names[number].split('-'))).toBe(number);
      }
    }
  });

  test('a slot is named by where it lies in the hands, in every holding', () => {
    for (let holding = 0; holding < HOLDINGS; holding++) {
      for (const slot of everyPiece) {
        const faces = [...slotName(slot, holding)].map(faceIndex);
        expect(slotAt(faces, holding)).toBe(slot);
      }
    }
    expect(everyPiece.map((slot) => slotName(slot, 0)).slice(12)).toEqual(
      'UFR UFL UBL UBR DFR DFL DBL DBR'.split(' '),
    );
  });

  test('no piece is white and yellow, or green twice', () => {
    expect(pieceOf([0, 5])).toBeUndefined();
    expect(pieceOf([2, 2])).toBeUndefined();
  });
});

describe('where a piece is', () => {
  test('R takes the white-red-green corner from UFR to UBR, white to the back', () => {
    const state = after('R');
    const corner = piece('white', 'red', 'green');
    expect(slotName(whereIs(state, corner).slot, state.holding)).toBe('UBR');
    expect(faceShowing(state, corner, colourIndex('white'))).toBe(faceIndex('B'));
  });

  test('U leaves all but the eight pieces of the top in place', () => {
    const moved = everyPiece.filter((number) => !piecesIn(placedSet(after('U'))).includes(number));
    expect(moved).toEqual([0, 1, 2, 3, 12, 13, 14, 15]);
  });

  test('what is said of a piece is what its stickers show, in any state and holding', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const seen = colourFacelets(state);
        for (const number of everyPiece) {
          const { slot } = whereIs(state, number);
          expect(pieceAt(state, slot)).toBe(number);
          const inHands = slotAt([...slotName(slot, state.holding)].map(faceIndex), 0);
          for (const colour of faceletsOf(number)) {
            const face = FACE_OF[state.holding][faceShowing(state, number, colour)];
            expect(seen[faceletIndex(inHands ?? -1, face)]).toBe(colour);
          }
        }
      }),
    );
  });

  test('sets of pieces are read as they were made', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: PIECES - 1 })), (pieces) => {
        expect(piecesIn(setOf(pieces))).toEqual([...pieces].sort((a, b) => a - b));
      }),
    );
  });
});
