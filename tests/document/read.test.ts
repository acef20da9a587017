/** How lines are read, as people at a library's puzzle table write them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitLines } from '../../engine/document/read/lines.ts';
import { readDocument } from '../../engine/document/read/read.ts';
import { contentOf, contentsOf, slice, spansIn, turnsOf } from './read-support.ts';

const kinds = (text: string): string[] => contentsOf(text).map((content) => content.kind);

describe('lines end where the editor ends them', () => {
  test('at \\n, \\r\\n and a lone \\r, and nowhere else', () => {
    expect(splitLines('a\nb\r\nc\rd\u2028e\vf').map(({ text }) => text)).toEqual([
      'a',
      'b',
      'c',
      'd\u2028e\vf',
    ]);
    expect(splitLines('').length).toBe(1);
    expect(splitLines('R\r\n').map(({ lineEnd }) => lineEnd)).toEqual(['\r\n', '']);
  });

  test('a byte order mark does not hide the first key', () => {
    const content = contentOf('\uFEFFtitle: Tuesday table');
    expect(content).toMatchObject({ kind: 'key', key: 'title', value: { text: 'Tuesday table' } });
  });
});

describe('keys', () => {
  test.each([
    ["Scramble: R2 U' F", 'scramble'],
    ["SCRAMBLE : R2 U' F", 'scramble'],
    ["  scramble:R2U'F", 'scramble'],
    ["[b]Scramble:[/b] R2 U' F", 'scramble'],
    ["**Scramble:** R2 U' F", 'scramble'],
    ["> Scramble: R2 U' F", 'scramble'],
    ["- scramble： R2 U' F", 'scramble'],
  ])('%s', (line, key) => {
    expect(contentOf(line)).toMatchObject({ kind: 'key', key });
    expect(turnsOf(line)).toEqual(['R2', "U'", 'F']);
  });

  test('are sought before comment marks, so a title keeps its number sign', () => {
    const line = 'title: Table #2; the long one - again // to be checked';
    const content = contentOf(line);
    if (content.kind !== 'key') throw new Error(content.kind);
    expect(content.value.text).toBe('Table #2; the long one - again');
    expect(slice(line, content.value.span)).toBe(content.value.text);
    expect(content.comment?.text).toBe('to be checked');
  });

  test('a note keeps every sign', () => {
    expect(contentOf('note: see a # b // c')).toMatchObject({
      value: { text: 'see a # b // c' },
      comment: undefined,
    });
  });

  test('a value of fixed form ends at any comment mark', () => {
    for (const mark of ['//', '#', ';', '-', '–']) {
      const line = `holding: white up, green front ${mark} as in the scramble`;
      expect(contentOf(line), mark).toMatchObject({
        value: { text: 'white up, green front' },
        comment: { text: 'as in the scramble' },
      });
    }
  });

  test('`keeps:` lists goals and is no turns', () => {
    expect(contentOf('  keeps: cross, corners')).toMatchObject({
      kind: 'key',
      key: 'keeps',
      value: { text: 'cross, corners' },
      body: undefined,
    });
  });

  test('`solve:` with turns on its line has turns and no name', () => {
    expect(turnsOf("solve: R U R' U'")).toEqual(['R', 'U', "R'", "U'"]);
    expect(contentOf('solve: my F solve')).toMatchObject({
      body: undefined,
      value: { text: 'my F solve' },
    });
    expect(contentOf('solve: Table 3')).toMatchObject({ body: undefined });
    expect(contentOf('sequence: F')).toMatchObject({ body: undefined, value: { text: 'F' } });
    expect(contentOf('sequence: right insert')).toMatchObject({ value: { text: 'right insert' } });
  });

  test('a key that is the whole line counts', () => {
    expect(contentOf('Scramble')).toMatchObject({ kind: 'key', key: 'scramble', colon: undefined });
    expect(kinds("scramble\nR U F\nR'")).toEqual(['key', 'scramble', 'turns']);
  });

  test('a misspelt key is told with the nearest one', () => {
    expect(contentOf('scarmble: R U')).toMatchObject({
      kind: 'unknown-key',
      name: { text: 'scarmble' },
      suggestion: { kind: 'key', text: 'scramble' },
    });
    expect(contentOf("Crosss: R U R'")).toMatchObject({
      kind: 'unknown-key',
      suggestion: { kind: 'stage', text: 'cross' },
    });
    expect(contentOf('Mood: good')).toMatchObject({
      kind: 'unknown-key',
      suggestion: undefined,
      body: undefined,
    });
    expect(contentOf("OLL 45: F R F'")).toMatchObject({
      kind: 'unknown-key',
      suggestion: { kind: 'stage', text: 'OLL' },
    });
    expect(contentOf('my cross: R')).toMatchObject({ kind: 'unknown-key', suggestion: undefined });
  });

  test('a time of day or an address is no key', () => {
    expect(kinds('we met at 12:30 and left')).toEqual(['prose']);
    expect(kinds('https://example.org/table#2')).toEqual(['turns']);
    expect(turnsOf('https://example.org/table#2')).toEqual([]);
  });
});

describe('`scramble:` without a value', () => {
  test('takes the next line, past blank and comment lines', () => {
    expect(kinds("scramble:\nR2 U' F\nx2")).toEqual(['key', 'scramble', 'turns']);
    expect(kinds("Scramble: // as on the card\n\n// two lines\nR2 U' F")).toEqual([
      'key',
      'blank',
      'comment',
      'scramble',
    ]);
  });

  test('takes no heading', () => {
    expect(kinds('scramble:\ncross: R\nU')).toEqual(['key', 'stage', 'turns']);
  });
});

describe('stages', () => {
  test('have their turns on the line, their time and count in the heading', () => {
    const line = "F2L #1 (7): U R U' R' // green-red";
    const content = contentOf(line);
    if (content.kind !== 'stage') throw new Error(content.kind);
    expect(content.name.text).toBe('F2L #1');
    expect(slice(line, content.name.span)).toBe('F2L #1');
    expect(content.count?.value).toBe(7);
    expect(slice(line, content.count?.span ?? { start: 0, end: 0 })).toBe('7');
    expect(turnsOf(line)).toEqual(['U', 'R', "U'", "R'"]);
    expect(content.comment?.text).toBe('green-red');
  });

  test.each([
    ['cross, 3.4 s:', 3.4],
    ['cross (3,4 s):', 3.4],
    ['corners, 0:12.4: U R', 12.4],
    ['Cross – 1:02:', 62],
    ['2nd pair (8 moves, 12.3 s): R', 12.3],
  ])('%s', (line, seconds) => {
    const content = contentOf(line);
    if (content.kind !== 'stage') throw new Error(content.kind);
    expect(content.time?.seconds).toBeCloseTo(seconds);
    expect(['cross', 'corners', '2nd pair']).toContain(content.name.text.toLowerCase());
  });

  test('are known by a colour, an ordinal, an alias, in any case and on a line alone', () => {
    for (const line of [
      'yellow cross: F',
      'OLL:',
      'oll : R',
      'second layer',
      '3rd pair:',
      'FB: R U',
      'Cross (8)',
    ]) {
      expect(contentOf(line).kind, line).toBe('stage');
    }
  });

  test('can be the own ones of the text', () => {
    const text =
      'goal: left wall = DL FL BL\nmethod: mine = cross, left wall, solved\nLeft wall: R U';
    expect(kinds(text)).toEqual(['key', 'key', 'stage']);
    expect(kinds('left wall: R U')).toEqual(['unknown-key']);
    expect(readDocument('left wall: R U', ['left wall']).lines[0].content.kind).toBe('stage');
  });

  test('are not opened by a sentence that mentions them', () => {
    expect(kinds('First I did the cross, then the corners.')).toEqual(['prose']);
  });
});

describe('comments', () => {
  test.each([
    ["R U R' // cross done", '//'],
    ["R U R'//cross done", '//'],
    ["R U R' # cross done", '#'],
    ["R U R'; cross done", ';'],
    ["R U R' - cross done", '-'],
    ["R U R' — cross done", '-'],
  ])('%s', (line, style) => {
    const content = contentOf(line);
    expect(turnsOf(line)).toEqual(['R', 'U', "R'"]);
    if (content.kind !== 'turns' || content.comment === undefined) throw new Error(content.kind);
    expect(content.comment.style).toBe(style);
    expect(slice(line, content.comment.span)).toBe('cross done');
  });

  test('a dash before turns is none', () => {
    expect(contentOf('R U - F2 - cross')).toMatchObject({ comment: { text: 'cross' } });
    expect(turnsOf('R U - F2 - cross')).toEqual(['R', 'U', 'F2']);
    expect(turnsOf("- R U R'")).toEqual(['R', 'U', "R'"]);
  });

  test('alone on a line', () => {
    for (const line of ['// cross', '# cross', '; note: R U', '- what a start', '//']) {
      expect(contentOf(line).kind, line).toBe('comment');
    }
  });

  test('an address in turns holds no mark', () => {
    const line = 'R U https://example.org/a#b F // go';
    expect(turnsOf(line)).toEqual(['R', 'U', 'F']);
    expect(contentOf(line)).toMatchObject({ comment: { text: 'go' } });
  });
});

describe('turns and prose', () => {
  test.each([
    ["1. R U R'", ['R', 'U', "R'"]],
    ["2) R U R' (8)", ['R', 'U', "R'"]],
    ["R U R' (8/24) 45/9.3", ['R', 'U', "R'"]],
    ["[b]R[/b] U [spoiler]R'[/spoiler]", ['R', 'U', "R'"]],
    ["(R U R') [B, U] ~ ...", ["(R U R')", '[B, U]', '~', '...']],
    ['@right-insert U2', ['@right-insert', 'U2']],
    ['x2', ['x2']],
  ])('%s', (line, turns) => {
    expect(turnsOf(line)).toEqual(turns);
  });

  test('a line with as many words as turns is prose', () => {
    for (const line of ['Bad luck at the table', 'R was wrong', 'I am happy', '白色十字完成']) {
      expect(contentOf(line).kind, line).toBe('prose');
    }
    expect(contentOf('R U wrong').kind).toBe('turns');
  });

  test('a token that is no turn is unknown as a whole', () => {
    const content = contentOf('R U RQ2 F');
    expect(turnsOf('R U RQ2 F')).toEqual(['R', 'U', 'F']);
    expect(content).toMatchObject({ turns: { marks: [{ kind: 'unknown-turn', text: 'RQ2' }] } });
    expect(contentOf("R'U2Q").kind).toBe('turns');
  });

  test('a conjugate that lost its brackets executes nothing', () => {
    expect(contentOf('F: R U')).toMatchObject({
      kind: 'turns',
      turns: { marks: [{ kind: 'bare-conjugate' }] },
    });
    expect(turnsOf('F: R U')).toEqual([]);
    expect(turnsOf('[F: R U]')).toEqual(['[F: R U]']);
  });

  test('spoken turns are neither', () => {
    expect(contentOf('R prime U two R prime').kind).toBe('spoken');
    expect(contentOf('then right, up prime, and left twice.').kind).toBe('spoken');
    expect(contentOf('a prime example of bad luck').kind).toBe('prose');
  });
});

describe('nets', () => {
  const rows = [
    '   www',
    '   www',
    '   www',
    'ooo ggg rrr bbb',
    'ooogggrrrbbb',
    'ooo|ggg|rrr|bbb',
    '   yyy',
    '   yyy',
    '   yyy',
  ];

  test('the rows after `start:` are no turns', () => {
    const text = ['start:', ...rows, "R B R'"].join('\n');
    expect(kinds(text)).toEqual(['key', ...rows.map(() => 'net-row'), 'turns']);
    const row = contentsOf(text)[4];
    expect(row).toMatchObject({ kind: 'net-row', text: 'ooo ggg rrr bbb' });
  });

  test('after nine rows the turns begin, even if they look like colours', () => {
    expect(kinds(['start:', ...rows, 'R B R'].join('\n')).at(-1)).toBe('turns');
    expect(kinds('R B R')).toEqual(['turns']);
  });

  test('a key ends a net that lacks rows', () => {
    expect(kinds('start:\n www\nholding: white up\nR B R')).toEqual([
      'key',
      'net-row',
      'key',
      'turns',
    ]);
  });
});

const piece = fc.constantFrom(
  'R',
  "U'",
  'F2',
  ' ',
  '\t',
  '\n',
  '\r\n',
  '\r',
  '\uFEFF',
  '(',
  ')',
  '[',
  ']',
  ':',
  ',',
  '//',
  '#',
  ';',
  ' - ',
  'cross',
  'scramble:',
  'start:',
  'solve:',
  'aside:',
  'end:',
  'www',
  'ooogggrrrbbb',
  'F2L #1 (7):',
  'prime',
  '@a',
  '…',
  '~',
  '1.',
  '(8)',
  '[b]',
  'https://example.org',
  '🟩',
  'é',
  '\u2028',
  '\u200b',
  '3',
  'goal: x = DL',
  'note',
);
const texts = fc.oneof(
  fc.array(piece, { maxLength: 60 }).map((parts) => parts.join('')),
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.string({ unit: 'binary', maxLength: 200 }),
);

describe('any text at all', () => {
  test('gives a tree that holds the whole text, with every span inside its line', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const { lines } = readDocument(text);
        expect(lines.map((line) => line.text + line.lineEnd).join('')).toBe(text);
        for (const line of lines) {
          for (const { start, end } of spansIn(line.content)) {
            expect(start).toBeGreaterThanOrEqual(0);
            expect(end).toBeGreaterThanOrEqual(start);
            expect(end).toBeLessThanOrEqual(line.text.length);
          }
        }
      }),
      { numRuns: 1000 },
    );
  });

  test('gives words whose spans cut them out of their line', () => {
    fc.assert(
      fc.property(texts, (text) => {
        for (const { text: line, content } of readDocument(text).lines) {
          for (const words of Object.values(content) as unknown[]) {
            if (typeof words !== 'object' || words === null) continue;
            if (!('text' in words && 'span' in words)) continue;
            expect(slice(line, words.span as { start: number; end: number })).toBe(words.text);
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  test('parts of a line come in order: name, colon, body, comment', () => {
    fc.assert(
      fc.property(texts, (text) => {
        for (const { content } of readDocument(text).lines) {
          const parts: number[] = [];
          const add = (span: { start: number; end: number } | undefined): void => {
            if (span !== undefined) parts.push(span.start, span.end);
          };
          if (content.kind === 'key' || content.kind === 'unknown-key') {
            add(content.name.span);
            add(content.colon);
            add(content.value.span);
          }
          if (content.kind === 'stage') {
            add(content.heading.span);
            add(content.colon);
            add(content.body?.span);
          }
          if (content.kind === 'turns' || content.kind === 'prose') add(content.span);
          if ('comment' in content && content.comment !== undefined) {
            add(content.comment.mark);
            add(content.comment.span);
          }
          expect(parts).toEqual([...parts].sort((a, b) => a - b));
        }
      }),
      { numRuns: 500 },
    );
  });

  // Far above the fraction of a second that most of these take (open brackets: 2 to 8 s, the more the
  // busier the machine): an expression that backtracks takes minutes on such lines.
  test.each([
    '(',
    'a',
    ': : : ',
    '//',
    '🟩',
    'abc: x\n',
    "R U R' U'\n",
    'R - ',
    '[b= ',
    '1',
    'http://',
    '&a',
    'prime R ',
    '[R, ',
    '- ',
    'cross (',
    ' ',
    '``` ',
    'a.',
    "'",
  ])('a megabyte of %j is read in seconds', (part) => {
    const text = part.repeat(Math.ceil(1_000_000 / part.length));
    const before = performance.now();
    const { lines } = readDocument(text);
    expect(performance.now() - before).toBeLessThan(25_000);
    expect(lines.length).toBeGreaterThan(0);
  });
});
