import { describe, expect, test } from 'vitest';
import { SOLVED, applyTurns, isSolved, type State } from '../../../engine/cube/state.ts';
import { LAYERS, goalsFor } from '../../../engine/goals/methods.ts';
import { turnsOf } from '../../../engine/search/person/sequences.ts';
import { practiceStates } from '../../../engine/search/practice.ts';
import { nextStep, solveAsPerson } from '../../../engine/search/person/solve.ts';
import { REASONS } from '../../../engine/search/person/step.ts';
import { makeRandom } from '../../../engine/search/random.ts';
import { randomState } from '../../../engine/search/random-state.ts';
import { confirmStep } from './confirm.ts';

const [WHITE, YELLOW] = [0, 5];

describe('a solve as a beginner would do it', () => {
  test('1,000 random states, any base and holding: all solved, each step as its label says', () => {
    const random = makeRandom(2026);
    const seen = new Set<string>();
    for (let i = 0; i < 1000; i++) {
      const start = { ...randomState(random), holding: random.below(24) };
      const base = random.below(6);
      const solve = solveAsPerson(start, base);
      if (solve.kind !== 'solve') throw new Error(solve.kind);
      let state: State = start;
      for (const step of solve.steps) {
        state = confirmStep(state, step, base);
        seen.add(step.reason);
      }
      expect(isSolved(state)).toBe(true);
    }
    // All awkward spots came up, so none of the checks above was idle.
    expect([...seen].sort()).toEqual([...REASONS].sort());
  });

  test('a white-red edge in its slot but turned wrong goes up first, then in by way of the middle layer', () => {
    // White up: F2 U′ R′ F R would make it; turn that around to get the state, base yellow-side up.
    const state = applyTurns(SOLVED, turnsOf("x2 R' F' R U F2"));
    const first = nextStep(state, WHITE);
    expect(first).toMatchObject({ stage: 'cross', reason: 'edge-turned-in-base', arrives: false });
    const second = nextStep(applyTurns(state, first?.turns ?? []), WHITE);
    expect(second).toMatchObject({ reason: 'base-aside-above-home', arrives: true });
    expect(second?.disturbs).toBeDefined();
  });

  test('a base corner twisted in its slot: the insert two or four times, the cross away and back', () => {
    for (const [times, made] of [
      [2, 4],
      [4, 2],
    ]) {
      const twisted = Array.from({ length: made }, () => "U R U' R'").join(' ');
      const state = applyTurns(SOLVED, turnsOf(twisted));
      expect(nextStep(state, YELLOW)).toMatchObject({
        stage: 'corners',
        reason: 'corner-turned-in-slot',
        times,
        arrives: true,
      });
    }
  });

  test('a middle edge in its slot but turned wrong comes out with any insert', () => {
    const insert = "U R U' R' U' F' U F";
    // Out, half a turn of the top, and in again from the wrong side.
    const state = applyTurns(SOLVED, turnsOf(`${insert} U2 ${insert}`));
    const step = nextStep(state, YELLOW);
    expect(step).toMatchObject({
      stage: 'middle',
      reason: 'edge-turned-in-middle',
      arrives: false,
    });
  });

  test('from a dot the sequence makes an angle, which the other sequence makes a cross', () => {
    const draw = practiceStates(goalsFor(LAYERS, YELLOW).slice(0, 3));
    const random = makeRandom(8);
    let dots = 0;
    while (dots < 10) {
      const state = draw(random);
      if (!state) throw new Error('no practice state');
      const first = nextStep(state, YELLOW);
      if (first?.reason !== 'dot') continue;
      dots++;
      const second = nextStep(applyTurns(state, first.turns), YELLOW);
      expect(second).toMatchObject({ stage: 'top cross', reason: 'angle', arrives: true });
    }
  });

  test('nothing is left to do on a solved cube, and an impossible one is refused', () => {
    expect(nextStep(SOLVED, WHITE)).toBeUndefined();
    const twisted = Array.from(SOLVED.corners, (code, slot) => (slot === 3 ? code + 1 : code));
    expect(solveAsPerson({ ...SOLVED, corners: twisted }, WHITE)).toMatchObject({
      kind: 'impossible',
      problems: [{ kind: 'twisted-corner' }],
    });
  });
});
