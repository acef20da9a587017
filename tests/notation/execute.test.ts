import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SOLVED, power, sameState } from '../../engine/cube/state.ts';
import { JUMP, execute, placeAt, type Execution } from '../../engine/notation/execute.ts';
import { readSequence } from '../../engine/notation/read.ts';
import { printSequence } from '../../engine/notation/print.ts';
import { outcome, resolveNamed, stateOf, trees, writtenOut } from './sequences.ts';

function run(text: string, limit = 100_000, resolve = resolveNamed): Execution {
  return execute(readSequence(text).items, { resolve, limit });
}

describe('what brackets stand for', () => {
  it.each([
    ['(R U)3', 'R U R U R U'],
    ["(R U)'", "U' R'"],
    ["(R U2)2'", "U2 R' U2 R'"],
    ['(R U)0 F', 'F'],
    ['[R, U]', "R U R' U'"],
    ["[R, U]'", "U R U' R'"],
    ['[R U, F]', "R U F U' R' F'"],
    ['[F: R]', "F R F'"],
    ["[F: R U]'", "F U' R' F'"],
    ['[F: [R, U]]', "F R U R' U' F'"],
    ['[F: R, U]', "F R F' U F R' F' U'"],
    ['[F: R: U]', "F R U R' F'"],
    ["(R [U, F]2)'", "F U F' U' F U F' U' R'"],
    ['[R, U]2', "R U R' U' R U R' U'"],
    ["@right-insert'", "F' U' F U R U R' U'"],
    ["@h2 @h2'", "R U R' U' R U R' U' U R U' R' U R U' R'"],
    ['(R ~ U)2', 'R U R U'],
    ["(R …)'", "… R'"],
    ['[R …, U]', "R … U … R' U'"],
  ])('%s is %s', (text, turns) => {
    expect(writtenOut(text)).toBe(turns);
  });

  it('the inverse of any sequence undoes it, centres and holding included', () => {
    fc.assert(
      fc.property(trees, (tree) => {
        const text = printSequence(tree).replace(/foo|Q2|8|…/g, '~');
        expect(sameState(stateOf(`(${text}) (${text})'`), SOLVED)).toBe(true);
      }),
    );
  });
});

describe('where turns come from', () => {
  it('each turn knows its letters in the line, in repeats and ways back as well', () => {
    const text = 'F [R, U2]2';
    const { starts, ends } = run(text);
    expect(starts.map((start, i) => text.slice(start, ends[i]))).toEqual([
      'F',
      'R',
      'U2',
      'R',
      'U2',
      'R',
      'U2',
      'R',
      'U2',
    ]);
  });

  it('the turns of a named sequence come from the name', () => {
    const text = "U @right-insert' F";
    const { starts, ends } = run(text);
    expect(new Set(starts.map((start, i) => text.slice(start, ends[i])))).toEqual(
      new Set(['U', "@right-insert'", 'F']),
    );
  });

  it('inside a repeated group the first pass counts, behind it all passes do', () => {
    const text = '(R U)3 F';
    expect([0, 1, 2, 3, 4, 5, 6, 7, 8].map((offset) => placeAt(run(text), offset))).toEqual([
      0, 0, 1, 1, 2, 2, 6, 6, 7,
    ]);
  });

  it('within [R, U] the way back counts at the closing bracket', () => {
    expect([2, 4, 5, 6].map((offset) => placeAt(run('[R, U]'), offset))).toEqual([1, 1, 2, 4]);
  });
});

describe('beyond the limit', () => {
  it('a group that would pass it is one step with the same effect', () => {
    const whole = run('F (R U)30 F');
    const step = run('F (R U)30 F', 50);
    expect(step.codes).toHaveLength(3);
    expect(step.tooLong).toBe(true);
    expect(whole.tooLong).toBe(false);
    expect(sameState(outcome(step), outcome(whole))).toBe(true);
  });

  it('so do brackets of all kinds, inverted or not', () => {
    fc.assert(
      fc.property(trees, fc.integer({ min: 0, max: 20 }), (tree, limit) => {
        const text = printSequence(tree).replace(/foo|Q2|8|…/g, '~');
        expect(
          sameState(outcome(run(`R (${text})' y`, limit)), outcome(run(`R (${text})' y`))),
        ).toBe(true);
      }),
    );
  });

  it('((R U)9999)9999 is one step; R U has order 105, so only 9999² mod 105 matters', () => {
    const { codes, jumps } = run('((R U)9999)9999');
    expect(codes).toEqual([JUMP]);
    expect(jumps.get(0)).toMatchObject({ kind: 'power', tally: { obtm: 2 * 9999 * 9999 } });
    const rest = (9999 * 9999) % 105;
    expect(sameState(outcome(run('((R U)9999)9999')), power(stateOf('R U'), rest))).toBe(true);
  });

  it('counts above 2^53 − 1 are not known as numbers', () => {
    expect(run('(R)9007199254740991').jumps.get(0)).toMatchObject({
      tally: { obtm: 9007199254740991 },
    });
    expect(run('(R)9007199254740992').jumps.get(0)).toMatchObject({ tally: { obtm: Infinity } });
  });

  it('a count of a thousand digits, and repeats nested a thousand deep, are one step', () => {
    // 10^1000 is 0 modulo 4, so the turns are back where they were.
    expect(sameState(outcome(run(`(R)1${'0'.repeat(1000)}`)), SOLVED)).toBe(true);
    const nested = `${'('.repeat(1000)}R y${')3'.repeat(1000)}`;
    // R y has order 1260 (computed with GAP and SymPy).
    let rest = 1;
    for (let level = 0; level < 1000; level++) rest = (rest * 3) % 1260;
    expect(sameState(outcome(run(nested)), power(stateOf('R y'), rest))).toBe(true);
  });

  it('commutators nested a thousand deep stay small', () => {
    const { codes, tooLong } = run(`${'['.repeat(1000)}R${', U]'.repeat(1000)}`);
    expect(codes).toEqual([JUMP]);
    expect(tooLong).toBe(true);
  });

  it('an unknown stretch in a group too long to be executed stays unknown', () => {
    expect(run('(R …)999999').jumps.get(0)).toEqual({ kind: 'gap' });
  });

  it('turns as written are executed in any case', () => {
    expect(run('R U F D', 2).codes).toHaveLength(4);
    expect(run('R U F D', 2).tooLong).toBe(true);
  });
});

describe('names', () => {
  it('an unknown name executes nothing and is reported', () => {
    const { codes, unresolved } = run('R @nobody U');
    expect(codes).toHaveLength(2);
    expect(unresolved.map((node) => node.name)).toEqual(['nobody']);
  });

  it('names that contain themselves execute nothing', () => {
    const texts: Record<string, string> = { a: 'R @b', b: 'U @a', c: '@a F' };
    const resolve = (name: string) => readSequence(texts[name] ?? '').items;
    expect(run('@a', 100, resolve).codes).toEqual([]);
    expect(run('@c', 100, resolve).codes).toHaveLength(1);
  });

  it('names that double each other forty times are one step', () => {
    const resolve = (name: string) =>
      readSequence(name === 'n40' ? 'R U' : `@n${String(Number(name.slice(1)) + 1)} `.repeat(2))
        .items;
    const { codes, jumps } = run('@n0', 100_000, resolve);
    expect(codes).toEqual([JUMP]);
    expect(jumps.get(0)).toMatchObject({ tally: { etm: 2 ** 41 } });
    expect(sameState(outcome(run('@n0', 100_000, resolve)), power(stateOf('R U'), 2n ** 40n))).toBe(
      true,
    );
  });

  it('a name that names a name, ten thousand long, is executed', () => {
    const resolve = (name: string) =>
      readSequence(name === 'n10000' ? 'R' : `@n${String(Number(name.slice(1)) + 1)}'`).items;
    expect(run('@n1', 100, resolve).codes).toHaveLength(1);
  });
});
