/** Completion: what may stand at a place, the sensible first. */
import { describe, expect, test } from 'vitest';
import { applyTurns } from '../../../engine/cube/state.ts';
import { analyse } from '../../../engine/document/analyse.ts';
import { completionsAt, type Completion } from '../../../engine/document/features/index.ts';
import { readSequence } from '../../../engine/notation/read.ts';
import { goalHolds } from '../../../engine/goals/judge.ts';
import { withCursor } from './support.ts';

function offered(marked: string, files?: string[]): Completion[] {
  const { text, position } = withCursor(marked);
  return completionsAt(analyse(text), position, files ? { files } : {}).toSorted((a, b) =>
    a.sort < b.sort ? -1 : 1,
  );
}
const labels = (marked: string): string[] => offered(marked).map(({ label }) => label);

describe('at the beginning of a line', () => {
  test('keys, and the stages of the method in force, those to come first', () => {
    const found = labels("method: CFOP\nscramble: R\ncross:\n  R'\n|");
    expect(found).toContain('scramble:');
    const stages = found.filter((label) => /pair|cross|LL/.test(label));
    expect(stages).toEqual([
      '1st pair:',
      '2nd pair:',
      '3rd pair:',
      '4th pair:',
      'OLL:',
      'PLL:',
      'cross:',
    ]);
    expect(labels('method: Roux\n|')).toContain('second block:');
  });

  test('what is begun is replaced', () => {
    const [item] = offered('scramble: R\n  cor|').filter(({ label }) => label === 'corners:');
    expect(item.range).toEqual({
      start: { line: 1, character: 2 },
      end: { line: 1, character: 5 },
    });
  });
});

describe('values', () => {
  test('methods, colours, holdings, goals, slots, files', () => {
    expect(labels('method: |')).toEqual(expect.arrayContaining(['layers', 'CFOP', 'Roux', 'ZZ']));
    expect(labels('base: |')).toEqual(['white', 'orange', 'green', 'red', 'blue', 'yellow']);
    expect(labels('holding: |')).toHaveLength(24);
    expect(labels('cross:\n R\nkeeps: cross, |')).toContain('middle');
    expect(labels('goal: wing = DL, |')).toHaveLength(20);
    expect(offered('use: |', ['inserts.moves']).map(({ label }) => label)).toEqual([
      'inserts.moves',
    ]);
    expect(labels('title: |')).toEqual([]);
  });
});

describe('names', () => {
  const TEXT = "sequence: right insert\n  U R U' R' U' F' U F\nsolve:\nscramble: R\n  ";

  test('after @ with what they stand for and do', () => {
    const [item] = offered(`${TEXT}R @ri|`);
    expect(item).toMatchObject({ label: '@right-insert', detail: "U R U' R' U' F' U F" });
    expect(item.documentation).toContain('order 15');
    expect(item.range.start.character).toBe(4);
  });
});

test('in a comment pieces by their colours', () => {
  expect(labels('base: yellow\nR U // |')).toContain('yellow-green-red corner');
});

describe('turns that are sensible here', () => {
  const TEXT = "scramble: R U' R'\nbase: yellow\ncross:\n  U U'\ncorners:\n  |";

  test('first what reaches the goal, with what it would do', () => {
    const [first] = offered(TEXT).filter(({ kind }) => kind === 'turns');
    expect(first).toMatchObject({ label: "R U R'", detail: 'reaches corners' });
  });

  test('a turn that lends something says so, and stands behind', () => {
    const turns = offered(TEXT).filter(({ kind }) => kind === 'turns');
    const lending = turns.find(({ label }) => label === 'R');
    expect(lending?.detail).toMatch(/lends .*yellow-red.* of cross/);
    const free = turns.findIndex(({ label }) => label === 'U2');
    expect(free).toBeLessThan(turns.findIndex(({ label }) => label === 'R'));
  });

  test('the layer that was turned last is not turned again', () => {
    const found = labels("scramble: R U' R'\nR |");
    expect(found).not.toContain("R'");
    expect(found).toContain("L'");
  });

  test('own sequences are tried as well', () => {
    const found = offered(`sequence: in\n  R U R'\nsolve: a\n${TEXT}`);
    const own = found.find(({ label }) => label === '@in');
    expect(own?.detail).toBe('reaches corners');
  });

  test('what is said to reach a goal does', () => {
    const { text, position } = withCursor(TEXT);
    const analysis = analyse(text);
    const [block] = analysis.blocks;
    const state = block.course.stateAt(block.placeAt(position));
    let checked = 0;
    for (const { label, detail, kind } of offered(TEXT)) {
      if (kind !== 'turns' || state === undefined) continue;
      const turns = readSequence(label).items.flatMap((node) =>
        node.kind === 'turn' ? [node.turn] : [],
      );
      const after = applyTurns(state, turns);
      expect(detail.includes('reaches corners'), label).toBe(
        goalHolds(block.timeline.goals[1], after),
      );
      checked++;
    }
    expect(checked).toBeGreaterThan(15);
  });
});
