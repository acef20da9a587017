/** Whatever is asked about whatever solve: every fact is true, and no sentence says more than its facts. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import type { Fact } from '../../engine/tutor/facts.ts';
import { ask } from '../../engine/tutor/tutor.ts';
import { SOLVED_CUBE, replay } from '../naive/stickers.ts';
import { Checker } from './checker.ts';
import { QUESTIONS_EACH, interview } from './interview.ts';
import { pick, randomFrom, randomTurns } from './solves.ts';
import { unsupported } from './second-reader.ts';

const SOLVES = 260;

describe('random questions about random solves', () => {
  it(
    `${SOLVES * QUESTIONS_EACH} answers: no false fact, and nothing said beyond the facts`,
    { timeout: 240_000 },
    () => {
      const { problems, kinds } = interview(20_260, SOLVES);
      expect(problems.slice(0, 3)).toEqual([]);
      expect([...kinds.keys()].sort()).toEqual(
        expect.arrayContaining([
          'across',
          'cue',
          'goal',
          'loss',
          'lost-in',
          'mend',
          'midway',
          'next',
          'over-home',
          'piece',
          'since',
          'stand',
          'turns',
          'verdict',
          'without',
          ...['effect', 'counts', 'related', 'case', 'hold', 'shorter', 'term', 'sides', 'flaw'],
          ...[
            'solvable',
            'compare',
            'repeat',
            'way',
            'slip',
            'no-slip',
            'span',
            'near',
            'journey',
            'stage',
          ],
        ]),
      );
    },
  );
});

describe('third hints', () => {
  it(
    '500 random states: the turns, replayed on stickers, do what they are said to do',
    { timeout: 120_000 },
    () => {
      const random = randomFrom(77);
      const problems: string[] = [];
      let told = 0;
      for (let i = 0; i < 500; i++) {
        const scramble = randomTurns(random, 20);
        const base = pick(random, ['white', 'yellow', 'red', 'orange', 'green', 'blue']);
        const analysis = analyse(
          `scramble: ${scramble.join(' ')}\nbase: ${base}\nmethod: layers\n`,
        );
        const start = replay(SOLVED_CUBE, scramble);
        const checker = new Checker({
          block: 0,
          start,
          turns: [],
          lines: [],
          stages: [],
          method: 'layers',
          base,
        });
        const { answer } = ask(analysis, undefined, 'just show me the turns');
        told += answer.turns === undefined ? 0 : 1;
        for (const fact of answer.facts)
          problems.push(...[checker.check(fact)].filter((one) => one !== undefined));
      }
      expect(problems.slice(0, 3)).toEqual([]);
      expect(told).toBe(500);
    },
  );
});

describe('the checker', () => {
  const scramble = ['R', 'U', 'F'];
  const history = {
    block: 0,
    start: replay(SOLVED_CUBE, scramble),
    turns: [],
    lines: [],
    stages: [],
    method: 'layers' as const,
    base: 'yellow',
  };
  const facts = ['where is the yellow-red edge', 'is the cross done', "is this right: F'"].flatMap(
    (question) =>
      ask(analyse('scramble: R U F\nbase: yellow\nmethod: layers\n'), undefined, question).answer
        .facts,
  );
  const lies: readonly ((fact: Fact) => Fact | undefined)[] = [
    (fact) => (fact.kind === 'piece' ? { ...fact, slot: 'UB' } : undefined),
    (fact) => (fact.kind === 'piece' ? { ...fact, status: 'placed' } : undefined),
    (fact) => (fact.kind === 'goal' ? { ...fact, holds: !fact.holds } : undefined),
    (fact) =>
      fact.kind === 'goal' && !fact.holds ? { ...fact, missing: fact.missing.slice(1) } : undefined,
    (fact) => (fact.kind === 'verdict' ? { ...fact, verdict: 'reaches' } : undefined),
    (fact) => (fact.kind === 'stand' ? { ...fact, up: 'red' } : undefined),
  ];

  it('finds nothing wrong with what is true, and each lie', () => {
    const checker = new Checker(history);
    expect(facts.flatMap((fact) => checker.check(fact) ?? [])).toEqual([]);
    for (const lie of lies) {
      const told = facts.flatMap((fact) => lie(fact) ?? []);
      expect(told.length).toBeGreaterThan(0);
      for (const fact of told) expect(checker.check(fact)).toBeDefined();
    }
  });

  it('a second reader misses what the facts lack', () => {
    expect(unsupported('The white-blue edge is at top front (UF).', facts).length).toBeGreaterThan(
      0,
    );
    expect(unsupported('It breaks with R (turn 3, line 8).', facts).length).toBeGreaterThan(0);
  });
});
