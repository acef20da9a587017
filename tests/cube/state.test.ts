import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  COMPOSE_HOLDINGS,
  HOLDINGS,
  INVERSE_HOLDING,
  colourAt,
  holdingFrom,
} from '../../engine/cube/holding.ts';
import { makeFaces } from '../../engine/cube/facelets.ts';
import {
  SOLVED,
  applyTurn,
  applyTurns,
  compose,
  invertState,
  isSolved,
  power,
  sameState,
} from '../../engine/cube/state.ts';
import { TURNS, invertTurn, makeTurn, printTurn } from '../../engine/cube/turn.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { anyState, anyTurns } from '../support/random.ts';
import { after, turns } from '../support/turns.ts';

describe('turns', () => {
  test('every turn is read as printed and undone by its inverse', () => {
    fc.assert(
      fc.property(anyState, fc.integer({ min: 0, max: TURNS - 1 }), (state, turn) => {
        expect(turns(printTurn(turn))).toEqual([turn]);
        expect(sameState(applyTurn(applyTurn(state, turn), invertTurn(turn)), state)).toBe(true);
      }),
    );
  });

  test('a quarter turn four times does nothing, twice is the half turn', () => {
    for (let family = 0; family < TURNS / 3; family++) {
      const quarter = applyTurn(SOLVED, makeTurn(family, 1));
      expect(sameState(power(quarter, 4), SOLVED)).toBe(true);
      expect(sameState(power(quarter, 2), applyTurn(SOLVED, makeTurn(family, 2)))).toBe(true);
    }
  });

  test('U takes the front row to the left', () => {
    expect(makeFaces(after('U'))).toMatchObject({ L: 'gggoooooo', F: 'rrrgggggg', U: 'wwwwwwwww' });
  });

  test('x brings the front up, y the right to the front, z the left up', () => {
    const centres = (text: string): string[] =>
      [0, 2].map((face) => colourAt(after(text).holding, face));
    expect(centres('x')).toEqual(['green', 'yellow']);
    expect(centres('y')).toEqual(['white', 'red']);
    expect(centres('z')).toEqual(['orange', 'green']);
  });
});

describe('effects', () => {
  test('the effect of two sequences is that of one after the other', () => {
    fc.assert(
      fc.property(anyTurns(), anyTurns(), (first, second) => {
        const whole = applyTurns(SOLVED, [...first, ...second]);
        expect(
          sameState(compose(applyTurns(SOLVED, first), applyTurns(SOLVED, second)), whole),
        ).toBe(true);
      }),
    );
  });

  test('composing is associative', () => {
    fc.assert(
      fc.property(anyState, anyState, anyState, (a, b, c) => {
        expect(sameState(compose(compose(a, b), c), compose(a, compose(b, c)))).toBe(true);
      }),
    );
  });

  test('an effect and its inverse do nothing, in either order', () => {
    fc.assert(
      fc.property(anyState, (effect) => {
        expect(sameState(compose(effect, invertState(effect)), SOLVED)).toBe(true);
        expect(sameState(compose(invertState(effect), effect), SOLVED)).toBe(true);
      }),
    );
  });

  test('the inverse of a sequence is its turns inverted, the last first', () => {
    fc.assert(
      fc.property(anyTurns(), (sequence) => {
        const inverse = [...sequence].reverse().map(invertTurn);
        const effect = invertState(applyTurns(SOLVED, sequence));
        expect(sameState(applyTurns(SOLVED, inverse), effect)).toBe(true);
      }),
    );
  });

  test('repeating by squares is repeating one by one', () => {
    fc.assert(
      fc.property(anyState, fc.integer({ min: 0, max: 40 }), (effect, times) => {
        let slow = SOLVED;
        for (let i = 0; i < times; i++) slow = compose(slow, effect);
        expect(sameState(power(effect, times), slow)).toBe(true);
      }),
    );
  });
});

describe('holdings', () => {
  test('there are 24, one for each colour up and neighbour in front', () => {
    const found = new Set<number>();
    for (const up of COLOURS) {
      for (const front of COLOURS) {
        const holding = holdingFrom(up, front);
        if (holding === undefined) continue;
        expect([colourAt(holding, 0), colourAt(holding, 2)]).toEqual([up, front]);
        found.add(holding);
      }
    }
    expect(found.size).toBe(HOLDINGS);
  });

  test('they form a group', () => {
    for (let a = 0; a < HOLDINGS; a++) {
      expect(COMPOSE_HOLDINGS[a][INVERSE_HOLDING[a]]).toBe(0);
      expect(new Set(COMPOSE_HOLDINGS[a]).size).toBe(HOLDINGS);
    }
  });

  test('rotating a solved cube leaves it solved', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 45, max: TURNS - 1 })), (rotations) => {
        expect(isSolved(applyTurns(SOLVED, rotations))).toBe(true);
      }),
    );
  });
});
