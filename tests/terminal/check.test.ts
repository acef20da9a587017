/** `check FILE|FOLDER…`: findings, solves and sequences of texts. */
import { describe, expect, test } from 'vitest';
import { check } from '../../extension/terminal/json.ts';
import { SAMPLES, folderWith, turnlore, turnloreJson } from './turnlore.ts';

function checked(text: string | Buffer) {
  const { json, status } = turnloreJson(check, ['check', '-'], { input: text });
  return { file: json.files[0], status };
}

describe('what it reports of a solve', () => {
  const text = [
    'title: Two turns', // line 0
    "scramble: U' R'",
    'base: yellow',
    'z2 R U // the way back, upside down it is another',
    '',
  ].join('\n');

  test('title, line, base, method and counts', () => {
    const [solve] = checked(text).file.solves;
    expect(solve).toMatchObject({ title: 'Two turns', base: 'yellow', method: 'layers', turns: 3 });
    expect(solve.counts).toEqual({ obtm: 2, etm: 3, stm: 2, qtm: 2 });
  });

  test('all stages of the method, skipped ones with null for their turns', () => {
    const { file } = checked("scramble: R' U'\ncross:\n  U\n  R\n");
    const [cross, corners] = file.solves[0].stages;
    expect(file.solves[0].stages.map(({ name }) => name)).toEqual([
      'cross',
      'corners',
      'middle',
      'top cross',
      'top face',
      'top corners',
      'solved',
    ]);
    expect(cross).toMatchObject({
      firstTurn: 0,
      lastTurn: 1,
      counts: { obtm: 2, etm: 2, stm: 2, qtm: 2 },
    });
    expect(corners).toMatchObject({
      firstTurn: null,
      lastTurn: null,
      counts: { obtm: 0, etm: 0, stm: 0, qtm: 0 },
    });
  });

  test('turns count from 0 with rotations, numbers from 1 without: y is turn 0 and has no number', () => {
    // The cross of yellow is made at the start; R takes an edge out, R' brings it back.
    const { file } = checked("scramble: U\nbase: yellow\ncross:\ncorners:\ny R U R'\n");
    expect(file.solves[0].breaks[0]).toEqual({
      goal: 'cross',
      kind: 'passing',
      turn: 1,
      number: 1,
      turnText: 'R',
      line: 4,
      pieces: ['yellow-blue'],
      restoredAt: 3,
    });
  });

  test('a lasting break has the turn that opened it and null for its return', () => {
    const { json } = turnloreJson(check, ['check', `${SAMPLES}/broken-cross.moves`]);
    const lasting = json.files[0].solves[0].breaks.filter(({ kind }) => kind === 'lasting');
    expect(lasting).toMatchObject([
      {
        goal: 'cross',
        turnText: 'R',
        number: 18,
        line: 15,
        pieces: ['white-green'],
        restoredAt: null,
      },
    ]);
    expect(json.files[0].solves[0].stages[0]).toMatchObject({ reached: true, kept: false });
  });

  test('asides belong to their solve', () => {
    const { json } = turnloreJson(check, ['check', `${SAMPLES}/tuesday-table.moves`]);
    const [first, second] = json.files[0].solves;
    expect(first).not.toHaveProperty('asides');
    expect(second.asides).toMatchObject([
      { title: 'the same corner with one turn more', solved: false },
    ]);
    expect(second.solved).toBe(true);
  });
});

describe('what it reports of a sequence', () => {
  test("R' F R' B2 R F' R' B2 R2: order, cycles, and what it keeps with the base down (common practice)", () => {
    const { file } = checked("sequence: corners\n  R' F R' B2 R F' R' B2 R2\n");
    expect(file.sequences).toMatchObject([
      { name: 'corners', line: 0, order: 3, does: '(UFR UBL URB)' },
    ]);
    expect(file.sequences[0].keeps.filter(({ holds }) => !holds).map(({ goal }) => goal)).toEqual([
      'top corners',
      'solved',
    ]);
  });

  test('its order counts centres and holding: R y takes 1260 times (computed with GAP and SymPy)', () => {
    expect(checked('sequence: walk\n  R y\n').file.sequences[0].order).toBe(1260);
  });

  test('with an unknown stretch nothing can be told of it', () => {
    expect(checked('sequence: half\n  R … U\n').file.sequences[0]).toMatchObject({
      order: null,
      does: '…',
      keeps: [],
    });
  });
});

describe('findings', () => {
  test('carry code, severity, sentence, zero-based range and fixes whose edits say what to write', () => {
    const { file, status } = checked('scramble: R\nRi\n');
    expect(status).toBe(0);
    const spelling = file.findings.find(({ code }) => code === 'spelling');
    expect(spelling).toMatchObject({
      severity: 'information',
      range: { start: { line: 1, character: 0 }, end: { line: 1, character: 2 } },
      fixes: [{ edits: [{ newText: "R'" }] }],
    });
  });

  test('that are off are not listed: a cross lent out and brought back is no finding', () => {
    const { json } = turnloreJson(check, ['check', `${SAMPLES}/first-solve.moves`]);
    expect(json.files[0].findings).toEqual([]);
    expect(json.files[0].solves[0].breaks.length).toBeGreaterThan(0);
  });

  test('beyond a hundred are counted, and the gravest are the ones listed', () => {
    const notes = 'Ri U\n'.repeat(120);
    const { file, status } = checked(`scramble: R\n${notes}(R\n`);
    expect(file.findings).toHaveLength(100);
    expect(file.more).toBeGreaterThanOrEqual(20);
    expect(file.findings.map(({ code }) => code)).toContain('unclosed');
    expect(status).toBe(1);
  });
});

describe('exit status', () => {
  test.each([
    ['first-solve', 0],
    ['last-turn', 0],
    ['no-scramble', 0],
    ['broken-cross', 1],
    ['impossible', 1],
  ])('of %s.moves: %i', (sample, status) => {
    expect(turnlore(['check', `${SAMPLES}/${sample}.moves`]).status).toBe(status);
  });

  test('is 1 if one of several files has an error', () => {
    const files = ['first-solve', 'false-claims'].map((name) => `${SAMPLES}/${name}.moves`);
    expect(turnlore(['check', ...files]).status).toBe(1);
  });
});

describe('what it reads', () => {
  test('all .moves files of a folder and below, in the order of their paths, others left out', () => {
    const folder = folderWith({
      'b.moves': 'R',
      'a/z.moves': 'R',
      'a/notes.txt': 'R',
      'node_modules/c.moves': 'R',
      'B.MOVES': 'R',
    });
    const { json } = turnloreJson(check, ['check', '.'], { cwd: folder });
    expect(json.files.map(({ file }) => file)).toEqual(['B.MOVES', 'a/z.moves', 'b.moves']);
  });

  test('a file once, though it is named twice', () => {
    const folder = folderWith({ 'a.moves': 'R' });
    const { json } = turnloreJson(check, ['check', 'a.moves', '.', './a.moves'], { cwd: folder });
    expect(json.files).toHaveLength(1);
  });

  test('any line ends, a byte order mark, UTF-16 from a note pad', () => {
    for (const input of [
      '\ufeffscramble: R\r\nRi\r\n',
      'scramble: R\rRi\r',
      Buffer.from('\ufeffscramble: R\r\nRi', 'utf16le'),
    ]) {
      const { file } = checked(input);
      const spelling = file.findings.find(({ code }) => code === 'spelling');
      expect(spelling?.range.start).toEqual({ line: 1, character: 0 });
    }
  });

  test('sequences of files that it uses, found beside the file', () => {
    const folder = folderWith({
      'day/solve.moves': "use: ../bench.moves\nscramble: U R U' R'\n@trigger\n",
      'bench.moves': "sequence: trigger\n  R U R' U'\n",
    });
    const { json, status } = turnloreJson(check, ['check', 'day/solve.moves'], { cwd: folder });
    expect(status).toBe(0);
    expect(json.files[0].solves[0].solved).toBe(true);
  });

  test('says so when a used file is missing', () => {
    const { file } = checked('use: nowhere.moves\nscramble: R\nR\n');
    expect(file.findings.map(({ code }) => code)).toContain('use-not-found');
  });

  test.each([
    ['nothing', [], 'A file or folder to check is missing'],
    ['a missing file', ['nowhere.moves'], '"nowhere.moves" cannot be read: there is no such file.'],
    ['a folder without .moves files', ['empty'], '"empty" holds no .moves file.'],
    ['a picture', ['picture.moves'], '"picture.moves" is not a text file in UTF-8.'],
    ['zero bytes', ['zeros.moves'], '"zeros.moves" is not a text file in UTF-8.'],
    ['a path through a file', ['ok.moves/x'], 'a part of its path is no folder'],
    ['one bad file among good ones', ['ok.moves', 'nowhere.moves'], '"nowhere.moves"'],
  ])('not %s: one sentence, exit status 2', (_what, names, sentence) => {
    const folder = folderWith({
      'ok.moves': 'R',
      'empty/notes.txt': 'R',
      'picture.moves': Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe]),
      'zeros.moves': Buffer.from([0x52, 0, 0x55]),
    });
    const { status, out, err } = turnlore(['check', ...names], { cwd: folder });
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(sentence);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});

describe('as text', () => {
  test('a finding shows its line with a mark below the place', () => {
    const { out } = turnlore(['check', `${SAMPLES}/broken-cross.moves`]);
    expect(out).toContain("     16 │   y R U' R                 // white-red-green corner");
    expect(out).toContain('        │     ^\n');
    expect(out).toContain(
      'lasting break of cross by R, turn 18, line 16 (white-green); never back',
    );
  });

  test('the mark stands below its place behind wide letters, too, which take two columns', () => {
    const { out } = turnlore(['check', '-'], { input: 'scramble: R\nR 漢字 Ri\n' });
    expect(out).toContain('      2 │ R 漢字 Ri\n        │        ^^\n');
  });

  test('control characters of a text do not reach the terminal', () => {
    const { out } = turnlore(['check', '-'], {
      input: 'title: \u001b[31mred\u0007\nscramble: R\nRi\u001b]0;x\u0007\n',
    });
    // eslint-disable-next-line no-control-regex -- exactly these must not occur
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f]/u);
  });

  test('it has no colours unless they are asked for, and they change nothing but colours', () => {
    const file = `${SAMPLES}/broken-cross.moves`;
    const plain = turnlore(['check', file]).out;
    const forced = turnlore(['check', file], { env: { FORCE_COLOR: '3' } }).out;
    expect(plain).not.toContain('\u001b');
    expect(forced).toContain('\u001b[38;2;');
    expect(turnlore(['check', file], { env: { FORCE_COLOR: '1', COLORTERM: '' } }).out).toContain(
      '\u001b[38;5;',
    );
    expect(turnlore(['check', file], { env: { NO_COLOR: '1' } }).out).toBe(plain);
    // eslint-disable-next-line no-control-regex -- colour codes are control characters
    expect(forced.replaceAll(/\u001b\[[\d;]*m/gu, '')).toBe(plain);
  });
});

describe('hard texts', () => {
  test('a repeat bomb is too-long, and its counts are right as far as they can be told', () => {
    const { file } = checked('scramble: R\n((R U)9999)9999\n');
    expect(file.findings.map(({ code }) => code)).toContain('too-long');
    expect(file.solves[0].counts.obtm).toBe(2 * 9999 * 9999);
    const beyond = checked('scramble: R\n(((((R U)9999)9999)9999)9999)9999\n');
    expect(beyond.file.solves[0].counts.obtm).toBeNull();
  });

  test('ten thousand open brackets are no hindrance', () => {
    expect(checked(`${'('.repeat(10_000)}R`).status).toBe(1);
  });
});
