/** The engine against GAP, on 1,200 random sequences of all kinds of turns; see `gap.ts`. */
import { describe, expect, test } from 'vitest';
import { describeEffect, faceletTargets } from '../../engine/cube/effect.ts';
import { SOLVED, applyTurns } from '../../engine/cube/state.ts';
import { printTurn } from '../../engine/cube/turn.ts';
import { GROUPS_ASKED, SEQUENCES_ASKED, askGap, readAnswer, readRecorded } from './gap.ts';
import { FAMILY_NAMES, product, quarterTurn } from './stickers.ts';

const live = askGap();
const source = live === undefined ? 'recorded output (GAP is not installed)' : 'GAP, live';
console.log(`reference: ${SEQUENCES_ASKED.length} sequences compared with ${source}`);
const answer = readAnswer(live ?? readRecorded());

describe(`compared with ${source}`, () => {
  test('each of 1,200 sequences takes every sticker to the same place', () => {
    expect(SEQUENCES_ASKED.length).toBeGreaterThanOrEqual(1000);
    SEQUENCES_ASKED.forEach((turns, i) => {
      const ours = Array.from(faceletTargets(applyTurns(SOLVED, turns)));
      expect(ours, turns.map(printTurn).join(' ')).toEqual(answer.sequences[i].goesTo);
    });
  });

  test('each has the same order', () => {
    SEQUENCES_ASKED.forEach((turns, i) => {
      const { order } = describeEffect(applyTurns(SOLVED, turns));
      expect(order, turns.map(printTurn).join(' ')).toBe(answer.sequences[i].order);
    });
  });

  // Group order: GAP's worked example of the cube's group (Schönert), OEIS A054434; subgroups: computed.
  test('the groups of some turns have the sizes published or computed before', () => {
    const sizes = Object.fromEntries(GROUPS_ASKED.map((names, i) => [names, answer.groupSizes[i]]));
    expect(sizes).toEqual({
      'U L F R B D': '43252003274489856000',
      'R U': '73483200',
      'U D L2 R2 F2 B2': '19508428800',
      'U2 L2 F2 R2 B2 D2': '663552',
      'R2 U2': '12',
    });
  });
});

if (live !== undefined) {
  test('what is recorded for machines without GAP is what GAP says', () => {
    expect(readRecorded()).toBe(live);
  });
}

test('quarter turns by geometry are those of the engine', () => {
  for (const family of FAMILY_NAMES) {
    const turn = Array.from({ length: 54 }, (_, code) => code).find((c) => printTurn(c) === family);
    const ours = Array.from(faceletTargets(applyTurns(SOLVED, [turn ?? -1])));
    expect(ours, family).toEqual(quarterTurn(family));
  }
});

test("by geometry alone: M = x' R L', E = y' U D', S = z F' B (check of the numbering itself)", () => {
  const many = (text: string): number[] =>
    text.split(' ').reduce(
      (all, word) => {
        const once = quarterTurn(word.replace("'", ''));
        const times = word.endsWith("'") ? 3 : 1;
        return Array.from({ length: times }).reduce<number[]>((p) => product(p, once), all);
      },
      Array.from({ length: 54 }, (_, i) => i),
    );
  expect(quarterTurn('M')).toEqual(many("x' R L'"));
  expect(quarterTurn('E')).toEqual(many("y' U D'"));
  expect(quarterTurn('S')).toEqual(many("z F' B"));
});
