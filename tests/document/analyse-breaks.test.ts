/** Breaks of guarded goals: what is told of them, where, and what follows from what. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { breaks, codes, firstBlock, found, only, reached } from './analyse-support.ts';

const sample = (name: string): string =>
  readFileSync(new URL(`../../media/samples/${name}.moves`, import.meta.url), 'utf8');

/** A base corner two turns from home; the base is yellow and lies below. */
const CORNER = "scramble: R U' R'\nbase: yellow\ncross:\n";

describe('a passing break: the goal is back by the end of the stage', () => {
  const text = `${CORNER}corners:\n  R U R'`;

  test('an insert lends the cross out and brings it back: no finding that is shown', () => {
    expect(codes(text)).toEqual([]);
    expect(breaks(firstBlock(text))).toEqual(["cross passing R 1 back R' 3"]);
  });

  test('it is there for those who ask, at the turn, and tells who is lent and what brings it back', () => {
    const finding = only(text, 'goal-passing');
    expect(finding.severity).toBe('off');
    expect(finding.range).toEqual({
      start: { line: 4, character: 2 },
      end: { line: 4, character: 3 },
    });
    expect(finding.message).toBe(
      "R (turn 1, line 5) lends the yellow-red edge out of the cross; R' (turn 3, line 5) brings it back.",
    );
    expect(finding.related.map(({ message }) => message)).toEqual([
      "Restored by R' (turn 3, line 5).",
    ]);
  });

  test('settings can show it', () => {
    const [finding] = analyse(text, { severities: { 'goal-passing': 'information' } }).findings;
    expect([finding.code, finding.severity]).toEqual(['goal-passing', 'information']);
  });

  test('the goal is kept all the same', () => {
    expect(reached(firstBlock(text))).toMatch(/^cross, corners, middle/);
  });
});

describe('a carried break: the goal is back in a later stage', () => {
  const text = `${CORNER}corners:\n  R U\nmiddle:\n  R'`;

  test('a warning at the turn that lost it, which names the turn that restored it', () => {
    const finding = only(text, 'goal-carried');
    expect([finding.severity, finding.goal]).toEqual(['warning', 'cross']);
    expect(finding.range.start).toEqual({ line: 4, character: 2 });
    expect(finding.message).toBe(
      "R (turn 1, line 5) breaks the cross (the yellow-red edge); it comes back only in a later stage, with R' (turn 3, line 7).",
    );
    expect(finding.related[0].range.start).toEqual({ line: 6, character: 2 });
    expect(reached(firstBlock(text))).toMatch(/^cross!/);
  });

  test('`opens: cross until middle` announces it: no warning, still in the list', () => {
    const announced = `${CORNER}corners:\n  R U\n  opens: cross until middle\nmiddle:\n  R'`;
    expect(codes(announced)).not.toContain('goal-carried');
    const [found] = firstBlock(announced).timeline.breaks;
    expect([found.kind, found.wanted]).toEqual(['carried', true]);
  });

  test('`opens: cross` without until announces it for the stage alone: beyond, it is a warning', () => {
    const late = `${CORNER}corners:\n  R U\n  opens: cross\nmiddle:\n  R'`;
    expect(codes(late)).toContain('goal-carried');
  });

  test('a later goal that lacks nothing but what was carried has no finding of its own', () => {
    const text = "scramble: R U R'\nmethod: CFOP\nbase: yellow\nR U' // 1st pair\nR' // OLL + PLL";
    expect(found(text)).toEqual(['goal-carried 4|R']);
    expect(reached(firstBlock(text))).not.toContain('1st pair');
  });
});

describe('a lasting break: the goal never comes back', () => {
  const text = `${CORNER}corners:\n  R U R           // R' was meant\nmiddle:\ntop cross:\n  U`;

  test('the finding stands at the turn after which it never came back, not where it shows', () => {
    const finding = only(text, 'goal-broken');
    expect([finding.severity, finding.goal]).toEqual(['error', 'cross']);
    expect(finding.range).toEqual({
      start: { line: 4, character: 2 },
      end: { line: 4, character: 3 },
    });
  });

  test('it names the piece by its colours, its place, and the single change that restores it', () => {
    const finding = only(text, 'goal-broken');
    expect(finding.message).toBe(
      "R (turn 1, line 5) breaks the cross and it never comes back: the yellow-red edge is at FR instead of DR after it. R' in place of R (turn 3, line 5) restores it.",
    );
    expect(finding.related[0].range).toEqual({
      start: { line: 4, character: 6 },
      end: { line: 4, character: 7 },
    });
    expect(finding.fixes.map(({ edits }) => edits)).toEqual([
      [{ range: finding.related[0].range, newText: "R'" }],
    ]);
  });

  test('what follows from it is one note and no finding: first layer, middle, top cross', () => {
    expect(codes(text)).toEqual(['goal-broken']);
    expect(only(text, 'goal-broken').related[1].message).toBe(
      'From here on the first layer, the middle layer and the top cross are not reached either.',
    );
  });

  test('a goal that came back before it was lost for good: the later turn is to blame', () => {
    // The first R is mended by R' at once; the last one is not.
    const twice = `${CORNER}corners:\n  R R' R U R' U' R\nmiddle:\n  U`;
    const finding = only(twice, 'goal-broken');
    expect(finding.message).toMatch(/^R \(turn 7, line 5\)/);
    expect(finding.range.start.character).toBe("  R R' R U R' U' ".length);
  });

  test('a prime forgotten in the third corner of a whole solve: one finding, and its fix solves the cube', () => {
    const text = sample('broken-cross');
    const finding = only(text, 'goal-broken');
    expect(codes(text)).toEqual(['goal-broken']);
    expect(finding.message).toContain('the white-green edge');
    expect(finding.message).toContain('turn 18, line 16');
    expect(finding.message).toContain("R' in place of R (turn 20, line 16) restores it");
  });

  test('a fault that does not follow from the break has its own finding', () => {
    // With the prime in place the corner would still be out: it was inserted wrongly twisted.
    const both = "scramble: R U R'\nbase: yellow\ncross:\ncorners:\n  R U2 R\ntop cross:\n  U";
    expect(codes(both)).toContain('goal-broken');
    expect(codes(both)).toContain('goal-not-reached');
  });

  test('two faults of a whole solve are two findings, and what comes after the second is a note to it', () => {
    // The third corner lacks a prime, and so does the last middle edge.
    const text = sample('broken-cross').replace(
      "U L U F U' F'   // orange",
      "U L U F U' F   // orange",
    );
    expect(found(text)).toEqual(['goal-broken 16|R', 'goal-not-reached 18|middle']);
    const second = only(text, 'goal-not-reached');
    expect(second.related.map(({ message }) => message)).toEqual([
      'From here on the top cross and the top face are not reached either.',
    ]);
  });

  test('after a repeat that wrote it, the turn cannot be edited alone: told, but no fix', () => {
    const text = `${CORNER}corners:\n  (R U)3\nmiddle:\n  U`;
    expect(only(text, 'goal-broken').fixes).toEqual([]);
  });

  test('an unknown stretch may break, too: held before and not after', () => {
    const text = "scramble: U\nbase: yellow\ncross:\n  U'\ncorners:\n  …\nstart:\n" + BROKEN_NET;
    const finding = only(text + '\nmiddle:\n  U', 'goal-broken');
    expect(finding.message).toMatch(/^… \(turn 2, line 6\) breaks the cross/);
    expect(finding.range).toEqual({
      start: { line: 5, character: 2 },
      end: { line: 5, character: 3 },
    });
  });
});

/** After R on a solved cube. */
const BROKEN_NET = `    wwg
    wwg
    wwg
ooo ggy rrr wbb
ooo ggy rrr wbb
ooo ggy rrr wbb
    yyb
    yyb
    yyb`;

describe('an open break: lost in the last stage, whose goal is not reached yet', () => {
  test('no finding of it, but listed', () => {
    const text = `${CORNER}corners:\n  R U`;
    expect(codes(text)).toEqual(['goal-not-reached']);
    expect(breaks(firstBlock(text))).toEqual(['cross open R 1']);
    expect(only(text, 'goal-not-reached').severity).toBe('warning');
  });

  test('opened in an earlier stage it is lasting', () => {
    const text = `${CORNER}corners:\n  R U\nmiddle:\n  U`;
    expect(breaks(firstBlock(text))).toEqual(['cross lasting R 1']);
  });
});

describe('what is no break', () => {
  test('a goal that holds before its stage came is early', () => {
    // The middle layer is whole from the start; the corner goes in through it.
    const text = "scramble: R U' R' U\nbase: yellow\ncross:\ncorners:\n  U' R U R'";
    expect(breaks(firstBlock(text))).toEqual(["cross passing R 2 back R' 4"]);
  });

  test('a goal first reached after its stage is guarded from the close of the stage that reached it', () => {
    const text = "scramble: R U' R' F\nbase: yellow\ncross: U\ncorners: U' F' R U R'\nmiddle: R R'";
    const block = firstBlock(text);
    const [cross] = block.timeline.outcomes;
    expect([cross.reached, cross.guardedFrom]).toEqual([false, 6]);
    expect(breaks(block)).toContain("cross passing R 7 back R' 8");
  });

  test('a rotation breaks nothing: goals are judged against the centres', () => {
    const text = `scramble: R U' R'\nbase: yellow\ncross:\n  x y z2\ncorners: x2`;
    expect(firstBlock(text).timeline.breaks).toEqual([]);
  });

  test('pairs may come in any order, each guarded by its colours once made', () => {
    const text =
      "method: CFOP\nbase: yellow\nscramble: R U R' L' U' L\ncross:\npair: L' U L\npair: R U' R'\npair:\npair:";
    const block = firstBlock(text);
    expect(codes(text)).toEqual([]);
    expect(breaks(block).filter((one) => !one.startsWith('cross'))).toEqual([]);
    const broken = firstBlock(text.replace("pair: R U' R'", "pair: R U' R' L'"));
    expect(breaks(broken)).toContain("cross lasting L' 7");
  });

  test("the third edge knocks out the first, then puts it back: a passing part of the stage's own goal", () => {
    const text = "scramble: F2 R2\nbase: yellow\ncross:\n  R2\n  R' R F2";
    const block = firstBlock(text);
    expect(breaks(block)).toEqual(["cross passing part R' 2 back R 3"]);
    expect(block.timeline.breaks[0].stage).toBe(0);
    expect(codes(text)).toEqual(['turns-cancel']);
  });
});
