/** `effect "TURNS"`: what turns do to any cube. */
import { describeEffect, effectOrder, printDoes, type Cycle } from '../../engine/cube/effect.ts';
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { goalsFor } from '../../engine/goals/methods.ts';
import { symmetryOf, type Symmetry } from '../../engine/late/symmetry.ts';
import { faceTurnCount } from '../../engine/late/ways.ts';
import { execute, JUMP } from '../../engine/notation/execute.ts';
import { Measures } from '../../engine/notation/measure.ts';
import { printSequence, printTurns } from '../../engine/notation/print.ts';
import { invert, mirror, withoutRotations } from '../../engine/notation/transform.ts';
import type { SequenceNode } from '../../engine/notation/tree.ts';
import { findShorter } from '../../engine/search/same-effect.ts';
import { complete } from '../../engine/search/step.ts';
import { refused, type Arguments, type Command, type Outcome } from './command.ts';
import type { EffectJson } from './json.ts';
import { effectText } from './render/effect.ts';
import { CHOICES, downIn, keepsOf, readChoices, readTurns, type TypedTurns } from './turns.ts';

/** Turns that are written out to take rotations out of them. */
const MOST_TURNS = 100_000;
/** Longer ones are not searched for a shorter way. */
const MOST_FOR_SHORTER = 1_000;

export const effect: Command = {
  name: 'effect',
  usage: ['effect "TURNS" [--base COLOUR] [--method NAME] [--json]'],
  summary:
    'Tells what turns do to any cube: cycles, order, goals kept (base: what faces down), inverse, mirror image, symmetry, a shorter way.',
  options: CHOICES,
  run: (args) => Promise.resolve(run(args)),
};

function run(args: Arguments): Outcome {
  if (args.words.length === 0)
    return refused('The turns are missing, as in: effect "R U R\' U\'".');
  const choices = readChoices(args);
  if ('kind' in choices) return choices;
  const turns = readTurns(args.words.join(' '));
  if (turns.kind === 'refused') return turns;
  const { written, moved } = restingHands(turns);
  const told = describeEffect(moved);
  const base = choices.base ?? downIn(SOLVED);
  const mirrored = mirror(turns.items, 'left-right') ?? [];
  const json: EffectJson = {
    turns: written,
    // As written, rotations and all: until the cube lies in the hands as before.
    order: effectOrder(turns.effect),
    orderWithoutRotations: told.order,
    cycles: {
      corners: told.corners.map(stickersOf),
      edges: told.edges.map(stickersOf),
      centres: told.centres.map(stickersOf),
    },
    twists: told.twists.map(({ slot, turn }) => ({ slot, turn })),
    flips: [...told.flips],
    does: printDoes(told),
    parity: told.parity,
    counts: turns.counts,
    base: COLOURS[base],
    method: choices.method.name,
    keeps: keepsOf(goalsFor(choices.method, base), turns.effect),
    inverse: printSequence(invert(turns.items)),
    mirror: printSequence(mirrored),
    symmetry: symmetryJson(symmetryOf(turns.effect, effectOfItems(mirrored))),
    shorter: shorterOf(turns),
  };
  return { kind: 'done', json, text: (page) => effectText(json, page), status: 0 };
}

function effectOfItems(items: readonly SequenceNode[]): State {
  const measures = new Measures(() => undefined);
  measures.measure(items);
  return measures.effectOf(items);
}

function symmetryJson(found: Symmetry): EffectJson['symmetry'] {
  const { rotations, mirrors, selfInverse, inverseRotations, inverseMirrors } = found;
  return {
    rotations: [...rotations],
    mirrors: [...mirrors],
    selfInverse,
    inverseRotations: [...inverseRotations],
    inverseMirrors: [...inverseMirrors],
  };
}

/** Null turns: nothing shorter was found; `provenTo` says up to how many face turns there is nothing. */
function shorterOf(turns: TypedTurns): EffectJson['shorter'] {
  if (turns.steps > MOST_FOR_SHORTER) return { turns: null, provenTo: 0 };
  const { codes } = execute(turns.items, { resolve: () => undefined, limit: MOST_FOR_SHORTER });
  const found = complete(findShorter(codes));
  if (found.kind === 'none') return { turns: null, provenTo: Math.max(0, found.provenTo) };
  const count = faceTurnCount(found.turns);
  if (found.optimal) return { turns: printTurns(found.turns), provenTo: Math.max(0, count - 1) };
  // Only what cancels was taken out; how far the search got is what it says of the rest.
  const rest = complete(findShorter(found.turns));
  const provenTo = rest.kind === 'none' ? Math.max(0, rest.provenTo) : 0;
  return { turns: printTurns(found.turns), provenTo };
}

function stickersOf(cycle: Cycle): string[] {
  return [...cycle.stickers];
}

/**
 * The turns with rotations taken out, later ones reread in the first holding, and what they do.
 * Beyond the limit nothing is written out, and the effect keeps its rotations.
 */
function restingHands(turns: TypedTurns): { written: string; moved: State } {
  if (turns.steps > MOST_TURNS) return { written: printSequence(turns.items), moved: turns.effect };
  const { codes } = execute(turns.items, { resolve: () => undefined, limit: MOST_TURNS });
  const still = withoutRotations(codes.filter((code) => code !== JUMP));
  return { written: printTurns(still), moved: applyTurns(SOLVED, still) };
}
