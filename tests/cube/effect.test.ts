import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareDoes, readDoes, sameDoes, type DoesClaim } from '../../engine/cube/does.ts';
import {
  describeEffect,
  effectOrder,
  faceletTargets,
  printDoes,
  stickerAt,
  stickerName,
} from '../../engine/cube/effect.ts';
import { FACELETS } from '../../engine/cube/facelets.ts';
import { isSolved, power, sameState, SOLVED } from '../../engine/cube/state.ts';
import { anyState } from '../support/random.ts';
import { after } from '../support/turns.ts';

const effectOf = (text: string): ReturnType<typeof describeEffect> => describeEffect(after(text));
const doesOf = (text: string): string => printDoes(effectOf(text));

function claim(text: string): DoesClaim {
  const reading = readDoes(text);
  if (reading.kind !== 'does') throw new Error(`unreadable claim: ${text}`);
  return reading;
}

describe('names of stickers', () => {
  test('the up and down stickers of the corners run counter-clockwise around their corner', () => {
    const up = [8, 6, 0, 2].map(stickerName);
    const down = [47, 45, 51, 53].map(stickerName);
    expect([...up, ...down]).toEqual(['UFR', 'ULF', 'UBL', 'URB', 'DRF', 'DFL', 'DLB', 'DBR']);
  });

  test('all 54 differ, and each is found again, its other letters in any order', () => {
    const names = Array.from({ length: FACELETS }, (_, facelet) => stickerName(facelet));
    expect(new Set(names).size).toBe(FACELETS);
    names.forEach((name, facelet) => {
      const [first, ...others] = name;
      expect(stickerAt(first + others.reverse().join(''))).toBe(facelet);
    });
    expect(stickerAt('UFL')).toBe(stickerAt('ULF'));
    expect(stickerAt('UD')).toBeUndefined();
  });
});

describe('what a sequence does', () => {
  test('U takes front to left, to the back, to the right', () => {
    expect(doesOf('U')).toBe('(UFR ULF UBL URB)(UF UL UB UR)');
    expect(effectOf('U')).toMatchObject({ parity: 'odd', order: 4, twists: [], flips: [] });
  });

  test('R takes the up sticker of UFR to the back', () => {
    expect(doesOf('R')).toBe('(UFR BUR DBR FDR)(UR BR DR FR)');
  });

  test("F2 U L R' F2 L' R U F2 cycles three edges, front to left to right", () => {
    const effect = effectOf("F2 U L R' F2 L' R U F2");
    expect(printDoes(effect)).toBe('(UF UL UR)');
    expect(effect).toMatchObject({ parity: 'even', order: 3, corners: [], centres: [] });
  });

  test("R U R' U' brings two pairs of corners back turned and runs through three edges", () => {
    const effect = effectOf("R U R' U'");
    expect(effect.corners).toEqual([
      { stickers: ['UFR', 'RFD'], returns: 'clockwise' },
      { stickers: ['UBL', 'RBU'], returns: 'counter-clockwise' },
    ]);
    expect(effect.edges).toEqual([{ stickers: ['UR', 'UB', 'FR'], returns: 'right' }]);
    expect(printDoes(effect)).toBe('(UFR RFD RUF DRF FRU FDR)(UBL RBU BLU BUR LUB URB)(UR UB FR)');
  });

  test("(R U R' U') twice turns no edge over, three times swaps corners in pairs", () => {
    expect(effectOf("R U R' U' R U R' U' R U R' U'").edges).toEqual([]);
  });

  test('corners turned in their slots are twists and no cycles', () => {
    const twice = "R' D' R D R' D' R D";
    // Twice R' D' R D takes the right sticker of UFR up: by R' D' to DFL, back to DFR, and up by R.
    const effect = effectOf(`${twice} U ${twice} ${twice} U'`);
    expect(effect.corners).toEqual([]);
    expect(effect.edges).toEqual([]);
    expect(effect.twists).toEqual([
      { slot: 'UFR', turn: 'counter-clockwise' },
      { slot: 'UBR', turn: 'clockwise' },
    ]);
    // Each of the two runs through its three stickers.
    expect(printDoes(effect)).toBe('(UFR FRU RUF)(URB BUR RBU)');
  });

  test('edges turned over in their slots are flips and no cycles', () => {
    const effect = effectOf("M' U M' U M' U2 M U M U M U2");
    expect(effect.edges).toEqual([]);
    expect(effect.flips).toEqual(['UF', 'UB']);
    expect(printDoes(effect)).toBe('(UF FU)(UB BU)');
  });

  test('a slice moves centres, and its corners stay', () => {
    expect(doesOf('M')).toBe('(UF FD DB BU)(U F D B)');
    expect(effectOf('M')).toMatchObject({ parity: 'even', order: 4 });
  });

  test('a rotation moves all but is no odd permutation of corners', () => {
    expect(effectOf('x')).toMatchObject({ parity: 'even', order: 4 });
    expect(effectOf('x').centres).toEqual([{ stickers: ['U', 'B', 'D', 'F'], returns: 'right' }]);
  });

  test('repeated as often as its order says, an effect does nothing, and not before', () => {
    fc.assert(
      fc.property(anyState, (effect) => {
        const order = effectOrder(effect);
        expect(sameState(power(effect, order), SOLVED)).toBe(true);
        for (let divisor = 1; divisor < order; divisor++) {
          if (order % divisor === 0) {
            const early = power(effect, divisor);
            expect(isSolved(early) && early.holding === 0).toBe(false);
          }
        }
      }),
    );
  });

  test('what stays, what cycles and what turns are all pieces, each once', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const effect = describeEffect(state);
        const goesTo = faceletTargets(state);
        const slots = [...effect.corners, ...effect.edges, ...effect.centres]
          .flatMap(({ stickers }) => stickers)
          .concat(effect.twists.map(({ slot }) => slot))
          .concat(effect.flips)
          .map((name) => [...name].sort().join(''));
        expect(new Set(slots).size).toBe(slots.length);
        const moved = new Set<string>();
        goesTo.forEach((to, from) => {
          if (to !== from) moved.add([...stickerName(from)].sort().join(''));
        });
        expect(new Set(slots)).toEqual(moved);
      }),
    );
  });
});

describe('a does: claim', () => {
  test('what is printed for any effect is true of it', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        expect(sameDoes(claim(printDoes(describeEffect(state))), state)).toBe(true);
      }),
    );
  });

  test('a cycle may begin anywhere, with any sticker of its pieces', () => {
    const effect = after("F2 U L R' F2 L' R U F2");
    for (const text of ['(UF UL UR)', '(UL UR UF)', '(FU LU RU)', '(RU, FU, LU)', '(uf ul ur)']) {
      expect(compareDoes(claim(text), effect)).toEqual({ kind: 'same' });
    }
  });

  test('the wrong way round, or one sticker named from the other side, is false', () => {
    const effect = after("F2 U L R' F2 L' R U F2");
    expect(compareDoes(claim('(UF UR UL)'), effect)).toMatchObject({
      kind: 'wrong',
      from: 'UF',
      claimed: 'UR',
      goesTo: 'UL',
    });
    expect(sameDoes(claim('(UF LU UR)'), effect)).toBe(false);
  });

  test('a cycle that returns turned must be written as it runs on', () => {
    const effect = after("R U R' U'");
    expect(sameDoes(claim('… (UFR RFD)'), effect)).toBe(false);
    expect(sameDoes(claim('… (UFR RFD RUF DRF FRU FDR)'), effect)).toBe(true);
  });

  test('without an ellipsis a claim says that nothing else moves', () => {
    const effect = after("R U R' U'");
    expect(compareDoes(claim('(UR UB FR)'), effect)).toMatchObject({
      kind: 'incomplete',
      from: 'UBL',
    });
    for (const text of ['(UR UB FR) …', '...(UR UB FR)', '(UR UB FR) ???']) {
      expect(sameDoes(claim(text), effect)).toBe(true);
    }
  });

  test('what cannot be read is pointed at', () => {
    expect(readDoes('(UF UD)')).toMatchObject({ reason: 'no-sticker', span: { start: 4, end: 6 } });
    expect(readDoes('(UF UFR)')).toMatchObject({ reason: 'mixed-kinds', text: 'UFR' });
    expect(readDoes('(UF UR UF)')).toMatchObject({
      reason: 'sticker-twice',
      span: { start: 7, end: 9 },
    });
    expect(readDoes('UF UR')).toMatchObject({ reason: 'no-bracket', span: { start: 0, end: 2 } });
    expect(readDoes('(UF UR')).toMatchObject({ reason: 'no-bracket', text: '(' });
    expect(readDoes('()')).toMatchObject({ reason: 'empty' });
  });

  test('any text is read or refused', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'UFRDLB() ….,?x') }), (text) => {
        const reading = readDoes(text);
        if (reading.kind === 'bad-does') {
          expect(text.slice(reading.span.start, reading.span.end)).toBe(reading.text);
        } else expect(sameDoes(reading, SOLVED)).toBeTypeOf('boolean');
      }),
    );
  });
});
