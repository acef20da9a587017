import { expect, test } from 'vitest';
import { SOLVED, applyTurns } from '../../../engine/cube/state.ts';
import { analyse } from '../../../engine/document/analyse.ts';
import { turnsOf } from '../../../engine/search/person/sequences.ts';
import { solveAsPerson } from '../../../engine/search/person/solve.ts';
import { writePersonSolve } from '../../../engine/search/person/text.ts';
import { makeRandom } from '../../../engine/search/random.ts';
import { randomState } from '../../../engine/search/random-state.ts';

test('written out, a solve is a text in which every claim holds and nothing is found wrong', () => {
  const random = makeRandom(77);
  for (let i = 0; i < 60; i++) {
    const start = { ...randomState(random), holding: random.below(24) };
    const solve = solveAsPerson(start, random.below(6));
    if (solve.kind !== 'solve') throw new Error(solve.kind);
    const text = writePersonSolve(solve);
    const analysis = analyse(text);
    const shown = analysis.findings.filter(({ severity }) => severity !== 'off');
    expect(
      shown.map(({ code, message }) => `${code}: ${message}`),
      text,
    ).toEqual([]);
    expect(analysis.blocks).toHaveLength(1);
    expect(analysis.blocks[0]).toMatchObject({ solved: true, base: solve.base, method: 'layers' });
    for (const outcome of analysis.blocks[0].timeline.outcomes.slice(0, 3)) {
      expect(outcome.kept).toBe(true);
    }
  }
});

test('with a scramble the text starts from it', () => {
  const scramble = turnsOf("R2 U' F D2 L' B R' U2 F' D L2 U");
  const solve = solveAsPerson(applyTurns(SOLVED, scramble), 0);
  if (solve.kind !== 'solve') throw new Error(solve.kind);
  const text = writePersonSolve(solve, { title: 'Repair café, first table', scramble });
  expect(text).toContain("scramble: R2 U' F D2 L' B R' U2 F' D L2 U\n");
  expect(analyse(text).blocks[0]).toMatchObject({ solved: true, base: 0, startFrom: 'scramble' });
});
