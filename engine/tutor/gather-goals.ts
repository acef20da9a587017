/** Facts on which goals hold, what is missing, since when, and how the top lies. */
import {
  FIRST_CORNER,
  faceShowing,
  piecesIn,
  piecesWith,
  whereIs,
  type Piece,
} from '../cube/piece.ts';
import { applyTurn, type State } from '../cube/state.ts';
import { makeTurn, printTurn } from '../cube/turn.ts';
import { COLOURS, OPPOSITE, faceIndex } from '../cube/vocabulary.ts';
import { crossAlignment } from '../goals/cross-alignment.ts';
import { goalMissing } from '../goals/judge.ts';
import type { ArrangedFact, Fact, FacingFact, PatternFact, SinceFact } from './facts.ts';
import { pieceFact, standFact } from './gather-where.ts';
import { goalFact } from './goal-facts.ts';
import { lossesOf, midwayFact } from './losses.ts';
import type { MeantGoal } from './referents.ts';
import { dueGoal, ownGoal } from './referents.ts';
import { faceOf, nameGoal, nameTurn, type Scene } from './scene.ts';

/** Since which turn a goal of the block's method has held; only for places in the written text. */
export function sinceFact(scene: Scene, meant: MeantGoal): SinceFact | undefined {
  const { block, at, then, place } = scene;
  if (meant.index === undefined || then.length > 0) return undefined;
  const held = block.timeline.held[meant.index];
  if (held[at] !== 1) return undefined;
  let from = at;
  while (from > 0 && held[from - 1] === 1) from--;
  const turn = from === 0 ? undefined : nameTurn(block, from - 1);
  return { kind: 'since', place, ...nameGoal(meant.method, meant.goal, meant.base), turn };
}

/** A cross that has its colour, but whose sides don't match. */
export function crossFacts(scene: Scene, base: number): Fact[] {
  const { state, place } = scene;
  const alignment = crossAlignment(state, base);
  const face = faceIndex(faceOf(state, base));
  if (alignment.kind === 'offset') {
    const turn = printTurn(makeTurn(face, alignment.turns));
    return [{ kind: 'cross-offset', place, base: COLOURS[base], turn }];
  }
  if (alignment.kind !== 'order') return [];
  const edges = piecesIn(piecesWith(base)).filter((piece) => piece < FIRST_CORNER);
  return [
    { kind: 'cross-order', place, base: COLOURS[base], most: bestTurn(state, face, edges).count },
  ];
}

function isHome(state: State, piece: Piece): boolean {
  const { slot, turned } = whereIs(state, piece);
  return slot === piece && turned === 0;
}

function bestTurn(
  state: State,
  face: number,
  pieces: readonly Piece[],
): { count: number; turn: string } {
  let best = { count: -1, turn: '' };
  let turned = state;
  for (let amount = 0; amount < 4; amount++) {
    const count = pieces.filter((piece) => isHome(turned, piece)).length;
    if (count > best.count)
      best = { count, turn: amount === 0 ? '' : printTurn(makeTurn(face, amount)) };
    turned = applyTurn(turned, makeTurn(face, 1));
  }
  return best;
}

function topPieces(scene: Scene, kind: 'corners' | 'edges'): Piece[] {
  return piecesIn(piecesWith(OPPOSITE[scene.base])).filter(
    (piece) => piece >= FIRST_CORNER === (kind === 'corners'),
  );
}

/** The shape of the top edges; undefined unless all four lie in the top layer. */
export function patternFact(scene: Scene): PatternFact | undefined {
  const { state, base, place } = scene;
  const top = OPPOSITE[base];
  const edges = topPieces(scene, 'edges');
  if (!edges.every((piece) => edges.includes(whereIs(state, piece).slot))) return undefined;
  const up = edges.filter((piece) => faceShowing(state, piece, top) === top);
  const slots = up.map((piece) => whereIs(state, piece).slot);
  const opposite = (a: number, b: number): boolean => faceShowingOpposite(a, b, top);
  const shape =
    up.length === 4
      ? 'cross'
      : up.length === 0
        ? 'dot'
        : up.length === 2
          ? opposite(slots[0], slots[1])
            ? 'line'
            : 'angle'
          : undefined;
  return shape && { kind: 'pattern', place, colour: COLOURS[top], shape };
}

function faceShowingOpposite(a: Piece, b: Piece, top: number): boolean {
  const side = (slot: Piece): number =>
    [0, 1, 2, 3, 4, 5].find((face) => face !== top && (piecesWith(face) >> slot) & 1) ?? -1;
  return OPPOSITE[side(a)] === side(b);
}

export function facingFact(scene: Scene, pieces: 'corners' | 'edges'): FacingFact {
  const { state, base, place } = scene;
  const top = OPPOSITE[base];
  const own = topPieces(scene, pieces);
  const count = own.filter((piece) => faceShowing(state, piece, top) === top).length;
  return { kind: 'facing', place, colour: COLOURS[top], pieces, count };
}

export function arrangedFact(scene: Scene, pieces: 'corners' | 'edges'): ArrangedFact {
  const { state, base, place } = scene;
  const top = OPPOSITE[base];
  const best = bestTurn(state, faceIndex(faceOf(state, top)), topPieces(scene, pieces));
  return { kind: 'arranged', place, colour: COLOURS[top], pieces, ...best };
}

const PIECES_TOLD = 3;

export function gatherDone(scene: Scene, goals: readonly MeantGoal[]): Fact[] {
  const facts: Fact[] = [standFact(scene)];
  for (const meant of goals) {
    const fact = goalFact(scene, meant);
    facts.push(fact);
    if (fact.holds) {
      const since = sinceFact(scene, meant);
      if (since) facts.push(since);
      continue;
    }
    if (meant.goal.name === 'cross') facts.push(...crossFacts(scene, meant.base));
    const midway = midwayFact(scene, meant);
    if (midway) facts.push(midway);
    else
      facts.push(
        ...lossesOf(scene, meant)
          .filter(
            (loss) =>
              loss.fate !== 'passing' &&
              loss.fate !== 'unguarded' &&
              loss.turn.index < scene.at &&
              (loss.back === undefined || loss.back.index >= scene.at),
          )
          .slice(-1),
      );
    if (goals.length === 1) {
      const missing = piecesIn(goalMissing(meant.goal, scene.state));
      for (const piece of missing.slice(0, PIECES_TOLD))
        facts.push(pieceFact({ ...scene, base: meant.base }, piece));
    }
  }
  return facts;
}

export function gatherHolding(scene: Scene): Fact[] {
  const facts: Fact[] = [standFact(scene)];
  for (let index = 0; index < scene.goals.length; index++)
    facts.push(goalFact(scene, ownGoal(scene, index)));
  const due = dueGoal(scene);
  if (due !== undefined && scene.goals[due].name === 'cross')
    facts.push(...crossFacts(scene, scene.base));
  return facts;
}
