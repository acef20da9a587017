/** The comfort of the language in the real editor: lenses, hints, completion, formatting, names, refactorings. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Desk } from './host/desk.ts';

const INSERTS = "sequence: right insert\n  U R U' R' U' F' U F\n";
/** The last corner of a first layer with yellow down, then more; lines are counted from 1. */
const SOLVE = [
  'use: inserts.moves',
  "scramble: R U' R'",
  'base: yellow',
  'cross:',
  '  U   U’    // looked at it',
  'corners:',
  "  R U R' // in",
  'middle:',
  '  @right-insert',
].join('\n');
const BARE = [
  "scramble: L U' F' L' R' B2 F2 U' B' R2 B U2 L' F L' D' F' R2 L2 B2",
  'x2',
  'L',
  'U B2',
  "D' L' D",
  "U L' U L",
  "y2 L' U L",
  "y L' U L",
  "y R U' R'",
].join('\n');

let desk: Desk;

beforeAll(async () => {
  desk = await Desk.open({
    files: { 'solve.moves': SOLVE, 'inserts.moves': INSERTS, 'bare.moves': BARE },
    open: 'solve.moves',
    settings: {
      'turnlore.inlayHints.counts': true,
      'turnlore.inlayHints.claims': true,
      'turnlore.openViews': false,
    },
  });
});
afterAll(() => desk.close());

const line = (text: string) => desk.page.locator('.view-line').filter({ hasText: text });

describe('a solve in the editor', () => {
  it('says above its stages what became of them, and below the cursor how far they are', async () => {
    await desk.page
      .locator('.codelens-decoration')
      .filter({ hasText: '3 turns · reached and kept' })
      .first()
      .waitFor();
    await desk.cursorTo(7, 3);
    await line('corners reached').first().waitFor();
    await line('3 · 5').first().waitFor();
  });

  it('offers what may follow, the sensible first', async () => {
    await desk.cursorTo(9, 16);
    await desk.page.keyboard.type(' ');
    await desk.page.keyboard.press('Control+Space');
    const rows = desk.page.locator('.suggest-widget.visible .monaco-list-row');
    await rows.first().waitFor();
    expect(await rows.count()).toBeGreaterThan(5);
    await desk.page.keyboard.press('Escape');
    await desk.page.keyboard.press('Control+z');
  });

  it('is formatted without losing a word', async () => {
    await desk.focusText();
    await desk.run('Format Document');
    await line("  U U'    // looked at it").first().waitFor();
    await line("  R U R'  // in").first().waitFor();
  });

  it('a name is changed in both files', async () => {
    await desk.cursorTo(9, 8);
    await desk.page.keyboard.press('F2');
    const input = desk.page.locator('.rename-box input');
    await input.waitFor();
    expect(await input.inputValue()).toBe('right-insert');
    await input.fill('edge in');
    await desk.page.keyboard.press('Enter');
    await line('@edge-in').first().waitFor();
    await desk.openFile('inserts.moves');
    await line('sequence: edge in').first().waitFor();
    await desk.cursorTo(1, 14);
    const hover = desk.page.locator('.monaco-hover').filter({ hasText: 'order 15' });
    await desk.run('Show or Focus Hover');
    await hover.first().waitFor();
  });

  it('bare turns get stages and notes', async () => {
    await desk.openFile('bare.moves');
    await desk.cursorTo(4, 1);
    await desk.page.keyboard.press('Control+Shift+r');
    const action = desk.page
      .locator('.action-widget .monaco-list-row')
      .filter({ hasText: 'Propose stages and notes' });
    await action.waitFor();
    await action.click();
    await line('cross:').first().waitFor();
    await line('corners:').first().waitFor();
    await line('white-blue-red corner home').first().waitFor();
    expect(desk.errors).toEqual([]);
  });
});
