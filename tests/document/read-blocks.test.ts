/** How a text is cut into blocks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cutBlocks, keyLines } from '../../engine/document/read/blocks.ts';
import { readDocument } from '../../engine/document/read/read.ts';
import type { BlockTree } from '../../engine/document/read/tree.ts';

function cut(...lines: string[]): ReturnType<typeof cutBlocks> {
  return cutBlocks(readDocument(lines.join('\n')));
}

/** `solve 0-3 name`: kind, lines from–to (exclusive), name. */
function told({ kind, first, end, name }: BlockTree): string {
  return `${kind} ${String(first)}-${String(end)}${name === undefined ? '' : ` ${name.text}`}`;
}

describe('blocks', () => {
  test('a text without `solve:` and `sequence:` is one solve, an empty one too', () => {
    expect(cut('title: Tuesday', 'scramble: R U', "U' R'").blocks.map(told)).toEqual(['solve 0-3']);
    expect(cut('').blocks.map(told)).toEqual(['solve 0-1']);
  });

  test('keys above the first `solve:` hold for the file and are that solve’s as well', () => {
    const { header, blocks } = cut(
      'method: CFOP',
      'scramble: R U',
      'solve: Anna',
      "U' R'",
      'solve: Ben',
      'F',
    );
    expect(header).toEqual([0, 1]);
    expect(blocks.map(told)).toEqual(['solve 0-4 Anna', 'solve 4-6 Ben']);
    expect(blocks[0].lines).toEqual([0, 1, 2, 3]);
  });

  test('turns above the first `solve:` are a solve of their own', () => {
    const { header, blocks } = cut('method: layers', "R U R'", 'solve: Anna', 'F');
    expect(header).toEqual([0]);
    expect(blocks.map(told)).toEqual(['solve 0-2', 'solve 2-4 Anna']);
  });

  test('keys above a first sequence make no solve, a scramble there does', () => {
    expect(
      cut('method: layers', '', 'sequence: right insert', "U R U' R'").blocks.map(told),
    ).toEqual(['sequence 2-4 right insert']);
    expect(cut('scramble: R U', 'sequence: a', 'R U').blocks.map(told)).toEqual([
      'solve 0-1',
      'sequence 1-3 a',
    ]);
  });

  test('a scramble after turns opens another solve, and its title goes with it', () => {
    expect(cut('scramble: R', "R'", 'scramble: U', "U'").blocks.map(told)).toEqual([
      'solve 0-2',
      'solve 2-4',
    ]);
    expect(
      cut(
        'title: one',
        'scramble: R',
        "R'",
        '',
        'title: two',
        'solver: Ben',
        'scramble: U',
        "U'",
      ).blocks.map(told),
    ).toEqual(['solve 0-4', 'solve 4-8']);
    expect(cut('title: one', 'scramble: R', 'scramble: U').blocks.length).toBe(1);
  });

  test('turns after `solve:` on its line are its turns', () => {
    const { blocks } = cut("solve: R U R'", 'scramble: F', "F'");
    expect(blocks.map(told)).toEqual(['solve 0-1', 'solve 1-3']);
  });
});

describe('asides', () => {
  test('lie inside their solve, which goes on after `end:`', () => {
    const { blocks } = cut(
      'solve: a',
      'R U',
      'aside: with a line',
      'F',
      'end:',
      "U' R'",
      'solve: Ben',
      'F',
    );
    expect(blocks.map(told)).toEqual(['solve 0-6 a', 'solve 6-8 Ben']);
    expect(blocks[0].lines).toEqual([0, 1, 4, 5]);
    expect(blocks[0].asides.map(told)).toEqual(['aside 2-4 with a line']);
  });

  test('end at the next aside, solve or sequence', () => {
    const { blocks } = cut('R', 'aside: a', 'F', 'aside: Ben', 'U', 'sequence: c', 'D');
    expect(blocks.map(told)).toEqual(['solve 0-5', 'sequence 5-7 c']);
    expect(blocks[0].asides.map(told)).toEqual(['aside 1-3 a', 'aside 3-5 Ben']);
  });

  test('may have a scramble of their own, which opens no solve', () => {
    const { blocks } = cut('R', 'aside: a', 'F', 'scramble: U', 'end:', 'R', 'scramble: F', "F'");
    expect(blocks.map(told)).toEqual(['solve 0-6', 'solve 6-8']);
  });
});

test('the lines of a key are found in a block', () => {
  const tree = readDocument('solve: a\nnote: x\naside: b\nnote: y\nend:\nnote: z');
  const [block] = cutBlocks(tree).blocks;
  expect(keyLines(tree, block.lines, 'note').map(({ line }) => line)).toEqual([1, 5]);
});

test('blocks follow each other, and every line of a block is its own or one aside’s', () => {
  const line = fc.constantFrom(
    'R U',
    'solve: a',
    'solve: R',
    'sequence: b',
    'scramble: F',
    'scramble:',
    'aside: c',
    'end:',
    'title: t',
    'cross:',
    '',
    '// x',
  );
  fc.assert(
    fc.property(fc.array(line, { maxLength: 25 }), (lines) => {
      const { blocks } = cut(...lines);
      for (const [i, block] of blocks.entries()) {
        if (i > 0) expect(block.first).toBe(blocks[i - 1].end);
        const all = [...block.lines, ...block.asides.flatMap((aside) => aside.lines)].sort(
          (a, b) => a - b,
        );
        expect(all).toEqual(
          Array.from({ length: block.end - block.first }, (_, k) => block.first + k),
        );
      }
      expect(blocks.at(-1)?.end ?? lines.length).toBe(Math.max(1, lines.length));
    }),
    { numRuns: 500 },
  );
});
