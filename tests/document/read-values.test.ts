/** How the values of keys are read. */
import { describe, expect, test } from 'vitest';
import { colourAt } from '../../engine/cube/holding.ts';
import { readBase, readHolding } from '../../engine/document/read/colours.ts';
import { readDoes, readGoal } from '../../engine/document/read/pieces.ts';
import type { Words } from '../../engine/document/read/tree.ts';
import {
  readList,
  readMethod,
  readOpens,
  readOrder,
  readTime,
  readUse,
} from '../../engine/document/read/values.ts';

/** The value as it stands four characters into its line. */
function at4(text: string): Words {
  return { text, span: { start: 4, end: 4 + text.length } };
}

function cutOut(text: string, { span }: { span: { start: number; end: number } }): string {
  return `    ${text}`.slice(span.start, span.end);
}

describe('holding', () => {
  test.each([
    'white up, green front',
    'green front, white up',
    'White top / green front',
    'white on top and green in front',
    'up white, front green',
    'U = white, F = green',
    'white top green front',
    'w up, g front',
    'white, green',
    'w g',
    'WG',
    'yellow down, green front',
    'white up, red right',
    'r right, b back',
  ])('%s is the holding of a scramble', (text) => {
    const value = readHolding(at4(text));
    if (value.kind === 'bad') throw new Error(value.reason);
    expect([colourAt(value.holding, 0), colourAt(value.holding, 2)]).toEqual(['white', 'green']);
  });

  test('b and r are colours beside a place', () => {
    const value = readHolding(at4('y up, b front'));
    expect(value.kind === 'holding' && colourAt(value.holding, 2)).toBe('blue');
    const back = readHolding(at4('white up, B blue'));
    expect(back.kind === 'holding' && colourAt(back.holding, 4)).toBe('blue');
  });

  test.each([
    ['white up', 'holding-open'],
    ['white top', 'holding-open'],
    ['white up, yellow front', 'holding-clash'],
    ['white up, white front', 'holding-clash'],
    ['purple up, green front', 'no-holding'],
    ['', 'empty'],
    ['white up, white down, green front', 'holding-clash'],
  ])('%s: %s', (text, reason) => {
    expect(readHolding(at4(text))).toMatchObject({ kind: 'bad', reason });
  });
});

test('base is a colour', () => {
  for (const text of ['yellow', 'Y', 'yellow cross', 'the yellow side']) {
    expect(readBase(at4(text)), text).toMatchObject({ kind: 'base', base: 5 });
  }
  for (const text of ['pink', 'white yellow', 'cross']) {
    expect(readBase(at4(text)), text).toMatchObject({ kind: 'bad', reason: 'no-colour' });
  }
});

test('a time is minutes and seconds', () => {
  for (const text of ['1:14.2', '74.2', '74,2 s', '1 min 14.2 s', '0:01:14.2', '1m14.2s']) {
    const value = readTime(at4(text));
    expect(value.kind === 'time' ? value.seconds : value.reason, text).toBeCloseTo(74.2);
  }
  expect(readTime(at4('soon'))).toMatchObject({ kind: 'bad', reason: 'no-time' });
});

test('an order is a whole number from 1', () => {
  expect(readOrder(at4('1260'))).toMatchObject({ order: 1260 });
  for (const text of ['0', '-6', 'six', '6.5']) {
    expect(readOrder(at4(text)), text).toMatchObject({ kind: 'bad', reason: 'no-number' });
  }
});

describe('lists', () => {
  test('of goals keep the place of each', () => {
    const text = 'cross, 4th pair and  left block,';
    const value = readList(at4(text));
    if (value.kind === 'bad') throw new Error(value.reason);
    expect(value.items.map((item) => item.text)).toEqual(['cross', '4th pair', 'left block']);
    for (const item of value.items) expect(cutOut(text, item)).toBe(item.text);
    expect(readList(at4('cross,, corners'))).toMatchObject({ kind: 'bad', reason: 'empty-item' });
  });

  test('of what is opened tell until when', () => {
    const text = 'cross until 4th pair, corners';
    const value = readOpens(at4(text));
    if (value.kind === 'bad') throw new Error(value.reason);
    expect(value.items.map(({ goal, until }) => [goal.text, until?.text])).toEqual([
      ['cross', '4th pair'],
      ['corners', undefined],
    ]);
    for (const { goal, until } of value.items) {
      expect(cutOut(text, goal)).toBe(goal.text);
      if (until) expect(cutOut(text, until)).toBe(until.text);
    }
    expect(readOpens(at4('cross until'))).toMatchObject({ kind: 'bad' });
  });
});

test('a method is used or made', () => {
  expect(readMethod(at4('CFOP'))).toMatchObject({ kind: 'method-use', name: { text: 'CFOP' } });
  const text = 'mine = cross, left block, solved';
  const value = readMethod(at4(text));
  if (value.kind !== 'method') throw new Error(value.kind);
  expect(value.name.text).toBe('mine');
  expect(value.stages.map((stage) => cutOut(text, stage))).toEqual([
    'cross',
    'left block',
    'solved',
  ]);
  for (const bad of ['mine =', '= cross', 'mine = cross,, solved', '']) {
    expect(readMethod(at4(bad)).kind, bad).toBe('bad');
  }
});

test('a goal is the pieces of slots', () => {
  const text = 'left block = DL FL BL DFL, dbl';
  const value = readGoal(at4(text));
  if (value.kind !== 'goal') throw new Error(value.kind);
  expect(value.slots.map((slot) => cutOut(text, slot))).toEqual(['DL', 'FL', 'BL', 'DFL', 'dbl']);
  expect(readGoal(at4('left block = DL DU'))).toMatchObject({
    kind: 'bad',
    reason: 'no-slot',
    text: 'DU',
  });
  expect(readGoal(at4('left block')).kind).toBe('bad');
});

test('`does:` is cycles of stickers, complete unless dots say otherwise', () => {
  const text = '(UF UR UB)(UFR ULF) …';
  const value = readDoes(at4(text));
  if (value.kind === 'bad') throw new Error(value.reason);
  expect(value.cycles.map((cycle) => cutOut(text, cycle))).toEqual(['(UF UR UB)', '(UFR ULF)']);
  expect(value.complete).toBe(false);
  expect(readDoes(at4('(UF FU)'))).toMatchObject({ complete: true });
  expect(readDoes(at4('()'))).toMatchObject({ cycles: [], complete: true });
  expect(readDoes(at4('(UF UX)'))).toMatchObject({ kind: 'bad', reason: 'no-sticker', text: 'UX' });
  expect(readDoes(at4('(UF UFR)'))).toMatchObject({ kind: 'bad', reason: 'sticker-kinds' });
  expect(readDoes(at4('UF UR'))).toMatchObject({ kind: 'bad', reason: 'no-cycle' });
});

test('`use:` names a file, quoted or not', () => {
  const text = '"other table.moves"';
  const value = readUse(at4(text));
  if (value.kind !== 'use') throw new Error(value.kind);
  expect(cutOut(text, value.file)).toBe('other table.moves');
  expect(readUse(at4(''))).toMatchObject({ kind: 'bad', reason: 'empty' });
});
