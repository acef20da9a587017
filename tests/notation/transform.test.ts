import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FACELETS, faceletMotion } from '../../engine/cube/facelets.ts';
import { HOLDINGS } from '../../engine/cube/holding.ts';
import {
  SOLVED,
  applyTurns,
  compose,
  held,
  isSolved,
  sameArrangement,
  sameState,
} from '../../engine/cube/state.ts';
import { FACE_TURNS, isRotation, turnKind } from '../../engine/cube/turn.ts';
import { printSequence, printTurns } from '../../engine/notation/print.ts';
import { readSequence } from '../../engine/notation/read.ts';
import {
  PLANES,
  asFaceTurns,
  invert,
  invertTurns,
  mirror,
  mirrorTurns,
  renameHolding,
  renameTurns,
  slicesAsFaces,
  withoutRotations,
  type Plane,
} from '../../engine/notation/transform.ts';
import { stateOf, trees, turns } from './sequences.ts';

const holdings = fc.integer({ min: 0, max: HOLDINGS - 1 });
const knownText = trees.map((tree) => printSequence(tree).replace(/foo|Q2|8|…/g, '~'));
const inverseOf = (text: string): string => printSequence(invert(readSequence(text).items));
const mirrorOf = (text: string, plane: Plane): string =>
  printSequence(mirror(readSequence(text).items, plane) ?? []);
const codesOf = (text: string): number[] =>
  readSequence(text).items.flatMap((item) => (item.kind === 'turn' ? [item.turn] : []));

describe('turns that amount to others (common practice for slices and small letters)', () => {
  it.each([
    ['r', 'L x'],
    ['M', "x' R L'"],
    ['E', "y' U D'"],
    ['S', "z F' B"],
    ['u', 'D y'],
    ['f', 'B z'],
    ["M E M' E'", "M E M' E'"],
  ])('%s = %s', (left, right) => {
    expect(sameState(stateOf(left), stateOf(right))).toBe(true);
  });
});

describe('the inverse', () => {
  it.each([
    ["R U R' U'", "U R U' R'"],
    ['[R, U]', '[U, R]'],
    ["[F: R U']", "[F: U R']"],
    ['(R U)3 F', "F' (U' R')3"],
    ["(R U)'", '(R U)'],
    ['@h2 … ~', "~ … @h2'"],
    ['M2 x y', "y' x' M2"],
  ])('of %s is %s', (text, inverse) => {
    expect(inverseOf(text)).toBe(inverse);
  });

  it('undoes the sequence; the inverse of the inverse does the same as the sequence', () => {
    fc.assert(
      fc.property(knownText, (text) => {
        expect(sameState(compose(stateOf(text), stateOf(inverseOf(text))), SOLVED)).toBe(true);
        expect(sameState(stateOf(inverseOf(inverseOf(text))), stateOf(text))).toBe(true);
      }),
    );
  });

  it('of flat turns, twice, is the same turns', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        expect(invertTurns(invertTurns(codes))).toEqual(codes);
        expect(sameState(applyTurns(SOLVED, [...codes, ...invertTurns(codes)]), SOLVED)).toBe(true);
      }),
    );
  });
});

/** Where a facelet lies in the mirror: the nets of the two sides are mirrored row by row. */
function mirroredFacelet(facelet: number, plane: Plane): number {
  const face = Math.floor(facelet / 9);
  const row = Math.floor((facelet % 9) / 3);
  const column = facelet % 3;
  // Faces U L F R B D; rows and columns as they lie in the unfolded net.
  if (plane === 'left-right') return [0, 3, 2, 1, 4, 5][face] * 9 + row * 3 + (2 - column);
  if (plane === 'up-down') return [5, 1, 2, 3, 4, 0][face] * 9 + (2 - row) * 3 + column;
  const target = [0, 1, 4, 3, 2, 5][face] * 9;
  return face === 0 || face === 5
    ? target + (2 - row) * 3 + column
    : target + row * 3 + (2 - column);
}

describe('the mirror image', () => {
  it.each([
    ["U R U' R' U' F' U F", 'left-right', "U' L' U L U F U' F'"],
    ["R U R' U'", 'front-back', "R' U' R U"],
    ["R U R' U'", 'up-down', "R' D' R D"],
    ['r M E S x y z', 'left-right', "Lw' M E' S' x y' z'"],
    ['[F: (R U)3]', 'left-right', "[F': (L' U')3]"],
  ] as const)('of %s (%s) is %s', (text, plane, image) => {
    expect(mirrorOf(text, plane)).toBe(image);
  });

  it('moves every sticker as the mirror shows it', () => {
    fc.assert(
      fc.property(turns, fc.constantFrom(...PLANES), (codes, plane) => {
        const motion = faceletMotion(applyTurns(SOLVED, codes));
        const image = faceletMotion(applyTurns(SOLVED, mirrorTurns(codes, plane)));
        for (let facelet = 0; facelet < FACELETS; facelet++) {
          expect(image[mirroredFacelet(facelet, plane)]).toBe(
            mirroredFacelet(motion[facelet], plane),
          );
        }
      }),
    );
  });

  it('of the mirror image is the sequence itself', () => {
    fc.assert(
      fc.property(turns, fc.constantFrom(...PLANES), (codes, plane) => {
        expect(mirrorTurns(mirrorTurns(codes, plane), plane)).toEqual(codes);
        expect(mirrorOf(printTurns(codes), plane)).toBe(printTurns(mirrorTurns(codes, plane)));
      }),
    );
  });

  it('is not given for a name, whose turns stand elsewhere', () => {
    expect(mirror(readSequence('R (@h2)2').items, 'left-right')).toBeUndefined();
  });
});

describe('the same in another holding', () => {
  it('turns the same layers of the cube', () => {
    fc.assert(
      fc.property(turns, holdings, (codes, holding) => {
        const reread = applyTurns(held(SOLVED, holding), renameTurns(codes, holding));
        expect(sameArrangement(reread, applyTurns(SOLVED, codes))).toBe(true);
      }),
    );
  });

  it('keeps brackets: with yellow up and green in front, [R, U] is [L, D]', () => {
    const upsideDown = applyTurns(SOLVED, codesOf('z2')).holding;
    expect(printSequence(renameHolding(readSequence('[R, U]2').items, upsideDown) ?? [])).toBe(
      '[L, D]2',
    );
  });
});

describe('rotations taken out', () => {
  it.each([
    ["x2 F' D R2 D'", "B' U R2 U'"],
    ["y R y' R", 'B R'],
    ['x y R z M', "U S'"],
  ])('%s is %s in the first holding', (text, without) => {
    expect(printTurns(withoutRotations(codesOf(text)))).toBe(without);
  });

  it('the pieces end in the same arrangement', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        const without = withoutRotations(codes);
        expect(without.some(isRotation)).toBe(false);
        expect(sameArrangement(applyTurns(SOLVED, without), applyTurns(SOLVED, codes))).toBe(true);
      }),
    );
  });

  it('slices as faces have the same effect, holding included', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        const faces = slicesAsFaces(codes);
        expect(faces.some((turn) => turnKind(turn) === 'slice')).toBe(false);
        expect(sameState(applyTurns(SOLVED, faces), applyTurns(SOLVED, codes))).toBe(true);
      }),
    );
  });

  it('as face turns alone, the pieces end in the same arrangement', () => {
    fc.assert(
      fc.property(turns, (codes) => {
        const faces = asFaceTurns(codes);
        expect(faces.every((turn) => turn < FACE_TURNS)).toBe(true);
        expect(sameArrangement(applyTurns(SOLVED, faces), applyTurns(SOLVED, codes))).toBe(true);
      }),
    );
    expect(isSolved(applyTurns(SOLVED, asFaceTurns(codesOf("M x R' L"))))).toBe(true);
  });
});
