import { describe, expect, test } from 'vitest';
import { SOLVED, applyTurns, isSolved, type State } from '../../../engine/cube/state.ts';
import type { Turn } from '../../../engine/cube/turn.ts';
import { LAYERS, goalsFor } from '../../../engine/goals/methods.ts';
import { goalHolds } from '../../../engine/goals/judge.ts';
import { printTurns } from '../../../engine/notation/print.ts';
import { invertTurns, mirrorTurns } from '../../../engine/notation/transform.ts';
import { turnsOf } from '../../../engine/search/person/sequences.ts';
import { makeRandom } from '../../../engine/search/random.ts';
import { SlipCourse } from '../../../engine/search/slips/course.ts';
import { applyEdits, singleEdits } from '../../../engine/search/slips/edits.ts';
import { findSlips, findStageSlips, singlesThatSolve } from '../../../engine/search/slips/find.ts';
import { pairsThatSolve } from '../../../engine/search/slips/pairs.ts';
import { complete } from '../../../engine/search/step.ts';

/** A solve as it was made: it solves the cube from the state that this gives. */
const MADE =
  "x2 F' D R2 D' U R U' R' y U' L' U L U R U' R' U' F' U F y2 F R U R' U' F' R U R' U R U2 R'";

function startOf(made: readonly Turn[]): State {
  return applyTurns(SOLVED, invertTurns(made));
}

function best(made: string, written: string): { kinds: string[]; turns: string } {
  const start = startOf(turnsOf(made));
  const result = complete(findSlips(start, turnsOf(written)));
  if (result.kind !== 'slips') throw new Error(result.kind);
  for (const slip of result.slips) expect(isSolved(applyTurns(start, slip.turns))).toBe(true);
  return {
    kinds: result.slips[0].edits.map(({ kind }) => kind),
    turns: printTurns(result.slips[0].turns),
  };
}

describe('a slip of writing is found and named', () => {
  test.each([
    ['a missing prime', "U' R' y U' L' U L", "U' R y U' L' U L", 'reversed'],
    ['a missing 2', "D R2 D' U", "D R D' U", 'quarter-for-half'],
    ['a turn left out', "F' D R2 D'", "F' R2 D'", 'left-out'],
    ['a turn too many', "U R U' R' y", "U R U' R' F y", 'one-too-many'],
    ['neighbours swapped', "y2 F R U R' U' F'", "y2 F U R R' U' F'", 'swapped'],
    ['y for y′', "U' R' y U'", "U' R' y' U'", 'reversed'],
    ['x2 for z2', 'x2 F', 'z2 F', 'other-axis'],
    ['a rotation forgotten', "F' U F y2 F R", "F' U F F R", 'rotation-forgotten'],
    ['wide for narrow', "y2 F R U R'", "y2 F Rw U R'", 'wide-or-narrow'],
    ['L for R', "U R U' R' U R U2 R'", "U R U' R' U R U2 L'", 'other-face'],
  ])('%s: %s written as %s', (_, made, written, kind) => {
    const text = MADE.includes(made) ? MADE.replace(made, written) : `${MADE} ${written}`;
    const whole = MADE.includes(made) ? MADE : `${MADE} ${made}`;
    const { kinds, turns } = best(whole, text);
    expect(kinds).toEqual([kind]);
    const start = startOf(turnsOf(whole));
    expect(isSolved(applyTurns(start, turnsOf(turns)))).toBe(true);
  });

  test('M the wrong way', () => {
    const made = `${MADE} M' U M U2 M' U M`;
    expect(best(made, `${MADE} M U M U2 M' U M`).kinds).toEqual(['reversed']);
  });

  test('a stretch written as its mirror image', () => {
    const insert = turnsOf("R U R' U R U2 R'");
    const made = `R2 D ${printTurns(insert)} F2 D' B`;
    const written = `R2 D ${printTurns(mirrorTurns(insert, 'left-right'))} F2 D' B`;
    expect(best(made, written).kinds).toEqual(['mirrored-stretch']);
  });

  test('a stretch written as it looks from the side', () => {
    // R U R′ F2 U made, written as if the cube had been turned by y meanwhile.
    const made = "D B2 R U R' F2 U L' D F";
    const written = "D B2 B U B' R2 U L' D F";
    expect(best(made, written).kinds).toEqual(['other-holding', 'other-holding']);
  });

  test('a stretch written backwards', () => {
    const made = "D B2 R U F' L2 U L' D F";
    const written = "D B2 L2 F U' R' U L' D F";
    expect(best(made, written).kinds).toEqual(['inverted-stretch']);
  });

  test('a repeat once less or once more than made', () => {
    const three = "R U R' U' R U R' U' R U R' U'";
    expect(best(`F2 ${three} D B`, "F2 R U R' U' R U R' U' D B").kinds).toEqual(['repeat-missing']);
    expect(best("F2 R U R' U' R U R' U' D B", `F2 ${three} D B`).kinds).toEqual(['repeat-extra']);
  });

  test('two missing primes, where no single edit explains the end', () => {
    const made = MADE;
    const written = MADE.replace("U' L' U L", "U' L U L").replace(
      "R U R' U R U2 R'",
      "R U R U R U2 R'",
    );
    const start = startOf(turnsOf(made));
    const result = complete(findSlips(start, turnsOf(written)));
    expect(result).toMatchObject({ kind: 'slips', pairs: true });
    expect(result.slips[0].edits.map(({ kind }) => kind)).toEqual(['reversed', 'reversed']);
    expect(printTurns(result.slips[0].turns)).toBe(printTurns(turnsOf(made)));
  });

  test('a slip in the scramble: scramble and solve as one, from the solved cube', () => {
    const scramble = turnsOf("R2 U' F D2 L' B R'");
    const solve = invertTurns(scramble);
    const written = turnsOf("R2 U' F D2 L B R'");
    const result = complete(findSlips(SOLVED, [...written, ...solve]));
    const places = result.slips.map(({ edits }) => edits[0].index);
    expect(places).toContain(4);
  });

  test('more than 1,000 turns are not searched', () => {
    const long = Array.from({ length: 1001 }, () => turnsOf('R')[0]);
    expect(complete(findSlips(SOLVED, long)).kind).toBe('too-long');
  });

  test('a solve that ends solved has no slip', () => {
    expect(complete(findSlips(startOf(turnsOf(MADE)), turnsOf(MADE))).kind).toBe('already-solved');
  });
});

describe('edits are found by composing, all of them', () => {
  test('single edits: the same as trying each', () => {
    const random = makeRandom(12);
    for (let i = 0; i < 20; i++) {
      const made = Array.from({ length: 8 }, () => random.below(54));
      const start = startOf(made);
      const all = singleEdits(made);
      const written = applyEdits(made, [all[random.below(all.length)]]);
      const edits = singleEdits(written);
      const tried = edits.filter((edit) =>
        isSolved(applyTurns(start, applyEdits(written, [edit]))),
      );
      const found = complete(singlesThatSolve(new SlipCourse(start, written), edits));
      expect(found.map(([edit]) => edit)).toEqual(tried);
      expect(tried.length).toBeGreaterThan(0);
    }
  });

  test('pairs: the same as trying each', () => {
    // Few turns and few edits, so that every pair can be tried.
    const made = turnsOf("R y U F' x L");
    const start = startOf(made);
    const written = turnsOf('R U F x L');
    const edits = singleEdits(written).filter(({ weight }) => weight >= 0.35);
    const tried: unknown[] = [];
    edits.forEach((first, i) => {
      edits.slice(i + 1).forEach((second) => {
        if (second.index < first.index + first.remove) return;
        if (isSolved(applyTurns(start, applyEdits(written, [first, second]))))
          tried.push([first, second]);
      });
    });
    const found = complete(pairsThatSolve(new SlipCourse(start, written), edits));
    expect(found).toHaveLength(tried.length);
    expect(tried.length).toBeGreaterThan(0);
    for (const pair of tried) expect(found).toContainEqual(pair);
  });
});

test('for a stage: edits that restore its goal and keep what was reached before', () => {
  const [cross, corners] = goalsFor(LAYERS, 5);
  // A corner put in with U R U′ R′, of which the last prime was not written.
  const made = turnsOf("U R U' R'");
  const start = applyTurns(SOLVED, invertTurns(made));
  const result = complete(findStageSlips(start, turnsOf("U R U' R"), corners, [cross]));
  expect(result).toMatchObject({ kind: 'slips', pairs: false });
  expect(result.slips[0].edits).toMatchObject([{ index: 3, kind: 'reversed' }]);
  for (const { turns } of result.slips) {
    const end = applyTurns(start, turns);
    expect(goalHolds(corners, end) && goalHolds(cross, end)).toBe(true);
  }
});
