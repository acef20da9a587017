import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { colourFacelets } from '../../engine/cube/facelets.ts';
import { HOLDINGS } from '../../engine/cube/holding.ts';
import { readNet } from '../../engine/cube/net.ts';
import { FIRST_CORNER } from '../../engine/cube/piece.ts';
import { readState, sumProblems, type Problem } from '../../engine/cube/possible.ts';
import { explainProblem } from '../../engine/cube/remedy.ts';
import { applyTurns, held, sameState, type State } from '../../engine/cube/state.ts';
import { anyState, anyTurns } from '../support/random.ts';
import { after } from '../support/turns.ts';

function problemsOf(colours: ArrayLike<number>): readonly Problem[] {
  const reading = readState(colours);
  return reading.kind === 'impossible' ? reading.problems : [];
}

/** The net of a cube that can be, with some facelets (index: new colour) painted over. */
function painted(state: State, changes: Readonly<Record<number, number>>): Uint8Array {
  const colours = colourFacelets(state);
  for (const [facelet, colour] of Object.entries(changes)) colours[Number(facelet)] = colour;
  return colours;
}

function withCorner(state: State, slot: number, code: number): State {
  return {
    ...state,
    corners: Uint8Array.from(state.corners, (old, i) => (i === slot ? code : old)),
  };
}

describe('the door from colours to states', () => {
  test('every state, however held, is read back from its colours', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const reading = readState(colourFacelets(state));
        expect(reading.kind === 'possible' && sameState(reading.state, state)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test('whatever turns are made, slices and rotations too, the cube stays possible', () => {
    fc.assert(
      fc.property(anyTurns(), (turns) => {
        expect(problemsOf(colourFacelets(applyTurns(after(''), turns)))).toEqual([]);
      }),
    );
  });

  test('a corner turned clockwise in its slot is mended counter-clockwise, and the other way round', () => {
    fc.assert(
      fc.property(anyState, fc.integer({ min: 0, max: 7 }), (state, slot) => {
        const code = state.corners[slot];
        const turned = (by: number): number => code - (code % 3) + ((code + by) % 3);
        const once = withCorner(state, slot, turned(1));
        const twice = withCorner(state, slot, turned(2));
        expect(problemsOf(colourFacelets(once))).toEqual([
          { kind: 'twisted-corner', remedy: 'counter-clockwise' },
        ]);
        expect(problemsOf(colourFacelets(twice))).toEqual([
          { kind: 'twisted-corner', remedy: 'clockwise' },
        ]);
      }),
    );
  });

  test('the corner at UFR turned clockwise shows white on the right', () => {
    const net = readNet([
      '    www',
      '    www',
      '    wwg',
      'ooo ggr wrr bbb',
      'ooo ggg rrr bbb',
      'ooo ggg rrr bbb',
      '    yyy',
      '    yyy',
      '    yyy',
    ]);
    expect(net.kind === 'net' && problemsOf(net.colours)).toEqual([
      { kind: 'twisted-corner', remedy: 'counter-clockwise' },
    ]);
  });

  test('one edge flipped', () => {
    fc.assert(
      fc.property(anyState, fc.integer({ min: 0, max: 11 }), (state, slot) => {
        const edges = Uint8Array.from(state.edges, (code, i) => (i === slot ? code ^ 1 : code));
        expect(problemsOf(colourFacelets({ ...state, edges }))).toEqual([{ kind: 'flipped-edge' }]);
      }),
    );
  });

  test('two pieces swapped, of either kind; two swaps undo each other', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const swap = (codes: ArrayLike<number>): Uint8Array => {
          const swapped = Uint8Array.from(codes);
          [swapped[0], swapped[5]] = [swapped[5], swapped[0]];
          return swapped;
        };
        const corners = { ...state, corners: swap(state.corners) };
        const both = { ...corners, edges: swap(state.edges) };
        expect(problemsOf(colourFacelets(corners))).toEqual([{ kind: 'swapped-pieces' }]);
        expect(problemsOf(colourFacelets(both))).toEqual([]);
      }),
    );
  });

  test('a twisted corner, a flipped edge and a swap are all told at once', () => {
    const solved = after('');
    const state = {
      corners: Uint8Array.from(solved.corners, (code, slot) => (slot === 3 ? code + 2 : code)),
      edges: Uint8Array.from([2, 1, ...Array.from(solved.edges).slice(2)]),
      holding: 7,
    };
    expect(problemsOf(colourFacelets(state)).map(({ kind }) => kind)).toEqual([
      'twisted-corner',
      'flipped-edge',
      'swapped-pieces',
    ]);
    expect(sumProblems(state)).toHaveLength(3);
  });

  test('ten white and eight yellow facelets', () => {
    // The down facelet of DFR is painted white: white-green-red is then there twice.
    const problems = problemsOf(painted(after(''), { 47: 0 }));
    expect(problems).toContainEqual({ kind: 'colour-count', colour: 0, count: 10 });
    expect(problems).toContainEqual({ kind: 'colour-count', colour: 5, count: 8 });
  });

  test('an edge cannot be white and yellow, nor white twice', () => {
    // UF (facelets 7 and 19) with DF (46 and 25): the white and the yellow facelet, then two greens.
    const problems = problemsOf(painted(after(''), { 19: 5, 46: 2 }));
    expect(problems).toContainEqual({
      kind: 'no-such-piece',
      slot: 0,
      colours: [0, 5],
      reason: 'opposite',
    });
    expect(problems).toContainEqual({
      kind: 'no-such-piece',
      slot: 4,
      colours: [2, 2],
      reason: 'equal',
    });
    expect(problems.map(explainProblem)[0].reason).toBe(
      'the edge at UF cannot be white-yellow: white and yellow never meet in a piece',
    );
  });

  test('a piece that is there twice, and the one that is missing for it', () => {
    // UF green becomes red, UR red becomes green: white-red at UF, white-green at UR: only a swap.
    expect(problemsOf(painted(after(''), { 19: 3, 28: 2 }))).toEqual([{ kind: 'swapped-pieces' }]);
    // The side facelets of UF and DR exchanged leave every count right.
    expect(problemsOf(painted(after(''), { 19: 3, 34: 2 }))).toEqual([
      { kind: 'piece-twice', piece: 1, slots: [0, 1] },
      { kind: 'piece-twice', piece: 4, slots: [4, 5] },
      { kind: 'piece-missing', piece: 0 },
      { kind: 'piece-missing', piece: 5 },
    ]);
  });

  test('one corner with two colours exchanged is mirrored', () => {
    // UFR: the front facelet (20) and the right one (27).
    expect(problemsOf(painted(after(''), { 20: 3, 27: 2 }))).toEqual([
      { kind: 'mirrored-corner', slot: FIRST_CORNER, colours: [0, 2, 3] },
    ]);
  });

  test('red and orange exchanged everywhere is a mirrored scheme, from any state', () => {
    fc.assert(
      fc.property(anyState, (state) => {
        const mirrored = colourFacelets(state).map((colour) => [0, 3, 2, 1, 4, 5][colour]);
        expect(problemsOf(mirrored)).toEqual([{ kind: 'mirrored-scheme' }]);
      }),
    );
  });

  test('centres: one colour twice, or neighbours opposite each other', () => {
    expect(problemsOf(painted(after(''), { 4: 2 }))).toContainEqual({
      kind: 'centre-twice',
      colour: 2,
      faces: [0, 2],
    });
    expect(problemsOf(painted(after(''), { 4: 2, 22: 0 }))).toContainEqual({
      kind: 'centres-opposite',
      colours: [2, 5],
    });
  });

  test('54 colours at random are read or refused with reasons that can be said', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 54, maxLength: 54 }),
        (colours) => {
          const reading = readState(colours);
          if (reading.kind === 'possible') return;
          expect(reading.problems.length).toBeGreaterThan(0);
          for (const problem of reading.problems) {
            const { reason, remedy } = explainProblem(problem);
            expect(`${reason} ${remedy}`).not.toMatch(/undefined|\bNaN\b|^ | $/);
          }
        },
      ),
    );
  });

  test('all 24 holdings of the solved cube are told apart', () => {
    for (let holding = 0; holding < HOLDINGS; holding++) {
      const reading = readState(colourFacelets(held(after(''), holding)));
      expect(reading.kind === 'possible' && reading.state.holding).toBe(holding);
    }
  });
});
