/**
 * A desk: the real editor with this extension in a real browser, a workspace of its own, and the
 * hands to use it. What tests ask it is what a person would see.
 */
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import {
  chromium,
  type Browser,
  type BrowserContext,
  type Frame,
  type Page,
} from 'playwright-core';
import { scratchFolder, startHost, type Host } from '../../../extension/build/host.ts';
import { BROWSER_FLAGS, findBrowser } from './browser.ts';

export interface DeskOptions {
  /** Files of the workspace by name. */
  readonly files?: Readonly<Record<string, string>>;
  /** Folder whose files are copied into the workspace. */
  readonly samples?: string;
  /** The file opened first. */
  readonly open: string;
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly size?: { readonly width: number; readonly height: number };
}

export const THEMES = {
  dark: 'Dark Modern',
  light: 'Light Modern',
  'high contrast dark': 'Dark High Contrast',
  'high contrast light': 'Light High Contrast',
} as const;

/** Hints stand in the lines that tests read; a test that is about them turns them on. */
const QUIET = { 'turnlore.inlayHints.counts': false, 'turnlore.inlayHints.claims': false };

export class Desk {
  readonly page: Page;
  readonly workspace: string;
  /** What the browser's console called an error; the editor's own noise left out. */
  readonly errors: string[] = [];
  private readonly browser: Browser;
  private readonly context: BrowserContext;
  private readonly host: Host;
  private readonly data: string;

  private constructor(parts: {
    page: Page;
    browser: Browser;
    context: BrowserContext;
    host: Host;
    data: string;
    workspace: string;
  }) {
    this.page = parts.page;
    this.browser = parts.browser;
    this.context = parts.context;
    this.host = parts.host;
    this.data = parts.data;
    this.workspace = parts.workspace;
    this.page.on('console', (message) => {
      const from = message.location().url;
      if (message.type() === 'error' && from.includes('/dist/')) this.errors.push(message.text());
    });
    this.page.on('pageerror', (error) => {
      if (error.stack?.includes('/dist/webview/') === true) this.errors.push(error.message);
    });
  }

  static async open(options: DeskOptions): Promise<Desk> {
    const data = scratchFolder('desk');
    const workspace = path.join(data, 'workspace');
    mkdirSync(workspace);
    if (options.samples !== undefined) cpSync(options.samples, workspace, { recursive: true });
    for (const [name, text] of Object.entries(options.files ?? {})) {
      writeFileSync(path.join(workspace, name), text);
    }
    const host = await startHost({
      workspace,
      data,
      settings: { ...QUIET, ...options.settings },
    });
    const browser = await chromium.launch({
      executablePath: findBrowser(() => undefined),
      args: BROWSER_FLAGS,
    });
    const context = await browser.newContext({
      viewport: options.size ?? { width: 1400, height: 900 },
    });
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    const page = await context.newPage();
    page.setDefaultTimeout(30_000);
    const desk = new Desk({ page, browser, context, host, data, workspace });
    await page.goto(host.urlFor(options.open));
    await desk.ready();
    return desk;
  }

  /** Waits until the file is in the editor and the extension has looked at it. */
  async ready(): Promise<void> {
    await this.page.waitForSelector('.monaco-editor .view-line');
    await this.status().waitFor();
  }

  /** Opens another file of the workspace by its name. */
  async openFile(name: string): Promise<void> {
    await this.page.keyboard.press('Control+p');
    await this.page.locator('.quick-input-widget input').fill(name);
    await this.page
      .locator('.quick-input-list .monaco-list-row')
      .first()
      .filter({ hasText: name })
      .waitFor();
    await this.page.keyboard.press('Enter');
    await this.page.locator('.tab.active').filter({ hasText: name }).waitFor();
  }

  /** Loads the window anew, as it was left (an address that names a file would open that alone). */
  async reload(): Promise<void> {
    await this.page.goto(this.host.urlFor());
    await this.ready();
  }

  status(): ReturnType<Page['locator']> {
    return this.page.locator('[id="turnlore.turnlore.goals"]');
  }

  /** The frame of a view, once its script has run. */
  async view(name: 'cube' | 'tutor'): Promise<Frame> {
    for (let tries = 0; tries < 400; tries++) {
      for (const frame of this.page.frames()) {
        const found = await frame.$(`body[data-view="${name}"][data-loaded]`).catch(() => null);
        if (found !== null) return frame;
      }
      await this.page.waitForTimeout(100);
    }
    throw new Error(`the ${name} view does not come up`);
  }

  /** Runs a command by its whole title, as in `Turnlore: One Turn Back`. */
  async run(title: string): Promise<void> {
    await this.page.keyboard.press('F1');
    const input = this.page.locator('.quick-input-widget input');
    await input.fill(`>${title}`);
    const first = this.page.locator('.quick-input-list .monaco-list-row').first();
    await first.filter({ hasText: title.split(': ').at(-1) ?? title }).waitFor();
    await this.page.keyboard.press('Enter');
  }

  /** Chooses a colour theme by its name in the picker. */
  async theme(name: string): Promise<void> {
    await this.page.keyboard.press('Control+k');
    await this.page.keyboard.press('Control+t');
    await this.page.locator('.quick-input-widget input').fill(name);
    await this.page
      .locator('.quick-input-list .monaco-list-row')
      .first()
      .filter({ hasText: name })
      .waitFor();
    await this.page.waitForTimeout(400);
    await this.page.keyboard.press('Enter');
    await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /** Drags the edge of the side bar with the views so that it takes so many pixels. */
  async widen(pixels: number): Promise<void> {
    const bar = await this.page.locator('.part.auxiliarybar').boundingBox();
    const size = this.page.viewportSize();
    if (bar === null || size === null) return;
    const y = bar.y + bar.height / 2;
    await this.page.mouse.move(bar.x - 2, y);
    await this.page.mouse.down();
    await this.page.mouse.move(size.width - pixels, y, { steps: 5 });
    await this.page.mouse.up();
  }

  /** Rests the mouse on a character in sight (line and column from 1) until a hover with a picture is there. */
  async hoverAt(line: number, column: number): Promise<void> {
    const top = `${
      (
        await this.page
          .locator('.line-numbers')
          .filter({ hasText: new RegExp(`^${line}$`) })
          .first()
          .boundingBox()
      )?.y ?? 0
    }`;
    const at = await this.page.locator('.monaco-editor .view-line').evaluateAll(
      (lines, [y, index]) => {
        const found = lines.find(
          (each) => Math.abs(each.getBoundingClientRect().top - Number(y)) < 3,
        );
        if (found === undefined) return undefined;
        let rest = Number(index);
        const walker = document.createTreeWalker(found, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
          const length = node.textContent?.length ?? 0;
          if (rest < length) {
            const range = document.createRange();
            range.setStart(node, rest);
            range.setEnd(node, rest + 1);
            const box = range.getBoundingClientRect();
            return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
          }
          rest -= length;
        }
        return undefined;
      },
      [top, String(column - 1)],
    );
    if (at === undefined) throw new Error(`line ${line} is not in sight`);
    await this.page.mouse.move(at.x + 60, at.y + 90);
    await this.page.mouse.move(at.x, at.y, { steps: 2 });
    await this.page.locator('.monaco-hover img[src^="data:image/svg+xml"]').waitFor();
  }

  /** Puts the keyboard into the text. No click: a lens may stand wherever one would click. */
  async focusText(): Promise<void> {
    await this.page
      .locator('.monaco-editor .native-edit-context, .monaco-editor textarea.inputarea')
      .first()
      .focus();
  }

  /** Puts the keyboard into the text and the cursor at a line and column, both from 1. */
  async cursorTo(line: number, column: number): Promise<void> {
    await this.focusText();
    await this.page.keyboard.press('Control+g');
    const input = this.page.locator('.quick-input-widget input');
    await input.fill(`:${line}:${column}`);
    await this.page.waitForTimeout(150);
    await this.page.keyboard.press('Enter');
    await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
  }

  /** Line and column of the cursor as the editor's status bar says. */
  async cursor(): Promise<{ line: number; column: number }> {
    const words = await this.page.locator('[id="status.editor.selection"]').innerText();
    const [line, column] = words.match(/\d+/g)?.map(Number) ?? [];
    return { line, column };
  }

  /** The lines of the text that are in sight, with ordinary spaces. */
  async lines(): Promise<string[]> {
    const lines = await this.page.locator('.monaco-editor .view-line').evaluateAll((elements) =>
      elements
        .map((element) => ({ top: element.getBoundingClientRect().top, text: element.textContent }))
        .sort((a, b) => a.top - b.top)
        .map(({ text }) => text),
    );
    return lines.map((line) => line.replaceAll('\u00a0', ' '));
  }

  /** What the Problems panel lists: message and place. */
  async problems(): Promise<string[]> {
    return this.page
      .locator('.markers-panel .monaco-list-row')
      .evaluateAll((rows) => rows.map((row) => row.getAttribute('aria-label') ?? ''));
  }

  async close(): Promise<void> {
    await this.context.close();
    await this.browser.close();
    await this.host.stop();
    rmSync(this.data, { recursive: true, force: true, maxRetries: 3 });
  }
}
