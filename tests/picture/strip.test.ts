/** The goal strip: where goals are reached, lent out, broken, and that a strip of any length is quick. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import type { Block } from '../../engine/document/analysis.ts';
import { stripColumns, stripScene, type StripSource } from '../../engine/picture/strip-scene.ts';
import { makeTracks, type TrackPart } from '../../engine/picture/tracks.ts';

const SCRAMBLE = "scramble: F' R2 U' L F U2 L2 R' F2 D F B2 U F' D' B2 F' U2 B2 L2\n";
const CROSS = "x2\ncross: L' D2 U2 L F' U B L' D' R D\n";
const RIGHT = `${SCRAMBLE}${CROSS}corners: R U' R' L' U L y R U' R' y R U' R'\n`;
const SLIPPED = `${SCRAMBLE}${CROSS}corners: R U' R' L' U L y R U' R y R U' R'\nmiddle: U' R U' R' U' F' U F\n`;

function blockOf(text: string): Block {
  return analyse(text).blocks[0];
}

function partsOf(block: Block, goal: string): readonly TrackPart[] {
  const track = makeTracks(block.timeline).find((candidate) => candidate.goal === goal);
  if (track === undefined) throw new Error(`no track of ${goal}`);
  return track.parts;
}

function sourceOf(block: Block): StripSource {
  const { timeline, course } = block;
  return {
    length: course.length,
    tracks: makeTracks(timeline),
    stages: timeline.stages.map(({ goal, first, end }) => ({
      name: timeline.goals[goal].name,
      first,
      end,
    })),
    turnAt: (index) => ({ text: block.textOf(index), number: block.numberOf(index) }),
  };
}

describe('tracks', () => {
  it('agree with the timeline at every place: kept or early where the goal holds, nothing of the kind elsewhere', () => {
    for (const text of [RIGHT, SLIPPED]) {
      const { timeline, course } = blockOf(text);
      makeTracks(timeline).forEach((track, goal) => {
        for (let place = 0; place <= course.length; place++) {
          const covering = track.parts.filter((part) => part.first <= place && place < part.end);
          expect(covering.length).toBeLessThanOrEqual(1);
          const stretch = covering[0]?.stretch;
          const holds = timeline.held[goal][place] === 1;
          expect(stretch === 'kept' || stretch === 'early', `${track.goal} at ${place}`).toBe(
            holds,
          );
        }
      });
    }
  });

  it("R U' R' takes the cross out for two turns and back with the third: passing, then kept", () => {
    const parts = partsOf(blockOf(RIGHT), 'cross');
    const [reached, lent, back] = parts;
    expect(reached).toEqual({ stretch: 'kept', first: 12, end: 13 });
    expect(lent).toEqual({ stretch: 'passing', first: 13, end: 15 });
    expect(back.stretch).toBe('kept');
  });

  it("R U' R, its last prime missing, breaks the cross for good at its first R", () => {
    const block = blockOf(SLIPPED);
    const last = partsOf(block, 'cross').at(-1);
    expect(last).toEqual({ stretch: 'lasting', first: 20, end: block.course.length + 1 });
  });

  it('a goal of a solved cube that nobody has come to yet is early, never broken', () => {
    const block = blockOf("scramble: U\nR R'\n");
    const stretches = makeTracks(block.timeline).flatMap((track) =>
      track.parts.map((part) => part.stretch),
    );
    expect(new Set(stretches)).toEqual(new Set(['early']));
  });
});

describe('the strip', () => {
  it('has one cell for every place, in reading order, and the place of the cursor marked', () => {
    const block = blockOf(SLIPPED);
    const scene = stripScene(sourceOf(block), { width: 300, place: 20 });
    const cells = scene.shapes.filter((shape) => shape.className.startsWith('place'));
    expect(cells.map((cell) => cell.place)).toEqual(
      Array.from({ length: block.course.length + 1 }, (_, at) => at),
    );
    expect(
      cells.filter((cell) => cell.className.includes('current')).map((cell) => cell.place),
    ).toEqual([20]);
  });

  it('never leaves its width, whatever that is', () => {
    const source = sourceOf(blockOf(SLIPPED));
    for (const width of [120, 285, 460, 900]) {
      const scene = stripScene(source, { width, place: 3 });
      expect(stripColumns(width)).toBeGreaterThanOrEqual(4);
      for (const { kind, points } of scene.shapes) {
        if (kind === 'text') continue;
        points.forEach((value, index) => {
          if (index % 2 === 0) expect(value).toBeLessThanOrEqual(scene.width);
        });
      }
    }
  });

  it('tears the band of the cross at the turn that broke it, and only there', () => {
    const scene = stripScene(sourceOf(blockOf(SLIPPED)), { width: 2000, place: 0 });
    const tears = scene.shapes.filter((shape) => shape.className === 'tear lasting');
    const cell = scene.shapes.find((shape) => shape.place === 20);
    expect(tears.map((tear) => tear.title)).toContain('cross: broken, never restored');
    expect(Math.abs(tears[0].points[0] - (cell!.points[0] + cell!.points[2]) / 2)).toBeLessThan(2);
  });

  it('says in words what it shows', () => {
    const { label } = stripScene(sourceOf(blockOf(SLIPPED)), { width: 300, place: 0 });
    expect(label).toMatch(/cross: kept from D, turn 11.*broken, never restored from R, turn 18/);
  });

  it('of 100,000 turns draws a window around the cursor', () => {
    const block = blockOf("(R U R' U')25000\n");
    expect(block.course.length).toBe(100_000);
    const scene = stripScene(sourceOf(block), { width: 300, place: 50_000 });
    expect(scene.shapes.length).toBeLessThan(5000);
    expect(scene.first).toBeLessThan(50_000);
    expect(scene.end).toBeGreaterThan(50_000);
  });
});
