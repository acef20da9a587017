/** Where stages begin and end: headings, labels behind turns, labels on lines of their own. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { codes, firstBlock, found, reached, spans } from './analyse-support.ts';

const solve = (lines: string): string => `scramble: R U R'\nbase: yellow\nmethod: CFOP\n${lines}`;

describe('headings', () => {
  test('a stage takes the turns behind it and on the lines below', () => {
    expect(spans(firstBlock(solve("cross: R\n U'\n R'\n1st pair: U\nU'")))).toEqual([
      'cross 0-3',
      '1st pair 3-5',
    ]);
  });

  test('in any case, with counts, times and the names that people use', () => {
    const text = solve("Yellow Cross (1), 3.4 s: R\nF2L #1 (2):\nU' R'\npair:\nlast slot:\nPLL:");
    expect(spans(firstBlock(text))).toEqual([
      'cross 0-1',
      '1st pair 1-3',
      '2nd pair 3-3',
      '4th pair 3-3',
      'PLL 3-3',
    ]);
  });

  test('`pair` alone is the next, `F2L` alone the fourth', () => {
    expect(spans(firstBlock(solve('cross:\npair:\npair:\nF2L:')))).toEqual([
      'cross 0-0',
      '1st pair 0-0',
      '2nd pair 0-0',
      '4th pair 0-0',
    ]);
  });

  test("a colour names the base's goal or, if opposite, the top's", () => {
    const text =
      "scramble: F R U R' U' F'\nbase: white\nwhite cross: x2\nyellow cross: F U R U' R' F'";
    const block = firstBlock(text);
    expect(spans(block).map((span) => span.replace(/ \d.*/, ''))).toEqual(['cross', 'top cross']);
  });

  test('a stage of another method is no stage here', () => {
    expect(found(solve("FB:\n R U' R'"))).toEqual(['unknown-key 4|FB']);
  });
});

describe('labels behind turns', () => {
  test('each closes the stretch since the label before', () => {
    const text = solve("R // cross\nU'\nR' // F2L (2)\nU // OLL\nU' // PLL");
    expect(spans(firstBlock(text))).toEqual(['cross 0-1', '4th pair 1-3', 'OLL 3-4', 'PLL 4-5']);
  });

  test('`#`, `;` and a dash between blanks are marks as well', () => {
    const text = solve("R # cross\nU' R' ; F2L\nU U' - PLL");
    expect(spans(firstBlock(text))).toEqual(['cross 0-1', '4th pair 1-3', 'PLL 3-5']);
  });

  test('stages done together share their turns', () => {
    expect(spans(firstBlock(solve("R U' R' // cross + 1st pair\nU U' // OLL / PLL")))).toEqual([
      'cross 0-3',
      '1st pair 0-3',
      'OLL 3-5',
      'PLL 3-5',
    ]);
  });

  test('only what is nothing but stages is a claim', () => {
    const text = solve(
      "R U' // cross is almost done\nR' // setup for OLL\nU U' // green-red corner",
    );
    expect(spans(firstBlock(text))).toEqual([]);
    expect(spans(firstBlock(solve("R U' R' // 2nd pair (7)")))).toEqual(['2nd pair 0-3']);
    expect(spans(firstBlock(solve("R U' R' // cross done, 4.1 s")))).toEqual(['cross 0-3']);
  });

  test('two words and an ordinal: `1st pair & 2nd pair`', () => {
    expect(spans(firstBlock(solve("R U' R' // 1st pair & 2nd pair")))).toEqual([
      '1st pair 0-3',
      '2nd pair 0-3',
    ]);
  });
});

describe('labels on lines of their own', () => {
  test('open a stage', () => {
    expect(spans(firstBlock(solve("// cross\nR\n// F2L\nU'\nR'\n// PLL")))).toEqual([
      'cross 0-1',
      '4th pair 1-3',
      'PLL 3-3',
    ]);
  });

  test('the own label behind turns closes it', () => {
    const text = solve("// cross\nR U'\nR' // cross\nU\nU' // F2L");
    expect(spans(firstBlock(text))).toEqual(['cross 0-3', '4th pair 3-5']);
  });

  test("another stage's ends it before that label's line, where the new stretch begins", () => {
    const text = solve("// cross\nR U' R'\nU U' // F2L\nU // OLL");
    expect(spans(firstBlock(text))).toEqual(['cross 0-3', '4th pair 3-5', 'OLL 5-6']);
  });

  test('two stages opened together have the turns below together', () => {
    expect(spans(firstBlock(solve("// OLL + PLL\nR U'\nR'")))).toEqual(['OLL 0-3', 'PLL 0-3']);
  });

  test('the last turn may have a label of its own', () => {
    const auf = "scramble: U2 R U R'\nbase: yellow\nmethod: CFOP\n";
    expect(codes(`${auf}R U' R' // PLL\nU2 // AUF`)).toEqual([]);
    expect(codes(`${auf}// PLL\nR U' R'\n// AUF\nU2`)).toEqual([]);
    expect(codes(`${auf}PLL:\nR U' R'\nAUF: U2`)).toEqual([]);
    expect(codes(`${auf}R U' R' // PLL`)).toEqual(['last-turn-missing']);
  });

  test('`done` says that what stands above was it', () => {
    expect(spans(firstBlock(solve("R U' R'\n// F2L done\nU U' // PLL")))).toEqual([
      '4th pair 0-3',
      'PLL 3-5',
    ]);
  });

  test('behind turns `pair` is the pair that is open; alone it is the next', () => {
    const text = solve("// pair\nR U' R' // pair\n// pair\nU U' // pair");
    expect(spans(firstBlock(text))).toEqual(['1st pair 0-3', '2nd pair 3-5']);
  });

  test('a skip is a label without turns, and claims', () => {
    const text = "scramble: R U R'\nbase: yellow\nmethod: CFOP\n// OLL skip\nR U' R' // PLL";
    expect(codes(text)).toEqual(['goal-not-reached']);
    expect(codes(solve("R U' R' // F2L\n// OLL skip\nU U' // PLL"))).toEqual(['turns-cancel']);
  });
});

describe('labels within a stage that a heading opened', () => {
  test("another stage's is a check and closes nothing", () => {
    const text = solve("F2L:\nR // cross\nU' // 1st pair\nR' // 2nd pair");
    expect(spans(firstBlock(text))).toEqual(['4th pair 0-3']);
    expect(found(text)).toEqual(['claim-false 5|cross', 'claim-false 6|1st pair']);
  });

  test('its own says nothing new', () => {
    const text = solve("cross:\nR // cross\nU' R'");
    expect(codes(text)).toEqual([]);
    expect(spans(firstBlock(text))).toEqual(['cross 0-3']);
  });
});

describe('inspection and rotations', () => {
  test('rotations before the first layer turn belong to no stage', () => {
    expect(spans(firstBlock(solve("x2 y\ncross: y' x2\n R U' R'")))).toEqual(['cross 4-7']);
  });

  test('`Inspection: x2 y`, as forums have it, is executed and is no unknown key', () => {
    const text = "scramble: R U\nInspection: x2 y\ncross:\n  U'";
    expect(firstBlock(text).course.length).toBe(3);
    expect(codes(text)).not.toContain('unknown-key');
    // With layer turns it is a key that nobody knows, and nothing is executed.
    const other = "scramble: R U\nInspection: x2 R\ncross:\n  U'";
    expect(firstBlock(other).course.length).toBe(1);
    expect(codes(other)).toContain('unknown-key');
  });

  test('rotations between stages belong to the next one', () => {
    const text = solve("cross:\n R U' R'\ny\n1st pair:\n U U'");
    expect(spans(firstBlock(text))).toEqual(['cross 0-3', '1st pair 3-6']);
    expect(spans(firstBlock(solve("R U' R' // cross\ny\nU // 1st pair")))).toEqual([
      'cross 0-3',
      '1st pair 3-5',
    ]);
    expect(spans(firstBlock(solve("// cross\nR U' R'\ny\n// 1st pair\nU")))).toEqual([
      'cross 0-3',
      '1st pair 3-5',
    ]);
  });

  test('turn numbers leave rotations and pauses out', () => {
    const block = firstBlock("scramble: R\nx R ~ y U M' z\nF");
    expect(Array.from({ length: 7 }, (_, turn) => block.numberOf(turn))).toEqual([
      0, 1, 1, 2, 3, 3, 4,
    ]);
  });
});

describe('rotations in sentences', () => {
  test('"not reached after" names the last turn that is none', () => {
    const text = 'scramble: R U F\nbase: yellow\ncross:\n  U y\ncorners:\n  R';
    const { message } = analyse(text).findings[0];
    expect(message).toMatch(/^The cross is not reached after U \(turn 1, line 4\):/);
  });

  test('a cube that was only turned as a whole: no turn is named', () => {
    const text = 'scramble: R U F\nbase: yellow\nx2\ncross:\ncorners:\n  R';
    expect(analyse(text).findings[0].message).toMatch(/^The cross is not reached: the yellow-/);
  });
});

describe('the method', () => {
  test.each([
    ["R // cross\nU' // corners\nR' // middle", 'layers'],
    ["R // cross\nU' // 1st pair\nR' // F2L", 'CFOP'],
    ["R U' R' // FB\n// SB\n// LSE", 'Roux'],
    ['// EOLine\n// left block', 'ZZ'],
    ["R U' R' // cross", 'layers'],
    ["R U' R'", 'layers'],
  ])('%j is %s, by the names it uses most', (lines, method) => {
    expect(firstBlock(`scramble: R U R'\nbase: yellow\n${lines}`).method).toBe(method);
  });

  test("goals and methods of the person's own: the pieces whose homes are those slots in the declared holding", () => {
    const head =
      "holding: white up, green front\ngoal: left block = DL FL BL DFL DBL\nmethod: mine = cross, left block, solved\nscramble: L U' L'\nbase: yellow\n";
    const right = `${head}cross:\nleft block: L U L'\nsolved:`;
    expect(firstBlock(right).method).toBe('mine');
    expect(found(right)).toEqual([]);
    expect(reached(firstBlock(right))).toBe('cross, left block, solved');
    expect(found(`${head}cross:\nleft block:\nsolved: L U L'`)).toEqual([
      'goal-not-reached 7|left block',
    ]);
  });

  test('a daisy may precede the cross', () => {
    expect(codes("scramble: F2\nbase: yellow\nU U'\ncross:\n  F2\ncorners:")).toEqual([
      'turns-cancel',
    ]);
  });
});

describe('counts', () => {
  test('a count that is right in one metric is right', () => {
    for (const count of [4, 3]) {
      expect(codes(`scramble: R U M\nM' U' R' // solved (${count})`)).toEqual([]);
    }
    expect(codes("scramble: R U M\nM' U' R' // solved (6)")).toEqual(['count-differs']);
  });

  test('in a heading as well, beside a time', () => {
    expect(found("scramble: R U\nsolved (3), 1.2 s:\n  U' R'")).toEqual(['count-differs 2|3']);
  });
});
