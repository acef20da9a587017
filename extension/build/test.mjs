/**
 * `npm test`: everything that must hold, step by step, each announced and timed. A failing step does
 * not hide the ones after it. The last line counts tests as the test runner reported them; a test
 * file that could not be loaded counts as one failure.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const scratch = mkdtempSync(path.join(os.tmpdir(), 'turnlore-test-'));

/** @typedef {{ name: string, command: string[], report?: string }} Step */

/**
 * @param {string} name
 * @param {string} config
 * @returns {Step}
 */
function testStep(name, config) {
  const report = path.join(scratch, `${name.replaceAll(' ', '-')}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return {
    name,
    command: ['node_modules/vitest/vitest.mjs', 'run', '--config', config, ...reporters],
    report,
  };
}

const ESLINT = [
  'node_modules/eslint/bin/eslint.js',
  '--config',
  'extension/build/eslint.config.mjs',
];

/** @type {Step[]} */
const steps = [
  { name: 'build', command: ['extension/build/bundle.mjs'] },
  { name: 'types', command: ['extension/build/typecheck.mjs'] },
  { name: 'lint', command: [...ESLINT, '--max-warnings', '0', '.'] },
  { name: 'format', command: ['node_modules/prettier/bin/prettier.cjs', '--check', '.'] },
  testStep('tests', 'tests/vitest.config.ts'),
];

// The tests in a real editor take minutes and a browser; they have a configuration of their own.
const EDITOR_TESTS = 'tests/editor/vitest.config.ts';
if (existsSync(EDITOR_TESTS)) steps.push(testStep('editor tests', EDITOR_TESTS));

/**
 * @param {string[]} command
 * @returns {Promise<number>}
 */
function run(command) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, command, { stdio: 'inherit' });
    child.on('error', () => resolve(1));
    child.on('close', (code) => resolve(code ?? 1));
  });
}

/**
 * @param {string} file
 * @returns {{ passed: number, failed: number, skipped: number }}
 */
function countsIn(file) {
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const unloaded = report.testResults.filter(
    (/** @type {{ status: string, assertionResults: unknown[] }} */ result) =>
      result.status === 'failed' && result.assertionResults.length === 0,
  ).length;
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

const total = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const failing = [];
const wholeStart = performance.now();
for (const { name, command, report } of steps) {
  process.stdout.write(`\n== ${name}\n`);
  const start = performance.now();
  const code = await run(command);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  process.stdout.write(`== ${name}: ${code === 0 ? 'ok' : 'FAILED'} in ${seconds} s\n`);
  if (code !== 0) failing.push(name);
  if (report !== undefined) {
    const counts = countsIn(report);
    total.passed += counts.passed;
    total.failed += counts.failed;
    total.skipped += counts.skipped;
  }
}
rmSync(scratch, { recursive: true, force: true });

const minutes = ((performance.now() - wholeStart) / 60_000).toFixed(1);
const steady = failing.length === 0 ? 'all steps ok' : `failing steps: ${failing.join(', ')}`;
process.stdout.write(`\n${steady}; ${minutes} min in all\n`);
const skipped = total.skipped === 0 ? '' : `, ${total.skipped} skipped`;
process.stdout.write(`tests: ${total.passed} passed, ${total.failed} failed${skipped}\n`);
process.exitCode = failing.length === 0 ? 0 : 1;
