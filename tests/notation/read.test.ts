import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printSequence } from '../../engine/notation/print.ts';
import { executable, looksLikeTurns, readSequence } from '../../engine/notation/read.ts';
import { sequenceName } from '../../engine/notation/letters.ts';
import { outline, trees, writtenOut } from './sequences.ts';

const canonical = (text: string): string => printSequence(readSequence(text).items);
const kinds = (text: string): string[] => readSequence(text).marks.map((mark) => mark.kind);

/** The text after the edit that a mark proposes. */
function repaired(text: string): string {
  return readSequence(text)
    .marks.toReversed()
    .reduce((edited, mark) => {
      if (mark.kind === 'unclosed')
        return edited.slice(0, mark.at) + mark.insert + edited.slice(mark.at);
      if (!('newText' in mark)) return edited;
      return edited.slice(0, mark.span.start) + mark.newText + edited.slice(mark.span.end);
    }, text);
}

describe('turns as people write them', () => {
  it.each([
    ["RUR'U'", "R U R' U'"],
    ["R2U2'F'2", 'R2 U2 F2'],
    ["r u' f2", "Rw Uw' Fw2"],
    ["Rw Uw' Fw2", "Rw Uw' Fw2"],
    ["M E' S2 x y' z2", "M E' S2 x y' z2"],
    ['R3', "R'"],
    ['R ~ U … F ... B ???', 'R ~ U … F … B …'],
  ])('%s is %s', (text, turns) => {
    expect(canonical(text)).toBe(turns);
    expect(readSequence(text).marks).toEqual([]);
  });

  it.each(["'", '’', '‘', '′', 'ʹ', '`', '´', '＇', 'ʼ', '‛'])(
    'R%s is the inverse of R',
    (prime) => {
      expect(canonical(`R${prime}U${prime}2`)).toBe("R' U2");
      expect(kinds(`R${prime}`)).toEqual([]);
    },
  );

  it.each([
    ['Ri', "R'"],
    ['R-', "R'"],
    ['2Rw', 'Rw'],
    ["2rw'", "Rw'"],
    ['rw2', 'Rw2'],
    ['X', 'x'],
    ["Y'", "y'"],
    ['R²', 'R2'],
    ['(R U)x3', '(R U)3'],
    ['(R U) x3', '(R U)3'],
    ['(R U) x 2', '(R U)2'],
    ['(R U) ×4', '(R U)4'],
    ['(R U)*4', '(R U)4'],
    ['(R U)^-1', "(R U)'"],
    ["(R U)' x3", "(R U)3'"],
    ['[R, U] x3', '[R, U]3'],
    ['@h2 x3', '(@h2)3'],
  ])('%s is read as meant, %s, with a hint at the spelling', (text, turns) => {
    expect(canonical(text)).toBe(turns);
    expect(kinds(text)).toEqual(['spelling']);
    expect(repaired(text)).toBe(turns);
  });

  it('tells a repeat (R U)x2 from the rotation in (R U) x2, and says that the latter is doubtful', () => {
    expect(writtenOut('(R U)x2')).toBe('R U R U');
    expect(writtenOut('(R U) x2')).toBe('R U x2');
    expect(kinds('(R U) x2')).toEqual(['repeat-or-rotation']);
    expect(repaired('(R U) x2')).toBe('(R U)2');
    expect(kinds('R x2')).toEqual([]);
    expect(kinds('(R U)2 x2')).toEqual([]);
  });

  it('a number behind a bracket repeats it even when a turn follows at once: (R U)2R', () => {
    expect(writtenOut('(R U)2R')).toBe('R U R U R');
    expect(kinds('2R')).toEqual(['unknown-turn']);
  });
});

describe('tokens that are not turns', () => {
  it.each(['foo', 'R22', "R''", 'Rx5', 'RUQ', '8', 'R.', 'm', '3Rw', 'R1'])(
    '%s is unknown as a whole',
    (token) => {
      const { items, marks } = readSequence(`U ${token} D`);
      expect(items.map((item) => item.kind)).toEqual(['turn', 'unknown', 'turn']);
      expect(marks).toEqual([
        { kind: 'unknown-turn', span: { start: 2, end: 2 + token.length }, text: token },
      ]);
      expect(looksLikeTurns(token)).toBe(false);
    },
  );

  it('a repeat is not taken from a token that is unknown: (R U)3foo', () => {
    expect(writtenOut('(R U)3foo')).toBe('R U');
  });

  it('F: R U has lost its brackets: nothing is executed, and the fix puts them back', () => {
    expect(writtenOut('F: R U')).toBe('');
    expect(kinds('F: R U')).toEqual(['bare-conjugate']);
    expect(repaired('F: R U')).toBe('[F: R U]');
    expect(kinds('cross: R U')).toEqual(['unknown-turn']);
    expect(kinds('45:10 R')).toEqual(['unknown-turn']);
  });

  it('a bracket with three parts means nothing', () => {
    expect(kinds('[R, U, F]')).toEqual(['unknown-turn']);
    expect(writtenOut('[R, U, F] D')).toBe('D');
  });

  it.each(["R U R' U'", '(R U)3', '[F: [R, U]]', '@right-insert', '~', 'r'])(
    '%s looks like turns',
    (text) => {
      expect(looksLikeTurns(text)).toBe(true);
    },
  );

  it.each(['', ' ', 'the', '(8)', '(R', 'https://a.b', '1.'])('%s does not', (text) => {
    expect(looksLikeTurns(text)).toBe(false);
  });
});

describe('brackets', () => {
  it.each([
    ['(R U F', '(R U F)'],
    ['R [U, F', 'R [U, F]'],
    ['R U) F', '(R U) F'],
    ["R U)3' F", "(R U)3' F"],
    ['R, U] F', '[R, U] F'],
    ['F: R U]2', '[F: R U]2'],
    ['[R, (U F]', '[R, (U F)]'],
    ['(R U [F', '(R U [F])'],
    ['[R, U F) D]', '[R,( U F) D]'],
  ])('%s is read as its repair, %s', (text, repair) => {
    expect(new Set(kinds(text))).toEqual(new Set(['unclosed']));
    expect(canonical(text)).toBe(canonical(repair));
    expect(executable(readSequence(repair))).toBe(true);
  });

  it('the repair of one missing bracket is where the text before it ends', () => {
    expect(repaired('(R U F  ')).toBe('(R U F)  ');
    expect(repaired('R U)3')).toBe('(R U)3');
    expect(repaired('F: R, U]')).toBe('[F: R, U]');
    expect(repaired('[R, (U F ]')).toBe('[R, (U F) ]');
  });

  it('the comma binds looser than the colon', () => {
    expect(canonical('[F: R, U]')).toBe('[[F: R], U]');
    expect(canonical('[R, F: U]')).toBe('[R, [F: U]]');
    expect(canonical('[F: R: U]')).toBe('[F: [R: U]]');
  });

  it('names are letters, digits and hyphens, as made from the title of a sequence', () => {
    expect(sequenceName('Right insert')).toBe('right-insert');
    expect(sequenceName("Grandma's  No. 2!")).toBe('grandmas-no-2');
    expect(readSequence("@Right-Insert' U").items).toMatchObject([
      { kind: 'name', name: 'right-insert', times: -1n },
      { kind: 'turn' },
    ]);
    expect(looksLikeTurns(`@${sequenceName('2nd: left (over) hand')}`)).toBe(true);
  });

  it('a count may have any number of digits', () => {
    expect(readSequence(`(R U)${'9'.repeat(30)}'`).items).toMatchObject([
      { times: 1n - 10n ** 30n },
    ]);
  });

  it('10,000 open brackets are read, closed at the end and printed', () => {
    const text = `${'(['.repeat(5_000)}R`;
    const { items, marks } = readSequence(text);
    expect(marks).toHaveLength(10_000);
    expect(printSequence(items)).toBe(`${'(('.repeat(5_000)}R${'))'.repeat(5_000)}`);
    expect(writtenOut(text)).toBe('R');
  });
});

describe('for any text', () => {
  const notation = fc.string({
    unit: fc.constantFrom(..."RUrxXM23'’w()[],: @a~.…?-^×"),
    maxLength: 40,
  });

  it('every span lies in the stretch, and items come in the order of the text', () => {
    fc.assert(
      fc.property(notation, notation, notation, (before, text, after) => {
        const start = before.length;
        const end = start + text.length;
        const { items, marks } = readSequence(before + text + after, start, end);
        for (const { span } of [...items, ...marks]) {
          expect(span.start).toBeGreaterThanOrEqual(start);
          expect(span.end).toBeLessThanOrEqual(end);
          expect(span.start).toBeLessThanOrEqual(span.end);
        }
        items.slice(1).forEach((item, i) => {
          expect(item.span.start).toBeGreaterThanOrEqual(items[i].span.end);
        });
      }),
    );
  });

  it('a stretch reads the same wherever it stands in its line', () => {
    fc.assert(
      fc.property(notation, (text) => {
        expect(outline(readSequence(`title ${text} end`, 6, 6 + text.length).items)).toBe(
          outline(readSequence(text).items),
        );
      }),
    );
  });

  it('what is printed reads as the same sequence', () => {
    fc.assert(
      fc.property(trees, (tree) => {
        expect(outline(readSequence(printSequence(tree)).items)).toBe(outline(tree));
      }),
    );
  });

  it('spelled as the hints say, it reads as the same sequence, without hints', () => {
    fc.assert(
      fc.property(notation, (text) => {
        const tree = readSequence(text);
        fc.pre(executable(tree));
        const spelled = tree.marks
          .filter((mark) => mark.kind === 'spelling')
          .sort((a, b) => b.span.start - a.span.start)
          .reduce(
            (edited, { span, newText }) =>
              edited.slice(0, span.start) + newText + edited.slice(span.end),
            text,
          );
        expect(outline(readSequence(spelled).items)).toBe(outline(tree.items));
        expect(kinds(spelled)).not.toContain('spelling');
      }),
      { numRuns: 1000 },
    );
  });

  it('with the missing bracket put in, it reads as the same sequence', () => {
    fc.assert(
      fc.property(notation, (text) => {
        const tree = readSequence(text);
        const missing = tree.marks.filter((mark) => mark.kind === 'unclosed');
        fc.pre(missing.length === 1);
        fc.pre(tree.marks.every((mark) => mark.kind !== 'unknown-turn'));
        const [{ at, insert }] = missing;
        const closed = text.slice(0, at) + insert + text.slice(at);
        expect(outline(readSequence(closed).items)).toBe(outline(tree.items));
        expect(kinds(closed)).not.toContain('unclosed');
      }),
      { numRuns: 1000 },
    );
  });
});
