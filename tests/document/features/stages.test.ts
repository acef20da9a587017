/** What is shown of stages as they are written: live claims, counts, lenses, tints. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/document/analyse.ts';
import {
  inlayHints,
  lenses,
  liveClaims,
  semanticTokens,
  TOKEN_MODIFIERS,
  TOKEN_TYPES,
} from '../../../engine/document/features/index.ts';
import { CASES } from '../analyse-cases.ts';

/** Scrambled by the inverse of what solves the cross in four lines, white down; computed by the engine. */
const SOLVE = `scramble: F' R2 U' L F U2 L2 R' F2 D F B2 U F' D' B2 F' U2 B2 L2
x2
cross:
  L' D2
  U2 L F'
  U B L'
  D' R D
corners:
  R U' R'
  L' U L
  y R U' R
  y R U' R'
middle:
  U`;

describe('live claims', () => {
  const at = (line: number): string[] =>
    liveClaims(analyse(SOLVE), { line, character: 2 })
      .filter(({ position }) => position.line === line)
      .map(({ text }) => text);

  test('tell how many parts are in place, and say when the stage is reached', () => {
    expect([3, 4, 5, 6].flatMap(at)).toEqual([
      '1 of 4 edges',
      '2 of 4 edges',
      '3 of 4 edges',
      'cross reached',
    ]);
  });

  test('tell what is lent, and since when', () => {
    expect([8, 9, 10].flatMap(at)).toEqual([
      '1 of 4 corners',
      '2 of 4 corners',
      '2 of 4 corners; white-green out since turn 18',
    ]);
  });

  test('a stage that comes later goes on saying what is out', () => {
    expect(at(13)).toEqual(['1 of 4 edges; white-green out since turn 18']);
  });

  test('a part of the stage itself that was in place and is out', () => {
    const text = 'scramble: F2 R2\nbase: white\ncross:\n  R2\n  F2\n  R2';
    const claims = (line: number) =>
      liveClaims(analyse(text), { line, character: 3 }).map((claim) => claim.text);
    expect(claims(4)).toEqual(['cross reached']);
    expect(claims(5)[0]).toMatch(/^3 of 4 edges; white-\w+ out since turn 3$/);
  });

  test('without a cursor only the last stage speaks, until it is reached', () => {
    expect(liveClaims(analyse(SOLVE)).map(({ goal }) => goal)).toEqual(['middle']);
    const reached = SOLVE.split('\n').slice(0, 7).join('\n');
    expect(liveClaims(analyse(reached))).toEqual([]);
  });
});

test('counts at line ends: of the line, and so far', () => {
  const hints = inlayHints(analyse(SOLVE), { counts: true, claims: false });
  expect(hints.map(({ position, label }) => `${position.line} ${label}`).slice(0, 4)).toEqual([
    '3 2',
    '4 3 · 5',
    '5 3 · 8',
    '6 3 · 11',
  ]);
  expect(
    hints.every(({ position }) => position.character === SOLVE.split('\n')[position.line].length),
  ).toBe(true);
  const some = inlayHints(analyse(SOLVE), {
    counts: true,
    claims: false,
    lines: { first: 4, last: 5 },
  });
  expect(some).toHaveLength(2);
  expect(inlayHints(analyse(SOLVE), { counts: false, claims: false })).toEqual([]);
});

describe('lenses', () => {
  test('on headings what became of the goal, and the tutor', () => {
    const found = lenses(analyse(SOLVE)).map(({ range, title, question }) =>
      [range.start.line, title, question ?? ''].join(' | '),
    );
    expect(found).toEqual([
      '2 | 11 turns · reached, then broken | ',
      '2 | Ask the tutor | Where did the cross break?',
      '7 | 12 turns · not reached | ',
      '7 | Ask the tutor | What next?',
      '12 | 1 turn · not reached | ',
      '12 | Ask the tutor | What next?',
    ]);
  });

  test('on a sequence what it does to any cube', () => {
    const [lens] = lenses(analyse("sequence: in\n  U R U' R' U' F' U F"));
    expect(lens.title).toBe('8 turns · order 15 · keeps cross, corners');
  });
});

describe('semantic tokens', () => {
  const told = (text: string): string[] => {
    const analysis = analyse(text);
    return semanticTokens(analysis).map(({ line, start, length, type, modifiers }) =>
      [analysis.lines[line].slice(start, start + length), type, ...modifiers].join(' '),
    );
  };

  test('turns bear what became of their stage; rotations, pauses, names and nonsense are told apart', () => {
    expect(
      told(
        "scramble: R\nbase: yellow\ncross:\n  R' ~ x\ncorners:\n  R Q7 …\nsequence: a\n  @a (U)2",
      ),
    ).toEqual([
      'R turn',
      'cross stage done',
      "R' turn done",
      '~ pause',
      'x rotation done',
      'corners stage open',
      'R turn open',
      'Q7 notATurn',
      '… gap',
      '@a calledSequence',
      'U turn',
    ]);
  });

  test('the extension declares every type and modifier', () => {
    const manifest = JSON.parse(
      readFileSync(new URL('../../../package.json', import.meta.url), 'utf8'),
    ) as { contributes: Record<string, { id: string }[]> };
    const ids = (key: string): string[] => manifest.contributes[key].map(({ id }) => id).sort();
    expect(ids('semanticTokenTypes')).toEqual([...TOKEN_TYPES].sort());
    expect(ids('semanticTokenModifiers')).toEqual([...TOKEN_MODIFIERS].sort());
  });

  test('face, wide, slice and whole-cube turns are told apart', () => {
    expect(told('R Rw M x')).toEqual(['R turn', 'Rw wideTurn', 'M sliceTurn', 'x rotation']);
  });

  test('a stage whose goal is lost later is tinted so', () => {
    expect(told(SOLVE)).toContain('cross stage lost');
    expect(told(SOLVE)).toContain('D2 turn lost');
  });

  test('they are in order and never overlap, whatever the text', () => {
    for (const { text, nearly } of CASES)
      for (const one of [text, nearly]) {
        const tokens = semanticTokens(analyse(one));
        tokens.slice(1).forEach((token, index) => {
          const before = tokens[index];
          if (before.line === token.line)
            expect(before.start + before.length).toBeLessThanOrEqual(token.start);
          else expect(before.line).toBeLessThan(token.line);
        });
      }
  });
});
