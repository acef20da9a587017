/** Facts on what comes next: the goal that is due, the piece to take, why that one, and the turns if there are any. */
import { faceletsOf, piecesIn, whereIs, type Piece, type PieceSet } from '../cube/piece.ts';
import { applyTurns, type State } from '../cube/state.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { JUMP } from '../goals/course.ts';
import type { Goal } from '../goals/goal.ts';
import {
  goalHolds,
  goalMissing,
  makeDemands,
  meets,
  notPlaced,
  readWhere,
} from '../goals/judge.ts';
import type { Fact, NextFact, TurnsFact } from './facts.ts';
import { arrangedFact, crossFacts, facingFact, goalFact, patternFact } from './gather-goals.ts';
import { midwayFact } from './losses.ts';
import { overHome, pieceFact, standFact } from './gather-where.ts';
import { dueGoal, ownGoal } from './referents.ts';
import { nameGoal, namePiece, namePieces, type Scene } from './scene.ts';

/** The sets of pieces that a goal adds, and which of them are made; none where it is judged up to a turn. */
export function partsOf(
  goal: Goal,
  state: State,
): { all: readonly PieceSet[]; made: readonly PieceSet[] } {
  const where = readWhere(state);
  if (goal.choice)
    return {
      all: goal.choice.sets,
      made: goal.choice.sets.filter((set) => notPlaced(where, set) === 0),
    };
  if (goal.upTo !== undefined || goal.anyOf || goal.slice) return { all: [], made: [] };
  const isMade = (part: PieceSet): boolean =>
    meets(where, makeDemands(goal.conditions, undefined, undefined, part)[0]);
  return { all: goal.parts, made: goal.parts.filter(isMade) };
}

function isFacing(goal: Goal, part: PieceSet): boolean {
  return goal.conditions.some(
    (condition) => condition.kind === 'facing' && condition.pieces & part,
  );
}

/** 0 in the layer opposite the base, 1 in the middle, 2 in the base layer. */
function depthOf(scene: Scene, piece: Piece): number {
  const slot = faceletsOf(whereIs(scene.state, piece).slot);
  return slot.includes(OPPOSITE[scene.base]) ? 0 : slot.includes(scene.base) ? 2 : 1;
}

const REASONS = ['in-top', 'in-middle', 'in-base'] as const;

export function nextFact(scene: Scene, due: number): NextFact {
  const goal = scene.goals[due];
  const { all, made } = partsOf(goal, scene.state);
  const common = {
    kind: 'next' as const,
    place: scene.place,
    ...nameGoal(scene.block.method, goal, scene.base),
    made: made.length,
    of: goal.choice?.atLeast ?? all.length,
  };
  const left = all.filter((part) => !made.includes(part));
  if (
    goal.name === 'cross' &&
    crossFacts(scene, scene.base).some((fact) => fact.kind === 'cross-offset')
  ) {
    return { ...common, pieces: [], reason: 'offset' };
  }
  if (left.length === 0 || left.some((part) => isFacing(goal, part)))
    return { ...common, pieces: [], reason: 'pattern' };
  const depth = (part: PieceSet): number =>
    Math.max(
      ...piecesIn(part)
        .filter((piece) => !isHome(scene, piece))
        .map((piece) => depthOf(scene, piece)),
    );
  const part = left.reduce((best, other) => (depth(other) < depth(best) ? other : best));
  const reason = left.length === 1 && goal.choice === undefined ? 'last-one' : REASONS[depth(part)];
  return { ...common, pieces: namePieces(part, scene.base), reason };
}

function isHome(scene: Scene, piece: Piece): boolean {
  const { slot, turned } = whereIs(scene.state, piece);
  return slot === piece && turned === 0;
}

/** Longest stretch of the text that is shown as an answer. */
const LONGEST_WRITTEN = 24;

/** What the text itself does next, if after it more of the due goal is made and what held before holds. */
export function writtenTurns(scene: Scene, due: number): TurnsFact | undefined {
  const { block, at, state } = scene;
  if (scene.then.length > 0) return undefined;
  const ends = [
    ...new Set(block.timeline.stages.flatMap(({ stepEnds, end }) => [...stepEnds, end])),
  ].sort((a, b) => a - b);
  const goal = scene.goals[due];
  const before = partsOf(goal, state);
  for (const end of ends) {
    if (end <= at) continue;
    if (end > at + LONGEST_WRITTEN) return undefined;
    const codes: number[] = [];
    for (let turn = at; turn < end; turn++) codes.push(block.course.codes[turn]);
    if (codes.includes(JUMP)) return undefined;
    const after = applyTurns(state, codes);
    if (!scene.goals.slice(0, due).every((earlier) => goalHolds(earlier, after))) continue;
    const { made } = partsOf(goal, after);
    const gained = made.filter((part) => !before.made.includes(part));
    const lost = before.made.some((part) => !made.includes(part));
    const reaches = goalHolds(goal, after);
    if (!reaches && (gained.length === 0 || lost)) continue;
    return {
      kind: 'turns',
      place: scene.place,
      ...nameGoal(block.method, goal, scene.base),
      turns: Array.from({ length: end - at }, (_, i) => block.textOf(at + i)).join(' '),
      reaches,
      pieces: namePieces(
        gained.reduce((set, part) => set | part, 0),
        scene.base,
      ),
      from: 'written',
    };
  }
  return undefined;
}

/** Everything that the hints of level 1 to 3 may speak of; the renderer takes what the level allows. */
export function gatherNext(
  scene: Scene,
  level: 1 | 2 | 3,
  found: (due: number) => TurnsFact | undefined,
): Fact[] {
  const due = dueGoal(scene);
  const facts: Fact[] = [standFact(scene)];
  if (due === undefined) {
    const last = scene.goals.length - 1;
    return last < 0 ? facts : [...facts, goalFact(scene, ownGoal(scene, last))];
  }
  const midway = midwayFact(scene, ownGoal(scene, due));
  const next = nextFact(scene, due);
  const pieces = piecesOf(scene, next);
  if (midway) facts.push(midway);
  facts.push(next);
  if (next.reason === 'offset' || next.goal === 'cross')
    facts.push(...crossFacts(scene, scene.base));
  if (level < 3) {
    for (const piece of pieces) facts.push(pieceFact(scene, piece));
    facts.push(...patternsOf(scene, due));
    if (level === 2 && pieces.length === 1) {
      const over = overHome(scene, pieces[0]);
      if (over) facts.push(over);
    }
    return facts;
  }
  const turns = writtenTurns(scene, due) ?? found(due);
  if (turns) facts.push(turns);
  else {
    facts.push({ kind: 'no-turns', place: scene.place });
    for (const piece of pieces) {
      facts.push(pieceFact(scene, piece));
      const over = overHome(scene, piece);
      if (over) facts.push(over);
    }
  }
  return facts;
}

function piecesOf(scene: Scene, next: NextFact): Piece[] {
  const missing = piecesIn(goalMissing(scene.goals[dueGoal(scene) ?? 0], scene.state));
  const all = Array.from({ length: 20 }, (_, piece) => piece);
  const names = next.pieces.map((name) => name.join());
  return all.filter(
    (piece) =>
      names.includes(namePiece(piece, scene.base).join()) &&
      (missing.includes(piece) || next.pieces.length > 0) &&
      !isHome(scene, piece),
  );
}

/** How the last layer lies, where the goal that is due is about its colour or order. */
function patternsOf(scene: Scene, due: number): Fact[] {
  const goal = scene.goals[due];
  const facing = goal.conditions.filter((condition) => condition.kind === 'facing');
  const placedTop = (kind: 'corners' | 'edges'): Fact => arrangedFact(scene, kind);
  switch (goal.name) {
    case 'top cross':
    case 'EOLL': {
      const pattern = patternFact(scene);
      return pattern ? [pattern] : [facingFact(scene, 'edges')];
    }
    case 'top face':
      return [facingFact(scene, 'corners')];
    case 'top corners':
    case 'CPLL':
      return [placedTop('corners')];
    case 'solved':
      return [placedTop('edges')];
    default:
      return facing.length > 0 ? [facingFact(scene, 'edges'), facingFact(scene, 'corners')] : [];
  }
}
