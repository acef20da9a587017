/** Facts for the questions that are not about one piece or goal: cases, sequences, slips, terms, what is possible. */
import type { Piece } from '../cube/piece.ts';
import type { Turn } from '../cube/turn.ts';
import { JUMP } from '../goals/course.ts';
import { printTurns } from '../notation/print.ts';
import type { Search } from '../search/step.ts';
import type { Fact, Refusal, SpanFact } from './facts.ts';
import { personStep } from './find-turns.ts';
import { crossFacts, facingFact, patternFact } from './gather-goals.ts';
import { gatherCase, sidesFact } from './gather-last-layer.ts';
import { gatherJourney, gatherOrder, stageFacts } from './gather-journey.ts';
import { gatherLoss } from './gather-losses.ts';
import { gatherPossible } from './gather-possible.ts';
import { gatherProposal } from './gather-proposal.ts';
import {
  compareFact,
  gatherSequence,
  repeatFact,
  shorterFact,
  wayFact,
} from './gather-sequence.ts';
import { gatherSlips } from './gather-slips.ts';
import { goalFact } from './goal-facts.ts';
import type { Memory, PlaceRef, Understood } from './intents.ts';
import { dueGoal, type MeantGoal } from './referents.ts';
import {
  isNumbered,
  lastTurnBefore,
  nameTurn,
  sceneAt,
  turnNumbered,
  turnsOf,
  turnsOfLine,
  type Scene,
} from './scene.ts';
import { GOAL_TERMS, termNamed, type Shown } from './terms.ts';

export type Gathered =
  | { readonly kind: 'facts'; readonly facts: Fact[]; readonly turns?: string }
  | { readonly kind: 'refused'; readonly reason: Refusal };

const refused = (reason: Refusal): Gathered => ({ kind: 'refused', reason });
const told = (facts: Fact[], turns?: readonly Turn[]): Gathered => ({
  kind: 'facts',
  facts,
  ...(turns && { turns: printTurns(turns) }),
});

export function* gatherOther(
  scene: Scene,
  understood: Understood,
  { goal, pieces }: { readonly goal: MeantGoal | undefined; readonly pieces: readonly Piece[] },
  memory: Memory,
): Search<Gathered> {
  const due = dueGoal(scene);
  switch (understood.intent) {
    case 'which-case':
      return told(gatherCase(scene, due === undefined ? undefined : personStep(scene, due)));
    case 'where-wrong': {
      const losses = gatherLoss(scene, [], { pieces: [] });
      return told([...(yield* gatherSlips(scene)), ...losses]);
    }
    case 'explain-term':
      return explain(scene, understood, goal);
    case 'journey':
      return onPieces(pieces, memory, (wanted) => gatherJourney(scene, wanted));
    case 'which-order':
      return onPieces(pieces, memory, (wanted) => gatherOrder(scene, wanted));
    case 'stage-span': {
      const facts = stageFacts(scene, goal);
      return facts.length > 0 ? told(facts) : refused('no-goal');
    }
    case 'is-possible':
      return told(gatherPossible(scene, understood.flaw));
    default:
      return onSequences(scene, understood, memory);
  }
}

/** The pieces of the question, else those last spoken of. */
function onPieces(
  pieces: readonly Piece[],
  memory: Memory,
  gather: (wanted: readonly Piece[]) => Fact[],
): Gathered {
  const wanted = pieces.length > 0 ? pieces : memory.pieces;
  const facts = wanted.length > 0 ? gather(wanted) : [];
  return facts.length > 0 ? told(facts) : refused('not-understood');
}

function onSequences(scene: Scene, understood: Understood, memory: Memory): Gathered {
  const { intent, sequences, aspect, places } = understood;
  const lists = sequences.map(({ text }) => turnsOf(text));
  if (lists.some((list) => list === undefined || list.length === 0)) return refused('turns-unread');
  const span = sequences.length === 0 ? spanOf(scene, places) : undefined;
  const before = memory.turns === undefined ? undefined : turnsOf(memory.turns);
  const last = aspect === 'inverse' ? lastTurn(scene) : undefined;
  const turns = lists.at(-1) ?? span?.turns ?? before ?? last;
  if (intent === 'how-often' && turns === undefined) {
    const due = dueGoal(scene);
    const step = due === undefined ? undefined : personStep(scene, due);
    if (step) return told([repeatFact(scene, step.sequence)], step.sequence);
  }
  if (turns === undefined) return refused('no-turns-named');
  switch (intent) {
    case 'shorter':
      return told([shorterFact(scene, turns)], turns);
    case 'how-often':
      return told([repeatFact(scene, turns)], turns);
    case 'compare': {
      const [first, second] = lists.length > 1 ? lists : [before, lists[0]];
      if (first === undefined || second === undefined) return refused('two-sequences');
      return told([compareFact(scene, first, second)], second);
    }
    case 'which-way': {
      const facts = turns.slice(0, 3).flatMap((turn) => wayFact(scene, turn) ?? []);
      return facts.length > 0 ? told(facts, turns) : refused('turns-unread');
    }
    default:
      if (span !== undefined && aspect === 'effect') return told(spanFacts(scene, span), turns);
      return told(gatherSequence(scene, turns, aspect), turns);
  }
}

/** "Undo my last turn": the last written one before the place. */
function lastTurn({ block, at }: Scene): readonly Turn[] | undefined {
  const named = lastTurnBefore(block, at);
  const code = named && block.course.codes[named.index];
  return code === undefined || code === JUMP ? undefined : [code];
}

interface Span {
  readonly first: number;
  readonly end: number;
  readonly turns: readonly Turn[];
}

/** The written turns that a question points at; undefined if it points at none, or at an unknown stretch. */
function spanOf({ block }: Scene, places: readonly PlaceRef[]): Span | undefined {
  const ref = places.find(({ kind }) => kind === 'turn' || kind === 'line');
  if (ref === undefined) return undefined;
  let found: { first: number; end: number } | undefined;
  if (ref.kind === 'line') found = turnsOfLine(block, ref.line);
  if (ref.kind === 'turn') {
    const turn = turnNumbered(block, ref.number);
    found = turn === undefined ? undefined : { first: turn, end: turn + 1 };
  }
  if (found === undefined) return undefined;
  const turns: Turn[] = [];
  for (let turn = found.first; turn < found.end; turn++) {
    if (block.course.codes[turn] === JUMP) return undefined;
    turns.push(block.course.codes[turn]);
  }
  return { ...found, turns };
}

/** What written turns do on their cube: judged as if proposed there. */
function spanFacts(scene: Scene, { first, end, turns }: Span): Fact[] {
  const there = sceneAt(scene.block, first);
  const numbered = Array.from({ length: end - first }, (_, i) => first + i).filter((turn) =>
    isNumbered(scene.block, turn),
  );
  if (there.kind !== 'scene' || numbered.length === 0)
    return gatherSequence(scene, turns, 'effect');
  const span: SpanFact = {
    kind: 'span',
    place: there.scene.place,
    first: nameTurn(scene.block, numbered[0]),
    last: nameTurn(scene.block, numbered[numbered.length - 1]),
    turns: printTurns(turns),
  };
  return [span, ...gatherProposal(there.scene, turns, undefined)];
}

function explain(
  scene: Scene,
  { term: name, goals }: Understood,
  goal: MeantGoal | undefined,
): Gathered {
  const { place } = scene;
  const term = name === undefined ? undefined : termNamed(name);
  if (term) {
    const fact: Fact = { kind: 'term', place, term: term.name, meaning: term.meaning };
    return told([fact, ...shownOn(scene, term.shown)]);
  }
  // `OLL` is explained as such, even where the method calls the goal otherwise.
  const asked = goals.at(0)?.text.toUpperCase() ?? '';
  const meaning = GOAL_TERMS.get(asked) ?? (goal && GOAL_TERMS.get(goal.goal.name));
  if (goal === undefined || meaning === undefined) return refused('not-understood');
  return told([{ kind: 'term', place, term: goal.goal.name, meaning }, goalFact(scene, goal)]);
}

/** What of a term is seen on the cube at the place. */
function shownOn(scene: Scene, shown: Shown): Fact[] {
  switch (shown) {
    case 'top-edges': {
      const pattern = patternFact(scene);
      return pattern ? [facingFact(scene, 'edges'), pattern] : [facingFact(scene, 'edges')];
    }
    case 'top-corners':
      return [facingFact(scene, 'corners')];
    case 'headlights':
      return [sidesFact(scene)];
    case 'cross': {
      const cross = scene.goals.findIndex(({ name }) => name === 'cross');
      if (cross < 0) return [];
      const goal = {
        goal: scene.goals[cross],
        method: scene.block.method,
        base: scene.base,
        index: cross,
      };
      return [goalFact(scene, goal), ...crossFacts(scene, scene.base)];
    }
    case 'nothing':
      return [];
  }
}
