/** Once before all editor tests: the bundles, the embedded editor and a browser are there, or it is said what is missing. */
import { spawnSync } from 'node:child_process';
import { installHost } from '../../../extension/build/host.ts';
import { findBrowser } from './browser.ts';

export default async function setup(): Promise<void> {
  const { status } = spawnSync(process.execPath, ['extension/build/bundle.mjs'], {
    stdio: 'inherit',
  });
  if (status !== 0) throw new Error('The extension could not be built.');
  const say = (line: string): void => void process.stdout.write(`${line}\n`);
  findBrowser(say);
  await installHost(say);
}
