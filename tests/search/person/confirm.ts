/**
 * Confirms a step of a person's solve by replaying it: what its label says is looked up anew, on the
 * stickers and the pieces. Throws where it differs.
 */
import assert from 'node:assert/strict';
import { colourFacelets } from '../../../engine/cube/facelets.ts';
import { FACE_OF } from '../../../engine/cube/holding.ts';
import { faceletsOf, piecesIn, whereIs, type Piece } from '../../../engine/cube/piece.ts';
import { applyTurn, applyTurns, type State } from '../../../engine/cube/state.ts';
import { isRotation } from '../../../engine/cube/turn.ts';
import { OPPOSITE } from '../../../engine/cube/vocabulary.ts';
import { goalHolds, goalPieces } from '../../../engine/goals/judge.ts';
import { LAYERS, goalsFor } from '../../../engine/goals/methods.ts';
import type { PersonStep } from '../../../engine/search/person/step.ts';

const GOALS = [0, 1, 2, 3, 4, 5].map((base) => goalsFor(LAYERS, base));

/** Is the piece home, told by whether its stickers match the centres beside them. */
function isHome(state: State, piece: Piece): boolean {
  const { slot, turned } = whereIs(state, piece);
  return slot === piece && turned === 0;
}

/** What the label says about the situation, checked by looking at it anew. */
function confirmSituation(start: State, step: PersonStep, base: number): void {
  const top = OPPOSITE[base];
  const held = applyTurns(start, [...step.regrip, ...step.setup]);
  assert.equal(held.holding, step.holding);
  const facelets = colourFacelets(held);
  const at = (face: number, index: number): number => facelets[face * 9 + index];
  const [U, L, F, R, B] = [0, 1, 2, 3, 4];
  assert.equal(at(5, 4), base);
  const edgesUp = [1, 3, 5, 7].filter((index) => at(U, index) === top);
  const cornersUp = [0, 2, 6, 8].filter((index) => at(U, index) === top);
  const headlights = (face: number): boolean => at(face, 0) === at(face, 2);
  const finished = (face: number): boolean => headlights(face) && at(face, 0) === at(face, 1);
  const sides = [L, F, R, B];
  switch (step.reason) {
    case 'dot':
      assert.deepEqual(edgesUp, []);
      break;
    case 'line':
      assert.deepEqual(edgesUp, [3, 5]);
      break;
    case 'angle':
      assert.deepEqual(edgesUp, [5, 7]);
      break;
    case 'no-corner-right':
      assert.deepEqual(cornersUp, []);
      assert.equal(at(L, 2), top);
      break;
    case 'one-corner-right':
      assert.deepEqual(cornersUp, [6]);
      break;
    case 'two-corners-right':
      assert.equal(cornersUp.length, 2);
      assert.equal(at(F, 0), top);
      break;
    case 'headlights':
      assert.deepEqual(sides.filter(headlights), [B]);
      break;
    case 'no-headlights':
      assert.deepEqual(sides.filter(headlights), []);
      break;
    case 'no-finished-side':
      assert.deepEqual(sides.filter(finished), []);
      break;
    case 'three-edges-clockwise':
    case 'three-edges-counter-clockwise': {
      assert.deepEqual(sides.filter(finished), [B]);
      // Clockwise as seen from above: the edge in front belongs to the left.
      const clockwise = at(F, 1) === at(L, 0);
      assert.equal(clockwise, step.reason === 'three-edges-clockwise');
      break;
    }
    case 'last-turn':
      assert.deepEqual(sides.filter(finished), sides);
      break;
    default:
      confirmPiece(held, step, base);
  }
}

function confirmPiece(held: State, step: PersonStep, base: number): void {
  if (step.piece === undefined || step.from === undefined) throw new Error(step.reason);
  const { slot, turned } = whereIs(held, step.piece);
  const own = faceletsOf(step.piece);
  const place = faceletsOf(slot);
  const side = (colour: number): number =>
    FACE_OF[held.holding][place[(own.indexOf(colour) + turned) % own.length]];
  const faces = place.map((face) => FACE_OF[held.holding][face]);
  const home = own.map((face) => FACE_OF[held.holding][face]);
  const above = home.map((face) => (face === 5 ? 0 : face)).sort();
  const sides = [1, 2, 3, 4];
  switch (step.reason) {
    case 'base-up-above-home':
      assert.equal(side(base), 0);
      assert.deepEqual([...faces].sort(), above);
      break;
    case 'base-aside-above-home':
      assert.ok(faces.includes(0));
      assert.ok(sides.includes(side(base)));
      break;
    case 'beside-home':
    case 'edge-stuck-in-middle':
      assert.equal(
        faces.every((face) => sides.includes(face)),
        true,
      );
      break;
    case 'edge-in-wrong-base-slot':
      assert.equal(side(base), 5);
      assert.notEqual(slot, step.piece);
      break;
    case 'edge-turned-in-base':
      assert.ok(faces.includes(5));
      assert.ok(sides.includes(side(base)));
      break;
    case 'base-to-the-side':
      assert.deepEqual([...faces].sort(), above);
      assert.ok(sides.includes(side(base)));
      break;
    case 'base-up':
      assert.deepEqual([...faces].sort(), above);
      assert.equal(side(base), 0);
      break;
    case 'corner-turned-in-slot':
    case 'edge-turned-in-middle':
      assert.equal(slot, step.piece);
      assert.notEqual(turned, 0);
      break;
    case 'corner-in-wrong-slot':
      assert.ok(faces.includes(5));
      assert.notEqual(slot, step.piece);
      break;
    case 'edge-goes-right':
    case 'edge-goes-left': {
      assert.deepEqual([...faces].sort(), [0, 2]);
      const matching = own.find((colour) => side(colour) === 2);
      assert.equal(FACE_OF[held.holding][matching ?? -1], 2);
      assert.ok(home.includes(step.reason === 'edge-goes-right' ? 3 : 1));
      break;
    }
    case 'edge-in-wrong-middle-slot':
      assert.equal(
        faces.every((face) => sides.includes(face)),
        true,
      );
      assert.notEqual(slot, step.piece);
      break;
    default:
      throw new Error(`no check of ${step.reason}`);
  }
}

/** Replays a step turn by turn and compares all that its label says. */
export function confirmStep(start: State, step: PersonStep, base: number): State {
  const goals = GOALS[base];
  const index = goals.findIndex(({ name }) => name === step.stage);
  const open = goals.findIndex((goal) => !goalHolds(goal, start));
  assert.equal(open, index);
  confirmSituation(start, step, base);
  const byPiece = index < 3;
  const wanted = goalPieces(goals[byPiece ? index : 2]);
  const guarded = piecesIn(wanted).filter((piece) => isHome(start, piece));
  if (step.piece !== undefined) assert.deepEqual(step.from, whereIs(start, step.piece));
  let state = start;
  let away = 0;
  let first = -1;
  let last = -1;
  step.turns.forEach((turn, at) => {
    state = applyTurn(state, turn);
    const gone = guarded.filter((piece) => !isHome(state, piece));
    if (gone.length === 0) return;
    if (first < 0) first = at;
    last = at + 1;
    for (const piece of gone) away |= 1 << piece;
  });
  assert.deepEqual(
    step.disturbs,
    first < 0 ? undefined : { pieces: away, from: first, restoredBy: last },
  );
  assert.equal(
    guarded.every((piece) => isHome(state, piece)),
    true,
  );
  if (step.piece === undefined) assert.equal(step.arrives, goalHolds(goals[index], state));
  else {
    assert.deepEqual(step.to, whereIs(state, step.piece));
    assert.equal(step.arrives, isHome(state, step.piece));
    if (!step.arrives)
      assert.ok(faceletsOf(whereIs(state, step.piece).slot).includes(OPPOSITE[base]));
  }
  assert.deepEqual(step.turns.slice(0, step.regrip.length), step.regrip);
  assert.equal(step.regrip.every(isRotation), true);
  return state;
}
