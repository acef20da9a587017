/**
 * Texts of a megabyte, made to hurt: none may throw or hang. The bounds are far above what is
 * measured, which is printed, since machines differ; what grows with the square of the text goes
 * beyond them on any.
 */
import { afterAll, describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { only } from './analyse-support.ts';

const MEGABYTE = 1 << 20;
const BOUND = 20_000;

const filled = (part: string, before = ''): string =>
  before + part.repeat(Math.ceil((MEGABYTE - before.length) / part.length));
const numbered = (make: (i: number) => string, length: number): string =>
  Array.from({ length: Math.ceil(MEGABYTE / length) }, (_, i) => make(i)).join('');

const NET = 'www\nwww\nwww\nooo ggg rrr bbb\nooo ggg rrr bbb\nooo ggg rrr bbb\nyyy\nyyy\nyyy\n';

const TEXTS: readonly (readonly [string, () => string])[] = [
  ['one line of turns without blanks', () => filled('R')],
  ['lines of turns', () => filled("R U R' U'\n")],
  ['open commutators', () => filled('[R, ')],
  ['long repeats', () => filled('(R)99999\n')],
  ['asides of long repeats', () => filled('R U\naside: more\n(R U)5000\nend:\n')],
  ['asides upon asides', () => filled('aside: more\ncross: U R\n', 'scramble: R\n')],
  ['headings that are all false', () => filled('cross: R U R U\ncorners: U\n', 'scramble: R U\n')],
  ['labels, each a false claim', () => filled('R U // cross\n')],
  ['small solves, each with faults', () => filled('scramble: R U\ncross: R U R U\ncorners: U\n')],
  ['small solves with doubtful repeats', () => filled('scramble: R\n(R U) x2\n')],
  ['lower case', () => filled('r u f\n', 'scramble: R\ncross:\n')],
  ['sequences that use each other', () => numbered((i) => `sequence: s${i}\n@s${i + 1} R\n`, 26)],
  [
    'claims about sequences',
    () => filled('sequence: q\nR U\ndoes: (UF UR)\norder: 3\nkeeps: cross\n'),
  ],
  ['goals', () => `${numbered((i) => `goal: g${i} = UF UR\n`, 21)}cross:\n`],
  ['methods', () => filled('method: m = cross, solved\n')],
  ['unknown stretches', () => filled('R … U ... F\n')],
  ['nets after stretches', () => filled(`R …\nstart:\n${NET}`, 'scramble: R\n')],
  ['broken nets', () => filled('start: www\n')],
  ['checks', () => filled('check: cross, corners\n')],
  ['keeps', () => filled('keeps: cross\n', `cross:\n${"R U R' U'\n".repeat(20_000)}`)],
  ['announcements', () => filled('cross:\nR\nopens: cross until corners\n')],
  ['holdings', () => filled('R\nholding: white up, green front\ny\n')],
  ['prose', () => filled('hello there my friend\nR U\n')],
  ['unknown keys', () => filled('foo: bar\n')],
  ['colons', () => filled(': ')],
  ['emoji', () => filled('😀 ')],
  ['control characters', () => filled('\0\x01\x02')],
  ['carriage returns', () => filled('\r')],
];

const measured: string[] = [];
afterAll(() => {
  process.stdout.write(`milliseconds for a megabyte of\n${measured.join('\n')}\n`);
});

describe('a megabyte of', () => {
  test.each(TEXTS)('%s', (name, make) => {
    const text = make();
    const before = performance.now();
    const analysis = analyse(text);
    const took = performance.now() - before;
    measured.push(`${took.toFixed(0).padStart(6)}  ${name}`);
    expect(took).toBeLessThan(BOUND);
    expect(analysis.findings.length).toBeLessThanOrEqual(600);
    for (const { course } of analysis.blocks.slice(0, 3)) course.stateAt(course.length);
  });
});

describe('what a few signs can ask for', () => {
  test('a repeat bomb is too long, and its state is computed by powers all the same', () => {
    const text = 'scramble: R\n((R U)9999)9999';
    expect(only(text, 'too-long').range.start.line).toBe(1);
    const [block] = analyse(text).blocks;
    // R U has order 105: of 9999² times 51 are left.
    const [few] = analyse('scramble: R\n(R U)51').blocks;
    const [end, same] = [block, few].map(({ course }) => course.stateAt(course.length));
    expect(end).toEqual(same);
    expect(block.counts.obtm).toBe(2 * 9999 * 9999);
  });

  test('goals are judged after such a step', () => {
    // 105 × 1000 times is none at all.
    const text = 'scramble: U\nbase: yellow\ncross:\n  (R U)105000\ncorners:\n  ((R U)9999)9999';
    const [block] = analyse(text).blocks;
    expect(block.timeline.outcomes[0].reached).toBe(true);
    expect(block.timeline.outcomes[1].reached).toBe(false);
  });

  test('beyond 2^53 − 1 counts are null', () => {
    const [block] = analyse('scramble: R\n(((((R U)9999)9999)9999)9999)9999').blocks;
    expect(block.counts.obtm).toBeNull();
    expect(block.course.stateAt(block.course.length)).toBeDefined();
  });

  test('ten thousand brackets, open or closed', () => {
    const open = analyse(`scramble: R\n${'('.repeat(10_000)}R'`);
    expect(open.blocks[0].solved).toBe(true);
    expect(open.findings.length).toBe(300);
    expect(open.more.error).toBe(10_000 - 300);
    const closed = analyse(`scramble: R\n${'('.repeat(10_000)}R'${')'.repeat(10_000)}`);
    expect([closed.blocks[0].solved, closed.findings.length]).toEqual([true, 0]);
    const primes = analyse(`scramble: R\n${'('.repeat(9_999)}R${")'".repeat(9_999)}`);
    expect(primes.blocks[0].solved).toBe(true);
  });

  test('a name that doubles, thirty times over', () => {
    const text = Array.from({ length: 30 }, (_, i) =>
      i === 0 ? 'sequence: d0\nR U' : `sequence: d${i}\n@d${i - 1} @d${i - 1}`,
    ).join('\n');
    const { blocks } = analyse(text);
    expect(blocks[29].counts.obtm).toBe(2 ** 30);
    expect(blocks[29].sequence?.order).toBeGreaterThan(0);
  });
});
