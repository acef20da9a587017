/**
 * Every break, kind, restoration and misplaced piece of solves of some 60 turns, confirmed by an
 * implementation on stickers that shares no code with the engine and replays from the start.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { colourIndex } from '../../engine/cube/vocabulary.ts';
import { piecesIn, pieceName } from '../../engine/cube/piece.ts';
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import {
  invertTurn,
  isRotation,
  makeTurn,
  printTurn,
  TURNS,
  type Turn,
} from '../../engine/cube/turn.ts';
import { JUMP, makeCourse, type Jump } from '../../engine/goals/course.ts';
import { findMethod, goalsFor } from '../../engine/goals/methods.ts';
import { followGoals } from '../../engine/goals/timeline.ts';
import { cfopOf, cornersLastOf, layersOf, rouxOf, type NaiveGoal } from '../naive/goals.ts';
import { replay, SOLVED_CUBE } from '../naive/stickers.ts';
import { naiveTimeline, Tie, type NaiveTurn } from '../naive/timeline.ts';

const turnOf = (text: string): Turn => {
  const turn = Array.from({ length: TURNS }, (_, code) => code).find(
    (code) => printTurn(code) === text,
  );
  if (turn === undefined) throw new Error(`no turn ${text}`);
  return turn;
};
const turnsOf = (text: string): Turn[] => text.split(' ').map(turnOf);
const inverse = (turns: readonly Turn[]): Turn[] => turns.toReversed().map(invertTurn);

/** What people do: inserts, triggers, last-layer sequences, excursions that come back. */
const KNOWN = [
  "R U R' U'",
  "R U R'",
  "L' U' L",
  "R U R' U' F' U' F U",
  "F' U2 F",
  "U R U' R' U' F' U F",
  "F R U R' U' F'",
  "R U R' U R U2 R'",
  "R' F R' B2 R F' R' B2 R2",
  "F2 U L R' F2 L' R U F2",
  "M' U2 M",
  "Rw U Rw'",
].map(turnsOf);
const EDGE_PLAY = ["F D F'", "D F2 D'", "R D' R'", 'F2', "F D'", 'D', 'D2'].map(turnsOf);

const anyTurn = fc.integer({ min: 0, max: TURNS - 1 });
const layerTurn = anyTurn.filter((turn) => !isRotation(turn));
const rotation = fc.constantFrom(...turnsOf("y y2 y' y y' x z2"));

/** A stretch of turns; most of them leave most of the cube alone. */
const stretch: fc.Arbitrary<Turn[]> = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(...KNOWN) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...KNOWN), layerTurn)
      .map(([a, b]) => [...a, b, ...inverse(a)]),
  },
  { weight: 2, arbitrary: fc.integer({ min: 1, max: 3 }).map((amount) => [makeTurn('U', amount)]) },
  { weight: 1, arbitrary: fc.constantFrom(...EDGE_PLAY) },
  { weight: 1, arbitrary: rotation.map((turn) => [turn]) },
);

interface Written {
  /** How each stretch ends: a step's end, a stage's end, or nothing. */
  readonly stretches: readonly {
    readonly turns: readonly Turn[];
    readonly ends: 'step' | 'stage' | 'none';
  }[];
  /** An excursion that leads out at one place and back at another, perhaps in a later stage. */
  readonly excursion:
    | {
        readonly turns: readonly Turn[];
        readonly out: number;
        readonly back: number;
        readonly acrossStages: boolean;
      }
    | undefined;
  /** At which turn (in hundredths of the solve, or at the end of the first stage) the cube is solved but for a last layer done wrong. */
  readonly solvedAt: number | 'first stage';
  readonly lastLayer: readonly Turn[];
  readonly gap: { readonly at: number; readonly after: readonly Turn[] | undefined } | undefined;
  readonly method: string;
  readonly skipped: readonly boolean[];
  readonly trailing: boolean;
}

const written: fc.Arbitrary<Written> = fc.record({
  stretches: fc.array(
    fc.record({
      turns: stretch,
      ends: fc.constantFrom<'step' | 'stage' | 'none'>('step', 'step', 'step', 'stage', 'none'),
    }),
    { minLength: 6, maxLength: 16 },
  ),
  excursion: fc.option(
    fc.record({
      turns: fc.oneof(
        fc.constantFrom(...KNOWN),
        fc.constantFrom(...EDGE_PLAY),
        fc.array(layerTurn, { minLength: 1, maxLength: 2 }),
      ),
      out: fc.integer({ min: 0, max: 15 }),
      back: fc.integer({ min: 0, max: 15 }),
      acrossStages: fc.boolean(),
    }),
    { freq: 4, nil: undefined },
  ),
  solvedAt: fc.oneof(
    fc.constant(0),
    fc.constant('first stage' as const),
    fc.integer({ min: 0, max: 100 }),
  ),
  lastLayer: fc.constantFrom([], [], ...KNOWN),
  gap: fc.option(
    fc.record({
      at: fc.integer({ min: 10, max: 50 }),
      after: fc.option(fc.constantFrom([], ...KNOWN, ...EDGE_PLAY, ...EDGE_PLAY), {
        nil: undefined,
        freq: 8,
      }),
    }),
    { freq: 2, nil: undefined },
  ),
  method: fc.constantFrom('layers', 'layers', 'CFOP', 'layers, corners last', 'Roux'),
  skipped: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
  trailing: fc.boolean(),
});

const naiveMethods: Record<string, () => NaiveGoal[]> = {
  layers: () => layersOf('yellow'),
  CFOP: () => cfopOf('yellow'),
  'layers, corners last': () => cornersLastOf('yellow'),
  Roux: () => rouxOf('yellow', 'orange'),
};

const nameOfPieces = (pieces: readonly number[]): string =>
  pieces
    .map((piece) => pieceName(piece).split('-').sort().join('-'))
    .sort()
    .join(' ');

function build(input: Written) {
  const chunks = input.stretches.map(({ turns, ends }) => ({ turns: [...turns], ends }));
  if (input.excursion) {
    const { turns, out, back } = input.excursion;
    const [a, b] = [out, back].map((at) => at % chunks.length).sort((x, y) => x - y);
    chunks[a].turns.push(...turns);
    chunks[b].turns.push(...inverse(turns));
    if (input.excursion.acrossStages) chunks[a].ends = 'stage';
  }
  let codes = chunks.flatMap(({ turns }) => turns);
  const firstStage = chunks.slice(0, chunks.findIndex(({ ends }) => ends === 'stage') + 1);
  const solvedAt =
    input.solvedAt === 'first stage'
      ? firstStage.flatMap(({ turns }) => turns).length
      : Math.round((codes.length * input.solvedAt) / 100);
  const setup = [...input.lastLayer, ...inverse(codes.slice(0, solvedAt))];

  const goals = goalsFor(
    findMethod(input.method) ?? fail(),
    colourIndex('yellow'),
    colourIndex('green'),
  );
  const stages: { goal: number; first: number; end: number; stepEnds: number[]; opens: [] }[] = [];
  let goal = 0;
  let first = 0;
  let place = 0;
  let stepEnds: number[] = [];
  const close = (): void => {
    while (input.skipped[goal] && goal < goals.length - 1) goal++;
    if (goal >= goals.length) return;
    stages.push({ goal, first, end: place, stepEnds, opens: [] });
    goal++;
    first = place;
    stepEnds = [];
  };
  for (const { turns, ends } of chunks) {
    place += turns.length;
    if (ends !== 'none') stepEnds.push(place);
    if (ends === 'stage') close();
  }
  if (!input.trailing) close();

  const jumps = new Map<number, Jump>();
  const naive: NaiveTurn[] = codes.map(printTurn);
  if (input.gap && input.gap.at < codes.length) {
    const { at, after } = input.gap;
    const state: State | undefined = after && applyTurns(SOLVED, after);
    jumps.set(at, { kind: 'gap', after: state });
    codes = codes.with(at, JUMP);
    naive[at] = { gap: after?.map(printTurn) };
  }
  const timeline = followGoals({
    course: makeCourse(applyTurns(SOLVED, setup), codes, jumps),
    goals,
    stages,
  });
  // In which order parts of one step come to be guarded is the engine's choice.
  const naiveGoals = naiveMethods[input.method]().map((one, g) => {
    const order = goals[g].parts.map((part) => nameOfPieces(piecesIn(part)));
    const rank = (part: readonly string[]): number => order.indexOf([...part].sort().join(' '));
    expect(one.parts.map(rank).sort((a, b) => a - b)).toEqual(order.map((_, i) => i));
    return { ...one, parts: [...one.parts].sort((a, b) => rank(a) - rank(b)) };
  });
  const start = replay(SOLVED_CUBE, setup.map(printTurn));
  return { timeline, length: codes.length, start, naive, naiveGoals, stages };
}

function fail(): never {
  throw new Error('no such method');
}

describe('the timeline against stickers', () => {
  it('tells exactly the breaks, restorations and misplaced pieces that the stickers show', () => {
    const seen: Record<string, number> = {
      passing: 0,
      carried: 0,
      lasting: 0,
      open: 0,
      part: 0,
      gap: 0,
    };
    const methods = new Map<string, number>();
    let long = 0;
    fc.assert(
      fc.property(written, (input) => {
        const { timeline, length, start, naive, naiveGoals, stages } = build(input);
        let expected: ReturnType<typeof naiveTimeline>;
        try {
          expected = naiveTimeline(start, SOLVED_CUBE, naive, naiveGoals, stages);
        } catch (error) {
          if (error instanceof Tie) return;
          throw error;
        }
        if (length >= 50) long++;
        expect(timeline.outcomes.map((outcome) => outcome.guardedFrom)).toEqual(
          expected.guardedFrom,
        );
        timeline.held.forEach((held, g) => {
          const until = timeline.outcomes[g].guardedFrom ?? Infinity;
          held.forEach((value, place) => {
            // From there on it speaks of what is guarded, which the breaks below confirm.
            if (place <= until)
              expect(value).toBe(
                { true: 1, false: 0, undefined: 2 }[String(expected.held[g][place])],
              );
          });
        });
        const key = (one: {
          turn: number;
          goal: number;
          part: boolean;
          kind: string;
          restoredAt: number | undefined;
        }) => [one.turn, one.goal, one.part, one.kind, one.restoredAt].join(' ');
        const byKey = (a: string, b: string): number => (a < b ? -1 : 1);
        expect(timeline.breaks.map(key).sort(byKey)).toEqual(expected.breaks.map(key).sort(byKey));
        for (const one of timeline.breaks) {
          const same = expected.breaks.filter((other) => key(other) === key(one));
          expect(same.flatMap(({ pieces }) => pieces)).toContain(nameOfPieces(one.pieces));
          if (one.part) seen.part++;
          else seen[one.kind]++;
          if (typeof naive[one.turn] !== 'string') seen.gap++;
          methods.set(input.method, (methods.get(input.method) ?? 0) + 1);
        }
      }),
      { numRuns: 500, seed: 20 },
    );
    // The generator must have made each of them occur, or nothing was confirmed.
    for (const [what, times] of Object.entries(seen))
      expect(times, what).toBeGreaterThan(what === 'gap' ? 5 : 20);
    for (const method of Object.keys(naiveMethods))
      expect(methods.get(method), method).toBeGreaterThan(20);
    expect(long).toBeGreaterThan(50);
  }, 120_000);
});
