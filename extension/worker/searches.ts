/** The searches that the editor asks for, each from a text to a reply that people can be shown. */
import { explainProblem } from '../../engine/cube/remedy.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import type { Position } from '../../engine/cube/place.ts';
import type { Block } from '../../engine/document/analysis.ts';
import type { State } from '../../engine/cube/state.ts';
import type { Goal } from '../../engine/goals/goal.ts';
import { findMethod, goalsFor, LAYERS } from '../../engine/goals/methods.ts';
import { findFills } from '../../engine/late/fills.ts';
import { lateFindings } from '../../engine/late/findings.ts';
import { gapsOf } from '../../engine/late/gaps.ts';
import { goalIndex } from '../../engine/late/goal-names.ts';
import {
  otherWays,
  replaceStretch,
  shorterWays,
  stretchBetween,
} from '../../engine/late/shorter.ts';
import { solveSlips, stageSlips } from '../../engine/late/slips.ts';
import type { Source } from '../../engine/late/trial.ts';
import { isUnsolved } from '../../engine/late/wanted.ts';
import { faceTurnCount, keptBefore, personWay, shortWay } from '../../engine/late/ways.ts';
import { printTurns } from '../../engine/notation/print.ts';
import { writePersonSolve } from '../../engine/search/person/text.ts';
import { makePractice } from '../../engine/search/practice.ts';
import { makeRandom } from '../../engine/search/random.ts';
import type { Search } from '../../engine/search/step.ts';
import type { FoundWay, SearchReply, SearchTask } from './messages.ts';

export function searchFor(source: Source, task: SearchTask): Search<SearchReply> {
  switch (task.kind) {
    case 'late':
      return searchLate(source, task.line);
    case 'way':
      return searchWay(source, task);
    case 'slips':
      return searchSlips(source, task.position);
    case 'fills':
      return searchFills(source, task.position);
    case 'shorter':
      return searchShorter(source, task.from, task.to);
    case 'practice':
      return searchPractice(task);
  }
}

function nothing(reason: string): SearchReply {
  return { kind: 'nothing', reason };
}

function* searchLate(source: Source, line: number): Search<SearchReply> {
  const block = allBlocks(source).find((own) => own.line === line);
  return { kind: 'late', findings: block ? yield* lateFindings(source, block) : [] };
}

function allBlocks({ analysis }: Source): Block[] {
  return analysis.blocks.flatMap((block) => [block, ...block.asides]);
}

const UNKNOWN = 'The cube at this place is not known.';

type WayTask = Extract<SearchTask, { kind: 'way' }>;

function* searchWay({ analysis }: Source, task: WayTask): Search<SearchReply> {
  const block = analysis.blockAt(task.position);
  const state = block?.course.stateAt(block.placeAt(task.position));
  if (block === undefined || state === undefined) return nothing(UNKNOWN);
  if (task.way === 'person') return byPerson(block, state, task.goal);
  const { goals } = block.timeline;
  const index =
    task.goal === undefined ? -1 : goalIndex(task.goal, goals, block.method, block.base);
  const goal: Goal | undefined = goals.at(index < 0 ? goals.length : index);
  const kept = index < 0 ? [] : keptBefore(goals, index, state);
  const way = yield* shortWay(state, goal, kept);
  if (way.kind === 'impossible') return impossible(way.problems);
  if (way.kind === 'none') return nothing(`No way of at most ${way.bound} turns was found.`);
  if (way.turns.length === 0) return nothing('There is nothing to do: it holds already.');
  const count = `${way.turns.length} ${way.turns.length === 1 ? 'turn' : 'turns'}`;
  const proof = way.optimal
    ? ', proven shortest'
    : way.atLeast === undefined
      ? ', not proven shortest'
      : `; proven that at least ${way.atLeast} are needed`;
  return { kind: 'way', turns: printTurns(way.turns), title: count + proof };
}

function byPerson(block: Block, state: State, named: string | undefined): SearchReply {
  const goals = goalsFor(LAYERS, block.base);
  const index = named === undefined ? -1 : goalIndex(named, goals, LAYERS.name, block.base);
  const way = personWay(state, block.base, goals.at(index < 0 ? goals.length : index));
  if (way.kind === 'impossible') return impossible(way.problems);
  const turns = way.steps.flatMap((step) => step.turns);
  if (turns.length === 0) return nothing('There is nothing to do: it holds already.');
  const title = `${way.steps.length} steps, as a person would go`;
  return { kind: 'way', turns: printTurns(turns), title, text: writePersonSolve(way) };
}

function impossible(problems: readonly Parameters<typeof explainProblem>[0][]): SearchReply {
  return nothing(`No turns lead to this cube: ${explainProblem(problems[0]).reason}.`);
}

function* searchSlips(source: Source, position: Position): Search<SearchReply> {
  const block = source.analysis.blockAt(position);
  if (block === undefined) return nothing('There is no solve at this place.');
  const whole = isUnsolved(block) ? yield* solveSlips(source, block) : [];
  if (whole.length > 0) return { kind: 'fixes', fixes: whole.map(asFix) };
  const { stages, held } = block.timeline;
  const missed = stages.findIndex(({ goal, end }) => held[goal][end] === 0);
  if (missed < 0 && !isUnsolved(block)) {
    return nothing('This solve ends as it claims; there is no slip to look for.');
  }
  const fixes = missed < 0 ? [] : yield* stageSlips(source, block, missed);
  return fixes.length > 0
    ? { kind: 'fixes', fixes: fixes.map(asFix) }
    : nothing('No slip of one or two turns explains what is wrong.');
}

/** Only what is to be shown: the rest would be copied to the editor for nothing. */
function asFix({ title, edits }: { title: string; edits: FoundWay['edits'] & object }): {
  title: string;
  edits: FoundWay['edits'] & object;
} {
  return { title, edits };
}

function* searchFills(source: Source, position: Position): Search<SearchReply> {
  const block = source.analysis.blockAt(position);
  const gaps = block === undefined ? [] : gapsOf(block);
  if (block === undefined || gaps.length === 0) {
    return nothing('There is no unknown stretch here between two states that are known.');
  }
  const distance = (gap: number): number =>
    Math.abs(block.rangeOf(gap).start.line - position.line) * 1000 +
    Math.abs(block.rangeOf(gap).start.character - position.character);
  const nearest = gaps.reduce((a, b) => (distance(b) < distance(a) ? b : a));
  const fixes = yield* findFills(source, block, nearest);
  return fixes.length > 0
    ? { kind: 'fixes', fixes: fixes.map(asFix) }
    : nothing('No turns that fit were found.');
}

function* searchShorter(source: Source, from: Position, to: Position): Search<SearchReply> {
  const block = source.analysis.blockAt(from);
  const stretch = block && stretchBetween(block, from, to);
  if (block === undefined || stretch === undefined) return nothing('Select some turns first.');
  const found = yield* shorterWays(source, block, stretch);
  const ways: FoundWay[] = [];
  let none = 'Nothing shorter was found.';
  for (const one of found) {
    if (one.kind === 'none') {
      none = one.optimal
        ? 'Proven: no fewer face turns have the same effect.'
        : `Proven: no ${one.provenTo} or fewer face turns have the same effect; more were not tried.`;
      continue;
    }
    const what = one.same === 'effect' ? 'the same effect' : 'the same goals reached';
    const turns = printTurns(one.turns);
    const title = `${what}${one.optimal ? ', proven shortest' : ''}`;
    ways.push({ turns, title, ...(one.edits === undefined ? {} : { edits: one.edits }) });
  }
  const title = printTurns(stretch.turns);
  if (ways.length > 0) return { kind: 'ways', ways, title };
  // Nothing shorter: then perhaps something that lies better in the hands.
  for (const turns of yield* otherWays(stretch)) {
    const edits = replaceStretch(source, block, stretch, turns);
    const count = `${faceTurnCount(turns)} face turns, the same effect`;
    ways.push({
      turns: printTurns(turns),
      title: count,
      ...(edits === undefined ? {} : { edits }),
    });
  }
  return ways.length > 0 ? { kind: 'ways', ways, title: `${title}. ${none}` } : nothing(none);
}

type PracticeTask = Extract<SearchTask, { kind: 'practice' }>;

function* searchPractice(task: PracticeTask): Search<SearchReply> {
  const method = findMethod(task.method) ?? LAYERS;
  const goals = goalsFor(method, task.base);
  const index = goalIndex(task.goal, goals, method.name, task.base);
  if (index < 0) return nothing(`${method.name} has no goal ${task.goal}.`);
  const states = yield* makePractice(goals.slice(0, index), makeRandom(task.seed), task.count);
  const { name } = goals[index];
  const lines = [
    `note: Practice of ${name}, seed ${task.seed}. Write your turns below each scramble.`,
    `method: ${method.name}`,
    `base: ${COLOURS[task.base]}`,
  ];
  for (const [number, { scramble }] of states.entries()) {
    lines.push('', `solve: ${name} ${number + 1}`, `scramble: ${printTurns(scramble)}`, '');
  }
  return { kind: 'text', text: `${lines.join('\n')}\n` };
}
