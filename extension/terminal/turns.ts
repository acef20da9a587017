/** Turns and choices given on the command line, shared by the commands that take no file. */
import { CENTRE_AT } from '../../engine/cube/holding.ts';
import type { State } from '../../engine/cube/state.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { readColour } from '../../engine/document/read/index.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { effectKeeps } from '../../engine/goals/keeps.ts';
import { findMethod, LAYERS, METHODS, type Method } from '../../engine/goals/methods.ts';
import { countsOf } from '../../engine/notation/count.ts';
import { Measures, type Measure } from '../../engine/notation/measure.ts';
import { executable, readSequence } from '../../engine/notation/read.ts';
import type { SequenceNode } from '../../engine/notation/tree.ts';
import { refused, type Arguments, type Refusal } from './command.ts';
import type { CountsJson, GoalHoldsJson } from './json.ts';
import { listed } from './render/words.ts';

export interface TypedTurns {
  readonly kind: 'turns';
  readonly items: readonly SequenceNode[];
  /** What they do to a cube held white up, green in front, rotations included. */
  readonly effect: State;
  readonly steps: number;
  readonly counts: CountsJson;
}

const NO_NAMES = (): undefined => undefined;

/** Comments are left out, lines follow each other. Every token must be turns; gaps and names are none here. */
export function readTurns(text: string): TypedTurns | Refusal {
  const plain = text
    .replaceAll(/\/\/.*$/gmu, '')
    .replaceAll(/\s+/gu, ' ')
    .trim();
  const tree = readSequence(plain);
  if (!executable(tree)) {
    for (const mark of tree.marks) {
      if (mark.kind === 'unknown-turn') return refused(`"${mark.text}" is no turn.`);
      if (mark.kind === 'unclosed') return refused(`The bracket ${mark.bracket} has no partner.`);
    }
    return refused(`"${plain}" cannot be read as turns.`);
  }
  const name = /@\S+/u.exec(plain);
  if (name !== null)
    return refused(`The name ${name[0]} means something only in a file that defines it.`);
  const measures = new Measures(NO_NAMES);
  measures.measure(tree.items);
  const parts = tree.items.map((node): Measure => measures.of(node));
  if (parts.some((part) => part.gap))
    return refused('An unknown stretch has no effect that could be computed.');
  const sum = (read: (part: Measure) => number): number =>
    parts.reduce((total, part) => total + read(part), 0);
  return {
    kind: 'turns',
    items: tree.items,
    effect: measures.effectOf(tree.items),
    steps: sum((part) => part.steps),
    counts: countsOf({
      obtm: sum((part) => part.tally.obtm),
      etm: sum((part) => part.tally.etm),
      stm: sum((part) => part.tally.stm),
      qtm: sum((part) => part.tally.qtm),
    }),
  };
}

export const CHOICES = { base: { type: 'string' }, method: { type: 'string' } } as const;

export interface Choices {
  /** Colour index; undefined where none is given. */
  readonly base: number | undefined;
  readonly method: Method;
}

/** The base colour and method that options name. */
export function readChoices(args: Arguments): Choices | Refusal {
  const colour = args.value('base');
  const base = colour === undefined ? undefined : readColour(colour.trim());
  if (base !== undefined && base < 0) {
    return refused(`"${colour ?? ''}" is no colour of the cube; there are ${listed(COLOURS)}.`);
  }
  const name = args.value('method');
  const method = name === undefined ? LAYERS : findMethod(name);
  if (method === undefined) {
    const known = listed(METHODS.map((one) => `"${one.name}"`));
    return refused(`There is no method "${name ?? ''}"; there are ${known}.`);
  }
  return { base, method };
}

/** The colour index that faces down. */
export function downIn(state: State): number {
  return CENTRE_AT[state.holding][5];
}

/** `bodyEffect`: relative to the centres. */
export function keepsOf(goals: readonly Goal[], bodyEffect: State): GoalHoldsJson[] {
  return goals.map((goal) => ({ goal: goal.name, holds: effectKeeps(goal, bodyEffect) }));
}
