/** Facts on goals that were lost: where, which pieces went, whether they came back, and what would have kept them. */
import type { Piece } from '../cube/piece.ts';
import { applyTurns } from '../cube/state.ts';
import { printTurn } from '../cube/turn.ts';
import { COLOURS } from '../cube/vocabulary.ts';
import { stageOfTurn } from '../goals/breaks.ts';
import { JUMP } from '../goals/course.ts';
import { goalHolds, goalPieces } from '../goals/judge.ts';
import { aimsFrom, restoringChange } from '../goals/restore.ts';
import type { AcrossFact, Fact, LossFact, MendFact, NeverLostFact, WithoutFact } from './facts.ts';
import { goalFact } from './goal-facts.ts';
import { standFact } from './gather-where.ts';
import { heldOf, lossesOf } from './losses.ts';
import { ownGoal, type MeantGoal } from './referents.ts';
import {
  isNumbered,
  lastTurnBefore,
  nameGoal,
  namePiece,
  nameTurn,
  sceneAt,
  type Scene,
} from './scene.ts';

const GRAVITY: Readonly<Record<LossFact['fate'], number>> = {
  lasting: 0,
  open: 1,
  carried: 2,
  passing: 3,
  unguarded: 4,
};

/** `turn`: index of a turn that the question blames; `span`: turns among which it looks. */
export interface Suspects {
  readonly turn?: number;
  readonly span?: { readonly first: number; readonly end: number };
  readonly pieces: readonly Piece[];
}

export function gatherLoss(scene: Scene, goals: readonly MeantGoal[], suspects: Suspects): Fact[] {
  const asked = goals.length > 0 ? goals : goalsOfPieces(scene, suspects.pieces);
  if (asked.length === 0) return gatherWorst(scene, suspects);
  const facts: Fact[] = [standFact(scene)];
  for (const meant of asked) facts.push(...lossOfGoal(scene, meant, suspects));
  return facts;
}

/** The most basic goal with the piece that was ever lost with it. */
function goalsOfPieces(scene: Scene, pieces: readonly Piece[]): MeantGoal[] {
  for (const piece of pieces) {
    const indices = scene.goals.flatMap((goal, index) =>
      (goalPieces(goal) >> piece) & 1 ? [index] : [],
    );
    const name = namePiece(piece, scene.base).join();
    const lost = indices.find((index) =>
      lossesOf(scene, ownGoal(scene, index)).some((loss) =>
        loss.pieces.some((one) => one.piece.join() === name),
      ),
    );
    const index = lost ?? indices[0];
    if (index !== undefined) return [ownGoal(scene, index)];
  }
  return [];
}

function lossOfGoal(scene: Scene, meant: MeantGoal, { turn, span, pieces }: Suspects): Fact[] {
  const facts: Fact[] = [];
  let losses = lossesOf(scene, meant);
  if (pieces.length > 0) {
    const names = pieces.map((piece) => namePiece(piece, meant.base).join());
    const ofPieces = losses.filter((loss) =>
      loss.pieces.some(({ piece }) => names.includes(piece.join())),
    );
    if (ofPieces.length > 0) losses = ofPieces;
  }
  if (turn !== undefined) {
    const guilty = losses.find((loss) => loss.turn.index === turn);
    if (guilty === undefined) facts.push(acrossFact(scene, meant, turn));
    else losses = [guilty];
  } else if (span !== undefined) {
    const inSpan = losses.filter(
      (loss) => loss.turn.index >= span.first && loss.turn.index < span.end,
    );
    if (inSpan.length > 0) losses = inSpan;
  }
  const loss = [...losses]
    .sort((a, b) => GRAVITY[a.fate] - GRAVITY[b.fate] || a.turn.index - b.turn.index)
    .at(0);
  if (loss === undefined) {
    facts.push(neverLost(scene, meant));
    return facts;
  }
  facts.push(loss, ...causes(scene, meant, loss));
  return facts;
}

function acrossFact(scene: Scene, meant: MeantGoal, turn: number): AcrossFact {
  const held = heldOf(scene, meant);
  return {
    kind: 'across',
    place: { block: scene.block.line, at: turn + 1, then: '' },
    ...nameGoal(meant.method, meant.goal, meant.base),
    turn: nameTurn(scene.block, turn),
    before: held[turn] === 1,
    after: held[turn + 1] === 1,
  };
}

function neverLost(scene: Scene, meant: MeantGoal): NeverLostFact {
  const { block } = scene;
  const held = heldOf(scene, meant);
  const first = held.indexOf(1);
  return {
    kind: 'never-lost',
    place: { block: block.line, at: block.course.length, then: '' },
    ...nameGoal(meant.method, meant.goal, meant.base),
    holdsAtEnd: held[block.course.length] === 1,
    reached:
      first < 0 ? undefined : first === 0 ? 'start' : (lastTurnBefore(block, first) ?? 'start'),
  };
}

/** Where the stage of a turn ends; the end of the block if it belongs to none. */
function endOfStage(scene: Scene, turn: number): number {
  const { timeline, course } = scene.block;
  const stage = stageOfTurn(timeline.stages, turn);
  return stage === undefined ? course.length : timeline.stages[stage].end;
}

function causes(scene: Scene, meant: MeantGoal, loss: LossFact): Fact[] {
  if (loss.fate === 'passing' || loss.fate === 'unguarded' || meant.goal.choice) return [];
  const { block } = scene;
  const end = endOfStage(scene, loss.turn.index);
  const facts: Fact[] = [];
  const without = withoutFact(scene, meant, loss, end);
  if (without) facts.push(without);
  const change = restoringChange(
    block.course,
    meant.goal,
    loss.turn.index,
    end,
    aimsFrom(block.timeline, end),
  );
  if (change === undefined || (change.kind === 'remove' && without?.holds)) return facts;
  const at = change.kind === 'insert' ? change.at - 1 : change.at;
  if (at < 0 || !isNumbered(block, at)) return facts;
  const mend: MendFact = {
    kind: 'mend',
    place: { block: block.line, at: end, then: '' },
    ...nameGoal(meant.method, meant.goal, meant.base),
    change: change.kind,
    turn: change.kind === 'remove' ? '' : printTurn(change.turn),
    at: nameTurn(block, at),
  };
  facts.push(mend);
  return facts;
}

/** The counterfactual is told only where all turns in between are single ones. */
function withoutFact(
  scene: Scene,
  meant: MeantGoal,
  loss: LossFact,
  end: number,
): WithoutFact | undefined {
  const { course, line } = scene.block;
  const { index } = loss.turn;
  const rest: number[] = [];
  for (let turn = index + 1; turn < end; turn++) rest.push(course.codes[turn]);
  const before = course.stateAt(index);
  if (before === undefined || rest.includes(JUMP) || rest.length > 500) return undefined;
  return {
    kind: 'without',
    place: { block: line, at: end, then: '' },
    ...nameGoal(meant.method, meant.goal, meant.base),
    turn: loss.turn,
    holds: goalHolds(meant.goal, applyTurns(before, rest)),
  };
}

/** No goal was named: the gravest break of the block, or that there is none. */
function gatherWorst(scene: Scene, { turn, span }: Suspects): Fact[] {
  const facts: Fact[] = [standFact(scene)];
  if (turn !== undefined || span !== undefined) {
    const told = worstLoss(scene, (one) =>
      turn !== undefined ? one === turn : span !== undefined && one >= span.first && one < span.end,
    );
    if (told) return [...facts, ...told];
    // The premise is put right before what did happen is told.
    if (turn !== undefined) {
      const { held } = scene.block.timeline;
      const before = scene.goals.findLastIndex((_, index) => held[index][turn] === 1);
      facts.push(acrossFact(scene, ownGoal(scene, Math.max(before, 0)), turn));
    } else if (span) facts.push(noLossFact(scene, scene.block.rangeOf(span.first).start.line + 1));
  }
  const worst = worstLoss(scene, () => true);
  if (worst) return [...facts, ...worst];
  return [...facts, noLossFact(scene, undefined), ...notReached(scene)];
}

/** Of the breaks by turns that are under suspicion the gravest, with its causes; passing ones only where a turn or line is blamed. */
function worstLoss(scene: Scene, suspected: (turn: number) => boolean): Fact[] | undefined {
  const { timeline } = scene.block;
  const all = suspected(-1);
  const worst = timeline.breaks
    .filter((one) => !one.part && suspected(one.turn) && !(all && one.kind === 'passing'))
    .sort((a, b) => GRAVITY[a.kind] - GRAVITY[b.kind] || a.turn - b.turn)
    .at(0);
  if (worst === undefined) return undefined;
  const meant = ownGoal(scene, worst.goal);
  const loss = lossesOf(scene, meant).find((one) => one.turn.index === worst.turn);
  return loss && [loss, ...causes(scene, meant, loss)];
}

function noLossFact({ block }: Scene, line: number | undefined): Fact {
  const place = { block: block.line, at: block.course.length, then: '' };
  return { kind: 'no-loss', place, line, method: block.method, base: COLOURS[block.base] };
}

/** The first stage at whose end its goal does not hold. */
function notReached({ block, goals }: Scene): Fact[] {
  const { stages, outcomes } = block.timeline;
  const missed = stages.find(({ goal }) => !outcomes[goal].reached);
  const there = missed && sceneAt(block, missed.end);
  if (missed === undefined || there?.kind !== 'scene') return [];
  const fact = goalFact(there.scene, ownGoal(there.scene, missed.goal));
  return fact.holds || goals.length === 0 ? [] : [fact];
}
