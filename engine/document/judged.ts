/**
 * A block executed and judged: the common ground of all checks, with turns and pieces as sentences
 * need them. Lines count from the block's first line.
 */
import { FACE_OF, type Holding } from '../cube/holding.ts';
import type { Range } from '../cube/place.ts';
import { piecesIn, slotName, whereIs, type PieceSet } from '../cube/piece.ts';
import type { State } from '../cube/state.ts';
import { isRotation, makeTurn, printTurn, type Turn } from '../cube/turn.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { JUMP, type Course } from '../goals/course.ts';
import type { Goal } from '../goals/goal.ts';
import type { Method } from '../goals/methods.ts';
import type { RestoringChange } from '../goals/restore.ts';
import type { Timeline } from '../goals/timeline-types.ts';
import { readSequence } from '../notation/read.ts';
import type { SequenceFacts } from './analysis.ts';
import type { Change, RawFinding, RawFix, StrayPiece, TurnRef } from './raw-finding.ts';
import type { Names } from './names.ts';
import type { BlockTree, DocumentTree } from './read/index.ts';
import type { Budget, Script } from './script.ts';
import type { Settings } from './settings.ts';
import type { Start } from './start.ts';
import type { TextStages } from './stages.ts';

export interface Judged {
  readonly kind: 'solve' | 'sequence' | 'aside';
  readonly script: Script;
  readonly settings: Settings;
  readonly method: Method;
  /** Colour index. */
  readonly base: number;
  readonly goals: readonly Goal[];
  readonly start: Start;
  readonly course: Course;
  readonly stages: TextStages;
  readonly timeline: Timeline;
  /** First turn and line of the block itself; before them an aside has those of the main line. */
  readonly ownFrom: number;
  readonly firstLine: number;
  /** Text of a line of the block. */
  readonly textOf: (line: number) => string;
  /** `numbers[turn]`: what people call the turn. */
  readonly numbers: ArrayLike<number>;
}

/** One block with its facts and findings. */
export interface JudgedBlock {
  readonly judged: Judged;
  readonly title: string;
  readonly sequence: SequenceFacts | undefined;
  readonly solved: boolean;
  readonly findings: readonly RawFinding[];
  readonly asides: readonly JudgedBlock[];
  /** First and last line of the block, counted from the first line of the outermost one. */
  readonly first: number;
  readonly end: number;
}

export interface BlockQuestion {
  readonly tree: DocumentTree;
  readonly block: BlockTree;
  readonly inherited: Settings;
  readonly names: Names;
  readonly budget: Budget;
  /**
   * What is told only after trying: `try` it; leave it out in a `crowd` of blocks, where that would
   * take too long; nothing of it in a `trial` itself.
   */
  readonly trying: 'try' | 'crowd' | 'trial';
}

/** From 1, without rotations; a rotation has the number of the turn before it. */
export function numberTurns(codes: ArrayLike<number>): Int32Array {
  const numbers = new Int32Array(codes.length);
  let number = 0;
  for (let index = 0; index < codes.length; index++) {
    if (codes[index] === JUMP || !isRotation(codes[index])) number++;
    numbers[index] = number;
  }
  return numbers;
}

export function rangeOfTurn({ script }: Judged, turn: number): Range {
  const line = script.lines[turn];
  return {
    start: { line, character: script.starts[turn] },
    end: { line, character: script.ends[turn] },
  };
}

/** How a turn reads: canonical, or as written where it is no single turn. */
export function textOfTurn(
  { script, textOf }: Pick<Judged, 'script' | 'textOf'>,
  turn: number,
): string {
  const code = script.codes[turn];
  if (code !== JUMP) return printTurn(code);
  if (script.jumps.get(turn)?.kind === 'gap') return '…';
  return textOf(script.lines[turn]).slice(script.starts[turn], script.ends[turn]);
}

export function turnRef(judged: Judged, turn: number): TurnRef {
  return {
    number: judged.numbers[turn],
    text: textOfTurn(judged, turn),
    line: judged.script.lines[turn],
  };
}

/** Rotations in a row that are passed over; nobody writes more. */
const ROTATIONS_PASSED = 20;

/** The last turn before a place that is no rotation; undefined if there is none near. */
export function turnBefore(judged: Judged, place: number): TurnRef | undefined {
  const { codes } = judged.script;
  const last = Math.max(0, place - ROTATIONS_PASSED);
  for (let turn = place - 1; turn >= last; turn--)
    if (codes[turn] === JUMP || !isRotation(codes[turn])) return turnRef(judged, turn);
  return undefined;
}

/** Where pieces are instead of at home, with slots as they lie in the hands at that place. */
export function straysAt(judged: Judged, place: number, pieces: PieceSet): StrayPiece[] {
  const state = judged.course.stateAt(place);
  return state === undefined ? [] : strays(state, pieces);
}

export function strays(state: State, pieces: PieceSet): StrayPiece[] {
  return piecesIn(pieces).map((piece) => {
    const { slot } = whereIs(state, piece);
    return {
      piece,
      slot: slotName(slot, state.holding),
      home: slotName(piece, state.holding),
      turned: slot === piece,
    };
  });
}

/** A turn of the layer of a colour, as it is written in this holding; `quarters` clockwise. */
export function layerTurn(colour: number, quarters: number, holding: Holding): Turn {
  return makeTurn(FACE_OF[holding][colour], quarters);
}

export function topOf(base: number): number {
  return OPPOSITE[base];
}

export function changeRef(judged: Judged, change: RestoringChange): Change {
  switch (change.kind) {
    case 'insert':
      // After the very turn: behind a rotation the same letter is another layer.
      return {
        kind: 'insert',
        after: change.at > 0 ? turnRef(judged, change.at - 1) : undefined,
        text: printTurn(change.turn),
      };
    case 'replace':
      return { kind: 'replace', turn: turnRef(judged, change.at), text: printTurn(change.turn) };
    case 'remove':
      return { kind: 'remove', turn: turnRef(judged, change.at) };
  }
}

/** Whether the text of a turn is that turn and nothing else, executed once, so that it can be edited. */
export function isLiteral(judged: Judged, turn: number): boolean {
  const { codes } = judged.script;
  if (turn < judged.ownFrom || turn >= codes.length || codes[turn] === JUMP) return false;
  if (!executedOnce(judged.script)[turn]) return false;
  const text = textOfLiteral(judged, turn);
  const { items } = readSequence(text, 0, text.length);
  return items.length === 1 && items[0].kind === 'turn' && items[0].turn === codes[turn];
}

const ONCE = new WeakMap<Script, Uint8Array>();

/** By turn: 1 if its place in the text is executed only once. Turns of one line are together. */
function executedOnce(script: Script): Uint8Array {
  const known = ONCE.get(script);
  if (known) return known;
  const { lines, starts } = script;
  const result = new Uint8Array(lines.length).fill(1);
  let seen = new Map<number, number>();
  for (let turn = 0; turn < lines.length; turn++) {
    if (turn > 0 && lines[turn] !== lines[turn - 1]) seen = new Map();
    const other = seen.get(starts[turn]);
    if (other === undefined) seen.set(starts[turn], turn);
    else result[other] = result[turn] = 0;
  }
  ONCE.set(script, result);
  return result;
}

function textOfLiteral({ script, textOf }: Judged, turn: number): string {
  return textOf(script.lines[turn]).slice(script.starts[turn], script.ends[turn]);
}

/** The change as an edit, where the turns concerned can be edited. */
export function changeFix(judged: Judged, change: RestoringChange): RawFix | undefined {
  if (change.kind === 'insert') {
    const text = printTurn(change.turn);
    if (change.at === 0 || !isLiteral(judged, change.at - 1)) return undefined;
    const { end } = rangeOfTurn(judged, change.at - 1);
    return {
      title: `Insert ${text}`,
      edits: [{ range: { start: end, end }, newText: ` ${text}` }],
    };
  }
  if (!isLiteral(judged, change.at)) return undefined;
  const range = rangeOfTurn(judged, change.at);
  const old = textOfTurn(judged, change.at);
  if (change.kind === 'replace') {
    const text = printTurn(change.turn);
    return { title: `Write ${text} instead of ${old}`, edits: [{ range, newText: text }] };
  }
  return { title: `Leave out ${old}`, edits: [{ range, newText: '' }] };
}

/** The codes as they would be with the change, and where places of the course lie then. */
export function changedCodes(
  codes: ArrayLike<number>,
  change: RestoringChange,
): { codes: number[]; shift: (place: number) => number } {
  const result = Array.from(codes);
  if (change.kind === 'insert') result.splice(change.at, 0, change.turn);
  else if (change.kind === 'replace') result[change.at] = change.turn;
  else result.splice(change.at, 1);
  const moved = { insert: 1, replace: 0, remove: -1 }[change.kind];
  const from = change.kind === 'insert' ? change.at : change.at + 1;
  return { codes: result, shift: (place) => (place >= from ? place + moved : place) };
}
