/** `effect "TURNS"`: what turns do to any cube. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { effect } from '../../extension/terminal/json.ts';
import { turnlore, turnloreJson } from './turnlore.ts';

function effectOf(turns: string, ...more: string[]) {
  return turnloreJson(effect, ['effect', turns, ...more]).json;
}

function kept(turns: string, ...more: string[]): string[] {
  return effectOf(turns, ...more)
    .keeps.filter(({ holds }) => holds)
    .map(({ goal }) => goal);
}

describe('what a sequence moves', () => {
  test("R' F R' B2 R F' R' B2 R2 cycles three top corners and nothing else (common practice)", () => {
    const told = effectOf("R' F R' B2 R F' R' B2 R2");
    expect(told.cycles.corners).toEqual([['UFR', 'UBL', 'URB']]);
    expect(told.cycles.edges).toEqual([]);
    expect(told.cycles.centres).toEqual([]);
    expect(told).toMatchObject({ twists: [], flips: [], parity: 'even', order: 3 });
  });

  test('the sequence that flips all twelve edges moves no piece (check value, computed)', () => {
    const told = effectOf("U R2 F B R B2 R U2 L B2 R U' D' R2 F R' L B2 U2 F2");
    expect(told.flips).toHaveLength(12);
    expect(told.cycles).toEqual({ corners: [], edges: [], centres: [] });
    expect(told).toMatchObject({ order: 2, twists: [] });
    expect(told.counts).toEqual({ obtm: 20, etm: 20, stm: 20, qtm: 28 });
  });

  test("(R U R' U')3 leaves every edge alone and swaps two pairs of corners (computed)", () => {
    const told = effectOf("(R U R' U')3");
    expect(told.cycles.edges).toEqual([]);
    expect(told.cycles.corners.map((cycle) => cycle.length)).toEqual([2, 2]);
  });

  test('a slice moves four centres', () => {
    expect(effectOf('M').cycles.centres).toEqual([['U', 'F', 'D', 'B']]);
  });

  test("a rotation in front is taken out, and later turns are reread: x R U R' moves what R F R' moves", () => {
    const { turns, cycles, does } = effectOf("x R U R'");
    const plain = effectOf("R F R'");
    expect(turns).toBe("R F R'");
    expect({ cycles, does }).toEqual({ cycles: plain.cycles, does: plain.does });
  });
});

describe('how often until the cube is as before', () => {
  // Orders computed with GAP and SymPy; R U and 1260 as the maximum: Singmaster 1981, recalled.
  test.each([
    ['R U', 105],
    ["R U'", 63],
    ["R U R' U'", 6],
    ["R U2 D' B D'", 1260],
    ["M' U", 8],
    ['r U', 120],
    ['M E S', 4],
  ])('%s: %i times', (turns, order) => {
    expect(effectOf(turns).order).toBe(order);
  });

  test('R y takes 1260 times as written, but R alone 4 (computed with GAP and SymPy)', () => {
    expect(effectOf('R y')).toMatchObject({ order: 1260, orderWithoutRotations: 4 });
  });

  test('a repeat of a hundred million turns is computed by powers', () => {
    // R U has order 105, and 9999 · 9999 shares the factor 3 with it.
    expect(effectOf('((R U)9999)9999').order).toBe(35);
  });
});

describe('which goals of a method it keeps', () => {
  test("inserting an edge with U R U' R' U' F' U F keeps the first layer on the bottom", () => {
    expect(kept("U R U' R' U' F' U F")).toEqual(['cross', 'corners']);
  });

  test('on top it keeps nothing: --base says which layer is meant', () => {
    expect(kept("U R U' R' U' F' U F", '--base', 'white')).toEqual([]);
  });

  test('without --base it is the colour that faces down when white is up', () => {
    expect(effectOf('R').base).toBe('yellow');
  });

  test("R U R' keeps the cross of CFOP but no number of pairs, as any of the four may be the ones made", () => {
    expect(kept("R U R'", '--method', 'CFOP')).toEqual(['cross']);
  });

  test('turning the top keeps what is meant up to a turn of the top', () => {
    expect(kept('U')).toEqual([
      'cross',
      'corners',
      'middle',
      'top cross',
      'top face',
      'top corners',
    ]);
  });
});

describe('its inverse and mirror image', () => {
  test('are written with brackets and repeats as the sequence is', () => {
    expect(effectOf('[R: U2] (F R)3')).toMatchObject({
      inverse: "(R' F')3 [R: U2]",
      mirror: "[L': U2] (F' L')3",
    });
  });

  test('a sequence and then its inverse does nothing', () => {
    const turn = fc.constantFrom('R', "U'", 'F2', 'Lw', "M'", 'x', 'E2', "b'", 'D', 'y2', 'S');
    fc.assert(
      fc.property(fc.array(turn, { minLength: 1, maxLength: 8 }), (turns) => {
        const text = turns.join(' ');
        const both = effectOf(`${text} ${effectOf(text).inverse}`);
        expect(both).toMatchObject({ order: 1, orderWithoutRotations: 1, does: '' });
      }),
      { numRuns: 6 },
    );
  }, 60_000);
});

describe('its symmetry', () => {
  test('M2 E2 S2 is the same in all 24 holdings, in the mirror, and backwards (computed)', () => {
    const { symmetry } = effectOf('M2 E2 S2');
    expect(symmetry.rotations).toHaveLength(23);
    expect(symmetry.mirrors).toHaveLength(24);
    expect(symmetry.selfInverse).toBe(true);
  });

  test("U D' is the same after any turn of the cube about its vertical axis, and after x2 its inverse", () => {
    const { symmetry } = effectOf("U D'");
    expect(symmetry.rotations).toEqual(['y', "y'", 'y2']);
    expect(symmetry.inverseRotations).toContain('x2');
    expect(symmetry.selfInverse).toBe(false);
  });
});

describe('a shorter way', () => {
  test("R U R' U' has none: proven up to three face turns", () => {
    expect(effectOf("R U R' U'").shorter).toEqual({ turns: null, provenTo: 3 });
  });

  test("six times R U R' U' is no turn at all", () => {
    expect(effectOf("(R U R' U')6").shorter).toEqual({ turns: '', provenTo: 0 });
  });

  test("five times R U R' U' is U R U' R', and it does the same", () => {
    const { turns, provenTo } = effectOf("(R U R' U')5").shorter;
    expect(turns).toBe("U R U' R'");
    expect(provenTo).toBe(3);
  });

  test('what a rotation turns stays turned', () => {
    const { turns } = effectOf("R y U U'").shorter;
    expect(turns).toBe('R y');
  });

  test('of a hundred million turns none is looked for, and nothing is claimed', () => {
    expect(effectOf('((R U)9999)9999').shorter).toEqual({ turns: null, provenTo: 0 });
  });
});

describe('as text', () => {
  test('says cycles, order and the goals kept', () => {
    const { out, status } = turnlore(['effect', "R' F R' B2 R F' R' B2 R2"]);
    expect(status).toBe(0);
    expect(out).toContain('UFR → UBL → URB');
    expect(out).toContain('order       3');
    expect(out).toContain('cross, corners, middle, top cross and top face of layers');
  });

  test('says so when nothing moves', () => {
    expect(turnlore(['effect', "R R'"]).out).toContain('nothing: every piece is where it was');
  });
});

describe('what it does not take', () => {
  test.each([
    [['effect'], 'The turns are missing'],
    [['effect', 'R Q U'], '"Q" is no turn.'],
    [['effect', '(R U'], 'The bracket ( has no partner.'],
    [['effect', '@trigger'], 'The name @trigger means something only in a file'],
    [['effect', 'R … U'], 'An unknown stretch has no effect'],
    [['effect', 'R', '--base', 'pink'], '"pink" is no colour of the cube'],
    [['effect', 'R', '--method', 'mine'], 'There is no method "mine"'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, out, err } = turnlore(args);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
