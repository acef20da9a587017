/**
 * The goal strip before it is drawn: for each goal its stretches (early, kept, broken …) over the
 * places of a block, and what happens to it at which turn. Small whatever the length of the block.
 */
import type { Break, Timeline } from '../goals/timeline-types.ts';

export const STRETCHES = [
  'early',
  'kept',
  'passing',
  'carried',
  'lasting',
  'open',
  'unknown',
] as const;
export type Stretch = (typeof STRETCHES)[number];

export interface TrackPart {
  readonly stretch: Stretch;
  /** Places from the first to before `end`. */
  readonly first: number;
  readonly end: number;
}

export interface Track {
  readonly goal: string;
  /** In order, not touching where the goal neither holds nor is guarded. */
  readonly parts: readonly TrackPart[];
}

export function makeTracks(timeline: Timeline): Track[] {
  const opened = new Map<number, Break[]>();
  for (const found of timeline.breaks) {
    if (!found.part) opened.set(found.turn, [...(opened.get(found.turn) ?? []), found]);
  }
  return timeline.goals.map((goal, index) => ({
    goal: goal.name,
    parts: partsOf(timeline, index, opened),
  }));
}

function partsOf(
  timeline: Timeline,
  goal: number,
  opened: ReadonlyMap<number, readonly Break[]>,
): TrackPart[] {
  const held = timeline.held[goal];
  const guardedFrom = timeline.outcomes[goal]?.guardedFrom ?? Infinity;
  const reachedFrom = reachedBefore(timeline, goal, guardedFrom);
  const parts: { stretch: Stretch; first: number; end: number }[] = [];
  let broken: Stretch = 'passing';
  for (let place = 0; place < held.length; place++) {
    let stretch: Stretch;
    if (held[place] === 2) stretch = 'unknown';
    else if (held[place] === 1) stretch = place >= reachedFrom ? 'kept' : 'early';
    else if (place < guardedFrom) continue;
    else {
      if (place === 0 || held[place - 1] !== 0)
        broken = breakBy(opened.get(place - 1), goal) ?? broken;
      stretch = broken;
    }
    const last = parts.at(-1);
    if (last?.end === place && last.stretch === stretch) last.end++;
    else parts.push({ stretch, first: place, end: place + 1 });
  }
  return parts;
}

/** The place from which a goal that will be guarded holds for good within its own stage; it is then reached, not early. */
function reachedBefore(timeline: Timeline, goal: number, guardedFrom: number): number {
  if (guardedFrom === Infinity) return Infinity;
  const stage = timeline.stages.find(
    (candidate) => candidate.goal === goal && candidate.end === guardedFrom,
  );
  let place = guardedFrom;
  while (stage !== undefined && place > stage.first + 1 && timeline.held[goal][place - 1] === 1)
    place--;
  return place;
}

/** How the goal fares after the turn: as its own break says, or that of a more basic goal broken with it. */
function breakBy(breaks: readonly Break[] | undefined, goal: number): Stretch | undefined {
  return breaks?.findLast((found) => found.goal <= goal)?.kind;
}
