/** Facts on the way of a piece through the written turns, and on the stages of the text. */
import { faceShowing, faceletsOf, whereIs, type Piece } from '../cube/piece.ts';
import { JUMP } from '../goals/course.ts';
import { goalHolds, goalPieces } from '../goals/judge.ts';
import { countTurns } from '../notation/count.ts';
import type { Fact, JourneyFact, StageFact } from './facts.ts';
import { pieceFact } from './gather-where.ts';
import { dueGoal, ownGoal, type MeantGoal } from './referents.ts';
import { faceOf, isNumbered, nameGoal, namePiece, nameTurn, slotIn, type Scene } from './scene.ts';

/** Steps told; the earlier ones are counted. */
const TOLD = 4;

/** Undefined where the text has an unknown stretch, or the place lies behind turns that are not written. */
export function journeyFact(scene: Scene, piece: Piece): JourneyFact | undefined {
  const { block, at, base, place } = scene;
  const steps: JourneyFact['steps'][number][] = [];
  let left: JourneyFact['left'];
  for (let turn = 0; turn < at; turn++) {
    const before = block.course.stateAt(turn);
    const after = block.course.stateAt(turn + 1);
    if (before === undefined || after === undefined) return undefined;
    if (!isNumbered(block, turn)) continue;
    const [was, is] = [whereIs(before, piece), whereIs(after, piece)];
    const [from, to] = [slotIn(before, was.slot), slotIn(after, is.slot)];
    const lies = faces(before, piece);
    if (lies !== faces(after, piece)) steps.push({ turn: nameTurn(block, turn), from, to });
    const wasHome = was.slot === piece && was.turned === 0;
    if (wasHome && !(is.slot === piece && is.turned === 0)) left = nameTurn(block, turn);
  }
  return {
    kind: 'journey',
    place,
    piece: namePiece(piece, base),
    steps: steps.slice(-TOLD),
    count: steps.length,
    left,
  };
}

/** How a piece lies in the hands: each of its colours with the face that shows it. */
function faces(state: Scene['state'], piece: Piece): string {
  return faceletsOf(piece)
    .map((colour) => faceOf(state, faceShowing(state, piece, colour)))
    .join('');
}

export function gatherJourney(scene: Scene, pieces: readonly Piece[]): Fact[] {
  return pieces.flatMap((piece): Fact[] => {
    const journey = journeyFact({ ...scene, then: [] }, piece);
    return [pieceFact(scene, piece), ...(journey ? [journey] : [])];
  });
}

/** Where the stage of a goal (the due one if none is named) stands in the text. */
export function stageFacts(scene: Scene, goal: MeantGoal | undefined): Fact[] {
  const { block } = scene;
  const { stages } = block.timeline;
  const index = goal?.index ?? dueGoal(scene) ?? scene.goals.length - 1;
  const here = stages.find(({ first, end }) => scene.at > first && scene.at <= end);
  const stage = goal === undefined && here ? here : stages.find((one) => one.goal === index);
  if (stage === undefined) return [];
  const own = ownGoal(scene, stage.goal);
  const turns = Array.from({ length: stage.end - stage.first }, (_, i) => stage.first + i).filter(
    (turn) => isNumbered(block, turn),
  );
  const end = block.course.stateAt(stage.end);
  if (Array.from({ length: stage.end }, (_, turn) => block.course.codes[turn]).includes(JUMP))
    return [];
  const last = turns.at(-1);
  const fact: StageFact = {
    kind: 'stage',
    place: { block: block.line, at: stage.end, then: '' },
    ...nameGoal(own.method, own.goal, own.base),
    first: turns.length === 0 ? undefined : nameTurn(block, turns[0]),
    last: last === undefined ? undefined : nameTurn(block, last),
    reached: end !== undefined && goalHolds(own.goal, end),
    obtm: countTurns(block.course.codes, undefined, stage.first, stage.end).obtm ?? 0,
  };
  return [fact];
}

/** Whether a piece may be taken next. */
export function gatherOrder(scene: Scene, pieces: readonly Piece[]): Fact[] {
  const due = dueGoal(scene);
  return pieces.flatMap((piece): Fact[] => {
    const index = scene.goals.findIndex((goal) => (goalPieces(goal) >> piece) & 1);
    const shown = pieceFact(scene, piece);
    if (index < 0) return [shown];
    const placed = shown.status === 'placed';
    const when = placed ? 'made' : due !== undefined && index > due ? 'later' : 'due';
    const { method, goal, base } = ownGoal(scene, when === 'due' ? (due ?? index) : index);
    return [
      {
        kind: 'order',
        place: scene.place,
        ...nameGoal(method, goal, base),
        piece: shown.piece,
        when,
      },
      shown,
    ];
  });
}
