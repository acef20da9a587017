/** 10,000 solves as a beginner would do them, each step replayed and its label confirmed. */
import { isSolved, type State } from '../../engine/cube/state.ts';
import { solveAsPerson } from '../../engine/search/person/solve.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { confirmStep } from '../search/person/confirm.ts';
import { time, type Figure } from './measure.ts';

const SOLVES = 10_000;

export function* measurePerson(): Generator<Figure> {
  const random = makeRandom(10_000);
  let confirmed = 0;
  let steps = 0;
  let spent = 0;
  for (let i = 0; i < SOLVES; i++) {
    const start = { ...randomState(random), holding: random.below(24) };
    const base = random.below(6);
    let solve: ReturnType<typeof solveAsPerson> | undefined;
    spent += time(() => {
      solve = solveAsPerson(start, base);
    });
    if (solve?.kind !== 'solve') continue;
    let state: State = start;
    for (const step of solve.steps) state = confirmStep(state, step, base);
    steps += solve.steps.length;
    if (isSolved(state)) confirmed++;
  }
  yield {
    what: `10,000 solves by layers, ${steps.toLocaleString('en')} steps: confirmed`,
    value: (confirmed / SOLVES) * 100,
    unit: '%',
    bound: 100,
    atLeast: true,
  };
  yield { what: 'one such solve, mean', value: spent / SOLVES, unit: 'ms', bound: 5 };
}
