/** Witness on losses, turns that were found, and verdicts: parts of the checker that need its whole history. */
import type { Fact, GoalName } from '../../engine/tutor/facts.ts';
import { cfopOf, holds, layersOf } from '../naive/goals.ts';
import type { Cube } from '../naive/stickers.ts';
import type { Checker } from './checker.ts';
import {
  OPPOSITE,
  after,
  centreColour,
  faceOfCentre,
  isHome,
  slotOfPiece,
  tokens,
} from './hands.ts';

const isRotation = (turn: string): boolean => /^[xyz]/.test(turn);

export function lossProblem(
  checker: Checker,
  fact: Extract<Fact, { kind: 'loss' }>,
): string | undefined {
  const goal = checker.goal(fact);
  const { index } = fact.turn;
  const before = checker.cubes[index];
  const then = checker.cubes[index + 1];
  if (!checker.turnIsNamed(fact.turn)) return 'turn misnamed';
  if (fact.back && !checker.turnIsNamed(fact.back)) return 'turn misnamed';
  const held = (cube: Cube): string => [...'UF'].map((face) => centreColour(cube, face)).join();
  for (const { piece, from, to } of fact.pieces) {
    if (slotOfPiece(before, piece) !== from || slotOfPiece(then, piece) !== to)
      return 'moves otherwise';
    if (from === to && held(before) === held(then)) return 'does not move';
  }
  const stage = checker.history.stages.find(({ first, end }) => first <= index && index < end);
  if (fact.stage !== stage?.goal) return 'another stage';
  if (goal.pairs) return undefined;
  if (!checker.heldAt(goal, index) || checker.heldAt(goal, index + 1))
    return 'it was not lost there';
  const back = range(index + 2, checker.cubes.length).find((at) => checker.heldAt(goal, at));
  if (back !== (fact.back && fact.back.index + 1)) return 'it came back otherwise';
  if (!['lasting', 'open'].includes(fact.fate) && fact.fate !== 'unguarded' && back === undefined)
    return 'it never came back';
  if (['lasting', 'open'].includes(fact.fate) && back !== undefined) return 'it came back';
  const end =
    stage?.end ??
    checker.history.stages.find(({ first, end }) => first > index && end > first)?.first ??
    checker.history.turns.length;
  if (fact.fate === 'passing' && (back === undefined || back > end)) return 'not within the stage';
  if (fact.fate === 'carried' && back !== undefined && back <= end) return 'within the stage';
  return undefined;
}

/** No goal whose stage closed with it holding is away at the end of a later stage. */
export function noLossProblem(checker: Checker): string | undefined {
  const { stages, method, base } = checker.history;
  for (const [i, stage] of stages.entries()) {
    const goal = checker.goal({ method, goal: stage.goal, base: base as GoalName['base'] });
    if (goal.pairs || !checker.heldAt(goal, stage.end)) continue;
    for (const later of stages.slice(i + 1)) {
      if (!checker.heldAt(goal, later.end)) return `${stage.goal} is away after ${later.goal}`;
    }
  }
  return undefined;
}

/** No goal whose stage has closed with it holding is lost by a turn of the line. */
export function lineProblem(checker: Checker, line: number): string | undefined {
  const { stages, method, base, turns, lines } = checker.history;
  for (const stage of stages) {
    const goal = checker.goal({ method, goal: stage.goal, base: base as GoalName['base'] });
    if (goal.pairs || !checker.heldAt(goal, stage.end)) continue;
    const lost = turns.some(
      (_, i) =>
        lines[i] === line &&
        i >= stage.end &&
        checker.heldAt(goal, i) &&
        !checker.heldAt(goal, i + 1),
    );
    if (lost) return `${stage.goal} is lost in line ${line}`;
  }
  return undefined;
}

export function turnsProblem(
  checker: Checker,
  fact: Extract<Fact, { kind: 'turns' }>,
): string | undefined {
  const cube = checker.cubeAt(fact.place);
  const there = after(cube, fact.turns);
  const goal = checker.goal(fact);
  const top = OPPOSITE[checker.history.base];
  if (!checker.before(fact).every((one) => holds(one, there))) return 'an earlier goal is lost';
  if (!fact.turns.startsWith(fact.regrip) || !tokens(fact.regrip).every(isRotation))
    return 'no regrip';
  switch (fact.effect) {
    case 'goal':
      return holds(goal, there) ? undefined : 'the goal is not reached';
    case 'home':
      return fact.pieces.length > 0 && fact.pieces.every((piece) => isHome(there, piece))
        ? undefined
        : 'not home';
    case 'up':
      return fact.pieces.every((piece) =>
        slotOfPiece(there, piece).includes(faceOfCentre(there, top)),
      )
        ? undefined
        : 'not in the top';
    case 'shape':
      return holds(goal, there) ? 'it is reached' : undefined;
  }
}

export function verdictProblem(
  checker: Checker,
  fact: Extract<Fact, { kind: 'verdict' }>,
): string | undefined {
  const cube = checker.cubeAt(fact.place);
  const there = after(cube, fact.turns);
  const goal = checker.goal(fact);
  const [was, is] = [holds(goal, cube), holds(goal, there)];
  const own =
    checker.history.method === 'CFOP'
      ? cfopOf(checker.history.base)
      : layersOf(checker.history.base);
  const lost = own.some((one) => holds(one, cube) && !holds(one, there)) || (was && !is);
  if (fact.gained.some((piece) => !checker.inPlace(goal, there, piece))) return 'gained nothing';
  if (fact.dropped.every((piece) => checker.inPlace(goal, there, piece)) && fact.dropped.length > 0)
    return 'dropped nothing';
  if (!fact.facing && fact.gained.some((piece) => !isHome(there, piece))) return 'not home';
  const [a, b] = [checker.partsMade(goal, cube).made, checker.partsMade(goal, there).made];
  if (goal.upTo === undefined && !goal.pairs && fact.gained.length - fact.dropped.length !== b - a)
    return 'another balance';
  switch (fact.verdict) {
    case 'keeps':
      return was && is && !lost ? undefined : 'does not keep';
    case 'reaches':
      return !was && is && !lost ? undefined : 'does not reach';
    case 'gains':
      return !is && !lost && fact.gained.length > 0 && fact.dropped.length === 0
        ? undefined
        : 'does not gain';
    case 'nothing':
      return !is && !lost && fact.gained.length === 0 && fact.dropped.length === 0
        ? undefined
        : 'does something';
    case 'loses':
      return lost || fact.dropped.length > 0 ? undefined : 'loses nothing';
    case 'trades':
      return fact.gained.length > 0 && (lost || fact.dropped.length > 0) ? undefined : 'no trade';
  }
}

export function range(from: number, end: number): number[] {
  return Array.from({ length: Math.max(0, end - from) }, (_, i) => from + i);
}
