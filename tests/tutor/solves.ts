/** Solves as texts for the tests: made by a beginner's way, some with a slip in them, each with what was written where. */
import { applyTurns, SOLVED } from '../../engine/cube/state.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { solveAsPerson } from '../../engine/search/person/solve.ts';
import { replay, SOLVED_CUBE } from '../naive/stickers.ts';
import type { History } from './checker.ts';
import { tokens } from './hands.ts';

export type Random = () => number;

/** The same numbers for the same seed. */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return ((state ^ (state >>> 15)) >>> 0) / 2 ** 32;
  };
}

export function pick<T>(random: Random, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)];
}

export interface WrittenSolve {
  readonly text: string;
  readonly history: History;
  /** Turns done by the end of each line of the text. */
  readonly doneByLine: readonly number[];
}

const FACES = ['U', 'D', 'L', 'R', 'F', 'B'];

export function randomTurns(random: Random, count: number): string[] {
  return Array.from({ length: count }, () => pick(random, FACES) + pick(random, ['', "'", '2']));
}

const AS_CFOP: Readonly<Record<string, readonly [heading: string, goal: string]>> = {
  cross: ['cross', 'cross'],
  corners: ['F2L', '4th pair'],
  middle: ['F2L', '4th pair'],
  'top cross': ['OLL', 'OLL'],
  'top face': ['OLL', 'OLL'],
  'top corners': ['PLL', 'PLL'],
  solved: ['PLL', 'PLL'],
};

/** A solve from a random scramble, with or without a slip, perhaps broken off. */
export function writeSolve(random: Random, method: 'layers' | 'CFOP' = 'layers'): WrittenSolve {
  const scramble = randomTurns(random, 20);
  const base = Math.floor(random() * 6);
  const codes = applyTurns(SOLVED, scrambleCodes(scramble));
  const solve = solveAsPerson(codes, base);
  if (solve.kind !== 'solve') throw new Error('a scramble that cannot be solved');
  const steps = solve.steps.map((step) => ({
    stage: step.stage,
    turns: tokens(printTurns(step.turns)),
  }));
  spoil(random, steps);
  const kept = random() < 0.5 ? steps.slice(0, 1 + Math.floor(random() * steps.length)) : steps;
  const lines = [`scramble: ${scramble.join(' ')}`, `base: ${COLOURS[base]}`, `method: ${method}`];
  const done = lines.map(() => 0);
  const turns: string[] = [];
  const at: number[] = [];
  const stages: { goal: string; first: number; end: number }[] = [];
  let heading = '';
  for (const step of kept) {
    const [name, goal] = method === 'CFOP' ? AS_CFOP[step.stage] : [step.stage, step.stage];
    if (name !== heading) {
      heading = name;
      lines.push(`${name}:`);
      done.push(turns.length);
      stages.push({ goal, first: turns.length, end: turns.length });
    }
    turns.push(...step.turns);
    lines.push(`  ${step.turns.join(' ')}`);
    done.push(turns.length);
    for (const _ of step.turns) at.push(lines.length);
    stages[stages.length - 1].end = turns.length;
  }
  return {
    text: `${lines.join('\n')}\n`,
    doneByLine: done,
    history: {
      block: 0,
      start: replay(SOLVED_CUBE, scramble),
      turns,
      lines: at,
      stages,
      method,
      base: COLOURS[base],
    },
  };
}

function scrambleCodes(turns: readonly string[]): number[] {
  const families = ['U', 'L', 'F', 'R', 'B', 'D'];
  return turns.map(
    (turn) => families.indexOf(turn.charAt(0)) * 3 + ['', '2', "'"].indexOf(turn.slice(1)),
  );
}

/** Most solves get one slip: a turn left out, added, or done the wrong way. */
function spoil(random: Random, steps: { stage: string; turns: string[] }[]): void {
  if (random() < 0.3) return;
  const step = pick(
    random,
    steps.filter(({ turns }) => turns.length > 1),
  );
  const place = Math.floor(random() * step.turns.length);
  const kind = random();
  if (kind < 0.4) step.turns.splice(place, 1);
  else if (kind < 0.7) step.turns.splice(place, 0, ...randomTurns(random, 1));
  else step.turns[place] = invert(step.turns[place]);
}

function invert(turn: string): string {
  return turn.endsWith("'")
    ? turn.slice(0, -1)
    : turn.endsWith('2')
      ? turn.slice(0, -1)
      : `${turn}'`;
}
