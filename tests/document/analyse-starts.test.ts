/** Where a solve starts, how it is held, which colour is its base, and stretches that nobody knows. */
import { describe, expect, test } from 'vitest';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { sameArrangement, SOLVED } from '../../engine/cube/state.ts';
import { analyse } from '../../engine/document/analyse.ts';
import { after } from '../support/turns.ts';
import { SOLVED_NET, codes, firstBlock, found, only, reached } from './analyse-support.ts';

const base = (text: string): string => COLOURS[firstBlock(text).base];

/** After R on a solved cube. */
const NET_AFTER_R = `    wwg
    wwg
    wwg
ooo ggy rrr wbb
ooo ggy rrr wbb
ooo ggy rrr wbb
    yyb
    yyb
    yyb`;

describe('the start', () => {
  test('comes from the scramble, held as declared', () => {
    const { start } = firstBlock('scramble: R U\nF');
    expect(start && sameArrangement(start, after('R U'))).toBe(true);
    const turned = firstBlock("scramble: R\nholding: yellow up, blue front\nR'");
    expect(turned.solved).toBe(true);
    // White up, green in front: red is on the right. Yellow up, blue in front: red is there, too.
    expect(turned.start?.holding).not.toBe(0);
  });

  test('a `scramble:` without value takes the next line', () => {
    const block = firstBlock("scramble:\n  R U F\ncross:\n  F' U' R'");
    expect([block.scramble?.text, block.solved]).toEqual(['R U F', true]);
  });

  test('or from a net', () => {
    const block = firstBlock(`start:\n${NET_AFTER_R}\ncross:\n  R'`);
    expect([block.startFrom, block.solved]).toEqual(['net', true]);
  });

  test('or, with neither, from a solved end', () => {
    const block = firstBlock("R U R' U'");
    expect([block.startFrom, block.solved]).toEqual(['inverse', true]);
    expect(block.start && sameArrangement(block.start, after("U R U' R'"))).toBe(true);
  });

  test('a net after turns is a claim: where it differs, the pieces are named', () => {
    const text = `scramble: R\nR'\nstart:\n${SOLVED_NET}\nR\nstart:\n${SOLVED_NET}`;
    const finding = only(text, 'claim-false');
    expect([finding.kind, finding.range.start.line]).toEqual(['start', 14]);
    expect(finding.message).toMatch(/^The cube does not look like this here: the red-white edge/);
  });

  test.each([
    ['a twisted corner', ['wwg', 'ggr', 'wrr'], /twist/],
    ['a flipped edge', ['wgw', 'gwg', 'rrr'], /flip/],
  ])(
    'a net with %s says why it cannot be, and the remedy',
    (_what, [top, front, right], reason) => {
      const rows = SOLVED_NET.split('\n');
      rows[2] = `    ${top}`;
      rows[3] = `ooo ${front} ${right} bbb`;
      const finding = only(`start:\n${rows.join('\n')}\nR`, 'state-impossible');
      expect(finding.message).toMatch(reason);
      expect(finding.message).toMatch(/\. [A-Z]/);
      // Nothing is judged from a start that cannot be.
      expect(firstBlock(`start:\n${rows.join('\n')}\ncross:\nR`).start).toBeUndefined();
    },
  );

  test('two exchanged edges, a colour too many, a mirrored scheme', () => {
    const swapped = SOLVED_NET.replace('ooo ggg rrr bbb', 'ooo grg rgr bbb');
    expect(only(`start:\n${swapped}`, 'state-impossible').message).toMatch(/two|swap|exchange/i);
    const many = SOLVED_NET.replace('www', 'wwy');
    expect(codes(`start:\n${many}`)).toContain('state-impossible');
    const mirrored = SOLVED_NET.replaceAll('ooo ggg rrr bbb', 'rrr ggg ooo bbb');
    expect(only(`start:\n${mirrored}`, 'state-impossible').message).toMatch(/mirror/i);
  });

  test('rows too few or of strange letters are bad values, and the turns are read all the same', () => {
    const text = 'start:\n  www\ncross:\n  R U';
    expect(codes(text)).toContain('bad-value');
    expect(firstBlock(text).course.length).toBe(2);
    expect(found(`start:\n${SOLVED_NET.replace('yyy', 'yxy')}`)).toEqual(['bad-value 8|x']);
  });
});

describe('blocks', () => {
  test('a `scramble:` after turns opens another solve, its title lines with it', () => {
    const { blocks } = analyse("scramble: R\nR'\ntitle: Second\nsolver: B.\nscramble: U\nU'");
    expect(blocks.map(({ title, solved, line }) => [title, solved, line])).toEqual([
      ['', true, 0],
      ['Second', true, 2],
    ]);
  });

  test('keys above the first block hold for the whole file, those in a block for it', () => {
    const text =
      "method: CFOP\nbase: yellow\nsolve: one\nscramble: R\nR' // cross\nsolve: two\nbase: white\nscramble: U\nU' // cross";
    const { blocks } = analyse(text);
    expect(blocks.map((block) => [block.method, COLOURS[block.base]])).toEqual([
      ['CFOP', 'yellow'],
      ['CFOP', 'white'],
    ]);
  });

  test('turns above the first `solve:` are a solve of their own; turns behind `solve:` are turns', () => {
    expect(analyse("R U\nsolve: R'").blocks.map(({ course }) => course.length)).toEqual([2, 1]);
  });

  test('the base that is taken is written where it holds for this solve alone', () => {
    const text = "scramble: F\nF'\nscramble: R U F D L B\nR L' U";
    const [fix] = only(text, 'base-assumed').fixes;
    expect(fix.edits[0].range.start).toEqual({ line: 3, character: 0 });
  });
});

describe('holding', () => {
  test('before the first turn it is set, also behind a heading without turns', () => {
    const text = "scramble: R\ncross:\nholding: yellow up, blue front\ncorners: R'";
    expect(codes(text)).toEqual([]);
    expect(firstBlock(text).solved).toBe(true);
  });

  test('after the first turn it is a claim; the fix is the rotation, if nothing gets worse by it', () => {
    const meant = "scramble: R\nx2\nholding: yellow up, green front\nL'\nsolved:";
    const finding = only(meant, 'holding-differs');
    expect(finding.fixes.map(({ title }) => title)).toEqual([
      'Insert y2',
      'Write yellow up, blue front',
    ]);
    // Here the turns are right and the words are wrong.
    const right = meant.replace("L'", "R'");
    expect(only(right, 'holding-differs').fixes.map(({ title }) => title)).toEqual([
      'Write yellow up, blue front',
    ]);
  });
});

describe('the base', () => {
  test.each([
    ["the first stage's goal holds for it", "scramble: R' F\ncross:\n  F' R\n", 'yellow'],
    ['ties go to the colour that faces down there', "scramble: U\nx2\ncross:\n  D'\n", 'white'],
    ['a colour named with the first stage', "scramble: R2 U2 F2 L2 D R\nred cross:\n  R'", 'red'],
    ['three of its pieces placed, up to one turn', 'scramble: R2 D\ncross:\n  U', 'yellow'],
    ['nothing but the holding', "scramble: R2 U2 F2 L2 D R\nz\ncross:\n  R'", 'red'],
    [
      'without a first stage: where the first written stage ends',
      "scramble: U R\nR' // corners\nx\n",
      'yellow',
    ],
    [
      'a cross made on top and turned over later',
      "scramble: U\ncross:\n  U'\nx2\ncorners:\n",
      'yellow',
    ],
    ['`base:` says so', "base: green\nscramble: R' F\ncross:\n  F' R\n", 'green'],
  ])('%s', (_why, text, colour) => {
    expect(base(text)).toBe(colour);
  });

  test('only where nothing but the holding speaks for it, it is said', () => {
    expect(codes("scramble: R2 U2 F2 L2 D R\nz\ncross:\n  R'")).toContain('base-assumed');
    expect(codes('scramble: R2 D\ncross:\n  U')).not.toContain('base-assumed');
    // Where nothing is known, nothing is assumed.
    expect(codes('scramble: R U …\ncross:\n  U')).toEqual([]);
  });
});

describe('an unknown stretch', () => {
  test('is known again from a solved end, if the last stage is claimed', () => {
    const block = firstBlock("scramble: R U F\nbase: yellow\ncross:\n  F'\n  …\nsolved:\n  U");
    expect(block.solved).toBe(true);
    expect(reached(block)).toContain('solved');
    const before = block.course.stateAt(2);
    expect(before && sameArrangement(before, after("U'"))).toBe(true);
  });

  test('otherwise nothing after it is judged', () => {
    const text = "scramble: R U F\nbase: yellow\ncross:\n  F' U' R'\ncorners:\n  ...\n  U";
    const block = firstBlock(text);
    expect(block.course.stateAt(5)).toBeUndefined();
    expect(codes(text)).toEqual([]);
  });

  test('or from the next net, worked back through the turns before it', () => {
    const text = `scramble: R U F\nbase: yellow\n???\nR\nstart:\n${NET_AFTER_R}\nR' // cross`;
    const block = firstBlock(text);
    const gone = block.course.stateAt(1);
    expect(gone && sameArrangement(gone, SOLVED)).toBe(true);
    expect([block.solved, codes(text)]).toEqual([true, []]);
  });

  test('between two stretches nothing is known', () => {
    const text = 'scramble: R U\nbase: yellow\n…\nR // cross\n…\nU // solved';
    const block = firstBlock(text);
    expect(block.course.stateAt(2)).toBeUndefined();
    expect(block.course.stateAt(3)).not.toBeUndefined();
  });

  test('`holding:` directly behind it sets the holding and is no claim', () => {
    const text =
      'scramble: R\nbase: yellow\n…\nholding: yellow up, blue front\nU\nholding: yellow up, blue front\n// solved';
    expect(codes(text)).toEqual([]);
    expect(firstBlock(text).course.stateAt(1)?.holding).toBe(
      firstBlock('holding: yellow up, blue front\nR').start?.holding,
    );
  });

  test('a goal held before and not after breaks at the stretch', () => {
    const text = `scramble: U\nbase: yellow\ncross:\n  U'\ncorners:\n  …\nstart:\n${NET_AFTER_R}\nmiddle:\n  U`;
    expect(only(text, 'goal-broken').message).toMatch(/^… \(turn 2, line 6\) breaks the cross/);
  });
});
