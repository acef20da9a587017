/** The searches in the real editor: find the slip, mend it, call a search off, fill a gap, solve from here. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { Desk } from './host/desk.ts';

const SAMPLES = fileURLToPath(new URL('../../media/samples', import.meta.url));
const RIGHT = readFileSync(path.join(SAMPLES, 'first-solve.moves'), 'utf8');
const SCRAMBLED = RIGHT.replace('B2 F2', 'B2 F');
/** Two primes are lost: no single change mends it, so only a search can. */
const TWICE = RIGHT.replace("y L' U L    ", 'y L U L    ').replace("R' F R' B2", "R' F R B2");
const GAP = RIGHT.replace("  R U R' U R U2 R'            // one", '  …            // one');

let desk: Desk;

beforeAll(async () => {
  desk = await Desk.open({
    files: {
      'a.moves': SCRAMBLED,
      'twice.moves': TWICE,
      'gap.moves': GAP,
      'open.moves': "scramble: R U R' F\nbase: white\nmethod: layers\n\n",
    },
    open: 'a.moves',
  });
});
afterAll(() => desk.close());

const picks = () => desk.page.locator('.quick-input-list .monaco-list-row');

/** What the file of the workspace holds once it is saved. */
async function saved(name: string): Promise<string> {
  await desk.page.keyboard.press('Control+s');
  await desk.page.waitForTimeout(500);
  return readFileSync(path.join(desk.workspace, name), 'utf8');
}

describe('a solve whose scramble was copied wrong', () => {
  it('is explained by the slip, and mended by choosing it', async () => {
    await desk.page.locator('.squiggly-error').first().waitFor();
    await desk.cursorTo(13, 1);
    await desk.run('Turnlore: Find the Slip');
    const first = picks().filter({ hasText: 'then it ends solved' }).first();
    await first.waitFor();
    expect(await first.innerText()).toContain('F2 instead of F, turn 7 of the scramble, line 3');
    await first.click();
    await desk.page.locator('.squiggly-error').first().waitFor({ state: 'detached' });
    expect(await saved('a.moves')).toBe(RIGHT);
  });
});

describe('a solve with two lost primes', () => {
  it('has the pair as a quick fix of its error, which is gone then', async () => {
    await desk.openFile('twice.moves');
    await desk.page.locator('.squiggly-error').first().waitFor();
    const [error] = analyse(TWICE).findings.filter(({ severity }) => severity === 'error');
    const { line, character } = error.range.start;
    await desk.cursorTo(line + 1, character + 1);
    await desk.page.keyboard.press('Control+.');
    const fix = desk.page
      .locator('.action-widget .monaco-list-row.action')
      .filter({ hasText: 'then it ends solved' })
      .first();
    await fix.waitFor();
    await fix.click();
    await desk.page.locator('.squiggly-error').first().waitFor({ state: 'detached' });
    expect(await saved('twice.moves')).toBe(RIGHT);
  });
});

describe('an unknown stretch', () => {
  it('is filled from the lens above it', async () => {
    await desk.openFile('gap.moves');
    const lens = desk.page.locator('.codelens-decoration a').filter({ hasText: 'Fill the gap' });
    await lens.first().waitFor();
    await lens.first().click();
    const fill = picks().filter({ hasText: 'the shortest turns that fit' }).first();
    await fill.waitFor();
    await fill.click();
    await lens.first().waitFor({ state: 'detached' });
    const text = await saved('gap.moves');
    expect(text).not.toContain('…');
    expect(analyse(text).blocks[0].solved).toBe(true);
  });
});

describe('solving from the cursor', () => {
  it('writes the turns there, proven shortest', async () => {
    await desk.openFile('open.moves');
    await desk.cursorTo(4, 1);
    await desk.run('Turnlore: Solve from Here in Few Turns');
    await desk.page.locator('.quick-input-title').filter({ hasText: '4 turns, proven' }).waitFor();
    await picks().filter({ hasText: 'Write the turns here' }).first().click();
    await desk.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    const text = await saved('open.moves');
    expect(text).toContain("F' R U' R'");
    expect(analyse(text).blocks[0].solved).toBe(true);
  });
});

describe('calling a search off', () => {
  it('ends it at once, and nothing is opened', async () => {
    await desk.openFile('open.moves');
    const tabs = await desk.page.locator('.tab').count();
    await desk.run('Turnlore: Practise a Goal');
    await picks().filter({ hasText: 'middle' }).first().click();
    await desk.page.locator('.quick-input-title').filter({ hasText: 'How many' }).waitFor();
    const input = desk.page.locator('.quick-input-widget input').first();
    await input.fill('999');
    // What is typed is looked at before it can be accepted.
    await desk.page.waitForTimeout(500);
    await desk.page.keyboard.press('Enter');
    await desk.run('Notifications: Show Notifications');
    const notice = desk.page
      .locator(
        '.notifications-center .notification-list-item, .notifications-toasts .notification-list-item',
      )
      .filter({ hasText: 'Drawing states' })
      .first();
    await notice.waitFor();
    await notice.hover();
    const cancel = notice.getByText('Cancel').first();
    await cancel.waitFor();
    // Nine hundred more scrambles would take seconds.
    expect(await desk.page.locator('.tab').count()).toBe(tabs);
    const clicked = performance.now();
    await cancel.click();
    await notice.waitFor({ state: 'detached' });
    expect(performance.now() - clicked).toBeLessThan(1000);
    await desk.page.waitForTimeout(4000);
    expect(await desk.page.locator('.tab').count()).toBe(tabs);
  });
});

describe('the person’s way', () => {
  it('opens the person’s way as a text of its own', async () => {
    await desk.cursorTo(1, 1);
    await desk.run('Turnlore: Solve from Here as a Person Would');
    await picks().filter({ hasText: 'Open as a text' }).first().click();
    await desk.page.locator('.tab.active').filter({ hasText: 'Untitled' }).waitFor();
    await desk.page.locator('.view-line').filter({ hasText: 'Layer by layer' }).first().waitFor();
  });
});
