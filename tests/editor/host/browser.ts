/** A Chromium to drive: one that is installed, or Debian's, fetched as root. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';

const NAMES = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];

const PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
];

function installed(): string | undefined {
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  const candidates = [
    ...NAMES.flatMap((name) => folders.map((folder) => path.join(folder, name))),
    ...PLACES,
  ];
  return candidates.find((file) => existsSync(file));
}

/** Path of the browser; throws with what is to be installed if there is none. */
export function findBrowser(say: (line: string) => void): string {
  const found = installed();
  if (found !== undefined) return found;
  if (process.platform === 'linux' && process.getuid?.() === 0) {
    say('No Chromium found; installing Debian’s …');
    for (const words of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
      spawnSync('apt-get', words, {
        stdio: 'inherit',
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      });
    }
    const fetched = installed();
    if (fetched !== undefined) return fetched;
  }
  throw new Error(
    'The editor tests need a browser: install Chromium, Chrome or Edge (on Debian: apt-get install chromium) and run them again.',
  );
}

export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
