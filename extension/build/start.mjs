/**
 * `npm start`: builds the extension and opens a workspace of samples with it, in the desktop editor
 * if there is one, otherwise in the embedded one, whose address is printed. `--browser` takes the
 * embedded one in any case; `--port N` gives it a fixed port.
 */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { setInterval } from 'node:timers';
import { parseArgs } from 'node:util';
import { HostError, installHost, startHost } from './host.ts';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
process.chdir(root);
const say = (/** @type {string} */ line) => process.stdout.write(`${line}\n`);

/** Runs the bundler in a process of its own, so that its failure is a failure here. */
function build() {
  const { status } = spawnSync(process.execPath, ['extension/build/bundle.mjs'], {
    stdio: 'inherit',
  });
  if (status !== 0)
    throw new HostError('The extension could not be built; the lines above say why.');
}

/** A copy of the samples that may be written into; it stays from one start to the next. */
function makeWorkspace() {
  const workspace = path.join(root, '.cache', 'workspace');
  mkdirSync(workspace, { recursive: true });
  const samples = path.join(root, 'media', 'samples');
  cpSync(samples, workspace, { recursive: true, force: false });
  const files = readdirSync(workspace)
    .filter((name) => name.endsWith('.moves'))
    .sort();
  const first = files.find((name) => name.includes('broken')) ?? files[0];
  if (first === undefined) throw new HostError(`There is no sample in ${samples}.`);
  return { workspace, first };
}

/** The desktop editor's command, if the machine has one that can be started by it. */
function findDesktop() {
  for (const command of ['code', 'code-insiders', 'codium']) {
    const { status } = spawnSync(command, ['--version'], {
      stdio: 'ignore',
      shell: process.platform === 'win32',
    });
    if (status === 0) return command;
  }
  return undefined;
}

async function main() {
  const { values } = parseArgs({
    options: { browser: { type: 'boolean' }, port: { type: 'string' } },
  });
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port > 0 && port < 65536)) {
    throw new HostError(`"${values.port}" is no port: --port wants a number from 1 to 65535.`);
  }
  build();
  const { workspace, first } = makeWorkspace();
  const desktop = values.browser ? undefined : findDesktop();
  if (desktop !== undefined) {
    const words = [`--extensionDevelopmentPath=${root}`, workspace, path.join(workspace, first)];
    spawn(desktop, words, {
      detached: true,
      stdio: 'ignore',
      shell: process.platform === 'win32',
    }).unref();
    say(
      `Opened ${first} in the desktop editor ("${desktop}"). "npm start -- --browser" takes the embedded one.`,
    );
    return;
  }
  await installHost(say);
  if (!existsSync(workspace)) mkdirSync(workspace);
  const data = path.join(root, '.cache', 'start');
  const host = await startHost({ workspace, data, ...(port === undefined ? {} : { port }) });
  say(
    `\nOpen this address in a browser on this machine:\n\n  ${host.urlFor(first)}\n\nCtrl+C ends the editor.`,
  );
  const end = () => void host.stop().then(() => process.exit(0));
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, end);
  // npm may be ended without a word to its script; the editor should not outlive it.
  const parent = process.ppid;
  setInterval(() => process.ppid === parent || end(), 1000);
}

main().catch((error) => {
  if (!(error instanceof HostError) && !String(error?.code).startsWith('ERR_PARSE_ARGS'))
    throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
});
