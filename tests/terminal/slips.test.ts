/** `slips FILE`: what explains a solve that does not end as it claims. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { check, state } from '../../extension/terminal/json.ts';
import { slips, stray } from '../../extension/terminal/json-searches.ts';
import { folderWith, SAMPLES, turnlore, turnloreJson } from './turnlore.ts';

const RIGHT = readFileSync(`${SAMPLES}/first-solve.moves`, 'utf8');

function slipsIn(text: string) {
  const folder = folderWith({ 'a.moves': text });
  return turnloreJson(slips, ['slips', `${folder}/a.moves`]).json;
}

type Found = ReturnType<typeof slipsIn>['slips'][number];

/** The text with the edits made, by positions as an editor has them. */
function edited(text: string, { edits }: Found): string {
  const lines = text.split('\n');
  for (const { range, newText } of edits.toReversed()) {
    const { line } = range.start;
    expect(range.end.line).toBe(line);
    lines[line] =
      lines[line].slice(0, range.start.character) +
      newText +
      lines[line].slice(range.end.character);
  }
  return lines.join('\n');
}

describe('a slip', () => {
  test.each([
    ['a missing prime', "y L' U L    ", 'y L U L    ', "L' instead of L, turn 14, line 21"],
    ["y for y'", "y U' R U' R'", "y' U' R U' R'", "y instead of y'"],
    ['one in the scramble', "R2 B U2 L'", "R2 B U L'", 'U2 instead of U, turn 12 of the scramble'],
  ])('%s is the first answer, and mends the text', (_, right, wrong, title) => {
    expect(RIGHT).toContain(right);
    const text = RIGHT.replace(right, wrong);
    const found = slipsIn(text);
    expect(found.slips[0].title).toContain(title);
    expect(found.slips[0].title).toContain('then it ends solved');
    expect(edited(text, found.slips[0])).toBe(RIGHT);
    expect(found.slips[0].left).toBe(0);
  });

  test('check has it among the fixes of the finding', () => {
    const text = RIGHT.replace('R2 B U2 L', 'R2 B U L');
    const folder = folderWith({ 'a.moves': text });
    const { json, status } = turnloreJson(check, ['check', `${folder}/a.moves`]);
    const titles = json.files[0].findings.flatMap(({ fixes }) => fixes.map(({ title }) => title));
    expect(status).toBe(1);
    expect(titles.join('\n')).toContain('U2 instead of U, turn 12 of the scramble, line 3');
  });
});

describe('a cube that does not look as the solve says', () => {
  const file = `${SAMPLES}/first-solve.moves`;

  /** The cube of a text at a place (line and character from 0), as rows for the command line. */
  function netAt(text: string, at: string): string {
    const folder = folderWith({ 'a.moves': text });
    const { faces } = turnloreJson(state, ['state', `${folder}/a.moves`, '--at', at]).json;
    const rows = (face: string): string[] => [0, 3, 6].map((from) => face.slice(from, from + 3));
    const side = [0, 1, 2].map((row) =>
      [faces.L, faces.F, faces.R, faces.B].map((face) => rows(face)[row]).join(''),
    );
    return [...rows(faces.U), ...side, ...rows(faces.D)].join('/');
  }

  test('is where the solve looks so: one line further than thought', () => {
    const cube = netAt(RIGHT, '20:14');
    const { json } = turnloreJson(stray, ['slips', file, '--cube', cube, '--at', '18:12']);
    // The y that follows turns the cube as a whole and so changes nothing of how it looks.
    const places = [
      { turns: 19, number: 16 },
      { turns: 20, number: 16 },
    ];
    expect(json.stray).toEqual({ places, slips: [], back: null });
  });

  test('or is explained by the slip of the learner, with a way back that leads there', () => {
    const cube = netAt(RIGHT.replace("y L' U L    ", 'y L U L    '), '25:26');
    const { json } = turnloreJson(stray, ['slips', file, '--cube', cube, '--at', '25:28']);
    expect(json.stray.slips[0]).toBe("L instead of L', turn 14, line 21");
    expect(json.stray.places).toEqual([]);
    expect(json.stray.back?.turns).not.toBe('');
  });

  test('the same cube twice in a solve is two places, the nearer first', () => {
    const folder = folderWith({ 'a.moves': "scramble: R\nU U' U U'" });
    const cube = netAt('scramble: R\nU', '1:0');
    const { json } = turnloreJson(stray, ['slips', `${folder}/a.moves`, '--cube', cube]);
    expect(json.stray.places.map(({ turns }) => turns)).toEqual([4, 2, 0]);
  });

  test.each([
    [['slips', file, '--cube', 'www/www'], 'The net cannot be read'],
    [['slips', file, '--at', '1:1'], '--at goes with --cube'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, err } = turnlore(args);
    expect(status).toBe(2);
    expect(err).toContain(sentence);
  });
});

describe('with no slip to find', () => {
  test('a solve that is right says so', () => {
    expect(slipsIn(RIGHT)).toEqual({ slips: [], solve: null });
    expect(turnlore(['slips', `${SAMPLES}/first-solve.moves`]).out).toContain('ends as it claims');
  });

  test('a stage that lacks a whole line is not explained by one turn', () => {
    expect(turnlore(['slips', `${SAMPLES}/stage-not-reached.moves`]).out).toContain(
      'No slip of one or two turns explains',
    );
  });

  test.each([
    [['slips'], 'A file is missing'],
    [['slips', 'missing.moves'], 'there is no such file'],
    [['slips', 'a', 'b'], 'Only one file'],
  ])('%j: one sentence, exit status 2', (args, sentence) => {
    const { status, err } = turnlore(args);
    expect(status).toBe(2);
    expect(err).toContain(sentence);
  });
});
