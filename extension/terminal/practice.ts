/** `practice GOAL`: states to practise a goal on. */
import { randomInt } from 'node:crypto';
import { makeFaces } from '../../engine/cube/facelets.ts';
import { SOLVED } from '../../engine/cube/state.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { goalsFor } from '../../engine/goals/methods.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { makePractice } from '../../engine/search/practice.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { complete } from '../../engine/search/step.ts';
import { refused, type Arguments, type Command, type Outcome } from './command.ts';
import { readGoal } from './goals.ts';
import type { PracticeJson } from './json-searches.ts';
import { practiceText } from './render/practice.ts';
import { CHOICES, downIn, readChoices } from './turns.ts';

export const practice: Command = {
  name: 'practice',
  usage: ['practice GOAL [--seed N] [--count N] [--method NAME] [--base COLOUR] [--json]'],
  summary:
    'Gives scrambles after which all goals before GOAL hold and the rest is random, each such state equally likely.',
  options: { seed: { type: 'string' }, count: { type: 'string' }, ...CHOICES },
  run: (args) => Promise.resolve(run(args)),
};

const MOST = 1_000;

function run(args: Arguments): Outcome {
  const text = args.words.join(' ');
  if (text.trim() === '')
    return refused('The goal to practise is missing, as in: practice "top cross".');
  const choices = readChoices(args);
  if ('kind' in choices) return choices;
  const seed = readNumber(args.value('seed'), Number.MAX_SAFE_INTEGER) ?? randomInt(2 ** 32);
  if (Number.isNaN(seed)) return refused('--seed wants a whole number from 0.');
  const count = readNumber(args.value('count'), MOST) ?? 1;
  if (!(count >= 1)) return refused(`--count wants a whole number from 1 to ${MOST}.`);
  const { method } = choices;
  const base = choices.base ?? downIn(SOLVED);
  const goals = goalsFor(method, base);
  const goal = readGoal(text, goals, method.name, base);
  if (goal.kind === 'refused') return goal;
  const states = complete(makePractice(goals.slice(0, goal.index), makeRandom(seed), count));
  const json: PracticeJson = {
    states: states.map(({ state, scramble }) => ({
      scramble: printTurns(scramble),
      faces: makeFaces(state),
    })),
    goal: goal.goal.name,
    method: method.name,
    base: COLOURS[base],
    seed,
  };
  return { kind: 'done', json, text: (page) => practiceText(json, page), status: 0 };
}

/** Undefined if it is not given, NaN if it is no number up to `most`. */
function readNumber(text: string | undefined, most: number): number | undefined {
  if (text === undefined) return undefined;
  const value = /^\d{1,16}$/u.test(text.trim()) ? Number(text) : Number.NaN;
  return value <= most ? value : Number.NaN;
}
