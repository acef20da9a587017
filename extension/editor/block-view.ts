/** Blocks of the analysis as the views get them: compact, plain, complete. */
import type { Analysis, Block } from '../../engine/document/analysis.ts';
import type { Finding } from '../../engine/document/finding.ts';
import type { Position, Range } from '../../engine/cube/place.ts';
import { setOf } from '../../engine/cube/piece.ts';
import type { State } from '../../engine/cube/state.ts';
import { isRotation } from '../../engine/cube/turn.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { JUMP } from '../../engine/goals/course.ts';
import { makeTracks } from '../../engine/picture/tracks.ts';
import type { BlockView, PlaceView } from '../../webview/messages.ts';

export function makeBlockView(block: Block): BlockView {
  const { course, timeline } = block;
  const turns = Array.from({ length: course.length }, (_, turn) => turn);
  return {
    kind: block.kind,
    title: block.title,
    method: block.method,
    base: COLOURS[block.base] ?? '',
    startFrom: block.startFrom,
    solved: block.solved,
    turns: block.counts.obtm,
    texts: turns.map((turn) => block.textOf(turn)),
    numbers: turns.map((turn) => numberShown(block, turn)),
    stages: timeline.stages
      .filter((stage) => stage.end > stage.first)
      .map(({ goal, first, end }) => ({ name: timeline.goals[goal].name, first, end })),
    tracks: makeTracks(timeline).map(({ goal, parts }) => ({ goal, parts: [...parts] })),
  };
}

/** 0 for a rotation, which nobody counts. */
function numberShown(block: Block, turn: number): number {
  const code = block.course.codes[turn];
  return code !== JUMP && isRotation(code) ? 0 : block.numberOf(turn);
}

export function makePlaceView(analysis: Analysis, block: Block, place: number): PlaceView {
  const { course } = block;
  const state = course.stateAt(place);
  const next = place < course.length ? course.codes[place] : JUMP;
  const turn = place - 1;
  return {
    place,
    state: state === undefined ? null : plainState(state),
    next: next === JUMP ? null : next,
    goals: goalsAt(block, place),
    marked: setOf(
      block.timeline.breaks
        .filter((found) => found.turn === turn && found.kind !== 'passing')
        .flatMap((found) => found.pieces),
    ),
    findings: turn < 0 ? [] : findingsAt(analysis, block.rangeOf(turn)),
    comment: (turn < 0 ? undefined : block.commentOn(turn)) ?? '',
  };
}

/** A state as messages and workers can carry it. */
export function plainState(state: State): { corners: number[]; edges: number[]; holding: number } {
  return {
    corners: Array.from(state.corners),
    edges: Array.from(state.edges),
    holding: state.holding,
  };
}

export function goalsAt(block: Block, place: number): { goal: string; holds: boolean | null }[] {
  const { goals, held } = block.timeline;
  return goals.map(({ name }, index) => {
    const holds = held[index][place];
    return { goal: name, holds: holds === 2 ? null : holds === 1 };
  });
}

/** Findings that point at this very turn. */
function findingsAt(analysis: Analysis, range: Range): PlaceView['findings'] {
  return analysis.findings.flatMap((finding: Finding) =>
    finding.severity !== 'off' && within(finding.range, range)
      ? [{ severity: finding.severity, message: finding.message }]
      : [],
  );
}

function within(inner: Range, outer: Range): boolean {
  return compare(outer.start, inner.start) <= 0 && compare(inner.end, outer.end) <= 0;
}

function compare(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}

/** `after R', turn 21 of 60`, as people say it. */
export function placeWords(block: Block, place: number): string {
  if (block.course.length === 0) return 'no turns yet';
  if (place === 0) return 'before the first turn';
  const turn = place - 1;
  const number = numberShown(block, turn);
  return number === 0
    ? `after ${block.textOf(turn)}`
    : `after ${block.textOf(turn)}, turn ${number}`;
}
