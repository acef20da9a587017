/** What the words of a question stand for on the cube at hand: pieces, and goals of the method in force or of another. */
import {
  PIECES,
  faceletsOf,
  isCorner,
  pieceAt,
  pieceOf,
  piecesIn,
  slotAt,
  type Piece,
} from '../cube/piece.ts';
import { COLOURS, OPPOSITE } from '../cube/vocabulary.ts';
import type { Goal } from '../goals/goal.ts';
import { goalHolds, goalMissing } from '../goals/judge.ts';
import { METHODS, findMethod, goalsFor, type Method } from '../goals/methods.ts';
import { resolveStage, type StageName } from '../goals/stage-names.ts';
import type { NoPieceFact, WhichPieceFact } from './facts.ts';
import type { GoalRef, PieceRef } from './intents.ts';
import { namePiece, type Scene } from './scene.ts';

export interface MeantGoal {
  readonly goal: Goal;
  readonly method: string;
  readonly base: number;
  /** Index in the goals of the scene; undefined for a goal of another method or base. */
  readonly index: number | undefined;
}

export function ownGoal(scene: Scene, index: number): MeantGoal {
  return { goal: scene.goals[index], method: scene.block.method, base: scene.base, index };
}

/** Index of the first goal of the method that does not hold; undefined if all do. */
export function dueGoal(scene: Scene): number | undefined {
  const index = scene.goals.findIndex((goal) => !goalHolds(goal, scene.state));
  return index < 0 ? undefined : index;
}

function methodOf(scene: Scene): Method {
  const known = findMethod(scene.block.method);
  if (known) return known;
  const stages = scene.goals.map(({ name }) => ({ name, demands: [] }));
  return { name: scene.block.method, stages, sided: false };
}

export function meantGoal(scene: Scene, { name }: GoalRef): MeantGoal | undefined {
  const pairsSoFar = scene.goals.filter(
    (goal) => goal.name.endsWith(' pair') && goalHolds(goal, scene.state),
  ).length;
  const context = { base: scene.base, pairsSoFar };
  const method = methodOf(scene);
  const index = resolveStage(name, method, context);
  if (index !== undefined && index < scene.goals.length) return ownGoal(scene, index);
  const aside = otherBase(scene, name);
  if (aside !== undefined) return meantIn(method, name, aside) ?? elsewhere(name, aside);
  return elsewhere(name, scene.base);
}

/** A colour that is neither the base's nor the top's speaks of another base. */
function otherBase(scene: Scene, { colour }: StageName): number | undefined {
  if (colour === undefined || colour === scene.base || colour === OPPOSITE[scene.base])
    return undefined;
  return colour;
}

function meantIn(method: Method, name: StageName, base: number): MeantGoal | undefined {
  if (!METHODS.includes(method)) return undefined;
  const index = resolveStage(name, method, { base, pairsSoFar: 0 });
  if (index === undefined) return undefined;
  return { goal: goalsFor(method, base)[index], method: method.name, base, index: undefined };
}

/** In the methods whose own name it is, then in any that understands it. */
function elsewhere(name: StageName, base: number): MeantGoal | undefined {
  for (const methodName of [...name.native, ...Object.keys(name.hints)]) {
    const method = findMethod(methodName);
    const meant = method && meantIn(method, name, base);
    if (meant) return meant;
  }
  return undefined;
}

export type MeantPiece =
  { readonly kind: 'piece'; readonly piece: Piece } | NoPieceFact | WhichPieceFact;

const MOST_OPTIONS = 4;

export function meantPiece(scene: Scene, ref: PieceRef, before: readonly Piece[]): MeantPiece {
  const { state, place } = scene;
  switch (ref.kind) {
    case 'home':
    case 'slot': {
      const slot = slotAt(ref.faces, state.holding);
      if (slot === undefined) return { kind: 'no-piece', place, colours: [], reason: 'opposite' };
      return { kind: 'piece', piece: ref.kind === 'slot' ? pieceAt(state, slot) : slot };
    }
    case 'colours': {
      const colours = ref.colours.filter((colour) => colour >= 0);
      const names = colours.map((colour) => COLOURS[colour]);
      if (new Set(colours).size < colours.length)
        return { kind: 'no-piece', place, colours: names, reason: 'twice' };
      if (colours.length < ref.colours.length) return choose(scene, colours, true, []);
      const piece = pieceOf(colours);
      if (piece === undefined)
        return { kind: 'no-piece', place, colours: names, reason: 'opposite' };
      return { kind: 'piece', piece };
    }
    case 'colour':
      return choose(scene, [ref.colour], ref.corner, before);
  }
}

/** The piece that one colour (or two of a corner) means: by the piece last spoken of, by what is due, or not settled. */
function choose(
  scene: Scene,
  colours: readonly number[],
  corner: boolean | undefined,
  before: readonly Piece[],
): MeantPiece {
  const last = before.at(-1);
  const due = dueGoal(scene);
  const missing = due === undefined ? [] : piecesIn(goalMissing(scene.goals[due], scene.state));
  const kind = corner ?? (last === undefined ? undefined : isCorner(last));
  const fits = (piece: Piece): boolean =>
    colours.every((colour) => faceletsOf(piece).includes(colour)) &&
    (kind === undefined || isCorner(piece) === kind);
  const all = Array.from({ length: PIECES }, (_, piece) => piece).filter(fits);
  const only = (options: readonly Piece[]): MeantPiece | undefined =>
    options.length === 1 ? { kind: 'piece', piece: options[0] } : undefined;
  const names = colours.map((colour) => COLOURS[colour]);
  if (all.length === 0)
    return { kind: 'no-piece', place: scene.place, colours: names, reason: 'opposite' };
  const alike =
    last === undefined || colours.length > 1
      ? []
      : all.filter((piece) => piece !== last && sameButOne(piece, last, scene.base));
  const settled = only(all) ?? only(alike) ?? only(all.filter((piece) => missing.includes(piece)));
  if (settled) return settled;
  // Of the many pieces with a colour those that are due come first.
  const options = [...all].sort(
    (a, b) => Number(missing.includes(b)) - Number(missing.includes(a)),
  );
  return {
    kind: 'which-piece',
    place: scene.place,
    colours: names,
    options: options.slice(0, MOST_OPTIONS).map((piece) => namePiece(piece, scene.base)),
  };
}

/** After the white-green edge "the red one" is the white-red edge: the colour of the layer stays. */
function sameButOne(piece: Piece, last: Piece, base: number): boolean {
  const own = faceletsOf(piece);
  const other = faceletsOf(last);
  const shared = own.filter((colour) => other.includes(colour));
  if (own.length !== other.length || shared.length !== own.length - 1) return false;
  const axis = (colours: readonly number[]): number | undefined =>
    colours.find((colour) => colour === base || colour === OPPOSITE[base]);
  return axis(own) === axis(other);
}
