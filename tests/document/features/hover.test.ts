/** Hovers and the workbench of sequences: facts that are known of these sequences. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/document/analyse.ts';
import { hoverAt } from '../../../engine/document/features/index.ts';
import { withCursor } from './support.ts';

function hover(marked: string): string {
  const { text, position } = withCursor(marked);
  const found = hoverAt(analyse(text), position);
  return found
    ? `${found.kind}: ${found.markdown.replaceAll('\n\n', ' / ').replaceAll('\\', '')}`
    : '';
}

describe('a sequence block as a workbench', () => {
  test('a cycle of three corners: pieces, order, parity, inverse, mirror, form, what it keeps', () => {
    const said = hover("sequence: cor|ners round\n  R' F R' B2 R F' R' B2 R2");
    expect(said).toContain('order 3, an even permutation of the corners');
    expect(said).toContain(
      'UFR → UBL → URB → UFR: white-green-red, white-blue-orange, white-red-blue',
    );
    expect(said).toContain("Inverse: `R2 B2 R F R' B2 R F' R`");
    expect(said).toContain("Mirror left for right: `L F' L B2 L' F L B2 L2`");
    expect(said).toContain('Keeps cross, corners, middle, top cross and top face');
    expect(said).toMatch(/commutator in disguise: `\[.*,.*\]`/);
  });

  test('the turn at which a kept goal is lost', () => {
    const said = hover('seq|uence: a\n  R U\n  keeps: cross');
    expect(said).toContain('Loses cross at R, turn 1');
    const lent = hover("seq|uence: a\n  U R U' R'");
    expect(lent).toContain("On the way cross is opened by R, turn 2 and restored by R', turn 4");
  });

  test('symmetry: a slice pattern is its own inverse and looks the same after turns', () => {
    const said = hover('seq|uence: dots\n  R2 L2 U2 D2 F2 B2');
    expect(said).toContain('done twice it does nothing');
    expect(said).toContain('its mirror image does the same');
  });

  test('twists and flips are told in place', () => {
    const said = hover("seq|uence: a\n  (R U R' U')2");
    expect(said).toMatch(/order 3/);
  });
});

describe('what stands under the mouse', () => {
  const SOLVE =
    "scramble: R U' R'\nbase: yellow\ncross:\n  U U'\ncorners:\n  [R: U] // yellow-green-red corner\nmiddle:\n  U";

  test('a group: written out, and what it does', () => {
    expect(hover(SOLVE.replace('[R:', '[|R:').replace('[|R', '|[R'))).toContain("R U R'");
  });

  test('a stage: reached, and how', () => {
    expect(hover(SOLVE.replace('corners:', 'cor|ners:'))).toContain('3 turns, reached and kept');
    expect(hover(`${SOLVE} R`.replace('middle:', 'mid|dle:'))).toContain('not reached');
  });

  test('a piece by its colours: where it is after the line', () => {
    expect(hover(SOLVE.replace('yellow-green', 'yellow-gr|een'))).toContain('At home in DFR here');
    expect(
      hover(SOLVE.replace("U'\ncorners", "U' // the yellow-green-red c|orner\ncorners")),
    ).toMatch(/Lies in U\w\w here; its home is DFR/);
  });

  test('a turn: parts that it brings or takes', () => {
    expect(hover("scramble: F\nbase: yellow\ncross:\n  F|'")).toContain('Brings 1 edge of cross');
  });

  test('a name: its turns and what they do; a key: what it is for', () => {
    expect(hover("sequence: in\n  R U R'\nsolve:\n @i|n")).toContain("R U R'");
    expect(hover('hol|ding: white up, green front')).toContain('how the cube is held');
  });

  test('a slot in a goal, in the declared holding', () => {
    expect(hover('holding: yellow up, green front\ngoal: mine = D|F\nR')).toContain(
      'white-green edge',
    );
  });

  test('what a person wrote is no markup', () => {
    const found = hoverAt(analyse('sequence: a*b*\n R'), { line: 0, character: 3 });
    expect(found?.markdown).toContain('a\\*b\\*');
  });
});
