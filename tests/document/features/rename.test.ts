/** Names across files: where they are defined and used, and that a rename changes nothing else. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/document/analyse.ts';
import {
  definitionAt,
  referencesAt,
  rename,
  renameRange,
  type Files,
} from '../../../engine/document/features/index.ts';
import { applied } from '../analyse-support.ts';
import { withCursor } from './support.ts';

const TABLE = `sequence: right insert
  U R U' R' U' F' U F

sequence: twice
  @right-insert @right-insert'`;
const SOLVE = `use: table/inserts.moves
scramble: R U' R'
middle:
  (@right-insert)3 U @Right-Insert // @right-insert in words
sequence: own
  [F: @right-insert2]`;

const GOALS = `goal: left block = DL FL BL DFL DBL
method: mine = cross, left block, solved
solve: one
scramble: R U R'
cross:
  R
left block:
  U // left block
check: left block, cross
keeps: left block
solve: two
method: mine
Left Block:
  R`;

function renamed(files: Files, file: string, marked: string, name: string): Record<string, string> {
  const { text, position } = withCursor(marked);
  const all = { ...files, [file]: text };
  const result = rename(all, file, position, name);
  if (result.kind === 'refused') throw new Error(result.reason);
  return Object.fromEntries(
    Object.entries(all).map(([path, old]) => [path, applied(old, result.edits[path] ?? [])]),
  );
}

describe('a named sequence', () => {
  const files = { 'table/inserts.moves': TABLE, 'solve.moves': SOLVE };
  const at = (marked: string) => withCursor(marked).position;

  test('is found from its use in another file', () => {
    const position = at(SOLVE.replace('(@right-insert)3', '(@ri|ght-insert)3'));
    expect(definitionAt(files, 'solve.moves', position)).toEqual({
      file: 'table/inserts.moves',
      range: { start: { line: 0, character: 10 }, end: { line: 0, character: 22 } },
    });
  });

  test('all its uses are found, comments left out', () => {
    const position = at(TABLE.replace('right insert', 'right| insert'));
    const found = referencesAt(files, 'table/inserts.moves', position, true);
    expect(found.map(({ file, range }) => `${file} ${range.start.line}`)).toEqual([
      'table/inserts.moves 0',
      'table/inserts.moves 4',
      'table/inserts.moves 4',
      'solve.moves 3',
      'solve.moves 3',
    ]);
    expect(referencesAt(files, 'table/inserts.moves', position, false)).toHaveLength(4);
  });

  test('gets its new name everywhere', () => {
    const marked = TABLE.replace('right insert', 'right| insert');
    const after = renamed(files, 'table/inserts.moves', marked, 'Edge in');
    expect(after['table/inserts.moves']).toBe(
      TABLE.replace('right insert', 'Edge in').replaceAll('@right-insert', '@edge-in'),
    );
    expect(after['solve.moves']).toContain('(@edge-in)3 U @edge-in // @right-insert in words');
  });

  test('a name that is taken, or would be read as turns, is refused', () => {
    const position = at(TABLE.replace('right insert', 'right| insert'));
    const refused = (name: string) => rename(files, 'table/inserts.moves', position, name).kind;
    expect(['twice', 'own', '', 'R U', 'a!b', '#'].map(refused)).toEqual(Array(6).fill('refused'));
    expect(['insert', 'R insert', 'Ünder 2'].map(refused)).toEqual(Array(3).fill('edits'));
  });

  test('what stands at the place is offered for change', () => {
    const position = at(SOLVE.replace('(@right-insert)3', '(@ri|ght-insert)3'));
    expect(renameRange(files, 'solve.moves', position)?.name).toBe('right-insert');
    expect(renameRange(files, 'solve.moves', { line: 1, character: 12 })).toBeUndefined();
  });
});

describe('an own goal', () => {
  test('is renamed in headings, labels, claims and methods, a stage of everybody’s is not', () => {
    const marked = GOALS.replace('goal: left block', 'goal: left| block');
    const after = renamed({}, 'a.moves', marked, 'wing')['a.moves'];
    expect(after).toBe(GOALS.replaceAll('left block', 'wing').replace('Left Block', 'wing'));
    const { position } = withCursor(GOALS.replace('\ncross:', '\ncr|oss:'));
    expect(rename({ 'a.moves': GOALS }, 'a.moves', position, 'x').kind).toBe('refused');
  });

  test('does not take the name of a stage, a key, or turns', () => {
    const { position } = withCursor(GOALS.replace('goal: left block', 'goal: left| block'));
    for (const name of ['cross', 'OLL', 'scramble', 'R', 'a, b', 'this and that', 'a = b'])
      expect(rename({ 'a.moves': GOALS }, 'a.moves', position, name).kind, name).toBe('refused');
  });
});

describe('a method', () => {
  test('is renamed where it is made and where it is used', () => {
    const marked = GOALS.replace('method: mine =', 'method: mi|ne =');
    const after = renamed({}, 'a.moves', marked, 'ours')['a.moves'];
    expect(after).toBe(GOALS.replaceAll('mine', 'ours'));
  });
});

test('a rename changes nothing but names: turns, stages, findings stay', () => {
  const names = fc
    .array(fc.constantFrom('wing', 'hedge', 'Insert', 'oben', '2b', 'left-over', 'in'), {
      minLength: 1,
      maxLength: 3,
    })
    .map((words) => words.join(' '));
  const texts = [
    { text: `${TABLE}\nsolve:\nscramble: R U\n  @right-insert (@twice)2 R`, word: 'right insert' },
    { text: GOALS, word: 'left block' },
    { text: GOALS, word: 'mine' },
  ];
  let done = 0;
  fc.assert(
    fc.property(names, fc.constantFrom(...texts), (name, { text, word }) => {
      const { position } = withCursor(text.replace(word, `|${word}`));
      const result = rename({ 'a.moves': text }, 'a.moves', position, name);
      if (result.kind === 'refused') return;
      done++;
      const after = applied(text, result.edits['a.moves']);
      const told = (one: string): string[] =>
        analyse(one).blocks.map((block) =>
          JSON.stringify([
            Array.from(block.course.codes),
            block.timeline.stages,
            block.timeline.breaks,
            block.solved,
          ]),
        );
      expect(told(after)).toEqual(told(text));
      const codes = (one: string) => analyse(one).findings.map((finding) => finding.code);
      expect(codes(after)).toEqual(codes(text));
    }),
  );
  expect(done).toBeGreaterThan(30);
});
