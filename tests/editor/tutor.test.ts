/** The tutor beside the text: hints in steps, turns that can be inserted, and undone like any edit. */
import type { Frame } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { Desk } from './host/desk.ts';

/** One edge of the cross is in the top layer, the others are made. */
const TEXT = 'scramble: F2 D\nx2\ncross: y';

let desk: Desk;
let tutor: Frame;

beforeAll(async () => {
  desk = await Desk.open({ files: { 'a.moves': TEXT }, open: 'a.moves' });
  await desk.view('cube');
  tutor = await desk.view('tutor');
  await desk.cursorTo(3, 80);
});
afterAll(() => desk.close());

async function answerTo(button: string): Promise<string> {
  const before = await tutor.locator('.entry').count();
  await tutor.locator(`[data-question="${button}"]`).click();
  const answer = tutor.locator('.entry').nth(before).locator('.answer .words');
  await answer.waitFor();
  return answer.innerText();
}

describe('the tutor', () => {
  it('offers questions before anything was asked', async () => {
    expect(await tutor.locator('#welcome li').count()).toBeGreaterThanOrEqual(3);
    expect(await tutor.locator('#where').innerText()).toContain('after y');
  });

  it('points first, with a picture and without notation, and names the turns only when asked', async () => {
    const hint = await answerTo('Give me a hint');
    expect(hint).toContain('edge');
    expect(hint).not.toMatch(/\b[UDLRFB]['2]/);
    expect(await tutor.locator('.entry figure .sticker').count()).toBe(54);
    expect(await tutor.locator('.entry .turns').count()).toBe(0);
    await answerTo('Just show me');
    expect(await tutor.locator('.entry .turns').last().innerText()).not.toBe('');
  });

  it('inserts its turns at the place of the question: the cross is then made; one undo takes them out', async () => {
    const turns = await tutor.locator('.entry .turns').last().innerText();
    await tutor.locator('.entry').last().getByText('Insert', { exact: true }).click();
    const line = desk.page.locator('.view-line').nth(2);
    await line.filter({ hasText: turns.split(' ')[0] }).waitFor();
    await desk.page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('.view-line')].some((each) =>
          each.textContent.replaceAll('\u00a0', ' ').endsWith(wanted),
        ),
      turns,
    );
    const [first, second, third] = await desk.lines();
    expect(third).toBe(`cross: y ${turns}`);
    const block = analyse([first, second, third].join('\n')).blocks[0];
    expect(block.timeline.held[0].at(-1)).toBe(1);
    await desk.status().filter({ hasText: 'all goals hold' }).waitFor();
    await desk.focusText();
    await desk.page.keyboard.press('Control+z');
    await desk.status().filter({ hasText: 'cross next' }).waitFor();
    expect((await desk.lines())[2]).toBe(TEXT.split('\n')[2]);
  });

  it('says so when turns no longer fit the text, instead of writing them', async () => {
    await desk.cursorTo(3, 80);
    await desk.page.keyboard.type(' U');
    await desk.status().filter({ hasText: 'after U' }).waitFor();
    await desk.page.waitForTimeout(300);
    const before = await desk.lines();
    await tutor.locator('.entry').last().getByText('Insert', { exact: true }).click();
    await desk.page.waitForTimeout(500);
    expect(await desk.lines()).toEqual(before);
    await desk.page.keyboard.press('Escape');
  });

  it('says what it did not understand and offers three questions that work', async () => {
    const before = await tutor.locator('.entry').count();
    await tutor.locator('#question').click();
    await desk.page.keyboard.type('will it rain tomorrow');
    await desk.page.keyboard.press('Enter');
    const last = tutor.locator('.entry').nth(before);
    await last.locator('.answer').waitFor();
    expect(await last.locator('.follow-ups li').count()).toBeGreaterThanOrEqual(3);
  });

  it('begins anew on request', async () => {
    await tutor.locator('#clear').click();
    await tutor.locator('#welcome').waitFor();
    expect(await tutor.locator('.entry').count()).toBe(0);
  });

  it('shows the cube in a tab beside the text as well, following the cursor, and again after a reload', async () => {
    await desk.run('Turnlore: Open the Cube beside the Text');
    const frames = async (): Promise<Frame[]> => {
      const found: Frame[] = [];
      for (const frame of desk.page.frames()) {
        if ((await frame.$('body[data-view="cube"][data-place]').catch(() => null)) !== null)
          found.push(frame);
      }
      return found;
    };
    let both = await frames();
    for (let tries = 0; tries < 60 && both.length < 2; tries++) {
      await desk.page.waitForTimeout(100);
      both = await frames();
    }
    expect(both).toHaveLength(2);
    await desk.cursorTo(2, 1);
    for (const frame of both) await frame.waitForSelector('body[data-place="0"]');
    // The editor writes its layout with a delay.
    await desk.page.waitForTimeout(6000);
    await desk.reload();
    both = await frames();
    for (let tries = 0; tries < 100 && both.length < 2; tries++) {
      await desk.page.waitForTimeout(100);
      both = await frames();
    }
    expect(both).toHaveLength(2);
  });
});
