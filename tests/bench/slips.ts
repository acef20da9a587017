/** Slips of a solve of 60 turns, and shortest sequences with the same effect. */
import { SOLVED, applyTurns, type State } from '../../engine/cube/state.ts';
import type { Turn } from '../../engine/cube/turn.ts';
import { invertTurns } from '../../engine/notation/transform.ts';
import { makeRandom, type Random } from '../../engine/search/random.ts';
import { findShorter } from '../../engine/search/same-effect.ts';
import { SlipCourse } from '../../engine/search/slips/course.ts';
import { applyEdits, singleEdits } from '../../engine/search/slips/edits.ts';
import { singlesThatSolve } from '../../engine/search/slips/find.ts';
import { pairsThatSolve } from '../../engine/search/slips/pairs.ts';
import { stretchesThatSolve } from '../../engine/search/slips/stretches.ts';
import { complete } from '../../engine/search/step.ts';
import { twoPhaseTables } from '../../engine/search/two-phase-tables.ts';
import { quantile, time, type Figure } from './measure.ts';

/** 60 turns, one in ten of any kind, with two slips, and the state that they were to solve. */
function wrongSolve(random: Random): { start: State; written: Turn[] } {
  const made = Array.from({ length: 60 }, () => random.below(random.below(10) === 0 ? 54 : 18));
  let written: Turn[] = made;
  for (let i = 0; i < 2; i++) {
    const edits = singleEdits(written);
    written = applyEdits(written, [edits[random.below(edits.length)]]);
  }
  return { start: applyTurns(SOLVED, invertTurns(made)), written };
}

export function* measureSlips(): Generator<Figure> {
  const random = makeRandom(60);
  const solves = Array.from({ length: 25 }, () => wrongSolve(random));
  const singles: number[] = [];
  const stretches: number[] = [];
  const pairs: number[] = [];
  let explained = 0;
  for (const { start, written } of solves) {
    singles.push(
      time(() => complete(singlesThatSolve(new SlipCourse(start, written), singleEdits(written)))),
    );
    stretches.push(time(() => complete(stretchesThatSolve(new SlipCourse(start, written)))));
    pairs.push(
      time(() => {
        const found = complete(
          pairsThatSolve(new SlipCourse(start, written), singleEdits(written)),
        );
        if (found.length > 0) explained++;
      }),
    );
  }
  yield {
    what: 'slips, 60 turns: all single edits, median of 25',
    value: quantile(singles, 0.5),
    unit: 'ms',
    bound: 5,
  };
  yield {
    what: 'slips, 60 turns: all stretches, median of 25',
    value: quantile(stretches, 0.5),
    unit: 'ms',
    bound: 100,
  };
  yield {
    what: 'slips, 60 turns: all pairs of edits, median of 25',
    value: quantile(pairs, 0.5),
    unit: 'ms',
    bound: 400,
  };
  yield {
    what: 'slips, 60 turns: all pairs of edits, worst of 25',
    value: Math.max(...pairs),
    unit: 'ms',
    bound: 400,
  };
  // Two edits at one place or across each other are no pair of disjoint edits.
  yield {
    what: 'two random edits explained by a pair',
    value: (explained / solves.length) * 100,
    unit: '%',
    bound: 90,
    atLeast: true,
  };
}

export function* measureSameEffect(): Generator<Figure> {
  complete(twoPhaseTables());
  const random = makeRandom(11);
  for (const [maxTurns, bound] of [
    [10, 300],
    [11, 1000],
  ]) {
    // Sequences of three turns more: mostly nothing that short does the same, and the proof
    // goes through all lengths. Random states, far away, take less.
    const worst = Array.from({ length: 20 }, () => {
      const turns = Array.from({ length: maxTurns + 3 }, () => random.below(18));
      return time(() => complete(findShorter(turns, { provenTo: maxTurns })));
    });
    const what = `shortest with the same effect, proven to ${String(maxTurns)}, worst of 20`;
    yield { what, value: Math.max(...worst), unit: 'ms', bound };
  }
}
