/** Where a goal was lost: each turn after which it no longer holds, what it took away, and what became of it. */
import { piecesIn, whereIs, type Piece } from '../cube/piece.ts';
import { stageOfTurn } from '../goals/breaks.ts';
import { goalHolds, goalMissing } from '../goals/judge.ts';
import type { LossFact, MidwayFact } from './facts.ts';
import type { MeantGoal } from './referents.ts';
import { isNumbered, nameGoal, namePiece, nameTurn, slotIn, type Scene } from './scene.ts';

export function heldOf(scene: Scene, { index, goal }: MeantGoal): Uint8Array {
  if (index !== undefined) return scene.block.timeline.held[index];
  const { course } = scene.block;
  return Uint8Array.from({ length: course.length + 1 }, (_, place) => {
    const state = course.stateAt(place);
    return state === undefined ? 2 : Number(goalHolds(goal, state));
  });
}

/** All turns after which the goal no longer holds, in order. */
export function lossesOf(scene: Scene, meant: MeantGoal): LossFact[] {
  const held = heldOf(scene, meant);
  const result: LossFact[] = [];
  for (let turn = 0; turn < scene.block.course.length; turn++) {
    if (held[turn] === 1 && held[turn + 1] === 0 && isNumbered(scene.block, turn)) {
      const loss = lossFact(scene, meant, held, turn);
      if (loss) result.push(loss);
    }
  }
  return result;
}

function lossFact(
  scene: Scene,
  meant: MeantGoal,
  held: Uint8Array,
  turn: number,
): LossFact | undefined {
  const { block } = scene;
  const { course, timeline } = block;
  let back: number | undefined = turn + 2;
  while (back <= course.length && held[back] !== 1) back++;
  back = back > course.length ? undefined : back - 1;
  const before = course.stateAt(turn);
  const after = course.stateAt(turn + 1);
  if (before === undefined || after === undefined) return undefined;
  const moved = (piece: Piece): boolean =>
    whereIs(before, piece).slot !== whereIs(after, piece).slot;
  const wasHome = (piece: Piece): boolean => whereIs(before, piece).slot === piece;
  const record = timeline.breaks.find(
    (one) => one.turn === turn && !one.part && meant.index !== undefined && one.goal <= meant.index,
  );
  // A pair once made is guarded by its own pieces, whatever other pair would do.
  const missing = record ? record.pieces : piecesIn(goalMissing(meant.goal, after));
  const gone = missing.filter(
    (piece) => moved(piece) && (wasHome(piece) || meant.goal.upTo !== undefined),
  );
  const guardedFrom =
    meant.index === undefined ? undefined : timeline.outcomes[meant.index].guardedFrom;
  const stage = stageOfTurn(timeline.stages, turn);
  const guarded = guardedFrom !== undefined && guardedFrom <= turn;
  return {
    kind: 'loss',
    place: { block: block.line, at: course.length, then: '' },
    ...nameGoal(meant.method, meant.goal, meant.base),
    turn: nameTurn(block, turn),
    pieces: gone.map((piece) => ({
      piece: namePiece(piece, meant.base),
      from: slotIn(before, whereIs(before, piece).slot),
      to: slotIn(after, whereIs(after, piece).slot),
    })),
    back: back === undefined ? undefined : nameTurn(block, back),
    fate: guarded ? fateOf(scene, turn, back, record?.kind) : 'unguarded',
    stage: stage === undefined ? undefined : timeline.goals[timeline.stages[stage].goal].name,
  };
}

/** What became of it, as the timeline tells breaks. */
function fateOf(
  scene: Scene,
  turn: number,
  back: number | undefined,
  told: LossFact['fate'] | undefined,
): LossFact['fate'] {
  const { timeline, course } = scene.block;
  const { stages } = timeline;
  const stage = stageOfTurn(stages, turn);
  const next = stages.find(({ first, end }) => first > turn && end > first);
  const end = stage === undefined ? (next?.first ?? course.length) : stages[stage].end;
  if (back !== undefined) return back < end ? 'passing' : 'carried';
  return told === 'open' ? 'open' : 'lasting';
}

/** Between the opening of a goal and its return within the stage. */
export function midwayFact(scene: Scene, meant: MeantGoal): MidwayFact | undefined {
  if (scene.then.length > 0) return undefined;
  const { at } = scene;
  const around = lossesOf(scene, meant).find(
    ({ fate, turn, back }) =>
      fate === 'passing' && back !== undefined && turn.index < at && back.index >= at,
  );
  if (around?.back === undefined) return undefined;
  return {
    kind: 'midway',
    place: scene.place,
    ...nameGoal(meant.method, meant.goal, meant.base),
    opened: around.turn,
    back: around.back,
  };
}
