/** `state`: how the cube looks at a place of a text, or after turns given on the command line. */
import { makeFaces } from '../../engine/cube/facelets.ts';
import { colourAt } from '../../engine/cube/holding.ts';
import { isSolved, SOLVED, type State } from '../../engine/cube/state.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import type { Block } from '../../engine/document/analysis.ts';
import { chooseBase } from '../../engine/goals/base.ts';
import { goalHolds } from '../../engine/goals/judge.ts';
import { goalsFor, LAYERS, type Method } from '../../engine/goals/methods.ts';
import { refused, type Arguments, type Command, type Outcome } from './command.ts';
import type { StateJson } from './json.ts';
import { lastLayerOf } from './last-layer.ts';
import { readPlace } from './place.ts';
import { stateText } from './render/state.ts';
import { CHOICES, readChoices, readTurns } from './turns.ts';

export const state: Command = {
  name: 'state',
  usage: [
    'state FILE [--at LINE:CHAR] [--json]',
    'state --turns "TURNS" [--base COLOUR] [--method NAME] [--json]',
  ],
  summary:
    'Shows the cube there: its faces, how it is held, which goals hold. Without --at: the end of the first solve.',
  options: { at: { type: 'string' }, turns: { type: 'string' }, ...CHOICES },
  run: (args) =>
    Promise.resolve(args.value('turns') === undefined ? fromFile(args) : fromTurns(args)),
};

function fromTurns(args: Arguments): Outcome {
  if (args.words.length > 0) return refused('Either a file or --turns can be given, not both.');
  if (args.value('at') !== undefined) return refused('--at goes with a file, not with --turns.');
  const choices = readChoices(args);
  if ('kind' in choices) return choices;
  const turns = readTurns(args.value('turns') ?? '');
  if (turns.kind === 'refused') return turns;
  const json = free(turns.effect, turns.steps, choices.method, choices.base);
  return done(json, 'After these turns, on a cube that was solved:');
}

function fromFile(args: Arguments): Outcome {
  const [file, ...rest] = args.words;
  if (file === undefined) {
    return refused('A file is missing ("-" is standard input), or else --turns with its turns.');
  }
  if (rest.length > 0) return refused('Only one file can be shown at a time.');
  if (args.value('base') !== undefined || args.value('method') !== undefined) {
    return refused('--base and --method go with --turns; a file says for itself.');
  }
  const place = readPlace(file, args);
  if (place.kind === 'refused') return place;
  const { block, turns } = place;
  if (block === undefined) return done(free(SOLVED, 0, LAYERS, undefined), 'A text without turns:');
  const reached = block.course.stateAt(turns);
  if (reached === undefined) {
    return refused(
      block.startFrom === 'net' && block.start === undefined
        ? 'The state there is unknown: no turns lead to the net at the start (check says why).'
        : 'The state there is unknown: the start or a stretch before it is not written.',
    );
  }
  const json: StateJson = {
    ...look(reached),
    goals: block.timeline.goals.map((goal, i) => ({
      goal: goal.name,
      holds: block.timeline.held[i][turns] === 1,
    })),
    base: COLOURS[block.base],
    method: block.method,
    turns,
    ...lastLayerIn(reached, block.base),
  };
  return done(json, whereabouts(block, turns));
}

/** A state that belongs to no text. */
function free(
  reached: State,
  turns: number,
  method: Method,
  wanted: number | undefined,
): StateJson {
  const base = wanted ?? chooseBase({ method, state: reached, holding: reached.holding }).base;
  const goals = goalsFor(method, base);
  return {
    ...look(reached),
    goals: goals.map((goal) => ({ goal: goal.name, holds: goalHolds(goal, reached) })),
    base: COLOURS[base],
    method: method.name,
    turns,
    ...lastLayerIn(reached, base),
  };
}

function lastLayerIn(reached: State, base: number): Pick<StateJson, 'lastLayer'> {
  const lastLayer = lastLayerOf(reached, base);
  return lastLayer === undefined ? {} : { lastLayer };
}

function look(reached: State): Pick<StateJson, 'faces' | 'holding' | 'solved'> {
  return {
    faces: makeFaces(reached),
    holding: { up: colourAt(reached.holding, 0), front: colourAt(reached.holding, 2) },
    solved: isSolved(reached),
  };
}

function whereabouts(block: Block, turns: number): string {
  const title = block.title === '' ? '' : `${block.title}: `;
  if (turns === 0) return `${title}before the first turn:`;
  const line = block.rangeOf(turns - 1).start.line + 1;
  const number = block.numberOf(turns - 1);
  return `${title}after ${block.textOf(turns - 1)} (turn ${number}, line ${line}):`;
}

function done(json: StateJson, where: string): Outcome {
  return { kind: 'done', json, text: (page) => stateText(json, where, page), status: 0 };
}
