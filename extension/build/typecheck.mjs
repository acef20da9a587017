/**
 * Checks the types of every area under its own surroundings: the engine without Node and DOM, the
 * webview with DOM, the editor side with the editor's types only, and so on; last the whole tree,
 * which also covers the tests. Two compilers run at a time, and only areas with sources are checked.
 */
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';

const AREAS = [
  'engine',
  'webview',
  'extension/editor',
  'extension/worker',
  'extension/terminal',
  '.',
];
const AT_A_TIME = 2;

/** @param {string} area */
function hasSources(area) {
  return readdirSync(area, { recursive: true }).some((name) => String(name).endsWith('.ts'));
}

/**
 * @param {string} area
 * @returns {Promise<{ area: string, code: number, output: string }>}
 */
function check(area) {
  return new Promise((resolve) => {
    const config = path.join(area, 'tsconfig.json');
    const child = spawn(process.execPath, [
      'node_modules/typescript/bin/tsc',
      '--noEmit',
      '-p',
      config,
    ]);
    let output = '';
    child.stdout.on('data', (chunk) => (output += chunk));
    child.stderr.on('data', (chunk) => (output += chunk));
    child.on('close', (code) => resolve({ area, code: code ?? 1, output }));
  });
}

const waiting = AREAS.filter(
  (area) => existsSync(path.join(area, 'tsconfig.json')) && hasSources(area),
);
let failed = 0;
async function work() {
  for (let area = waiting.shift(); area !== undefined; area = waiting.shift()) {
    const { code, output } = await check(area);
    process.stdout.write(`${area}: ${code === 0 ? 'ok' : 'errors'}\n${output}`);
    if (code !== 0) failed++;
  }
}
await Promise.all(Array.from({ length: AT_A_TIME }, work));
process.exitCode = failed === 0 ? 0 : 1;
