/** Whatever is asked about whatever solve: every fact is true, and no sentence says more than its facts. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import type { Fact } from '../../engine/tutor/facts.ts';
import { NO_MEMORY, ask } from '../../engine/tutor/tutor.ts';
import { SOLVED_CUBE, replay } from '../naive/stickers.ts';
import { Checker } from './checker.ts';
import { pick, randomFrom, randomTurns, writeSolve, type Random } from './solves.ts';
import { unsupported } from './second-reader.ts';

const COLOURS = ['white', 'yellow', 'red', 'orange', 'green', 'blue'];
const GOALS = [
  'cross',
  'first layer',
  'middle layer',
  'top cross',
  'top face',
  'top corners',
  'F2L',
  'OLL',
  'PLL',
  '2nd pair',
];

function piece(random: Random): string {
  const colours = [...COLOURS].sort(() => random() - 0.5).slice(0, random() < 0.5 ? 2 : 3);
  return `${colours.join('-')} ${colours.length === 2 ? 'edge' : 'corner'}`;
}

const SEQUENCES = [
  "R U R'",
  "R U R' U'",
  "F R U R' U' F'",
  "R U R' U R U2 R'",
  "R' D' R D",
  'U U2 R',
  "M' U M U",
  "y R U R' y'",
  "r U R' U' r'",
  "R L' R",
  'F2 U L',
];

function sequence(random: Random): string {
  return random() < 0.7
    ? pick(random, SEQUENCES)
    : randomTurns(random, 2 + Math.floor(random() * 4)).join(' ');
}

const QUESTIONS: readonly ((random: Random, turns: number, lines: number) => string)[] = [
  () => 'what is next?',
  () => 'more help',
  () => 'just show me the turns',
  () => 'and then?',
  () => 'which goals hold?',
  () => 'where did it go wrong?',
  () => 'why?',
  (random) => `where is the ${piece(random)}?`,
  (random) => `where is the ${piece(random)} and the ${piece(random)}`,
  (random) => `and the ${pick(random, COLOURS)} one?`,
  (random) => `is the ${pick(random, GOALS)} done?`,
  (random) => `is the ${pick(random, COLOURS)} cross done`,
  (random) => `why did the ${pick(random, GOALS)} break?`,
  (random, turns) =>
    `why did turn ${1 + Math.floor(random() * turns)} break the ${pick(random, GOALS)}?`,
  (random, _, lines) =>
    `what broke the ${pick(random, GOALS)} in line ${1 + Math.floor(random() * lines)}?`,
  (random) => `is this right: ${randomTurns(random, 1 + Math.floor(random() * 6)).join(' ')}`,
  (random) =>
    `is this right: ${pick(random, ["R U R'", "U R U' R' U' F' U F", "F R U R' U' F'", "(R U R' U')3", '[R, U]', "R U2 R' U'", 'D', "U'"])}`,
  (random) => `why not ${pick(random, ['R', 'U', "F'", 'D2', "R U R'"])}?`,
  (random, turns) => `what is next at move ${1 + Math.floor(random() * turns)}?`,
  (random) => `how did the ${piece(random)} get there?`,
  (random) => `trace the ${piece(random)}`,
  (random) => `where does the ${pick(random, GOALS)} stage end?`,
  () => 'how many turns has this stage',
  () => 'which case is this?',
  () => 'how do i hold it',
  () => 'where did I go wrong?',
  () => 'is there a shorter way?',
  () => 'is this state possible?',
  (random) =>
    pick(random, [
      'only one edge is flipped',
      'can two edges be flipped',
      'only one corner is twisted',
      'can two corners be twisted',
      'only two edges are swapped',
      'only two corners are swapped',
    ]),
  (random) =>
    `what is ${pick(random, ['an oriented edge', 'an oriented corner', 'a cross', 'parity', 'a headlight', 'a commutator', 'a finished side'])}`,
  (random) => `what does ${pick(random, GOALS)} mean?`,
  (random) => `what does ${sequence(random)} do?`,
  (random) => `what is the inverse of ${sequence(random)}`,
  (random) => `mirror ${sequence(random)}`,
  (random) => `what is the order of ${sequence(random)}`,
  (random) => `how many turns is ${sequence(random)}`,
  (random) => `is there a shorter way for ${sequence(random)}`,
  (random) => `compare ${sequence(random)} and ${sequence(random)}`,
  (random) => `how often do i repeat ${sequence(random)}`,
  () => 'how often do i repeat it?',
  (random) => `which way does ${pick(random, ['B', "D'", 'L2', 'M', 'r', 'F', 'U'])} turn`,
  (random, turns) => `what does turn ${1 + Math.floor(random() * turns)} do?`,
  (random, _, lines) => `what does line ${4 + Math.floor(random() * (lines - 3))} do?`,
  (random) => `what is in ${pick(random, ['UF', 'DFR', 'BL', 'UBL', 'DR'])}?`,
];

const SOLVES = 260;
const QUESTIONS_EACH = 8;

describe('random questions about random solves', () => {
  it(
    `${SOLVES * QUESTIONS_EACH} answers: no false fact, and nothing said beyond the facts`,
    { timeout: 240_000 },
    () => {
      const random = randomFrom(20_260);
      const problems: string[] = [];
      const kinds = new Map<string, number>();
      for (let i = 0; i < SOLVES; i++) {
        const { text, history, doneByLine } = writeSolve(random, i % 4 === 3 ? 'CFOP' : 'layers');
        const analysis = analyse(text);
        const checker = new Checker(history);
        let memory = NO_MEMORY;
        const line = Math.floor(random() * doneByLine.length);
        const position = { line, character: text.split('\n')[line].length };
        for (let k = 0; k < QUESTIONS_EACH; k++) {
          const question = pick(random, QUESTIONS)(random, history.turns.length, doneByLine.length);
          const reply = ask(analysis, position, question, memory);
          memory = reply.memory;
          const { facts, text: said, intent } = reply.answer;
          for (const fact of facts) {
            kinds.set(fact.kind, (kinds.get(fact.kind) ?? 0) + 1);
            const wrong = checker.check(fact);
            if (wrong !== undefined) problems.push(`${question}\n${wrong}\n${text}`);
            if (fact.kind === 'stand' && !/move|what does (?:turn|line)/.test(question)) {
              if (fact.place.at !== doneByLine[line])
                problems.push(`${question}: stands elsewhere\n${text}`);
            }
          }
          const beyond = unsupported(said, facts);
          if (beyond.length > 0)
            problems.push(
              `${question} [${intent}]\n${said}\nlacks ${beyond.join(' | ')}\n${JSON.stringify(facts)}`,
            );
          if (said.split(/\s+/).length > 150) problems.push(`too long: ${said}`);
        }
      }
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
        const base = pick(random, COLOURS);
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
