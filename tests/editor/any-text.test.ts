/** Whatever the text, up to a megabyte: the cube view shows something, and nothing breaks. */
import type { Frame } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Desk } from './host/desk.ts';

const MEGABYTE = 1_000_000;

function upTo(unit: string, length = MEGABYTE): string {
  return unit.repeat(Math.ceil(length / unit.length)).slice(0, length);
}

const TEXTS: Readonly<Record<string, string>> = {
  'empty.moves': '',
  'prose.moves': upTo(
    'The cube lay on the table of the library, and nobody had turned it for weeks.\n',
  ),
  'turns.moves': upTo("R U R' U' F2 D' L B2\n"),
  'one-line.moves': upTo("R U R' U' "),
  'brackets.moves': upTo('('),
  'bomb.moves': '((((R U)9999)9999)9999)9999\n',
  'letters.moves': upTo('Кубик 🧩 立方体\tR’ U´ \r\n'),
  'keys.moves': upTo('solve: one\nstart: w\nsequence: two\nkeeps: cross\n', 200_000),
};

let desk: Desk;
let cube: Frame;

beforeAll(async () => {
  desk = await Desk.open({ files: { 'first.moves': 'R U\n', ...TEXTS }, open: 'first.moves' });
  cube = await desk.view('cube');
  await cube.waitForSelector('#picture .sticker');
});
afterAll(() => desk.close());

describe('any text gives a view', () => {
  it.each(Object.keys(TEXTS))('%s', async (name) => {
    await desk.openFile(name);
    await cube.waitForFunction(
      (file) =>
        document.body.dataset.uri?.endsWith(file) === true &&
        !document.body.classList.contains('updating'),
      `/${name}`,
      { timeout: 25_000 },
    );
    const shown = await cube.evaluate(() => ({
      stickers: document.querySelectorAll('#picture .sticker').length,
      words: document.body.innerText.trim().length,
    }));
    expect(shown.words).toBeGreaterThan(10);
    expect([0, 54]).toContain(shown.stickers);
  });

  it('and no error in the log of the views', () => {
    expect(desk.errors.filter((error) => !error.includes('Applying inline style'))).toEqual([]);
  });
});
