/** For each kind of finding a text that has it, with its place and sentence, and one that just has not. */
import { describe, expect, test } from 'vitest';
import { FINDING_CODES } from '../../engine/document/finding.ts';
import { analyse } from '../../engine/document/analyse.ts';
import { CASES } from './analyse-cases.ts';
import { codes, only, underlined } from './analyse-support.ts';

test('every code has its case', () => {
  expect(CASES.map(({ code }) => code).sort()).toEqual([...FINDING_CODES].sort());
});

describe.each(CASES)('$code: $why', ({ code, text, at, says, nearly }) => {
  test('is found there, and says so', () => {
    const finding = only(text, code);
    const where = underlined(analyse(text), finding.range);
    expect(`${finding.range.start.line + 1}|${where}`).toBe(at);
    expect(finding.message.slice(0, says.length)).toBe(says);
  });

  test('what comes near has none', () => {
    const all = analyse(nearly).findings.map((finding) => finding.code);
    expect(all).not.toContain(code);
  });
});

describe('one fault, one code', () => {
  test('a cross off its centres is not "not reached" as well', () => {
    expect(codes('scramble: D\nbase: yellow\ncross:\n  U')).toEqual(['cross-not-aligned']);
  });

  test('edges in the wrong order: no turn of the layer mends that, and none is offered', () => {
    const text = "scramble: F2 U' R2 U F2\nbase: yellow\ncross:\n  U\ncorners:\n  U";
    const finding = only(text, 'cross-not-aligned');
    expect(finding.kind).toBe('order');
    expect(finding.fixes).toEqual([]);
    expect(finding.message).toContain('in the wrong order');
  });

  test('a cross not aligned is a warning while nothing follows, then an error', () => {
    expect(only('scramble: D\nbase: yellow\ncross:\n  U', 'cross-not-aligned').severity).toBe(
      'warning',
    );
    expect(
      only('scramble: D\nbase: yellow\ncross:\n  U\ncorners:\n  U', 'cross-not-aligned').severity,
    ).toBe('error');
  });

  test('so is a stage that is not reached', () => {
    const open = 'scramble: R U\nbase: yellow\ncross:\n  U';
    expect(only(open, 'goal-not-reached').severity).toBe('warning');
    const followed = analyse(`${open}\ncorners:\n  D`).findings;
    expect(followed.map(({ severity }) => severity)).toEqual(['error', 'warning']);
  });

  test('the last turn missing is neither "not solved" nor "not reached"', () => {
    expect(codes("scramble: R U2\nbase: yellow\nmethod: CFOP\nOLL: U\nR' // PLL")).not.toContain(
      'not-solved',
    );
    expect(codes("scramble: R U\nbase: yellow\nsolved:\n  U R' U2\n")).toContain('not-solved');
    expect(codes("scramble: R U\nbase: yellow\nsolved:\n  U' R' U2\n")).toEqual([
      'last-turn-missing',
    ]);
  });

  test('with a scramble and no labels, not ending solved is a warning', () => {
    expect(only('scramble: R U F\nbase: yellow\nR', 'not-solved').severity).toBe('warning');
  });

  test('a text that ends at an earlier stage is an unfinished solve and no error', () => {
    expect(codes("scramble: U2 R U' R'\nbase: yellow\ncross:\ncorners:\n  R U R'")).toEqual([]);
  });

  test('where the last stage is claimed it is an error, also for a solve that another method names so', () => {
    expect(
      only('scramble: R U F\nmethod: CFOP\nbase: yellow\nR // PLL', 'not-solved').severity,
    ).toBe('error');
  });

  test('a solve without scramble is taken to end solved, and its stages are checked all the same', () => {
    expect(codes("base: yellow\ncross:\n  R U\ncorners:\n  R'\nsolved:\n  U")).toEqual([
      'goal-not-reached',
      'start-assumed',
    ]);
  });

  test('a heading without turns is a skip, and its claim is checked', () => {
    const text = "scramble: R U' R'\nbase: yellow\ncross:\ncorners:\nmiddle:\n  R U R'";
    expect(only(text, 'goal-not-reached').range.start.line).toBe(3);
  });

  test('at most some hundred are said, the rest is counted', () => {
    const { findings, more } = analyse('R Rx5 U\n'.repeat(1000));
    expect(findings.length).toBe(300);
    expect(more.error).toBeGreaterThan(0);
    expect(more.error + findings.filter(({ severity }) => severity === 'error').length).toBe(1000);
  });
});
