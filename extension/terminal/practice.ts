/** `practice GOAL`: states to practise a goal on. */
import { randomInt } from 'node:crypto';
import { makeFaces } from '../../engine/cube/facelets.ts';
import { SOLVED } from '../../engine/cube/state.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import {
  CORNER_PATTERNS,
  EDGE_PATTERNS,
  PERMUTATION_CASES,
  type LastLayerCase,
} from '../../engine/goals/cases.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { goalsFor } from '../../engine/goals/methods.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { caseStates, practiceFrom, practiceStates } from '../../engine/search/practice.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { complete } from '../../engine/search/step.ts';
import { refused, type Arguments, type Command, type Outcome, type Refusal } from './command.ts';
import { readGoal } from './goals.ts';
import type { PracticeJson } from './json-searches.ts';
import { practiceText } from './render/practice.ts';
import { listed } from './render/words.ts';
import { CHOICES, downIn, readChoices } from './turns.ts';

export const practice: Command = {
  name: 'practice',
  usage: [
    'practice GOAL [--case NAME] [--seed N] [--count N] [--method NAME] [--base COLOUR] [--json]',
  ],
  summary:
    'Gives scrambles after which all goals before GOAL hold and the rest is random, each such state equally likely. --case asks for one case of the last layer: a letter where the top shows one colour, else its pattern, as in "angle T".',
  options: {
    case: { type: 'string' },
    seed: { type: 'string' },
    count: { type: 'string' },
    ...CHOICES,
  },
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
  const before = goals.slice(0, goal.index);
  const name = args.value('case');
  const wanted = name === undefined ? undefined : readCase(name, before);
  if (wanted?.kind === 'refused') return wanted;
  const draw =
    wanted === undefined ? practiceStates(before) : caseStates(base, wanted.turned, wanted.fits);
  const states = complete(practiceFrom(draw, makeRandom(seed), count));
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

interface WantedCase {
  readonly kind: 'case';
  /** Whether it is one of the cases with all top pieces turned right. */
  readonly turned: boolean;
  readonly fits: (own: LastLayerCase) => boolean;
}

/** Goals after which all pieces of the top are turned right. */
const TURNED = ['top face', 'OLL'];

/** A letter in general use where the top shows one colour; else words for its edges, its corners, or both. */
function readCase(text: string, before: readonly Goal[]): WantedCase | Refusal {
  const turned = before.some(({ name }) => TURNED.includes(name));
  const word = (name: string): string => name.toLowerCase();
  const wanted = word(text.trim()).split(/\s+/u);
  if (turned) {
    const letters = new Set(PERMUTATION_CASES.map(({ letter }) => letter));
    letters.delete('');
    if (wanted.length === 1 && [...letters].some((letter) => word(letter) === wanted[0])) {
      const fits = (own: LastLayerCase): boolean =>
        own.permutation !== undefined && word(own.permutation.letter) === wanted[0];
      return { kind: 'case', turned, fits };
    }
    return refused(
      `There is no case "${text.trim()}" here; there are ${listed([...letters].sort())}.`,
    );
  }
  const edges = EDGE_PATTERNS.find((name) => wanted.includes(name));
  const corners = CORNER_PATTERNS.find((name) => wanted.includes(word(name)));
  const known = Number(edges !== undefined) + Number(corners !== undefined);
  if (known !== wanted.length) {
    return refused(
      `"${text.trim()}" is no case; a case is ${listed(EDGE_PATTERNS)}, and with it or alone ${listed(CORNER_PATTERNS)}.`,
    );
  }
  const fits = ({ orientation }: LastLayerCase): boolean =>
    (edges === undefined || orientation.edges === edges) &&
    (corners === undefined || orientation.corners === corners);
  return { kind: 'case', turned, fits };
}

/** Undefined if it is not given, NaN if it is no number up to `most`. */
function readNumber(text: string | undefined, most: number): number | undefined {
  if (text === undefined) return undefined;
  const value = /^\d{1,16}$/u.test(text.trim()) ? Number(text) : Number.NaN;
  return value <= most ? value : Number.NaN;
}
