/** The picture of a state: every sticker where the cube has it, told apart by shape, small when printed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FACELETS, colourFacelets, faceletIndex } from '../../engine/cube/facelets.ts';
import { whereIs, pieceOf } from '../../engine/cube/piece.ts';
import { SOLVED, applyTurns } from '../../engine/cube/state.ts';
import { TURNS, makeTurn } from '../../engine/cube/turn.ts';
import { COLOURS, FACES, colourIndex } from '../../engine/cube/vocabulary.ts';
import { cubeHeight, cubeScene, describeState } from '../../engine/picture/cube-scene.ts';
import type { Shape } from '../../engine/picture/scene.ts';
import { printSvg } from '../../engine/picture/svg.ts';

const turns = fc.array(fc.integer({ min: 0, max: TURNS - 1 }), { maxLength: 40 });

function stickers(shapes: readonly Shape[]): Shape[] {
  return shapes.filter((shape) => shape.className.startsWith('sticker'));
}

describe('the picture of a state', () => {
  it('shows each of the 54 stickers once, in the colour the cube has there', () => {
    fc.assert(
      fc.property(turns, (sequence) => {
        const state = applyTurns(SOLVED, sequence);
        const colours = colourFacelets(state);
        const drawn = stickers(cubeScene(state).shapes);
        expect(drawn).toHaveLength(FACELETS);
        for (const shape of drawn) {
          expect(shape.className.split(' ')).toContain(COLOURS[colours[shape.facelet!]]);
        }
        expect(new Set(drawn.map((shape) => shape.facelet)).size).toBe(FACELETS);
      }),
    );
  });

  it('after R from the solved cube the right column of the front is yellow, of the top green', () => {
    const drawn = stickers(cubeScene(applyTurns(SOLVED, [makeTurn('R', 1)])).shapes);
    const colour = (face: string, cell: number): string =>
      drawn.find((shape) => shape.facelet === FACES.indexOf(face as 'U') * 9 + cell)!.className;
    for (const cell of [2, 5, 8]) {
      expect(colour('F', cell)).toContain('yellow');
      expect(colour('U', cell)).toContain('green');
    }
    expect(colour('F', 0)).toContain('green');
  });

  it('lets no two stickers overlap, opened doors included', () => {
    const outlines = stickers(cubeScene(SOLVED, { width: 1000 }).shapes);
    for (const own of outlines) {
      const [x, y] = middle(own.points);
      const covering = outlines.filter((other) => inside(other.points, x, y));
      expect(covering.map((shape) => shape.facelet)).toEqual([own.facelet]);
    }
  });

  it('stays within its frame', () => {
    const scene = cubeScene(SOLVED, { width: 300 });
    expect(scene.height).toBeCloseTo(cubeHeight(300));
    for (const { points } of scene.shapes) {
      points.forEach((value, index) => {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(index % 2 === 0 ? scene.width : scene.height);
      });
    }
  });

  it('gives centres, edges and corners shapes of their own', () => {
    const drawn = stickers(cubeScene(SOLVED).shapes);
    const corners = (facelet: number): number =>
      drawn.find((shape) => shape.facelet === facelet)!.points.length;
    const front = FACES.indexOf('F') * 9;
    expect(new Set([corners(front), corners(front + 1), corners(front + 4)]).size).toBe(3);
  });

  it('marks the stickers of a piece wherever it is', () => {
    fc.assert(
      fc.property(turns, (sequence) => {
        const state = applyTurns(SOLVED, sequence);
        const corner = pieceOf(['white', 'green', 'red'].map(colourIndex))!;
        const scene = cubeScene(state, { marked: 1 << corner });
        const marks = scene.shapes.filter((shape) => shape.className === 'mark');
        expect(marks).toHaveLength(3);
        const marked = stickers(scene.shapes).filter((shape) =>
          marks.some((mark) => mark.points.join() === shape.points.join()),
        );
        const colours = marked.map((shape) =>
          COLOURS.find((name) => shape.className.includes(name)),
        );
        expect(colours.sort()).toEqual(['green', 'red', 'white']);
      }),
    );
  });

  it('of a solved piece, marks the three stickers of its own slot', () => {
    const corner = pieceOf(['white', 'green', 'red'].map(colourIndex))!;
    expect(whereIs(SOLVED, corner).slot).toBe(corner);
    const scene = cubeScene(SOLVED, { marked: 1 << corner });
    const wanted = ['U', 'F', 'R'].map((face) => faceletIndex(corner, FACES.indexOf(face as 'U')));
    const marks = scene.shapes
      .filter((shape) => shape.className === 'mark')
      .map((shape) => shape.points.join());
    const found = stickers(scene.shapes).filter((shape) => marks.includes(shape.points.join()));
    expect(found.map((shape) => shape.facelet).sort()).toEqual(wanted.sort());
  });

  it('shows one arrow for R, two for Rw, one for M, three for x', () => {
    const arrows = (family: 'R' | 'Rw' | 'M' | 'x'): number =>
      cubeScene(SOLVED, { arrow: makeTurn(family, 1) }).shapes.filter(
        (shape) => shape.className === 'arrow',
      ).length;
    expect([arrows('R'), arrows('Rw'), arrows('M'), arrows('x')]).toEqual([1, 2, 1, 3]);
  });

  it('points the arrow of R upwards on the front and that of U to the left', () => {
    const tip = (family: 'R' | 'U', amount: number): number[] => {
      const [arrow] = cubeScene(SOLVED, { arrow: makeTurn(family, amount) }).shapes.filter(
        (shape) => shape.className === 'arrow',
      );
      const [x, y] = arrow.points;
      const [tailX, tailY] = middle(arrow.points);
      return [x - tailX, y - tailY];
    };
    expect(tip('R', 1)[1]).toBeLessThan(0);
    expect(tip('R', 3)[1]).toBeGreaterThan(0);
    expect(tip('U', 1)[0]).toBeLessThan(0);
    expect(tip('U', 3)[0]).toBeGreaterThan(0);
  });

  it('says in words how the cube is held and what each face shows', () => {
    const words = describeState(applyTurns(SOLVED, [makeTurn('R', 1)]));
    expect(words).toContain('white up, green in front, yellow down');
    expect(words).toContain('F: green green yellow, green green yellow, green green yellow');
    expect(words).toContain('R: all red');
  });
});

describe('a picture printed as SVG', () => {
  it('for a hover takes less than 8 kB, letters and marks included', () => {
    fc.assert(
      fc.property(turns, (sequence) => {
        const state = applyTurns(SOLVED, sequence);
        const scene = cubeScene(state, { width: 220, bends: 1, letters: true, marked: 0b1111 });
        expect(printSvg({ ...scene, label: 'The cube' }).length).toBeLessThan(8000);
      }),
    );
  });

  it('keeps every word of a label harmless', () => {
    const scene = cubeScene(SOLVED, { bends: 1 });
    const svg = printSvg({ ...scene, label: '<script>"&' });
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&#60;script>'.replace('>', '&#62;'));
  });
});

function middle(points: readonly number[]): [number, number] {
  const half = points.length / 2;
  let [x, y] = [0, 0];
  for (let i = 0; i < points.length; i += 2)
    [x, y] = [x + points[i] / half, y + points[i + 1] / half];
  return [x, y];
}

/** Even–odd rule. */
function inside(points: readonly number[], x: number, y: number): boolean {
  let result = false;
  for (let i = 0, j = points.length - 2; i < points.length; j = i, i += 2) {
    const [ax, ay, bx, by] = [points[i], points[i + 1], points[j], points[j + 1]];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) result = !result;
  }
  return result;
}
