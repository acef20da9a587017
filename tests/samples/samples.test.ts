/**
 * The sample files: each is right, or wrong on purpose in a way that its own text says. What it says
 * is held against what is found: codes, and the lines (from 1) of the text.
 */
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { pieceTitle, piecesIn, placedSet } from '../../engine/cube/piece.ts';
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis } from '../../engine/document/analysis.ts';

const FOLDER = fileURLToPath(new URL('../../media/samples', import.meta.url));

/** Findings that are shown, as `severity code line`; none for a file that is right throughout. */
const FOUND: Readonly<Record<string, readonly string[]>> = {
  'broken-cross': ['error goal-broken 16'],
  'cross-sides': [
    'warning cross-not-aligned 6',
    'information base-assumed 14',
    'error cross-not-aligned 15',
    'warning goal-not-reached 17',
  ],
  dictated: ['information spoken-notation 6'],
  'false-claims': ['error claim-false 5', 'error claim-false 9', 'error claim-false 13'],
  'first-solve': [],
  'from-the-bench': [],
  impossible: [
    'error state-impossible 5',
    'error state-impossible 17',
    'error state-impossible 29',
  ],
  'last-turn': ['warning last-turn-missing 29'],
  'no-scramble': ['information start-assumed 6'],
  'odd-habits': [
    'warning unknown-key 6',
    'warning holding-differs 8',
    'information count-differs 9',
    'warning turns-cancel 13',
    'warning repeat-or-rotation 16',
  ],
  pairs: [],
  'pasted-post': [
    'information prose 1',
    'information spelling 8',
    'information spelling 8',
    'information prose 9',
  ],
  'stage-not-reached': ['error goal-not-reached 18', 'warning goal-not-reached 22'],
  'tuesday-table': [],
  'two-layers-done': [],
  workbench: [],
};

const NAMES = readdirSync(FOLDER).map((file) => path.basename(file, '.moves'));

function textOf(name: string): string {
  return readFileSync(path.join(FOLDER, `${name}.moves`), 'utf8');
}

function analysed(name: string): Analysis {
  const imports = { 'workbench.moves': textOf('workbench') };
  return analyse(textOf(name), { imports });
}

test('every sample is named here', () => {
  expect(NAMES.sort()).toEqual(Object.keys(FOUND).sort());
});

describe('what is found in', () => {
  test.each(Object.entries(FOUND))('%s', (name, found) => {
    const shown = analysed(name)
      .findings.filter(({ severity }) => severity !== 'off')
      .map(({ severity, code, range }) => `${severity} ${code} ${range.start.line + 1}`);
    expect(shown).toEqual(found);
  });
});

describe('a sample', () => {
  test.each(NAMES.map((name) => [name]))(
    '%s says whether it is right or wrong on purpose',
    (name) => {
      const wrong = FOUND[name].some((finding) => /^(?:error|warning)/u.test(finding));
      const says = /wrong on purpose/iu.test(textOf(name));
      if (wrong) expect(says).toBe(true);
      // Hints (a spelling, an assumption) may be wrong on purpose, too, but what is right says so.
      else expect(says || /\bright\b|scramble is lost/iu.test(textOf(name))).toBe(true);
    },
  );

  test.each([
    ['first-solve', [true]],
    ['from-the-bench', [true]],
    ['no-scramble', [true]],
    ['pairs', [true]],
    ['pasted-post', [true]],
    ['tuesday-table', [true, true]],
    ['two-layers-done', [true]],
    ['last-turn', [false]],
    ['broken-cross', [false]],
    ['stage-not-reached', [false]],
  ])('%s: its solves end solved or not as they say: %j', (name, solved) => {
    const solves = analysed(name).blocks.filter(({ kind }) => kind === 'solve');
    expect(solves.map((solve) => solve.solved)).toEqual(solved);
  });

  test.each(['first-solve', 'from-the-bench', 'no-scramble', 'pairs', 'two-layers-done'])(
    '%s: every goal is reached and kept',
    (name) => {
      const [solve] = analysed(name).blocks;
      expect(solve.timeline.outcomes.every(({ reached, kept }) => reached && kept)).toBe(true);
    },
  );
});

describe('what the texts say in so many words', () => {
  test('broken-cross: writing the prime that its note names makes it right', () => {
    const mended = textOf('broken-cross').replace("y R U' R  ", "y R U' R' ");
    const [solve] = analyse(mended, {}).blocks;
    expect(solve.solved).toBe(true);
  });

  test('broken-cross: the finding names the piece, and its fix writes just that prime', () => {
    const [finding] = analysed('broken-cross').findings.filter(
      ({ code }) => code === 'goal-broken',
    );
    expect(finding.goal).toBe('cross');
    expect(finding.message).toContain('the white-green edge');
    expect(finding.fixes[0].edits[0].newText).toBe("R'");
  });

  test('last-turn: one more turn solves it', () => {
    const [solve] = analyse(`${textOf('last-turn')}  U'\n`, {}).blocks;
    expect(solve.solved).toBe(true);
  });

  test('cross-sides: the first lacks one turn of the layer, the second has two edges exchanged', () => {
    const kinds = analysed('cross-sides').findings.flatMap(({ code, kind }) =>
      code === 'cross-not-aligned' ? [kind] : [],
    );
    expect(kinds).toEqual(['offset', 'order']);
  });

  test('tuesday-table: the aside puts the same corner in, and the solve goes on without it', () => {
    const [, second] = analysed('tuesday-table').blocks;
    const [aside] = second.asides;
    const end = aside.course.stateAt(aside.course.length);
    if (end === undefined) throw new Error('the aside has no end');
    const home = piecesIn(placedSet(end)).map((piece) => pieceTitle(piece, aside.base));
    expect(home).toContain('white-blue-red corner');
    expect(textOf('tuesday-table')).toContain('// white-blue-red corner goes home this way, too');
    expect(second.solved).toBe(true);
  });
});
