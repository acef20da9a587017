/**
 * The goal strip: turns as a line of letters, broken into systems like a score, and under them one
 * stave per goal: pale while it holds early, a firm band while it is kept, a torn band where it is
 * broken. Only goals with something to show in a system take room in it.
 *
 * A window of systems around the cursor is drawn, so that a block of any length stays quick.
 */
import type { Scene, Shape } from './scene.ts';
import type { Stretch, Track, TrackPart } from './tracks.ts';

export interface StripTurn {
  readonly text: string;
  /** The turn as it is counted aloud; rotations have none. */
  readonly number: number | undefined;
}

export interface StripSource {
  readonly length: number;
  readonly tracks: readonly Track[];
  /** Stages with turns of their own: name and turns `first` to before `end`. */
  readonly stages: readonly {
    readonly name: string;
    readonly first: number;
    readonly end: number;
  }[];
  turnAt(index: number): StripTurn;
}

export interface StripOptions {
  /** Width to fill, in pixels. */
  readonly width: number;
  readonly place: number;
  /** Most systems drawn; 40 by default. */
  readonly systems?: number;
}

export interface StripScene extends Scene {
  /** Places drawn: the first, and the one before which it ends. */
  readonly first: number;
  readonly end: number;
}

const COLUMN = 25;
const STAGE_ROW = 17;
const TURN_ROW = 23;
const STAVE = 15;
const BETWEEN = 12;

/** Places per system of a strip of this width. */
export function stripColumns(width: number): number {
  return Math.max(4, Math.floor((width - 2) / COLUMN));
}

/** The strip as a scene; each shape with a `place` stands for that place of the course. */
export function stripScene(source: StripSource, options: StripOptions): StripScene {
  const columns = stripColumns(options.width);
  const wanted = options.systems ?? 40;
  const systems = Math.ceil((source.length + 1) / columns);
  const current = Math.floor(options.place / columns);
  const firstSystem = Math.max(0, Math.min(current - Math.floor(wanted / 2), systems - wanted));
  const lastSystem = Math.min(systems, firstSystem + wanted);
  const shapes: Shape[] = [];
  let top = 0;
  for (let system = firstSystem; system < lastSystem; system++) {
    top = drawSystem(source, options.place, system * columns, columns, top, shapes);
  }
  return {
    width: columns * COLUMN + 2,
    height: Math.max(1, top - BETWEEN + 2),
    shapes,
    label: describeTracks(source),
    first: firstSystem * columns,
    end: Math.min(lastSystem * columns, source.length + 1),
  };
}

/** Draws one system with the places from `first`; returns where the next one begins. */
function drawSystem(
  source: StripSource,
  place: number,
  first: number,
  columns: number,
  top: number,
  shapes: Shape[],
): number {
  const end = Math.min(first + columns, source.length + 1);
  const left = (at: number): number => 1 + (at - first) * COLUMN;
  const staves = source.tracks
    .map((track) => ({
      track,
      parts: track.parts.filter((part) => part.first < end && part.end > first),
    }))
    .filter(({ parts }) => parts.length > 0);
  const bottom = top + STAGE_ROW + TURN_ROW + staves.length * STAVE;
  if (place >= first && place < end) {
    shapes.push(area('cursor', left(place), top + STAGE_ROW, COLUMN, bottom - top - STAGE_ROW));
  }
  drawStages(source, first, end, top, left, shapes);
  for (let at = first; at < end; at++)
    drawPlace(source, at, place, left(at), top + STAGE_ROW, shapes);
  staves.forEach(({ track, parts }, row) => {
    const y = top + STAGE_ROW + TURN_ROW + row * STAVE;
    const frame = { first, end, left };
    const named = parts.findIndex(
      (part) => holds(part) && track.goal.length <= lettersIn(widthOf(part, frame)),
    );
    parts.forEach((part, index) => drawPart(part, track, y, frame, index === named, shapes));
  });
  return bottom + BETWEEN;
}

function drawStages(
  source: StripSource,
  first: number,
  end: number,
  top: number,
  left: (at: number) => number,
  shapes: Shape[],
): void {
  for (const stage of source.stages) {
    // Turn i leads to place i + 1, in whose column it stands.
    const from = Math.max(stage.first + 1, first);
    const to = Math.min(stage.end + 1, end);
    if (to <= from) continue;
    shapes.push({
      kind: 'line',
      className: 'stage',
      points: [
        left(from) + 2,
        top + STAGE_ROW,
        left(from) + 2,
        top + STAGE_ROW - 3,
        left(to) - 3,
        top + STAGE_ROW - 3,
      ],
    });
    const text = fitting(stage.name, (to - from) * COLUMN);
    if (text !== '')
      shapes.push({
        kind: 'text',
        className: 'stage-name',
        points: [left(from) + 2, top + 8],
        text,
      });
  }
}

function drawPlace(
  source: StripSource,
  at: number,
  place: number,
  x: number,
  top: number,
  shapes: Shape[],
): void {
  const turn = at === 0 ? undefined : source.turnAt(at - 1);
  const current = at === place ? ' current' : '';
  const rotation = turn !== undefined && turn.number === undefined ? ' rotation' : '';
  const title =
    turn === undefined
      ? 'before the first turn'
      : `${turn.text}${turn.number === undefined ? '' : `, turn ${String(turn.number)}`}`;
  shapes.push({
    ...area(`place${current}`, x + 1.5, top + 1.5, COLUMN - 3, TURN_ROW - 4),
    place: at,
    title,
  });
  const text = turn === undefined ? '○' : turn.text;
  const long = text.length > 3 ? ' long' : '';
  shapes.push({
    kind: 'text',
    className: `turn${current}${rotation}${long}`,
    points: [x + COLUMN / 2, top + TURN_ROW / 2],
    text: text.length > 5 ? `${text.slice(0, 4)}…` : text,
    place: at,
    title,
  });
}

interface SystemFrame {
  readonly first: number;
  readonly end: number;
  readonly left: (at: number) => number;
}

function widthOf(part: TrackPart, { first, end, left }: SystemFrame): number {
  return left(Math.min(part.end, end)) - left(Math.max(part.first, first));
}

function holds({ stretch }: TrackPart): boolean {
  return stretch === 'kept' || stretch === 'early';
}

const SAYING: Readonly<Record<Stretch, string>> = {
  early: 'holds early',
  kept: 'kept',
  passing: 'broken for a while, within the stage',
  carried: 'broken, restored in a later stage',
  lasting: 'broken, never restored',
  open: 'open, its last stage is not done yet',
  unknown: 'unknown here',
};

function drawPart(
  part: TrackPart,
  track: Track,
  top: number,
  frame: SystemFrame,
  named: boolean,
  shapes: Shape[],
): void {
  const from = frame.left(Math.max(part.first, frame.first));
  const to = frame.left(Math.min(part.end, frame.end));
  const y = top + 2;
  const height = STAVE - 4;
  const title = `${track.goal}: ${SAYING[part.stretch]}`;
  const className = `band ${part.stretch}`;
  if (holds(part)) {
    shapes.push({ ...area(className, from + 1, y, to - from - 2, height), title });
    if (named) {
      shapes.push({
        kind: 'text',
        className: `goal-name ${part.stretch}`,
        points: [from + 5, y + height / 2],
        text: track.goal,
      });
    }
    if (part.stretch === 'kept' && part.first >= frame.first) {
      const x = from + 1;
      shapes.push({ kind: 'line', className: 'reached', points: [x, y - 1, x, y + height + 1] });
    }
    return;
  }
  if (part.stretch === 'unknown') {
    shapes.push({
      kind: 'line',
      className,
      points: [from + 2, y + height / 2, to - 2, y + height / 2],
      title,
    });
    return;
  }
  shapes.push({
    kind: 'line',
    className,
    points: tear(from, to, y + height / 2, height / 2 - 1),
    title,
  });
  if (part.first >= frame.first) {
    shapes.push({
      kind: 'text',
      className: `tear ${part.stretch}`,
      points: [from + COLUMN / 2, y + height / 2],
      text: '✕',
      title,
    });
  }
}

/** A torn edge: a zigzag along the middle of a stave. */
function tear(from: number, to: number, middle: number, height: number): number[] {
  const step = COLUMN / 4;
  const points: number[] = [];
  for (let i = 0; from + i * step <= to - 1; i++)
    points.push(from + i * step, middle + (i % 2 === 0 ? -height : height));
  return points;
}

function area(className: string, x: number, y: number, width: number, height: number): Shape {
  return {
    kind: 'area',
    className,
    points: [x, y, x + width, y, x + width, y + height, x, y + height],
  };
}

/** Letters of the small type that so many pixels hold. */
function lettersIn(width: number): number {
  return Math.floor((width - 6) / 5.6);
}

/** The words if they fit into so many pixels, a shortened form, or nothing. */
function fitting(text: string, width: number): string {
  const letters = lettersIn(width);
  if (text.length <= letters) return text;
  return letters >= 3 ? `${text.slice(0, letters - 1)}…` : '';
}

/** `cross: reached at turn 5, broken at turn 21 and never restored; …` */
function describeTracks(source: StripSource): string {
  const sentences = source.tracks
    .filter((track) => track.parts.length > 0)
    .map((track) => {
      const events = track.parts.map(
        (part) => `${SAYING[part.stretch]} ${after(source, part.first)}`,
      );
      const shown =
        events.length > 12
          ? [...events.slice(0, 12), `and ${String(events.length - 12)} more`]
          : events;
      return `${track.goal}: ${shown.join(', ')}`;
    });
  return `Goals over ${String(source.length)} turns. ${sentences.join('; ')}`;
}

function after(source: StripSource, place: number): string {
  if (place === 0) return 'from the start';
  const { text, number } = source.turnAt(place - 1);
  return number === undefined ? `from ${text}` : `from ${text}, turn ${String(number)}`;
}
