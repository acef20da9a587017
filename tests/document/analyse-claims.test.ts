/** What authors write out: `check:`, `keeps:`, `does:`, `order:`, `opens:`, in solves, sequences and asides. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { breaks, codes, firstBlock, found, only, reached, spans } from './analyse-support.ts';

const SOLVE = "scramble: R U' R'\nbase: yellow\ncross:\n";

describe('`check:` holds here or not', () => {
  test('each goal that does not is a finding of its own, after the turn before it', () => {
    const text = `${SOLVE}corners:\n  R U\n  check: cross, corners and middle\n  R'\n  check: middle`;
    expect(found(text)).toEqual([
      'claim-false 6|cross',
      'claim-false 6|corners',
      'claim-false 6|middle',
    ]);
    const [first] = analyse(text).findings.filter(({ code }) => code === 'claim-false');
    expect(first.message).toBe(
      'The cross does not hold here, after U (turn 2, line 5): the yellow-red edge is at FR instead of DR.',
    );
  });

  test('a goal that nobody knows is told, with those that are known', () => {
    expect(only(`${SOLVE}check: crosss`, 'name-unknown').message).toMatch(
      /no goal named “crosss”.*cross, corners/,
    );
  });
});

describe('`keeps:` in a stage: no break at any turn', () => {
  test('an insert does not keep the cross throughout; told is the turn that loses it', () => {
    const finding = only(`${SOLVE}corners:\n  R U R'\n  keeps: cross`, 'claim-false');
    expect(finding.message).toMatch(/^The cross is not kept; it is lost with R \(turn 1, line 5\)/);
    expect(finding.related[0].range.start).toEqual({ line: 4, character: 2 });
  });

  test('turns of the top keep the lower layers', () => {
    expect(
      codes("scramble: U\nbase: yellow\ncross:\nsolved:\n  U2 U'\n  keeps: middle"),
    ).not.toContain('claim-false');
  });

  test('what did not hold before cannot be lost', () => {
    expect(codes(`${SOLVE}corners:\n  U U\n  keeps: corners`)).not.toContain('claim-false');
  });
});

describe('a sequence starts from any state', () => {
  test('`keeps:` is about the base that faces down at its start, whatever `base:` and `holding:` say', () => {
    const insert = "sequence: right insert\n  U R U' R' U' F' U F\n  keeps: cross, corners";
    expect(codes(insert)).toEqual([]);
    expect(codes(`base: green\nholding: red up, white front\n${insert}`)).toEqual([]);
    expect(found(insert.replace('corners', 'middle'))).toEqual(['claim-false 3|middle']);
  });

  test('a goal that a solved cube happens to keep is not kept from every state', () => {
    // Three top corners turn in place: a solved top face is lost, and so is one made elsewhere.
    const text = "sequence: turn three\n  R U R' U R U2 R'\n  keeps: middle, top cross\n  order: 6";
    expect(codes(text)).toEqual([]);
    expect(found(text.replace('top cross', 'top face'))).toEqual(['claim-false 3|top face']);
  });

  test('`does:` claims sticker cycles, complete unless `…` stands beside them', () => {
    const cycle = "sequence: three edges\n  F2 U L R' F2 L' R U F2\n  does: ";
    // Front to left to right to front, seen from above: common practice.
    expect(codes(`${cycle}(UF UL UR)`)).toEqual([]);
    expect(codes(`${cycle}(UF UR UL)`)).toEqual(['claim-false']);
    const insert = "sequence: insert\n  R U R'\n  does: ";
    const does = firstBlock(`${insert}…`).sequence?.does ?? '';
    const [one] = does.split(')');
    expect(codes(`${insert}${one})`)).toEqual(['claim-false']);
    expect(codes(`${insert}${one}) …`)).toEqual([]);
    expect(codes(`${insert}… ${one})`)).toEqual([]);
  });

  test('its facts: order, all goals of the method, what it does', () => {
    const { sequence } = firstBlock("sequence: trigger\n  R U R' U'");
    expect(sequence?.order).toBe(6);
    expect(sequence?.keeps.map(({ goal, holds }) => `${goal} ${holds}`)).toEqual([
      'cross true',
      'corners false',
      'middle false',
      'top cross false',
      'top face false',
      'top corners false',
      'solved false',
    ]);
  });

  test('`order:` counts centres and holding too', () => {
    // R y: 1260 (computed with a general-purpose algebra system).
    expect(codes('sequence: turn\n  R y\n  order: 1260')).toEqual([]);
    expect(codes('sequence: turn\n  R y\n  order: 315')).toEqual(['claim-false']);
    expect(codes('sequence: slice\n  M\n  order: 4')).toEqual([]);
  });

  test('`@right-insert` is the sequence `right insert`, forwards and backwards', () => {
    const text =
      "sequence: Right insert\n  R U R'\nsolve: use\nscramble: R U R' F\nF' @right-insert'\nsolved:";
    expect(codes(text)).toEqual([]);
    expect(analyse(text).blocks[1].solved).toBe(true);
  });

  test('`use:` brings in the sequences, goals and methods of another file', () => {
    const imports = {
      'bench.moves':
        "goal: left block = DL FL BL DFL DBL\nmethod: mine = cross, left block, solved\nsequence: insert\n  R U R'",
    };
    const text =
      "use: bench.moves\nmethod: mine\nbase: yellow\nscramble: R U' R'\nleft block:\n@insert\ncheck: left block\nsolved:";
    expect(codes(text, { imports })).toEqual([]);
    const block = firstBlock(text, { imports });
    expect([block.method, reached(block)]).toEqual(['mine', 'cross, left block, solved']);
    expect(codes(text)).toContain('use-not-found');
  });
});

describe('an aside is a branch', () => {
  const text = `${SOLVE}corners:\n  R U\naside: had it gone wrong\n  U2 R2\ncorners: U\nend:\n  R'\nsolved:`;

  test('from the place where it stands; the main solve goes on as if it were not there', () => {
    const block = firstBlock(text);
    expect([block.solved, block.course.length]).toEqual([true, 3]);
    expect(found(text)).toEqual(['goal-not-reached 8|corners']);
    const [aside] = block.asides;
    expect([aside.title, aside.startFrom, aside.course.length]).toEqual([
      'had it gone wrong',
      'place',
      5,
    ]);
  });

  test('turn numbers go on, its counts are its own', () => {
    const [aside] = firstBlock(text).asides;
    expect(aside.numberOf(2)).toBe(3);
    expect(aside.counts.obtm).toBe(3);
    expect(only(text, 'goal-not-reached').message).toContain('U (turn 5, line 8)');
  });

  test('stage keys inside are its own', () => {
    const block = firstBlock(text);
    expect(spans(block)).toEqual(['cross 0-0', 'corners 0-3', 'solved 3-3']);
    expect(spans(block.asides[0])).toEqual(['cross 0-0', 'corners 0-4', 'corners 4-5']);
  });

  test('what it does not restore is open, and it need not end solved', () => {
    const open = `${SOLVE}corners:\n  R U R'\naside: other\n  R U\nend:\nsolved:`;
    expect(codes(open)).toEqual([]);
    expect(breaks(firstBlock(open).asides[0])).toContain('cross open R 4');
    expect(breaks(firstBlock(open))).toEqual(["cross passing R 1 back R' 3"]);
  });

  test('with a scramble of its own it starts there, and does not open another solve', () => {
    const text = `${SOLVE}corners:\n  R\naside: own\nscramble: F\ncross: F'\nend:\n  U R'\nsolved:`;
    const { blocks } = analyse(text);
    expect(blocks.length).toBe(1);
    expect([blocks[0].solved, blocks[0].asides[0].solved]).toEqual([true, true]);
    expect(blocks[0].asides[0].startFrom).toBe('scramble');
  });

  test('the next `aside:` ends it, both from the same place', () => {
    const text = `${SOLVE}corners:\n  R\naside: first\n  U\naside: second\n  U2\nend:\n  U R'`;
    const block = firstBlock(text);
    expect(block.asides.map(({ course }) => course.length)).toEqual([2, 2]);
    expect(block.solved).toBe(true);
  });

  test('claims inside it are checked', () => {
    const text = `${SOLVE}corners:\n  R\naside: a\n  check: cross\nend:\n  U R'`;
    expect(found(text)).toEqual(['claim-false 7|cross']);
  });
});

describe('values', () => {
  test('`time:` as people write it', () => {
    for (const time of ['74.2', '1:14.2', '74,2 s', '1 min 14 s'])
      expect(codes(`time: ${time}\nscramble: R\nR'`)).toEqual([]);
    expect(found("time: quick\nscramble: R\nR'")).toEqual(['bad-value 1|quick']);
  });

  test.each([
    ['holding: white up', 'white up'],
    ['holding: white up, yellow front', 'white up, yellow front'],
    ['goal: block = DL XY', 'XY'],
    ['method: mine = cross, cross', 'cross'],
    ['scramble: at random', 'at random'],
  ])('%s', (line, at) => {
    expect(found(`${line}\nR`)).toContain(`bad-value 1|${at}`);
  });

  test('above the first block as well', () => {
    expect(found('time: quick\nuse:\nsequence: a\n  R')).toEqual([
      'bad-value 1|quick',
      'bad-value 2|',
    ]);
  });

  test.each([
    ['sequence: a\nR\norder: none', 'none'],
    ['sequence: a\nR\ndoes: (UF UX)', 'UX'],
    ['sequence: a\nR\nkeeps:', ''],
    ['scramble: R\nR\ncheck:', ''],
  ])('%j', (text, at) => {
    expect(found(text)).toContain(`bad-value 3|${at}`);
  });
});
