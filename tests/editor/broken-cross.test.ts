/** The whole path with a solve whose cross is broken: squiggle, cube, strip, tutor, fix, undo. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Frame } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { colourFacelets } from '../../engine/cube/facelets.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import { analyse } from '../../engine/document/analyse.ts';
import { Desk } from './host/desk.ts';

/** In line 5, `R U' R` should end with `R'`: the cross is broken for good by the first R. */
const SOLVE = `title: Library puzzle table, a lost prime
scramble: F' R2 U' L F U2 L2 R' F2 D F B2 U F' D' B2 F' U2 B2 L2
x2
cross: L' D2 U2 L F' U B L' D' R D
corners: R U' R' L' U L y R U' R y R U' R'
middle: U' R U' R' U' F' U F U L' U L U F U' F' y2 U' L' U L U F U' F'
`;
const LINE = 4;
const COLUMN = SOLVE.split('\n')[LINE].indexOf('y R') + 2;

let desk: Desk;
let cube: Frame;
let tutor: Frame;

beforeAll(async () => {
  desk = await Desk.open({
    files: { 'a.moves': SOLVE, 'b.moves': "scramble: R U\nU' R'\n" },
    open: 'a.moves',
  });
  cube = await desk.view('cube');
  tutor = await desk.view('tutor');
});
afterAll(() => desk.close());

/** Colours of the 54 stickers as drawn, by facelet. */
async function stickersDrawn(): Promise<string[]> {
  return cube.locator('#picture .sticker').evaluateAll((stickers) => {
    const found: string[] = [];
    for (const sticker of stickers) {
      found[Number(sticker.getAttribute('data-facelet'))] =
        sticker.getAttribute('class')?.split(' ')[1] ?? '';
    }
    return found;
  });
}

/** Colours that the engine finds after so many turns of a text. */
function stickersAfter(text: string, place: number): string[] {
  const state = analyse(text).blocks[0].course.stateAt(place);
  if (state === undefined) throw new Error('no state');
  return Array.from(colourFacelets(state), (colour) => COLOURS[colour]);
}

function atPlace(place: number): Promise<unknown> {
  return cube.waitForSelector(`body[data-place="${place}"]:not(.updating)`);
}

describe('a solve whose cross is broken', () => {
  it('has one error, at the turn that broke it, with a sentence that names the pieces', async () => {
    await desk.page.keyboard.press('Control+Shift+m');
    await desk.page.locator('.markers-panel .monaco-list-row').first().waitFor();
    const rows = await desk.problems();
    const error = rows.find((row) => row.includes('cross'));
    expect(rows.join('\n')).toContain('cross');
    expect(error).toContain('white-green edge');
    expect(error).toContain('never comes back');
    expect(error).toMatch(new RegExp(`line ${LINE + 1}.*(character|column) ${COLUMN + 1}`));
    await desk.page.keyboard.press('Control+Shift+m');
    const squiggle = desk.page.locator('.squiggly-error').first();
    await squiggle.waitFor();
    const at = await squiggle.boundingBox();
    const turn = await desk.page.locator('.view-line').nth(LINE).boundingBox();
    expect(at!.y + at!.height).toBeGreaterThan(turn!.y);
    expect(at!.y).toBeLessThan(turn!.y + turn!.height);
  });

  it('shows at each cursor the stickers that the cube has there', async () => {
    for (const [line, column, place] of [
      [3, 1, 0],
      [3, 3, 1],
      [4, 16, 4],
      [5, COLUMN + 2, 20],
    ] as const) {
      await desk.cursorTo(line, column);
      await atPlace(place);
      expect(await stickersDrawn()).toEqual(stickersAfter(SOLVE, place));
    }
  });

  it('marks the edge that the turn carried off, and says it to those who cannot see', async () => {
    await desk.cursorTo(LINE + 1, COLUMN + 2);
    await atPlace(20);
    expect(await cube.locator('#picture .mark').count()).toBe(2);
    expect(await cube.locator('#live').textContent()).toContain('breaks the cross');
    expect(await cube.locator('#picture svg').getAttribute('aria-label')).toContain('yellow up');
  });

  it('tears the band of the cross in the strip at that turn', async () => {
    const tear = await cube.locator('#strip .tear.lasting').first().boundingBox();
    const current = await cube.locator('#strip .place.current').boundingBox();
    expect(tear).not.toBeNull();
    expect(Math.abs(tear!.x + tear!.width / 2 - (current!.x + current!.width / 2))).toBeLessThan(8);
    expect(await cube.locator('#strip-words').textContent()).toMatch(/cross: .*never restored/);
  });

  it('takes the cursor to a turn clicked in the strip', async () => {
    await cube.locator('#strip .place[data-place="4"]').click();
    await atPlace(4);
    expect(await desk.cursor()).toEqual({
      line: 4,
      column: SOLVE.split('\n')[3].indexOf('U2') + 3,
    });
  });

  it('steps by the buttons, by the keyboard in the view, and by the palette', async () => {
    await cube.locator('[data-step="forward"]').click();
    await atPlace(5);
    await cube.locator('#strip').focus();
    await desk.page.keyboard.press('ArrowLeft');
    await atPlace(4);
    await desk.run('Turnlore: One Turn Back');
    await atPlace(3);
    await desk.run('Turnlore: Go to the Next Break');
    await cube.waitForSelector('#where:has-text("R")');
  });

  it('is explained by the tutor, with the turn to go to', async () => {
    await tutor.locator('#question').click();
    await desk.page.keyboard.type('Why did the cross break?');
    await desk.page.keyboard.press('Enter');
    const answer = tutor.locator('.entry .answer').last();
    await answer.waitFor();
    const words = await answer.locator('.words').innerText();
    expect(words).toMatch(/cross breaks with R/);
    expect(words).toContain('white-green edge');
    await desk.cursorTo(3, 1);
    await answer
      .getByText(/^Go to R, turn/)
      .first()
      .click();
    await atPlace(20);
  });

  it('gives a hint on request and keeps the conversation over a reload', async () => {
    await tutor.locator('[data-question="Give me a hint"]').click();
    await tutor.locator('.entry').nth(1).locator('.answer').waitFor();
    // The editor writes its storage with a delay.
    await desk.page.waitForTimeout(3000);
    await desk.reload();
    cube = await desk.view('cube');
    tutor = await desk.view('tutor');
    await tutor.locator('.entry').nth(1).waitFor();
    expect(await tutor.locator('.entry .asked').allInnerTexts()).toEqual([
      'Why did the cross break?',
      'Give me a hint',
    ]);
  });

  it('is mended by the quick fix, and the fix undone', async () => {
    await desk.cursorTo(LINE + 1, COLUMN + 2);
    await desk.page.keyboard.press('Control+.');
    const fix = desk.page.locator('.action-widget .monaco-list-row.action').first();
    await fix.waitFor();
    await fix.click();
    await desk.page.locator('.squiggly-error').first().waitFor({ state: 'detached' });
    const mended = (await desk.lines())[LINE];
    expect(mended).toContain("y R U' R' y");
    await desk.page.keyboard.press('Control+z');
    await desk.page.locator('.squiggly-error').first().waitFor();
    expect((await desk.lines())[LINE]).toBe(SOLVE.split('\n')[LINE]);
  });

  it('shows a picture of the cube on hovering over the turn', async () => {
    await desk.hoverAt(LINE + 1, COLUMN + 1);
    const picture = desk.page.locator('.monaco-hover img[src^="data:image/svg+xml"]');
    await picture.waitFor();
    const size = await picture.evaluate((image: HTMLImageElement) => image.naturalWidth);
    expect(size).toBeGreaterThan(100);
    await desk.page.keyboard.press('Escape');
  });

  it('writes letters on the stickers and takes the safe colours on request', async () => {
    const fill = (): Promise<string> =>
      cube
        .locator('#picture .sticker.red')
        .first()
        .evaluate((sticker) => getComputedStyle(sticker).fill);
    const before = await fill();
    await cube.locator('#letters').click();
    await cube.locator('#picture .letter').nth(53).waitFor();
    await cube.locator('#safe').click();
    await cube.waitForSelector('body[data-palette="safe"]');
    expect(await fill()).not.toBe(before);
    await cube.locator('#letters').click();
    await cube.locator('#safe').click();
    await cube.waitForSelector('body[data-palette="standard"]');
  });

  it('passes the accessibility checks of axe in both views', async () => {
    const source = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');
    for (const view of [cube, tutor]) {
      await view.evaluate(source);
      const found = await view.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        };
        const { violations } = await axe.run();
        return violations.map(
          ({ id, nodes }) =>
            `${id}: ${nodes
              .map(({ html }) => html)
              .join(' ')
              .slice(0, 300)}`,
        );
      });
      expect(found).toEqual([]);
    }
  });

  it('brought up no error in the log of the views', () => {
    // The component library asks for one inline style, which the policy refuses; nothing is missing.
    expect(desk.errors.filter((error) => !error.includes('Applying inline style'))).toEqual([]);
  });
});

it('the sample of the tests is what the file on disk says', () => {
  expect(readFileSync(path.join(desk.workspace, 'a.moves'), 'utf8')).toBe(SOLVE);
});
