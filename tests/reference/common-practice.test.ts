/**
 * What people do by heart, layer by layer. There is no source to cite: these are common practice,
 * all recomputed before, and here checked on every state they speak of.
 */
import { describe, expect, test } from 'vitest';
import { printDoes, describeEffect } from '../../engine/cube/effect.ts';
import { FIRST_CORNER, placedSet } from '../../engine/cube/piece.ts';
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import { faceIndex, type Face } from '../../engine/cube/vocabulary.ts';
import {
  HOME,
  RIGHT,
  colourOn,
  lastLayerStates,
  rotated,
  turnedVariants,
} from '../support/last-layer.ts';
import { after, turns } from '../support/turns.ts';

/** Slots and pieces by number, as in the engine. */
const [UF, UR, UB, UL] = [0, 1, 2, 3];
const [UFR, UFL, UBL, UBR, DFR, DFL] = [0, 1, 2, 3, 4, 5].map((corner) => corner + FIRST_CORNER);
const [FR, FL] = [8, 9];
const TOP_EDGES = [UF, UR, UB, UL];
const TOP_CORNERS = [UFR, UFL, UBL, UBR];
/** Everything below the top layer. */
const BELOW = 0b1111_0000_1111_1111_0000;
/** The base layer alone: the corners go in before the middle edges. */
const BASE_LAYER = 0b1111_0000_0000_1111_0000;

const WHITE = 0;
const ups = (state: State, slots: readonly number[]): number[] =>
  slots.filter((slot) => colourOn(state, slot, faceIndex('U')) === WHITE);
const belowHome = (state: State): boolean => (placedSet(state) & BELOW) === BELOW;
const isTopCross = (state: State): boolean =>
  ups(state, TOP_EDGES).length === 4 && belowHome(state);
const isTopFace = (state: State): boolean =>
  isTopCross(state) && ups(state, TOP_CORNERS).length === 4;
const sideShows = (state: State, slot: number, face: Face, colour: number): boolean =>
  colourOn(state, slot, faceIndex(face)) === colour;
const HOLDS = [0, 1, 2, 3];

describe('the top cross', () => {
  const states = lastLayerStates({ cornerPieces: HOME });
  const line = turns("F R U R' U' F'");
  const angle = turns("f R U R' U' f'");
  const upEdges = (state: State): string => ups(state, TOP_EDGES).join(' ');

  test("F R U R' U' F' makes it from a line held left to right", () => {
    const lines = states.filter((state) => upEdges(state) === `${UR} ${UL}`);
    expect(lines.length).toBeGreaterThan(0);
    for (const state of lines) expect(isTopCross(applyTurns(state, line))).toBe(true);
  });

  test("f R U R' U' f' makes it from an angle whose arms are at front and right", () => {
    const angles = states.filter((state) => upEdges(state) === `${UF} ${UR}`);
    expect(angles.length).toBeGreaterThan(0);
    for (const state of angles) expect(isTopCross(applyTurns(state, angle))).toBe(true);
  });

  test('from a dot, the first and then, held anew, the second', () => {
    const dots = states.filter((state) => upEdges(state) === '');
    expect(dots.length).toBeGreaterThan(0);
    for (const state of dots) {
      const between = applyTurns(state, line);
      const anew = HOLDS.map((quarters) => rotated(between, quarters)).filter(
        (held) => upEdges(held) === `${UF} ${UR}`,
      );
      expect(anew).toHaveLength(1);
      expect(isTopCross(applyTurns(anew[0], angle))).toBe(true);
    }
  });
});

describe("the top face by R U R' U R U2 R', at most three times", () => {
  const sequence = turns("R U R' U R U2 R'");

  /** Held as the rule says, or undefined if no way to hold it fits. */
  function heldByRule(state: State): State | undefined {
    return HOLDS.map((quarters) => rotated(state, quarters)).find((held) => {
      const right = ups(held, TOP_CORNERS);
      if (right.length === 1) return right[0] === UFL;
      return sideShows(held, UFL, right.length === 2 ? 'F' : 'L', WHITE);
    });
  }

  test('one corner right: it at front-left; two: a white sticker facing front there; none: facing left', () => {
    const states = lastLayerStates({ edgePieces: HOME, flips: RIGHT });
    let most = 0;
    for (const state of states) {
      let now: State | undefined = state;
      let times = 0;
      while (now !== undefined && !isTopFace(now) && times <= 3) {
        now = heldByRule(now);
        if (now !== undefined) now = applyTurns(now, sequence);
        times++;
      }
      expect(now !== undefined && isTopFace(now)).toBe(true);
      most = Math.max(most, times);
    }
    expect(most).toBe(3);
  });
});

describe("the top corners by R' F R' B2 R F' R' B2 R2", () => {
  const sequence = turns("R' F R' B2 R F' R' B2 R2");
  const states = lastLayerStates({ twists: RIGHT, flips: RIGHT });
  const headlights = (state: State): Face[] =>
    (
      [
        ['F', UFL, UFR],
        ['R', UFR, UBR],
        ['B', UBR, UBL],
        ['L', UBL, UFL],
      ] as const
    )
      .filter(([face, a, b]) => {
        const side = faceIndex(face);
        return colourOn(state, a, side) === colourOn(state, b, side);
      })
      .map(([face]) => face);

  test('it cycles three top corners and nothing else', () => {
    const effect = describeEffect(after("R' F R' B2 R F' R' B2 R2"));
    expect(effect).toMatchObject({ edges: [], flips: [], twists: [], centres: [] });
    expect(effect.corners).toHaveLength(1);
    expect(effect.corners[0].returns).toBe('right');
    expect(effect.corners[0].stickers.map((name) => name.charAt(0))).toEqual(['U', 'U', 'U']);
  });

  test('headlights at the back: the corners are arranged, up to a turn of the top', () => {
    const held = states.filter((state) => headlights(state).join('') === 'B');
    expect(held.length).toBeGreaterThan(0);
    for (const state of held) {
      expect(headlights(applyTurns(state, sequence))).toHaveLength(4);
      const arranged = turnedVariants(applyTurns(state, sequence), false).some((turned) =>
        TOP_CORNERS.every((corner) => (placedSet(turned) & (1 << corner)) !== 0),
      );
      expect(arranged).toBe(true);
    }
  });

  test('no headlights, which is a diagonal swap: then it makes them', () => {
    const diagonal = states.filter((state) => headlights(state).length === 0);
    expect(diagonal).toHaveLength(48);
    for (const state of diagonal) expect(headlights(applyTurns(state, sequence))).toHaveLength(1);
  });
});

describe("the top edges by F2 U L R' F2 L' R U F2, finished side at the back", () => {
  const clockwise = "F2 U L R' F2 L' R U F2";
  const counter = "F2 U' L R' F2 L' R U' F2";

  test("front goes to left to right to front; with U' for both U the other way round", () => {
    expect(printDoes(describeEffect(after(clockwise)))).toBe('(UF UL UR)');
    expect(printDoes(describeEffect(after(counter)))).toBe('(UF UR UL)');
  });

  test('if no side is finished, either makes one', () => {
    const states = lastLayerStates({ cornerPieces: HOME, twists: RIGHT, flips: RIGHT });
    const finished = (state: State): number =>
      TOP_EDGES.filter((edge) => (placedSet(state) & (1 << edge)) !== 0).length;
    const none = states.filter((state) => finished(state) === 0);
    expect(none).toHaveLength(3);
    for (const state of none) {
      for (const text of [clockwise, counter]) expect(finished(after(text, state))).toBe(1);
    }
  });
});

/** The solved cube with the pieces of two slots exchanged, the one in `slot` turned by `turned`. */
function exchanged(slot: number, home: number, turned: number): State {
  const corner = slot >= FIRST_CORNER;
  const size = corner ? 3 : 2;
  const codes = Uint8Array.from(corner ? SOLVED.corners : SOLVED.edges);
  const [a, b] = corner ? [slot - FIRST_CORNER, home - FIRST_CORNER] : [slot, home];
  codes[a] = b * size + turned;
  codes[b] = a * size + ((size - turned) % size);
  // A swap of the other kind, in the top layer, keeps the cube possible.
  const others = Uint8Array.from(corner ? SOLVED.edges : SOLVED.corners);
  [others[2], others[3]] = [others[3], others[2]];
  return corner
    ? { corners: codes, edges: others, holding: 0 }
    : { corners: others, edges: codes, holding: 0 };
}

const YELLOW = 5;
const GREEN = 2;

const baseHome = (state: State): boolean => (placedSet(state) & BASE_LAYER) === BASE_LAYER;

describe('a base corner above its slot, base down', () => {
  const sides = [
    { sequence: "U R U' R'", above: UFR, home: DFR, side: 'R' },
    { sequence: "U' L' U L", above: UFL, home: DFL, side: 'L' },
  ] as const;
  for (const { sequence, above, home, side } of sides) {
    const rest = BASE_LAYER & ~(1 << home);
    for (const [face, times] of [
      ['F', 1],
      ['U', 3],
      [side, 5],
    ] as const) {
      test(`${sequence} puts it in after ${times} if its base sticker faces ${face}`, () => {
        const start = [0, 1, 2]
          .map((turned) => exchanged(above, home, turned))
          .find((state) => sideShows(state, above, face, YELLOW));
        let state = start ?? SOLVED;
        expect(baseHome(state)).toBe(false);
        for (let done = 1; done <= times; done++) {
          state = after(sequence, state);
          expect(baseHome(state), `after ${done}`).toBe(done === times);
          // After an even number it is above its slot again, turned otherwise than before.
          if (done % 2 === 0) {
            expect(placedSet(state) & rest).toBe(rest);
            const seen = (['U', 'F', side] as const).find((f) =>
              sideShows(state, above, f, YELLOW),
            );
            expect(seen).not.toBe(face);
          }
        }
      });
    }

    test(`${sequence} six times does nothing`, () => {
      expect(describeEffect(after(sequence)).order).toBe(6);
    });
  }
});

describe('a middle edge at UF whose side sticker matches the front centre', () => {
  test.each([
    ["U R U' R' U' F' U F", FR],
    ["U' L' U L U F U' F'", FL],
  ])('%s puts it in and keeps the first layer and the other middle edges', (sequence, home) => {
    const start = [0, 1]
      .map((turned) => exchanged(UF, home, turned))
      .filter((state) => sideShows(state, UF, 'F', GREEN));
    expect(start).toHaveLength(1);
    expect(placedSet(start[0]) & BELOW).toBe(BELOW & ~(1 << home));
    expect(belowHome(after(sequence, start[0]))).toBe(true);
  });
});
