/** Formatting: nothing is lost, the effect is kept, and a second time changes nothing. */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../engine/document/analyse.ts';
import { format } from '../../../engine/document/features/index.ts';
import { CASES } from '../analyse-cases.ts';
import { applied } from '../analyse-support.ts';
import { writtenSolve } from '../analyse-texts.ts';
import { executed } from './support.ts';

const formatted = (text: string): string => applied(text, format(analyse(text)));

/** Comments and words in order, with blanks and the kind of mark taken out. */
function comments(text: string): string[] {
  return analyse(text).tree.lines.flatMap(({ content }) =>
    'comment' in content && content.comment !== undefined ? [content.comment.text] : [],
  );
}

function mustHold(text: string): void {
  const once = formatted(text);
  expect(formatted(once)).toBe(once);
  expect(comments(once)).toEqual(comments(text));
  expect(executed(once)).toEqual(executed(text));
  expect(once.replace(/\s/g, '').length).toBeGreaterThan(0.5 * text.replace(/\s/g, '').length);
}

const MESS: readonly ((line: string, n: number) => string)[] = [
  (line) => line,
  (line) => `${line}   `,
  (line) => line.replaceAll("'", '’'),
  (line) => line.replace(/^\s*(?=[RULDFBMy])/, '\t'),
  (line) => line.replace(/ (?=[A-Z])/g, '  '),
  (line) => (line.includes('//') || line.trim() === '' ? line : `${line} // so it was`),
  (line) => (line.includes('//') || line.trim() === '' ? line : `${line}# odd, (8)`),
  (line) => line.replace(/\/\/ ?/, '//'),
  (line) => (/^\s+[A-Z]/.test(line) ? `${line} foo7` : line),
  (line) => line.replace(/R' U'/, '[R,U]'),
  (line) => line.replace(/^(\w+):/, (key) => key.toUpperCase()),
  (line) => line.replace(/R U R'/, '(R U)x3 Ri'),
];

describe('a text formatted', () => {
  test('however it was written, comments and effect are kept, and twice is once', () => {
    fc.assert(
      fc.property(
        writtenSolve,
        fc.array(fc.nat({ max: MESS.length - 1 }), { minLength: 60, maxLength: 60 }),
        fc.constantFrom('\n', '\r\n'),
        ({ text }, mess, lineEnd) => {
          const messy = text
            .split('\n')
            .map((line, n) => MESS[mess[n % mess.length]](line, n))
            .join(lineEnd);
          mustHold(messy);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('texts with every kind of finding', () => {
    for (const { text, nearly } of CASES) {
      mustHold(text);
      mustHold(nearly);
    }
  });

  test('the samples', () => {
    const folder = new URL('../../../media/samples/', import.meta.url);
    const files = readdirSync(folder).filter((name) => name.endsWith('.moves'));
    expect(files.length).toBeGreaterThan(5);
    for (const name of files) mustHold(readFileSync(new URL(name, folder), 'utf8'));
  });

  test('any characters whatever', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            'R',
            'U’',
            ' ',
            ':',
            '\n',
            'cross',
            '//',
            '#',
            '(',
            ')',
            '[',
            ',',
            ']',
            '2',
            'scramble',
            '@a',
            '~',
            '…',
            'x3',
            'foo',
            '- ',
          ),
          { maxLength: 40 },
        ),
        (parts) => {
          const text = parts.join('');
          const once = formatted(text);
          expect(formatted(once)).toBe(once);
          expect(executed(once)).toEqual(executed(text));
          expect(comments(once)).toEqual(comments(text));
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe('canonical form', () => {
  test('spellings, blanks, indents and the comments below each other', () => {
    expect(
      formatted("Cross:\nR2’  Ui//first\n L' D2 F Rw2    # then\ncorners:\n(R U R' U')x3"),
    ).toBe("Cross:\n  R2 U'        // first\n  L' D2 F Rw2  // then\ncorners:\n  (R U R' U')3");
  });

  test('what is no turn stays as it stands', () => {
    expect(formatted('scramble:   R U\ncross:\n  R Q7 U')).toBe('scramble: R U\ncross:\n  R Q7 U');
    expect(formatted('Hello   all, this is it')).toBe('Hello   all, this is it');
  });

  test('a repeat that may be a rotation is left to its fix', () => {
    expect(formatted("sequence: a\n (R U R' U')  x2")).toBe("sequence: a\n (R U R' U')  x2");
  });
});
