import { describe, expect, it } from 'vitest';
import { colourIndex } from '../../engine/cube/vocabulary.ts';
import { METHODS, findMethod, LAYERS, type Method } from '../../engine/goals/methods.ts';
import { makeMethod, makeOwnGoal } from '../../engine/goals/own-methods.ts';
import { ALIAS_ROWS } from '../../engine/goals/stage-aliases.ts';
import {
  claimLabels,
  methodOfNames,
  readStageName,
  resolveStage,
  type StageContext,
  type StageName,
} from '../../engine/goals/stage-names.ts';

const read = (text: string): StageName => {
  const name = readStageName(text);
  if (name === undefined) throw new Error(`not read: ${text}`);
  return name;
};
const methodNamed = (name: string): Method => findMethod(name) ?? LAYERS;
const stageOf = (
  text: string,
  method: string,
  context: StageContext = { pairsSoFar: 0 },
): string | undefined => {
  const index = resolveStage(read(text), methodNamed(method), context);
  return index === undefined ? undefined : methodNamed(method).stages[index].name;
};
const onWhite = { base: colourIndex('white'), pairsSoFar: 0 };

describe('names of stages', () => {
  it.each([
    ['cross', 'layers', 'cross'],
    ['Cross:', 'CFOP', 'cross'],
    ['cross, 3.4 s', 'layers', 'cross'],
    ['first layer corners', 'layers', 'corners'],
    ['second layer', 'layers', 'middle'],
    ['F2L', 'layers', 'middle'],
    ['top edges', 'layers', 'solved'],
    ['EO', 'layers', 'top cross'],
    ['OLL', 'CFOP', 'OLL'],
    ['2-look OLL', 'CFOP', 'OLL'],
    ['two-look PLL (14)', 'CFOP', 'PLL'],
    ['EOLL', 'CFOP, two looks', 'EOLL'],
    ['OCLL', 'CFOP, two looks', 'OLL'],
    ['OCLL', 'ZZ', 'OCLL'],
    ['FB', 'Roux', 'first block'],
    ['second block', 'Roux', 'second block'],
    ['CMLL (9)', 'Roux', 'CMLL'],
    ['EO', 'Roux', 'EO'],
    ['LSE', 'Roux', 'LSE'],
    ['L4E', 'Roux', 'LSE'],
    ['EOLine', 'ZZ', 'EOLine'],
    ['left block', 'ZZ', 'first block'],
  ])('%s in %s is %s', (text, method, stage) => {
    expect(stageOf(text, method)).toBe(stage);
  });

  it('a pair with an ordinal is that pair, alone the next, F2L alone the 4th', () => {
    const twoMade = { pairsSoFar: 2 };
    expect(stageOf('F2L #1 (7)', 'CFOP', twoMade)).toBe('1st pair');
    expect(stageOf('2nd pair', 'CFOP', twoMade)).toBe('2nd pair');
    expect(stageOf('second pair', 'CFOP', twoMade)).toBe('2nd pair');
    expect(stageOf('F2L-4', 'CFOP', twoMade)).toBe('4th pair');
    expect(stageOf('pair', 'CFOP', twoMade)).toBe('3rd pair');
    expect(stageOf('red-green pair', 'CFOP', twoMade)).toBe('3rd pair');
    expect(stageOf('F2L', 'CFOP', twoMade)).toBe('4th pair');
    expect(resolveStage(read('F2L #5'), methodNamed('CFOP'), twoMade)).toBeUndefined();
  });

  it("a colour names the base's goal or, if opposite, the top's", () => {
    expect(stageOf('white cross', 'layers', onWhite)).toBe('cross');
    expect(stageOf('yellow cross', 'layers', onWhite)).toBe('top cross');
    expect(stageOf('yellow corners', 'layers', onWhite)).toBe('top corners');
    expect(stageOf('Yellow Face', 'layers', onWhite)).toBe('top face');
    expect(resolveStage(read('red cross'), LAYERS, onWhite)).toBeUndefined();
  });

  it('reads ordinal, colour and count off the label', () => {
    expect(read('F2L #1 (7)')).toMatchObject({ alias: 'f2l', ordinal: 1, count: 7 });
    expect(read('white cross (8)')).toMatchObject({ alias: 'cross', colour: 0, count: 8 });
    expect(read('OLL 45/9.3')).toMatchObject({ alias: 'oll', count: 45 });
    expect(read('PLL [13 moves]')).toMatchObject({ alias: 'pll', count: 13 });
  });

  it.each([
    '',
    ':',
    '(8)',
    'crosses the table',
    'green-red corner',
    'white-red edge',
    'my cross',
    'R U',
    '45/9.3',
    'x'.repeat(5000),
  ])('is not found in %j', (text) => {
    expect(readStageName(text)).toBeUndefined();
  });

  it('the table has no alias twice, and each leads to a stage of some method', () => {
    const aliases = ALIAS_ROWS.flatMap((row) => row.aliases);
    expect(new Set(aliases).size).toBe(aliases.length);
    for (const alias of aliases) {
      const name = read(alias);
      const found = METHODS.some(
        (method) => resolveStage(name, method, { pairsSoFar: 0 }) !== undefined,
      );
      expect(found, alias).toBe(true);
    }
  });
});

describe('claims in comments', () => {
  it.each([
    ['2nd pair (7)', ['2nd pair']],
    ['cross', ['cross']],
    ['cross + 1st pair (9)', ['cross', '1st pair']],
    ['F2L #3, BR slot (8)', ['f2l slot']],
    ['F2L #1 / #2', ['f2l', 'f2l']],
    ['OLL skip', ['oll']],
    ['PLL & AUF 45/9.3', ['pll', 'auf']],
    ['white cross done', ['cross']],
    ['4th pair complete, 12.4 s', ['4th pair']],
  ])('%s claims', (comment, aliases) => {
    expect(claimLabels(comment)?.map((name) => name.alias)).toEqual(aliases);
  });

  it.each([
    'cross is almost done',
    'setup for OLL',
    'green-red corner',
    'white-red edge comes up past the empty slot',
    'a pause to look',
    'done',
    '(8)',
    'cross and then some',
    'no cross',
    'OLL? not yet',
    '',
    'right',
    'white down',
  ])('%s claims nothing', (comment) => {
    expect(claimLabels(comment)).toBeUndefined();
  });
});

describe('the method that a text follows', () => {
  const methodOf = (...names: string[]): string => methodOfNames(names.map(read)).name;

  it('is the one whose names it uses most, layers on a tie', () => {
    expect(methodOf()).toBe('layers');
    expect(methodOf('cross')).toBe('layers');
    expect(methodOf('cross', 'F2L', 'OLL', 'PLL')).toBe('CFOP');
    expect(methodOf('cross', '1st pair', '2nd pair')).toBe('CFOP');
    expect(methodOf('FB', 'SB', 'CMLL', 'LSE')).toBe('Roux');
    expect(methodOf('EOLine', 'left block', 'right block', 'OCLL')).toBe('ZZ');
    expect(methodOf('cross', 'corners', 'second layer', 'OLL')).toBe('layers');
  });

  it('and the variant that the names tell', () => {
    expect(methodOf('cross', 'pair', 'EOLL', 'OCLL', 'PLL')).toBe('CFOP, two looks');
    expect(
      methodOf('cross', 'corners', 'middle', 'top cross', 'edges placed', 'corners placed'),
    ).toBe('layers, corners last');
  });
});

describe('methods of your own', () => {
  const block = makeOwnGoal('left block', 'DL FL BL DFL dbl', 0);

  it('take stages of the methods here and goals named by slots', () => {
    if (block.kind !== 'goal') throw new Error(block.kind);
    const made = makeMethod('mine', ['cross', 'left block', 'OLL', 'solved'], [block.goal]);
    if (made.kind !== 'method') throw new Error(made.kind);
    expect(made.method.stages.map((stage) => stage.name)).toEqual([
      'cross',
      'left block',
      'OLL',
      'solved',
    ]);
    const name = readStageName('Left block (12)', [...METHODS, made.method]);
    expect(name && resolveStage(name, made.method, { pairsSoFar: 0 })).toBe(1);
    expect(resolveStage(read('top edges'), made.method, { pairsSoFar: 0 })).toBe(3);
  });

  it('say what is wrong with them', () => {
    expect(makeOwnGoal('block', 'DL FX', 0)).toEqual({ kind: 'unknown-slot', text: 'FX' });
    expect(makeOwnGoal('block', 'UD', 0)).toEqual({ kind: 'unknown-slot', text: 'UD' });
    expect(makeOwnGoal('block', '', 0)).toEqual({ kind: 'no-slots' });
    expect(makeMethod('mine', ['cross', 'castle'], [])).toEqual({
      kind: 'unknown-stage',
      text: 'castle',
    });
    expect(makeMethod('mine', ['cross', 'Cross'], [])).toEqual({
      kind: 'stage-twice',
      text: 'Cross',
    });
    expect(makeMethod('mine', [], [])).toEqual({ kind: 'no-stages' });
  });
});
