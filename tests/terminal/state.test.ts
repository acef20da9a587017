/** `state`: the cube at a place of a text, or after turns. */
import { describe, expect, test } from 'vitest';
import { state } from '../../extension/terminal/json.ts';
import { SAMPLES, folderWith, turnlore, turnloreJson } from './turnlore.ts';

function after(turns: string, ...more: string[]) {
  return turnloreJson(state, ['state', '--turns', turns, ...more]).json;
}

function at(text: string, place?: string) {
  return turnloreJson(state, ['state', '-', ...(place === undefined ? [] : ['--at', place])], {
    input: text,
  }).json;
}

describe('after turns on a solved cube', () => {
  test('without turns it is solved, white up and green in front, red on the right (WCA 4d1)', () => {
    const { faces, holding, solved } = after('');
    expect(solved).toBe(true);
    expect(holding).toEqual({ up: 'white', front: 'green' });
    expect(faces).toEqual({
      U: 'wwwwwwwww',
      L: 'ooooooooo',
      F: 'ggggggggg',
      R: 'rrrrrrrrr',
      B: 'bbbbbbbbb',
      D: 'yyyyyyyyy',
    });
  });

  test('R brings green up on the right, white to the back, blue down, yellow to the front', () => {
    // Rows as they lie in the net: the back is seen from behind, so its left column lies at the right.
    expect(after('R').faces).toEqual({
      U: 'wwgwwgwwg',
      L: 'ooooooooo',
      F: 'ggyggyggy',
      R: 'rrrrrrrrr',
      B: 'wbbwbbwbb',
      D: 'yybyybyyb',
    });
  });

  test('a rotation changes how the cube is held, not whether it is solved: x rolls it back as R does', () => {
    expect(after('x')).toMatchObject({ holding: { up: 'green', front: 'yellow' }, solved: true });
    expect(after('y')).toMatchObject({ holding: { up: 'white', front: 'red' } });
    expect(after('z')).toMatchObject({ holding: { up: 'orange', front: 'green' } });
  });

  test('goals are those of the base that is made, or that --base names', () => {
    const holding = (told: ReturnType<typeof after>) =>
      told.goals.filter(({ holds }) => holds).map(({ goal }) => goal);
    expect(holding(after("R U R' U'"))).toEqual(['cross']);
    expect(holding(after("R U R' U'", '--base', 'white'))).toEqual([]);
    expect(holding(after('U'))).toHaveLength(6);
  });

  test('commas, comments and lines are no hindrance', () => {
    expect(after("R U // up\nR' U'").faces).toEqual(after("R U R' U'").faces);
  });
});

const TEXT = "scramble: R U\nU' (R' F)2 // done\n";

describe('at a place of a text', () => {
  test('a turn counts once its last character is at or before the place', () => {
    expect(at(TEXT, '1:0').faces).toEqual(after('R U').faces);
    expect(at(TEXT, '1:1').faces).toEqual(after('R U').faces);
    expect(at(TEXT, '1:2').faces).toEqual(after('R').faces);
  });

  test('inside a repeated group it is the first pass, behind it all of them', () => {
    expect(at(TEXT, '1:6').turns).toBe(2);
    expect(at(TEXT, '1:8').faces).toEqual(after('F').faces);
    expect(at(TEXT, '1:10').turns).toBe(5);
  });

  test('without a place it is the end of the first solve', () => {
    expect(at(TEXT).faces).toEqual(after("F R' F").faces);
    expect(at(`${TEXT}solve: other\nscramble: L\nL'\n`).solved).toBe(false);
  });

  test('above the first turn it is the scrambled cube', () => {
    expect(at(TEXT, '0:3').faces).toEqual(after('R U').faces);
  });

  test('beyond the end of a line is its end', () => {
    expect(at(TEXT, '1:999').turns).toBe(5);
  });

  test('an empty text shows a solved cube', () => {
    expect(at('')).toMatchObject({ solved: true, turns: 0 });
  });

  test('a sample that ends solved does so here', () => {
    const { json } = turnloreJson(state, ['state', `${SAMPLES}/first-solve.moves`]);
    expect(json).toMatchObject({ solved: true, base: 'white', method: 'layers' });
    expect(json.goals.every(({ holds }) => holds)).toBe(true);
  });
});

describe('as text', () => {
  test('the net carries letters, so it can be read without colours and pasted after start:', () => {
    const { out } = turnlore(['state', '--turns', 'R']);
    expect(out).toContain('o o o g g y r r r w b b');
    expect(out).toContain('white up, green in front; not solved');
    const net = out.split('\n').filter((line) => /^(?: *[wogrby])+$/u.test(line));
    expect(net).toHaveLength(9);
    expect(at(`start:\n${net.join('\n')}\nR'\n`).solved).toBe(true);
  });

  test('it says after which turn', () => {
    const { out } = turnlore(['state', '-', '--at', '1:2'], { input: TEXT });
    expect(out).toContain("after U' (turn 1, line 2)");
  });
});

describe('what it does not take', () => {
  test.each([
    [['state'], 'A file is missing'],
    [['state', 'nowhere.moves'], '"nowhere.moves" cannot be read: there is no such file.'],
    [['state', '-', '--at', '1'], '--at wants LINE:CHAR'],
    [['state', '-', '--at', '7:0'], 'There is no line 7'],
    [['state', '-', 'other'], 'Only one file'],
    [['state', '-', '--turns', 'R'], 'Either a file or --turns'],
    [['state', '--turns', 'R', '--at', '0:0'], '--at goes with a file'],
    [['state', '-', '--base', 'white'], '--base and --method go with --turns'],
    [['state', '--turns', 'nonsense'], '"nonsense" is no turn.'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, out, err } = turnlore(args, { input: TEXT });
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  test('an unknown state is not shown', () => {
    const folder = folderWith({ 'gap.moves': 'scramble: R\nU … F\n' });
    const { status, err } = turnlore(['state', `${folder}/gap.moves`, '--at', '1:5']);
    expect(status).toBe(2);
    expect(err).toContain('The state there is unknown');
  });

  test('nor is one that begins with a net to which no turns lead', () => {
    const { status, err } = turnlore(['state', `${SAMPLES}/impossible.moves`]);
    expect(status).toBe(2);
    expect(err).toContain('no turns lead to the net at the start');
  });
});
