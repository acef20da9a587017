/**
 * Factual notes for lines of turns: which piece goes where, what is lent and returned, which case of
 * the last layer it was. Each is computed; a line of which nothing is known gets none.
 */
import { isCorner, pieceName, pieceTitle, piecesIn, type PieceSet } from '../../cube/piece.ts';
import type { State } from '../../cube/state.ts';
import { lastLayerCase } from '../../goals/cases.ts';
import type { Goal } from '../../goals/goal.ts';
import { goalMissing, readWhere } from '../../goals/judge.ts';
import { claimLabels } from '../../goals/stage-names.ts';
import type { Analysis, Block } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import { partChanges, unitOf } from './progress.ts';
import { counted, listed, rangeIn } from './text.ts';

export interface LineOfTurns {
  readonly line: number;
  /** Its turns, `first` to before `end`. */
  readonly first: number;
  readonly end: number;
}

/** The lines of a block's own turns, in order. */
export function turnLines(block: Block): LineOfTurns[] {
  const result: LineOfTurns[] = [];
  for (let turn = block.ownFrom; turn < block.course.length; turn++) {
    const { line } = block.rangeOf(turn).start;
    const last = result.at(-1);
    if (last?.line === line) result[result.length - 1] = { ...last, end: turn + 1 };
    else result.push({ line, first: turn, end: turn + 1 });
  }
  return result;
}

/** Notes for the lines of a block that have no comment yet. */
export function noteEdits(analysis: Analysis, block: Block): TextEdit[] {
  return turnLines(block).flatMap(({ line, first, end }) => {
    const { text, content } = analysis.tree.lines[line];
    if ('comment' in content && content.comment !== undefined) return [];
    const note = noteFor(block, first, end);
    if (note === '' || claimLabels(note, block.scope.methods) !== undefined) return [];
    const at = text.trimEnd().length;
    return [{ range: rangeIn(line, { start: at, end: text.length }), newText: `  // ${note}` }];
  });
}

/** Pieces named in a note; beyond that they are counted. */
const NAMED = 3;

/** What the turns from `first` to before `end` do for their stage; empty where nothing is known. */
export function noteFor(block: Block, first: number, end: number): string {
  const { timeline, course, base } = block;
  const stage = timeline.stages.find((one) => one.first <= first && first < one.end);
  const before = course.stateAt(first);
  const after = course.stateAt(end);
  if (stage === undefined || before === undefined || after === undefined) return '';
  const goal = timeline.goals[stage.goal];
  const said: string[] = [];
  const found = caseBefore(before, base, goal);
  if (found !== undefined) said.push(found);
  const { into, out } = partChanges(goal, readWhere(before), readWhere(after));
  if (found === undefined && into.length > 0) said.push(`${sayParts(into, base)} home`);
  const guarded = timeline.outcomes.flatMap(({ guardedFrom }, index) =>
    guardedFrom !== undefined && guardedFrom <= first && index < stage.goal
      ? [timeline.judged[index]]
      : [],
  );
  const { lent, kept, back } = lending(block, guarded, first, end);
  // Sequences of the last layer take half the cube along; nobody counts what they lend.
  const quiet = TURNING.has(goal.name) || PLACING.has(goal.name);
  if (lent !== 0 && !quiet) said.push(`${sayPieces(lent, base)} lent and brought back`);
  if (kept !== 0) said.push(`${sayPieces(kept, base)} lent`);
  if (back !== 0) said.push(`${sayPieces(back, base)} brought back`);
  if (found === undefined && out.length > 0) said.push(`${sayParts(out, base)} taken out`);
  return said.join('; ');
}

interface Lending {
  /** Out in between, in place at both ends. */
  readonly lent: PieceSet;
  /** In place before, out after. */
  readonly kept: PieceSet;
  /** Out before, in place after. */
  readonly back: PieceSet;
}

function lending(block: Block, guarded: readonly Goal[], first: number, end: number): Lending {
  const missingAt = (place: number): PieceSet => {
    const state = block.course.stateAt(place);
    return state === undefined
      ? 0
      : guarded.reduce((set, goal) => set | goalMissing(goal, state), 0);
  };
  const before = missingAt(first);
  const after = missingAt(end);
  let between = 0;
  for (let place = first + 1; place < end; place++) between |= missingAt(place);
  return { lent: between & ~before & ~after, kept: after & ~before, back: before & ~after };
}

function sayPieces(set: PieceSet, base: number): string {
  const pieces = piecesIn(set);
  if (pieces.length > NAMED) return `${String(pieces.length)} pieces`;
  return listed(pieces.map((piece) => pieceName(piece, base)));
}

function sayParts(parts: readonly PieceSet[], base: number): string {
  if (parts.length > NAMED) return counted(parts.length, unitOf(parts));
  return listed(
    parts.map((part) => {
      const pieces = piecesIn(part);
      if (pieces.length === 1) return pieceTitle(pieces[0], base);
      const edge = pieces.find((piece) => !isCorner(piece)) ?? pieces[0];
      return pieces.length === 2
        ? `${pieceName(edge, base)} pair`
        : `${String(pieces.length)} pieces`;
    }),
  );
}

/** Goals of the last layer that ask for pieces turned right, and those that ask for places. */
export const TURNING = new Set(['top cross', 'top face', 'OLL', 'EOLL', 'OCLL']);
export const PLACING = new Set(['top corners', 'solved', 'PLL', 'CPLL']);

function caseBefore(state: State, base: number, goal: Goal): string | undefined {
  if (!TURNING.has(goal.name) && !PLACING.has(goal.name)) return undefined;
  const found = lastLayerCase(state, base);
  if (found === undefined) return undefined;
  const { orientation, permutation } = found;
  if (PLACING.has(goal.name)) {
    if (permutation === undefined || permutation.letter === '') return undefined;
    return `permutation case ${permutation.letter}`;
  }
  const { edges, corners } = orientation;
  if (edges !== 'cross' && goal.name !== 'OLL') return `from ${sayEdges(edges)}`;
  if (corners === 'right')
    return edges === 'cross' ? undefined : `from ${sayEdges(edges)}, corners right`;
  return edges === 'cross' ? `corners ${corners}` : `from ${sayEdges(edges)}, corners ${corners}`;
}

function sayEdges(edges: string): string {
  return edges === 'angle' ? 'an angle' : `a ${edges}`;
}
