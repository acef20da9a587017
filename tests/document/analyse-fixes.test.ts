/**
 * Every fix that is offered, in a corpus of faulty texts: applied, its finding is gone, and no error
 * has come instead.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis } from '../../engine/document/analysis.ts';
import type { Finding } from '../../engine/document/finding.ts';
import { CASES } from './analyse-cases.ts';
import { applied, only } from './analyse-support.ts';

const root = new URL('../../', import.meta.url);
const SAMPLES = readdirSync(new URL('media/samples', root)).map((name): [string, string] => [
  name,
  readFileSync(new URL(`media/samples/${name}`, root), 'utf8'),
]);
const README = [
  ...readFileSync(new URL('README.md', root), 'utf8').matchAll(/```moves\n([^]*?)```/g),
].map(([, text], i): [string, string] => [`README, example ${i + 1}`, text]);

const MORE: [string, string][] = [
  'scramble: R U\r\nRi\r\nand then I looked for a long time\r\nU i',
  "scramble: R\n1. R prime U two then\n2. R R' U\n",
  "scramble: U' R' U' R' U' R' U' R'\nsolved:\n(R U) x2\n(R U) x2",
  'scramble: D\nbase: yellow\ncross: and that was easy enough\n  R R\n  R2',
  "scramble: R U2 R' U' R U' R'\nbase: yellow\ncross:\ncorners:\n  R U R' U R U2 R\ntop cross:\n  F R U R' U' F'",
  "scramble: R U\nF2L #1 (7), 3.2 s:\n  U' R'\nPLL (2 moves):\n",
  'sequence: a (b\n  (R U [F, D\n  order: 7\n  does: (UF UR)',
  'sequence: low\n  r u r2 u2\n  order: 105',
  "scramble: R U R' U'\nu r u' r' // cross\n// solved",
].map((text, i) => [`text ${i + 1}`, text]);

const CORPUS: [string, string][] = [
  ...CASES.map(({ code, text }): [string, string] => [`the case of ${code}`, text]),
  ...SAMPLES,
  ...README,
  ...MORE,
];

function errors({ findings }: Analysis): number {
  return findings.filter(({ severity }) => severity === 'error').length;
}

function ofCode({ findings }: Analysis, { code }: Finding): number {
  return findings.filter((finding) => finding.code === code).length;
}

describe('a fix, applied, leaves nothing of its finding and brings no error', () => {
  test.each(CORPUS)('%s', (_name, text) => {
    const before = analyse(text);
    for (const finding of before.findings) {
      for (const fix of finding.fixes) {
        const after = analyse(applied(text, fix.edits));
        expect(ofCode(after, finding), `${fix.title}: ${finding.message}`).toBeLessThan(
          ofCode(before, finding),
        );
        const gone = finding.severity === 'error' ? 1 : 0;
        expect(errors(after), fix.title).toBeLessThanOrEqual(errors(before) - gone);
      }
    }
  });

  test('the corpus has fixes of most kinds', () => {
    const kinds = new Set(
      CORPUS.flatMap(([, text]) =>
        analyse(text).findings.flatMap(({ code, fixes }) => (fixes.length > 0 ? [code] : [])),
      ),
    );
    for (const code of [
      'base-assumed',
      'claim-false',
      'count-differs',
      'cross-not-aligned',
      'goal-broken',
      'goal-not-reached',
      'holding-differs',
      'last-turn-missing',
      'prose',
      'repeat-or-rotation',
      'spelling',
      'spoken-notation',
      'turns-cancel',
      'unclosed',
      'unknown-key',
      'wide-or-face',
    ] as const)
      expect([...kinds]).toContain(code);
  });
});

describe('what a fix is offered for', () => {
  test('a stage one turn short: the single change that reaches it', () => {
    const text = "scramble: R U' R'\nbase: yellow\ncross:\ncorners:\n  R U";
    const finding = only(text, 'goal-not-reached');
    expect(finding.message).toContain("R' after U (turn 2, line 5) reaches it.");
    // Where the turn stands in the next stage, writing it twice would be worse.
    const late = `${text}\nmiddle:\n  R'`;
    expect(only(late, 'goal-not-reached').fixes).toEqual([]);
  });

  test('not where something else gets worse by it', () => {
    // D' would make the cross, but the corners that come after count on the layer as it is.
    const text = "scramble: D\nbase: yellow\ncross:\n  U\ncorners:\n  D' U' F F'\nsolved:";
    const finding = only(text, 'cross-not-aligned');
    expect(finding.fixes).toEqual([]);
  });

  test('`(A) x2`: where the rotation is what fits the claims, the repeat is not offered', () => {
    const rotation = "scramble: U' R'\nbase: yellow\nsolved:\n(R U) x2";
    expect(only(rotation, 'repeat-or-rotation').fixes).toEqual([]);
    const repeat = "scramble: U' R' U' R'\nbase: yellow\nsolved:\n(R U) x2";
    expect(only(repeat, 'repeat-or-rotation').message).toContain('only that fits');
  });

  test('several of them that only together fit are rewritten together', () => {
    const text = "scramble: U' R' U' R' U' R' U' R'\nsolved:\n(R U) x2\n(R U) x2";
    const [first, second] = analyse(text).findings.filter(
      ({ code }) => code === 'repeat-or-rotation',
    );
    expect(first.fixes[0].edits.length).toBe(2);
    expect(second.fixes).toEqual(first.fixes);
    expect(analyse(applied(text, first.fixes[0].edits)).blocks[0].solved).toBe(true);
  });

  test('a whole solve in lower case, faces meant: one finding, one fix, and the cube is solved', () => {
    const text =
      "scramble: R U' R'\nbase: yellow\ncross:\n// a remark\ncorners:\n  r u r'\nmiddle:\n  u u'\nsolved:";
    const finding = only(text, 'wide-or-face');
    expect(analyse(applied(text, finding.fixes[0].edits)).blocks[0].solved).toBe(true);
  });

  test('wide turns that are meant are left alone', () => {
    const text = "scramble: r u' r'\nbase: yellow\nsolved:\n  r u r'";
    expect(analyse(text).findings).toEqual([]);
    const mixed = "scramble: R\nbase: yellow\nsolved:\n  r u r' U";
    expect(analyse(mixed).findings.map(({ code }) => code)).not.toContain('wide-or-face');
  });

  test('where nothing is claimed it is told, but not decided', () => {
    const finding = only("sequence: low\n  r u r' u'", 'wide-or-face');
    expect(finding.fixes).toEqual([]);
    expect(finding.message).not.toContain('only that');
  });
});
