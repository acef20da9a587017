/**
 * The embedded editor, in which the editor tests run and which `npm start` opens where no desktop
 * editor is found: the desktop editor's own code, served to a browser on this machine only.
 *
 * It is large (some 600 MB), so it is no dependency: it is fetched from npm on first need, pinned,
 * into `.cache/`, where git does not look.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const PACKAGE = 'code-server';
const VERSION = '4.139.1';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const home = path.join(root, '.cache', 'editor-host');
const stamp = path.join(home, 'installed.json');
const entry = path.join(home, 'node_modules', PACKAGE, 'out', 'node', 'entry.js');

/** A reason why there is no editor, said in a sentence to whoever waits for one. */
export class HostError extends Error {}

/** Whether the pinned editor is there and complete. */
function installed(): boolean {
  if (!existsSync(stamp) || !existsSync(entry)) return false;
  const { version } = JSON.parse(readFileSync(stamp, 'utf8')) as { version?: unknown };
  return version === VERSION;
}

/** Makes the editor available and says on the way what is going on. Rejects with a `HostError`. */
export async function installHost(say: (line: string) => void): Promise<void> {
  if (installed()) return;
  if (process.platform === 'win32') {
    throw new HostError(
      'The embedded editor does not run on Windows: install VS Code so that "code" is on the path, and start again.',
    );
  }
  say(`Fetching the embedded editor (${PACKAGE} ${VERSION}, some 600 MB on disk, once) …`);
  const start = performance.now();
  rmSync(home, { recursive: true, force: true });
  mkdirSync(home, { recursive: true });
  writeFileSync(path.join(home, 'package.json'), '{ "private": true }\n');
  // Install scripts would compile native modules for minutes; the editor runs without them.
  const quiet = ['--no-audit', '--no-fund', '--loglevel=error'];
  // Without a network the answer should come in seconds, not after npm's usual two minutes.
  const hasty = [
    '--fetch-retries=1',
    '--fetch-retry-mintimeout=1000',
    '--fetch-retry-maxtimeout=3000',
  ];
  const common = ['--ignore-scripts', ...quiet, ...hasty];
  await npm(['install', `${PACKAGE}@${VERSION}`, '--save-exact', ...common], home, say, '1 of 2');
  const inner = path.join(home, 'node_modules', PACKAGE, 'lib', 'vscode');
  await npm(['install', '--omit=dev', ...common], inner, say, '2 of 2');
  writeFileSync(stamp, `${JSON.stringify({ version: VERSION })}\n`);
  say(`The embedded editor is there after ${((performance.now() - start) / 1000).toFixed(0)} s.`);
}

function npm(
  words: string[],
  folder: string,
  say: (line: string) => void,
  step: string,
): Promise<void> {
  return new Promise((resolve, reject) => {
    const start = performance.now();
    const seconds = (): string => `${((performance.now() - start) / 1000).toFixed(0)} s`;
    const tick = setInterval(() => say(`… still fetching, step ${step}, ${seconds()}`), 10_000);
    const child = spawn('npm', words, { cwd: folder, stdio: ['ignore', 'ignore', 'pipe'] });
    let errors = '';
    child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString()));
    child.on('error', (error) => {
      clearInterval(tick);
      reject(
        new HostError(
          `The embedded editor could not be fetched: npm does not start (${error.message}).`,
        ),
      );
    });
    child.on('close', (code) => {
      clearInterval(tick);
      if (code === 0) resolve();
      else reject(new HostError(sayFailure(errors)));
    });
  });
}

function sayFailure(errors: string): string {
  if (/ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ETIMEDOUT|ENETUNREACH|network/i.test(errors)) {
    return 'The embedded editor could not be fetched: npm’s registry cannot be reached from here. Connect to a network once, or install VS Code so that "code" is on the path.';
  }
  if (errors.includes('ENOSPC')) {
    return 'The embedded editor could not be fetched: there is no room on the disk (it takes some 600 MB).';
  }
  const lines = errors.trim().split('\n').slice(0, 6).join('\n  ');
  return `The embedded editor could not be fetched; npm says:\n  ${lines}`;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = net.createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as net.AddressInfo;
      server.close(() => resolve(port));
    });
  });
}

const SETTINGS = {
  'security.workspace.trust.enabled': false,
  'workbench.startupEditor': 'none',
  'files.autoSave': 'off',
  'workbench.editor.useModal': 'off',
  'telemetry.telemetryLevel': 'off',
  'chat.disableAIFeatures': true,
  'window.commandCenter': false,
  'window.autoDetectColorScheme': false,
  'window.autoDetectHighContrast': false,
};

export interface Host {
  /** Address at which the workspace is open with the extension loaded, and a file of it if one is named. */
  urlFor(file?: string): string;
  stop(): Promise<void>;
}

export interface HostOptions {
  readonly workspace: string;
  /** Folder for the editor's own files; one that is kept remembers the layout. */
  readonly data: string;
  /** Settings of the person, on top of quiet ones. */
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly port?: number;
}

/** Serves the workspace with this checkout's extension, as built in `dist/`, on 127.0.0.1. */
export async function startHost({
  workspace,
  data,
  settings = {},
  port,
}: HostOptions): Promise<Host> {
  const chosen = port ?? (await freePort());
  const userData = path.join(data, 'user-data');
  const settingsFile = path.join(userData, 'User', 'settings.json');
  mkdirSync(path.dirname(settingsFile), { recursive: true });
  if (!existsSync(settingsFile)) {
    writeFileSync(settingsFile, JSON.stringify({ ...SETTINGS, ...settings }, undefined, 2));
  }
  const log = path.join(data, 'server.log');
  const child = spawn(
    process.execPath,
    [
      entry,
      ...['--auth', 'none', '--bind-addr', `127.0.0.1:${chosen}`],
      ...['--config', path.join(data, 'config.yaml')],
      ...['--user-data-dir', userData, '--extensions-dir', path.join(data, 'extensions')],
      ...['--disable-telemetry', '--disable-update-check', '--disable-getting-started-override'],
      ...['--vscode-option', 'enable-smoke-test-driver'],
      workspace,
    ],
    {
      detached: true,
      stdio: ['ignore', 'pipe', 'pipe'],
      env: { ...process.env, VSCODE_IPC_HOOK_CLI: '' },
    },
  );
  let printed = '';
  const note = (chunk: Buffer): void => {
    printed += chunk.toString();
    writeFileSync(log, printed);
  };
  child.stdout.on('data', note);
  child.stderr.on('data', note);
  let over = false;
  const ended = new Promise<void>((resolve) => {
    child.on('close', () => {
      over = true;
      resolve();
    });
  });
  const stop = async (): Promise<void> => {
    if (!over && child.pid !== undefined) {
      try {
        process.kill(-child.pid, 'SIGTERM');
      } catch {
        // It has ended between the two lines.
      }
      await Promise.race([ended, new Promise((resolve) => setTimeout(resolve, 3000))]);
    }
  };
  const authority = `127.0.0.1:${chosen}`;
  if (!(await answers(`http://${authority}/healthz`, () => over))) {
    await stop();
    throw new HostError(
      `The embedded editor does not start; its last words:\n  ${printed.trim().split('\n').slice(-5).join('\n  ')}`,
    );
  }
  const urlFor = (file?: string): string => {
    const payload = [['extensionDevelopmentPath', `vscode-remote://${authority}${root}`]];
    if (file !== undefined)
      payload.push(['openFile', `vscode-remote://${authority}${path.join(workspace, file)}`]);
    const query = new URLSearchParams({ folder: workspace, payload: JSON.stringify(payload) });
    return `http://${authority}/?${query.toString()}`;
  };
  return { urlFor, stop };
}

async function answers(address: string, over: () => boolean): Promise<boolean> {
  for (let tries = 0; tries < 300 && !over(); tries++) {
    try {
      if ((await fetch(address)).ok) return true;
    } catch {
      // Not listening yet.
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return false;
}

/** A folder of its own below the machine's temporary one. */
export function scratchFolder(name: string): string {
  const folder = path.join(
    os.tmpdir(),
    `turnlore-${name}-${process.pid}-${Date.now().toString(36)}`,
  );
  mkdirSync(folder, { recursive: true });
  return folder;
}
