/** `solve`: every answer is replayed on stickers that know nothing of the engine. */
import { describe, expect, test } from 'vitest';
import { check } from '../../extension/terminal/json.ts';
import { solve } from '../../extension/terminal/json-searches.ts';
import { holds, layersOf } from '../naive/goals.ts';
import { replay, SOLVED_CUBE, type Cube } from '../naive/stickers.ts';
import { folderWith, SAMPLES, turnlore, turnloreJson } from './turnlore.ts';

const SCRAMBLE = "R2 U' F D2 L' B R' U2 F' D L2 U B2 R F";

function solveOf(...args: string[]) {
  return turnloreJson(solve, ['solve', ...args]).json;
}

describe('the short way', () => {
  test('solves the cube in few turns, and calls it shortest only with a proof', () => {
    const way = solveOf('--turns', SCRAMBLE);
    expect(reached(`${SCRAMBLE} ${way.turns}`, 'white', 6)).toBe(true);
    expect(way).toMatchObject({ goal: 'solved', optimal: false, atLeast: 11 });
    expect(way.counts.obtm).toBeLessThanOrEqual(20);
  });

  test("four turns are undone by four, proven: R U R' F", () => {
    const way = solveOf('--turns', "R U R' F");
    expect(way).toMatchObject({ turns: "F' R U' R'", optimal: true, atLeast: 4 });
  });

  test('of a solved cube nothing is to be done', () => {
    expect(solveOf('--turns', 'x y2 z')).toMatchObject({ turns: '', optimal: true });
    expect(turnlore(['solve', '--turns', 'x']).out).toContain('Nothing to do');
  });

  test('the cross is proven shortest, on the base that is asked for', () => {
    const white = solveOf('--turns', SCRAMBLE, '--goal', 'cross');
    const blue = solveOf('--turns', SCRAMBLE, '--goal', 'cross', '--base', 'blue');
    for (const way of [white, blue]) expect(way).toMatchObject({ optimal: true, goal: 'cross' });
    expect(white.counts.obtm).toBeLessThanOrEqual(8);
    expect([white.base, blue.base]).toEqual(['white', 'blue']);
    expect(reached(`${SCRAMBLE} ${white.turns}`, 'white', 0)).toBe(true);
    expect(reached(`${SCRAMBLE} ${blue.turns}`, 'blue', 0)).toBe(true);
  });

  test('from a place of a text, keeping what holds there: the middle layer that the author left out', () => {
    const file = `${SAMPLES}/stage-not-reached.moves`;
    const way = solveOf(file, '--goal', 'second layer', '--at', '21:0');
    expect(way).toMatchObject({ goal: 'middle', keeps: ['cross', 'corners'], optimal: true });
  });
});

describe('what the turns may be', () => {
  test('without the base: no turn of its layer, here from a cube held as at the start', () => {
    const way = solveOf(
      '--turns',
      SCRAMBLE,
      '--goal',
      'cross',
      '--base',
      'yellow',
      '--without-base',
    );
    expect(way.turns).not.toMatch(/D/u);
    expect(reached(`${SCRAMBLE} ${way.turns}`, 'yellow', 0)).toBe(true);
  });

  test('right-handed: as short as any', () => {
    const any = solveOf('--turns', SCRAMBLE, '--goal', 'cross');
    const right = solveOf('--turns', SCRAMBLE, '--goal', 'cross', '--right-handed');
    expect(right.counts.obtm).toBe(any.counts.obtm);
    expect(right.optimal).toBe(true);
  });

  test('at most so many: that there are none is proven', () => {
    const { status, err } = turnlore([
      'solve',
      '--turns',
      SCRAMBLE,
      '--goal',
      'cross',
      '--most',
      '5',
    ]);
    expect(status).toBe(2);
    expect(err).toContain('Proven: no 5 or fewer of these turns reach the goal.');
  });

  test('is told only to the search for a goal', () => {
    expect(turnlore(['solve', '--turns', 'R', '--most', '3']).err).toContain('--most goes with');
  });
});

describe("the person's way", () => {
  test('solves the cube stage by stage, each step with its reason', () => {
    const way = solveOf('--turns', SCRAMBLE, '--way', 'person');
    expect(reached(`${SCRAMBLE} ${way.turns}`, 'white', 6)).toBe(true);
    expect(way.optimal).toBe(false);
    expect(way.stages?.map(({ name }) => name).slice(0, 3)).toEqual(['cross', 'corners', 'middle']);
    expect(way.stages?.map(({ turns }) => turns).join(' ')).toBe(way.turns);
    for (const stage of way.stages ?? []) {
      expect(stage.steps.map(({ turns }) => turns).join(' ')).toBe(stage.turns);
      for (const { why } of stage.steps) expect(why.length).toBeGreaterThan(10);
    }
  });

  test.each([
    ['after a scramble', ['--turns', SCRAMBLE]],
    ['after turns that leave the cube in another holding', ['--turns', `${SCRAMBLE} x y M Rw`]],
    ['in the middle of a text', [`${SAMPLES}/broken-cross.moves`, '--at', '17:0']],
    ['up to the first layer only', ['--turns', SCRAMBLE, '--goal', 'corners']],
    ['with red as the base', ['--turns', SCRAMBLE, '--base', 'red']],
  ])('is printed as a text that check finds nothing in: %s', (_, args) => {
    const { out } = turnlore(['solve', ...args, '--way', 'person']);
    const folder = folderWith({ 'way.moves': out });
    const { json, status } = turnloreJson(check, ['check', `${folder}/way.moves`]);
    expect(json.files[0].findings).toEqual([]);
    expect(status).toBe(0);
    expect(json.files[0].solves[0].solved).toBe(!args.includes('--goal'));
  });
});

describe('what it does not take', () => {
  test('an impossible cube is refused with its reason', () => {
    const { status, out, err } = turnlore(['solve', `${SAMPLES}/impossible.moves`]);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('a corner is twisted');
  });

  test.each([
    [['solve'], 'A file is missing'],
    [['solve', '--turns', 'R Q'], '"Q" is no turn.'],
    [['solve', '--turns', 'R', '--goal', 'roof'], 'has no goal "roof"'],
    [['solve', '--turns', 'R', '--way', 'fast'], '--way is person or short'],
    [['solve', '--turns', 'R', '--at', '1:1'], '--at goes with a file'],
    [['solve', 'a.moves', '--turns', 'R'], 'Either a file or --turns'],
    [['solve', 'missing.moves'], 'there is no such file'],
    [['solve', '--turns', 'R', '--base', 'pink'], '"pink" is no colour of the cube'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, out, err } = turnlore(args);
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});

function cubeAfter(turns: string): Cube {
  return replay(SOLVED_CUBE, turns.trim().split(/\s+/u));
}

/** Whether the goal of this number (0 cross … 6 solved) holds on the stickers after these turns. */
function reached(turns: string, base: string, goal: number): boolean {
  return holds(layersOf(base)[goal], cubeAfter(turns));
}
