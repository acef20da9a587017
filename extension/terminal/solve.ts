/** `solve`: turns that reach a goal, the short way or as a person would go. */
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import type { State } from '../../engine/cube/state.ts';
import type { Turn } from '../../engine/cube/turn.ts';
import type { Block } from '../../engine/document/analysis.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { findMethod, goalsFor, LAYERS } from '../../engine/goals/methods.ts';
import {
  keptBefore,
  leadsTo,
  personWay,
  shortWay,
  type WayOptions,
} from '../../engine/late/ways.ts';
import { countTurns, NO_TURNS } from '../../engine/notation/count.ts';
import { execute } from '../../engine/notation/execute.ts';
import { printTurns } from '../../engine/notation/print.ts';
import type { Problem } from '../../engine/cube/possible.ts';
import { explainProblem } from '../../engine/cube/remedy.ts';
import type { PersonSolve } from '../../engine/search/person/solve.ts';
import { sayStep, writePersonSolve } from '../../engine/search/person/text.ts';
import { complete } from '../../engine/search/step.ts';
import { refused, type Arguments, type Command, type Outcome, type Refusal } from './command.ts';
import { readGoal } from './goals.ts';
import type { CountsJson } from './json.ts';
import type { WayJson, WayStageJson } from './json-searches.ts';
import { readPlace } from './place.ts';
import { solveText } from './render/solve.ts';
import { CHOICES, readChoices, readTurns } from './turns.ts';

export const solve: Command = {
  name: 'solve',
  usage: [
    'solve FILE [--at LINE:CHAR] [--goal GOAL] [--way person|short] [--base COLOUR] [--json]',
    'solve --turns "TURNS" [--goal GOAL] [--way person|short] [--base COLOUR] [--method NAME] [--json]',
    'solve … --goal GOAL [--most N] [--without-base] [--right-handed]',
  ],
  summary:
    'Finds turns that reach a goal (solved, if none is given), few of them, or as a person would by layers, every step explained.',
  options: {
    at: { type: 'string' },
    turns: { type: 'string' },
    goal: { type: 'string' },
    way: { type: 'string' },
    most: { type: 'string' },
    'without-base': { type: 'boolean' },
    'right-handed': { type: 'boolean' },
    ...CHOICES,
  },
  run: (args) => Promise.resolve(run(args)),
};

/** The cube to go on from, and the goals that are meant there. */
interface Task {
  readonly kind: 'task';
  readonly state: State;
  readonly goals: readonly Goal[];
  readonly method: string;
  /** Colour index. */
  readonly base: number;
  /** Turns that lead to the state from the solved cube held as it is, if known. */
  readonly scramble: readonly Turn[] | undefined;
}

/** A scramble longer than this is not written out; the net tells the same. */
const LONGEST_SCRAMBLE = 200;

function run(args: Arguments): Outcome {
  const way = args.value('way') ?? 'short';
  if (way !== 'short' && way !== 'person')
    return refused(`--way is person or short, not "${way}".`);
  const choices = readChoices(args);
  if ('kind' in choices) return choices;
  const task = args.value('turns') === undefined ? fromFile(args) : fromTurns(args);
  if (task.kind === 'refused') return task;
  const named = args.value('goal');
  const goals = way === 'person' ? goalsFor(LAYERS, task.base) : task.goals;
  const method = way === 'person' ? LAYERS.name : task.method;
  const wanted = named === undefined ? undefined : readGoal(named, goals, method, task.base);
  if (wanted?.kind === 'refused') return wanted;
  const goal = wanted?.goal;
  const limits = readLimits(args, task.base, way === 'short' && goal !== undefined);
  if ('sentence' in limits) return limits;
  if (way === 'person') return byPerson(task, goal);
  const kept = wanted === undefined ? [] : keptBefore(goals, wanted.index, task.state);
  return shortly(task, goal, kept, limits);
}

/** What the turns may be; only the search for a goal can be told so. */
function readLimits(args: Arguments, base: number, fits: boolean): WayOptions | Refusal {
  const most = args.value('most');
  const given = ['without-base', 'right-handed'].filter((name) => args.has(name));
  if (most !== undefined) given.push('most');
  if (given.length > 0 && !fits) return refused(`--${given[0]} goes with --goal, the short way.`);
  if (most !== undefined && !/^(?:1?\d|20)$/u.test(most))
    return refused('--most wants a number of turns from 0 to 20.');
  return {
    ...(most === undefined ? {} : { maxTurns: Number(most) }),
    ...(args.has('without-base') ? { withoutLayer: base } : {}),
    ...(args.has('right-handed') ? { rightHanded: true } : {}),
  };
}

function shortly(
  task: Task,
  goal: Goal | undefined,
  kept: readonly Goal[],
  limits: WayOptions,
): Outcome {
  const result = complete(shortWay(task.state, goal, kept, limits));
  switch (result.kind) {
    case 'impossible':
      return impossible(result.problems);
    case 'none':
      return refused(
        result.bound >= (limits.maxTurns ?? Infinity)
          ? `Proven: no ${result.bound} or fewer of these turns reach the goal.`
          : `No ${result.bound} or fewer of these turns reach the goal; more were not tried to the end.`,
      );
    case 'way': {
      assertReached(task.state, result.turns, goal);
      const json: WayJson = {
        turns: printTurns(result.turns),
        counts: countsOf(result.turns),
        goal: goal?.name ?? 'solved',
        optimal: result.optimal,
        way: 'short',
        base: COLOURS[task.base],
        method: task.method,
        ...(result.atLeast === undefined ? {} : { atLeast: result.atLeast }),
        keeps: kept.map(({ name }) => name),
      };
      return done(json);
    }
  }
}

function byPerson(task: Task, goal: Goal | undefined): Outcome {
  const result = personWay(task.state, task.base, goal);
  if (result.kind === 'impossible') return impossible(result.problems);
  const turns = result.steps.flatMap((step) => step.turns);
  assertReached(task.state, turns, goal);
  const text = writePersonSolve(result, {
    ...(task.scramble === undefined ? {} : { scramble: task.scramble }),
  });
  const json: WayJson = {
    turns: printTurns(turns),
    counts: countsOf(turns),
    goal: goal?.name ?? 'solved',
    optimal: false,
    way: 'person',
    base: COLOURS[task.base],
    method: LAYERS.name,
    stages: stagesOf(result),
    text,
  };
  return done(json);
}

function stagesOf({ steps, base }: PersonSolve): WayStageJson[] {
  const stages: WayStageJson[] = [];
  for (const name of new Set(steps.map(({ stage }) => stage))) {
    const own = steps.filter(({ stage }) => stage === name);
    const turns = own.flatMap((step) => step.turns);
    stages.push({
      name,
      turns: printTurns(turns),
      counts: countsOf(turns),
      steps: own.map((step) => ({ turns: printTurns(step.turns), why: sayStep(step, base) })),
    });
  }
  return stages;
}

function countsOf(turns: readonly Turn[]): CountsJson {
  return countTurns(turns, () => NO_TURNS, 0, turns.length);
}

/** A wrong answer would be a fault of the program; none leaves it unnoticed. */
function assertReached(state: State, turns: readonly Turn[], goal: Goal | undefined): void {
  if (!leadsTo(state, turns, goal)) throw new Error('the turns found do not reach the goal');
}

function impossible(problems: readonly Problem[]): Refusal {
  const { reason, remedy } = explainProblem(problems[0]);
  return refused(
    `No turns solve this cube: ${reason}${remedy === undefined ? '' : `; ${remedy}`}.`,
  );
}

function done(json: WayJson): Outcome {
  return { kind: 'done', json, text: (page) => solveText(json, page), status: 0 };
}

function fromTurns(args: Arguments): Task | Refusal {
  if (args.words.length > 0) return refused('Either a file or --turns can be given, not both.');
  if (args.value('at') !== undefined) return refused('--at goes with a file, not with --turns.');
  const choices = readChoices(args);
  if ('kind' in choices) return choices;
  const turns = readTurns(args.value('turns') ?? '');
  if (turns.kind === 'refused') return turns;
  const { base = 0, method } = choices;
  const goals = goalsFor(method, base);
  const short = turns.steps <= LONGEST_SCRAMBLE && turns.effect.holding === 0;
  const scramble = short
    ? execute(turns.items, { resolve: () => undefined, limit: LONGEST_SCRAMBLE }).codes
    : undefined;
  return { kind: 'task', state: turns.effect, goals, method: method.name, base, scramble };
}

function fromFile(args: Arguments): Task | Refusal {
  const [file, ...rest] = args.words;
  if (file === undefined) {
    return refused('A file is missing ("-" is standard input), or else --turns with its turns.');
  }
  if (rest.length > 0) return refused('Only one file can be solved at a time.');
  if (args.value('method') !== undefined) {
    return refused('--method goes with --turns; a file says for itself.');
  }
  const choices = readChoices(args);
  if ('kind' in choices) return choices;
  const place = readPlace(file, args);
  if (place.kind === 'refused') return place;
  const { block, turns, analysis } = place;
  if (block === undefined) return refused('There is no solve in this text.');
  const state = block.course.stateAt(turns);
  if (state === undefined) return unknownState(block, analysis.findings);
  const base = choices.base ?? block.base;
  // With another base the text's own goals would be those of the wrong layer.
  const own = base === block.base ? block.timeline.goals : undefined;
  const goals = own ?? goalsFor(findMethod(block.method) ?? LAYERS, base);
  return { kind: 'task', state, goals, method: block.method, base, scramble: undefined };
}

function unknownState(
  block: Block,
  findings: readonly { code: string; message: string; range: Block['range'] }[],
): Refusal {
  const { start, end } = block.range;
  const reason = findings.find(
    ({ code, range }) =>
      code === 'state-impossible' && range.start.line >= start.line && range.start.line <= end.line,
  );
  return refused(
    reason?.message ??
      'The state there is unknown: the start or a stretch before it is not written.',
  );
}
