/** Facts on what comes next: the goal that is due, the piece to take, why that one, and the turns if there are any. */
import {
  faceletsOf,
  pieceOf,
  piecesIn,
  whereIs,
  type Piece,
  type PieceSet,
} from '../cube/piece.ts';
import { applyTurns } from '../cube/state.ts';
import { COLOURS, OPPOSITE, colourIndex } from '../cube/vocabulary.ts';
import { JUMP } from '../goals/course.ts';
import type { Goal } from '../goals/goal.ts';
import { goalHolds } from '../goals/judge.ts';
import type { PersonStep } from '../search/person/step.ts';
import type { CueFact, Fact, NextFact, TurnsFact } from './facts.ts';
import { arrangedFact, crossFacts, facingFact, patternFact } from './gather-goals.ts';
import { goalFact } from './goal-facts.ts';
import { midwayFact } from './losses.ts';
import { overHome, pieceFact, standFact } from './gather-where.ts';
import { homeOf, isFacing, openedBy, partsOf } from './opened.ts';
import { dueGoal, ownGoal } from './referents.ts';
import { nameGoal, namePiece, namePieces, turnsOf, type Scene } from './scene.ts';

/** 0 in the layer opposite the base, 1 in the middle, 2 in the base layer. */
function depthOf(scene: Scene, piece: Piece): number {
  const slot = faceletsOf(whereIs(scene.state, piece).slot);
  return slot.includes(OPPOSITE[scene.base]) ? 0 : slot.includes(scene.base) ? 2 : 1;
}

/** `chosen`: the piece that a person would take, if one is known; else the one that lies freest. */
export function nextFact(scene: Scene, due: number, chosen?: Piece): NextFact {
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
  if (isOffset(scene, goal)) return { ...common, pieces: [], reason: 'offset' };
  if (left.length === 0 || left.some((part) => isFacing(goal, part))) {
    return { ...common, pieces: [], reason: 'pattern' };
  }
  const depth = (part: PieceSet): number =>
    Math.max(
      ...piecesIn(part)
        .filter((piece) => !isHome(scene, piece))
        .map((piece) => depthOf(scene, piece)),
    );
  const part =
    left.find((one) => chosen !== undefined && (one >> chosen) & 1) ??
    left.reduce((best, other) => (depth(other) < depth(best) ? other : best));
  const reason = left.length === 1 && goal.choice === undefined ? 'last-one' : 'piece';
  return { ...common, pieces: namePieces(part, scene.base), reason };
}

export function isOffset(scene: Scene, goal: Goal): boolean {
  return (
    goal.name === 'cross' &&
    crossFacts(scene, scene.base).some((fact) => fact.kind === 'cross-offset')
  );
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
    const home = homeOf(
      gained.reduce((set, part) => set | part, 0),
      after,
    );
    return {
      kind: 'turns',
      place: scene.place,
      ...nameGoal(block.method, goal, scene.base),
      turns: Array.from({ length: end - at }, (_, i) => block.textOf(at + i)).join(' '),
      regrip: '',
      effect: reaches ? 'goal' : home === 0 ? 'shape' : 'home',
      pieces: namePieces(home, scene.base),
      from: 'written',
    };
  }
  return undefined;
}

/** What a hint can go by, besides the cube: the step that a person would take, and turns found for it. */
export interface Help {
  readonly step: PersonStep | undefined;
  readonly turns: TurnsFact | undefined;
}

/** Everything that the hints of level 1 to 3 may speak of; the renderer takes what the level allows. */
export function gatherNext(scene: Scene, level: 1 | 2 | 3, { step, turns }: Help): Fact[] {
  const due = dueGoal(scene);
  const facts: Fact[] = [standFact(scene)];
  if (due === undefined) {
    const last = scene.goals.length - 1;
    return last < 0 ? facts : [...facts, goalFact(scene, ownGoal(scene, last))];
  }
  const midway = midwayFact(scene, ownGoal(scene, due));
  if (midway) facts.push(midway);
  const next = nextFact(scene, due, step?.piece);
  facts.push(next);
  if (next.goal === 'cross') facts.push(...crossFacts(scene, scene.base));
  const pieces = next.pieces.flatMap((name) => pieceOf(name.map(colourIndex)) ?? []);
  if (level < 3) {
    for (const piece of pieces) facts.push(pieceFact(scene, piece));
    facts.push(...patternsOf(scene, due));
    if (level === 2 && step && next.reason !== 'offset') facts.push(cueFact(scene, step));
    const over = level === 2 && pieces.length === 1 ? overHome(scene, pieces[0]) : undefined;
    if (over) facts.push(over);
    return facts;
  }
  if (turns) {
    facts.push(turns);
    const codes = turnsOf(turns.turns);
    if (codes) facts.push(...openedBy(scene, codes));
  } else if (next.reason !== 'offset') {
    facts.push({ kind: 'no-turns', place: scene.place });
    for (const piece of pieces) facts.push(pieceFact(scene, piece));
  }
  return facts;
}

function cueFact({ place, base }: Scene, { piece, reason }: PersonStep): CueFact {
  const name = piece === undefined ? undefined : namePiece(piece, base);
  return { kind: 'cue', place, base: COLOURS[base], piece: name, cue: reason };
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
