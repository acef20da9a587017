import { describe, expect, it } from 'vitest';
import { pieceName, piecesIn } from '../../engine/cube/piece.ts';
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import { colourIndex } from '../../engine/cube/vocabulary.ts';
import { crossAlignment, lastTurnMissing } from '../../engine/goals/cross-alignment.ts';
import { goalHolds, goalMissing } from '../../engine/goals/judge.ts';
import { makeCourse } from '../../engine/goals/course.ts';
import { METHODS, findMethod, goalsFor, LAYERS } from '../../engine/goals/methods.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { piecesToName } from '../../engine/goals/moved.ts';
import { turns } from '../support/turns.ts';

/** Base down, held as for the scramble: white up, green in front. */
const YELLOW = colourIndex('yellow');
const GREEN = colourIndex('green');

const after = (text: string): State => applyTurns(SOLVED, turns(text));
const goalOf = (method: string, name: string, front?: number): Goal => {
  const goal = goalsFor(findMethod(method) ?? LAYERS, YELLOW, front).find(
    (one) => one.name === name,
  );
  if (goal === undefined) throw new Error(`${method} has no ${name}`);
  return goal;
};
const held = (state: State, method: string, front?: number): string[] =>
  goalsFor(findMethod(method) ?? LAYERS, YELLOW, front)
    .filter((goal) => goalHolds(goal, state))
    .map((goal) => goal.name);
const missing = (text: string, method: string, name: string): string[] =>
  piecesIn(goalMissing(goalOf(method, name), after(text))).map((piece) => pieceName(piece));
/** Whatever the order of speaking. */
const byColours = (name: string): string => name.split('-').sort().join('-');

describe('goals in general', () => {
  it('all hold on a solved cube, for every method, base and front', () => {
    for (const method of METHODS) {
      for (let base = 0; base < 6; base++) {
        for (const front of [undefined, 0, 1, 2, 3, 4, 5]) {
          for (const goal of goalsFor(method, base, front)) {
            expect(goalHolds(goal, SOLVED), `${method.name} ${goal.name}`).toBe(true);
            expect(goalMissing(goal, SOLVED)).toBe(0);
          }
        }
      }
    }
  });

  it('do not mind how the cube is held', () => {
    expect(held(after("F2 x y'"), 'layers')).toEqual(held(after('F2'), 'layers'));
    expect(held(after("R U R' U' x y z2"), 'layers')).toEqual(['cross']);
  });

  it('name what R takes away: the edge and the two corners at the right of the base', () => {
    expect(missing('R', 'layers', 'cross')).toEqual(['yellow-red']);
    expect(missing('R', 'layers', 'corners').map(byColours)).toEqual(
      ['yellow-red', 'yellow-red-green', 'yellow-blue-red'].map(byColours),
    );
  });

  it('after a slice the pieces off against the centres stayed in the hands; the moved ones are named', () => {
    const course = makeCourse(SOLVED, turns('M2'));
    const cross = goalOf('layers', 'cross');
    const misplaced = piecesIn(goalMissing(cross, after('M2')));
    expect(misplaced.map((piece) => pieceName(piece))).toEqual(['yellow-red', 'yellow-orange']);
    const named = piecesToName(course, cross, 0, misplaced);
    expect(named.map((piece) => pieceName(piece))).toEqual(['yellow-green', 'yellow-blue']);
  });

  it('after a face turn the misplaced pieces are the ones to name', () => {
    const cross = goalOf('layers', 'cross');
    expect(
      piecesToName(makeCourse(SOLVED, turns("R'")), cross, 0, [5]).map((piece) => pieceName(piece)),
    ).toEqual(['yellow-red']);
  });
});

describe('layers', () => {
  it('a slice takes two edges of the cross away from the centres', () => {
    expect(held(after('M'), 'layers')).toEqual([]);
  });

  it('a trigger leaves the cross and nothing more', () => {
    expect(held(after("R U R' U'"), 'layers')).toEqual(['cross']);
  });

  it("a middle edge done wrong leaves the corners: U R U' R' U' F' U F from solved", () => {
    expect(held(after("U R U' R' U' F' U F"), 'layers')).toEqual(['cross', 'corners']);
  });

  it("F R U R' U' F' leaves the lower layers and spoils the top cross", () => {
    expect(held(after("F R U R' U' F'"), 'layers')).toEqual(['cross', 'corners', 'middle']);
  });

  it("R U R' U R U2 R' leaves the top cross and spoils the top face", () => {
    expect(held(after("R U R' U R U2 R'"), 'layers')).toEqual([
      'cross',
      'corners',
      'middle',
      'top cross',
    ]);
  });

  it("R' F R' B2 R F' R' B2 R2 leaves the top face and spoils the top corners", () => {
    expect(held(after("R' F R' B2 R F' R' B2 R2"), 'layers')).toEqual([
      'cross',
      'corners',
      'middle',
      'top cross',
      'top face',
    ]);
  });

  it('a cycle of three top edges leaves the top corners, also with a turn of the top, and is not solved', () => {
    const reached = ['cross', 'corners', 'middle', 'top cross', 'top face', 'top corners'];
    expect(held(after("F2 U L R' F2 L' R U F2"), 'layers')).toEqual(reached);
    expect(held(after("F2 U L R' F2 L' R U F2 U'"), 'layers')).toEqual(reached);
    expect(held(after('U2'), 'layers')).toEqual(reached);
  });

  it('ending with the corners: edges placed, corners placed, corners turned', () => {
    const twisted = "R' D' R D R' D' R D U R' D' R D R' D' R D R' D' R D R' D' R D U'";
    expect(held(after(twisted), 'layers, corners last')).toContain('corners placed');
    expect(held(after(twisted), 'layers, corners last')).not.toContain('corners turned');
    const moved = "R' F R' B2 R F' R' B2 R2";
    expect(held(after(moved), 'layers, corners last')).toContain('edges placed');
    expect(held(after(moved), 'layers, corners last')).not.toContain('corners placed');
  });
});

describe('CFOP', () => {
  it('counts pairs in any order: with one pair out, the 3rd pair holds and the 4th does not', () => {
    for (const out of ["R U R'", "L' U' L", "R' U' R", "L U L'"]) {
      expect(held(after(out), 'CFOP')).toEqual(['cross', '1st pair', '2nd pair', '3rd pair']);
    }
  });

  it('two pairs out leave the 2nd pair, whichever they are', () => {
    expect(held(after("R U R' L' U' L"), 'CFOP')).toEqual(['cross', '1st pair', '2nd pair']);
    expect(held(after("R U R' L U L'"), 'CFOP')).toEqual(['cross', '1st pair', '2nd pair']);
  });

  it('of the pairs not made, those count as in the way that lack least', () => {
    expect(missing("R U R'", 'CFOP', '3rd pair')).toEqual([]);
    expect(missing("R U R'", 'CFOP', '4th pair').map(byColours)).toEqual([
      'green-red',
      'green-red-yellow',
    ]);
  });

  it('OLL is a top of one colour, PLL is the solved cube', () => {
    expect(held(after("R' F R' B2 R F' R' B2 R2"), 'CFOP').at(-1)).toBe('OLL');
    expect(held(after('U'), 'CFOP').at(-1)).toBe('OLL');
  });
});

describe('Roux and ZZ', () => {
  it('blocks are free of slice M, and the last six edges are not', () => {
    expect(held(after('M'), 'Roux', GREEN)).toEqual(['first block', 'second block', 'CMLL']);
    expect(held(after('M2'), 'Roux', GREEN)).toEqual([
      'first block',
      'second block',
      'CMLL',
      'EO',
      'UL UR',
    ]);
    expect(held(after("M' U M U2"), 'Roux', GREEN)).toEqual([
      'first block',
      'second block',
      'CMLL',
    ]);
  });

  it('blocks are judged against each other: a wide turn parts them', () => {
    expect(held(after('Rw'), 'Roux', GREEN)).toEqual(['first block']);
    expect(held(after('R'), 'Roux', GREEN)).toEqual(['first block']);
    // A lone block that turns as one is still a block.
    expect(held(after('L'), 'Roux', GREEN)).toEqual(['first block']);
    expect(held(after('F'), 'Roux', GREEN)).toEqual([]);
  });

  it('without a side declared, a block may be on any: after F the one at the back stands', () => {
    expect(held(after('F'), 'Roux')).toEqual(['first block']);
  });

  it('quarter turns of front and back flip edges, those of the other faces do not', () => {
    const line = goalOf('ZZ', 'EOLine', GREEN);
    for (const text of ['R', 'L', 'U', 'R U L2 U2']) {
      expect(goalHolds(line, after(text)), text).toBe(true);
    }
    for (const text of ['F', "B'", 'R F']) expect(goalHolds(line, after(text)), text).toBe(false);
    expect(goalHolds(line, after('D'))).toBe(false);
  });
});

describe('near misses', () => {
  it('a cross turned against its sides is no cross, and one turn of its layer mends it', () => {
    expect(goalHolds(goalOf('layers', 'cross'), after('D'))).toBe(false);
    expect(crossAlignment(after('D'), YELLOW)).toEqual({ kind: 'offset', turns: 3 });
    expect(crossAlignment(after("D'"), YELLOW)).toEqual({ kind: 'offset', turns: 1 });
    expect(crossAlignment(after('D2 R U'), YELLOW)).toEqual({ kind: 'none' });
  });

  it('edges in the wrong order are something that no turn of the layer mends', () => {
    expect(crossAlignment(after('R2 L2 U2 R2 L2'), YELLOW)).toEqual({ kind: 'order' });
    expect(crossAlignment(after("z2 F2 U L R' F2 L' R U F2"), YELLOW)).toEqual({ kind: 'order' });
    expect(crossAlignment(after("R U R' U'"), YELLOW)).toEqual({ kind: 'aligned' });
  });

  it('one turn of the top short of the end is told with that turn', () => {
    const solved = goalOf('layers', 'solved');
    expect(lastTurnMissing(solved, after("U'"), YELLOW)).toBe(1);
    expect(lastTurnMissing(solved, after('U'), YELLOW)).toBe(3);
    expect(lastTurnMissing(solved, SOLVED, YELLOW)).toBeUndefined();
    expect(lastTurnMissing(solved, after('D'), YELLOW)).toBeUndefined();
  });
});
