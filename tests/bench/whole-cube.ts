/** The whole cube: tables, first answers to 1,000 uniformly random states, 200 states for 200 ms each. */
import { applyTurns, isSolved } from '../../engine/cube/state.ts';
import { makeRandom } from '../../engine/search/random.ts';
import { randomState } from '../../engine/search/random-state.ts';
import { complete, runWhile } from '../../engine/search/step.ts';
import { solveCube } from '../../engine/search/two-phase.ts';
import { tableBytes, twoPhaseTables } from '../../engine/search/two-phase-tables.ts';
import { quantile, time, type Figure } from './measure.ts';

export function* measureWholeCube(): Generator<Figure> {
  let longest = 0;
  const cold = time(() => {
    let before = performance.now();
    runWhile(twoPhaseTables(), () => {
      const now = performance.now();
      longest = Math.max(longest, now - before);
      before = now;
      return true;
    });
  });
  yield { what: 'whole-cube tables, cold', value: cold, unit: 'ms', bound: 1200 };
  yield {
    what: 'the longest step of it (cancel waits for one)',
    value: longest,
    unit: 'ms',
    bound: 20,
  };
  const bytes = tableBytes(complete(twoPhaseTables()));
  yield { what: 'whole-cube tables, size', value: bytes / 1e6, unit: 'MB', bound: 20 };

  const random = makeRandom(1000);
  const states = Array.from({ length: 1000 }, () => randomState(random));
  const times: number[] = [];
  let solved = 0;
  for (const state of states) {
    times.push(
      time(() => {
        const result = complete(solveCube(state));
        if (result.kind === 'found' && isSolved(applyTurns(state, result.turns))) solved++;
      }),
    );
  }
  yield {
    what: '1,000 uniformly random states: solved',
    value: solved / 10,
    unit: '%',
    bound: 100,
    atLeast: true,
  };
  yield {
    what: 'time to the first answer, median',
    value: quantile(times, 0.5),
    unit: 'ms',
    bound: 12,
  };
  yield {
    what: 'time to the first answer, 95 of 100',
    value: quantile(times, 0.95),
    unit: 'ms',
    bound: 50,
  };

  let turns = 0;
  const some = states.slice(0, 200);
  for (const state of some) {
    const end = performance.now() + 200;
    const result = runWhile(solveCube(state, { budget: Infinity }), () => performance.now() < end);
    if (result.kind !== 'found' || !isSolved(applyTurns(state, result.turns)))
      throw new Error(result.kind);
    turns += result.turns.length;
  }
  yield {
    what: 'mean length of 200 after 200 ms each',
    value: turns / some.length,
    unit: 'turns',
    bound: 19.4,
  };
}
