/**
 * Takes the pictures of the README from the real editor, into `media/screenshots/`. Runs under
 * `node extension/build/guard.mjs extension/build/screenshots.mjs`; needs what the editor tests need.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Desk, THEMES } from '../../tests/editor/host/desk.ts';
import { installHost } from './host.ts';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
process.chdir(root);
const folder = path.join(root, 'media', 'screenshots');
mkdirSync(folder, { recursive: true });

const { status } = spawnSync(process.execPath, ['extension/build/bundle.mjs'], {
  stdio: 'inherit',
});
if (status !== 0) process.exit(1);
await installHost((line) => process.stdout.write(`${line}\n`));

const desk = await Desk.open({
  samples: 'media/samples',
  open: 'broken-cross.moves',
  size: { width: 1240, height: 820 },
  settings: { 'editor.minimap.enabled': false, 'workbench.activityBar.location': 'hidden' },
});

/** @param {string} name */
async function shoot(name) {
  await desk.page.waitForTimeout(700);
  await desk.page.screenshot({ path: path.join(folder, `${name}.png`) });
  process.stdout.write(`media/screenshots/${name}.png\n`);
}

try {
  await desk.view('cube');
  const tutor = await desk.view('tutor');
  await desk.run('View: Toggle Primary Side Bar Visibility');
  await desk.widen(480);
  await desk.cursorTo(16, 6);
  await tutor.locator('#question').click();
  await desk.page.keyboard.type('Why did the cross break?');
  await desk.page.keyboard.press('Enter');
  await tutor.locator('.entry .answer').last().waitFor();
  await desk.cursorTo(16, 6);
  for (const [name, theme] of Object.entries(THEMES)) {
    await desk.theme(theme);
    await shoot(`broken-cross-${name.replaceAll(' ', '-')}`);
  }
  await desk.theme(THEMES.light);
  await desk.hoverAt(20, 7);
  await shoot('hover');
} finally {
  await desk.close();
}
