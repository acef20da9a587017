/** The guard through which every npm script goes; see `extension/build/guard.mjs`. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const guard = fileURLToPath(new URL('../../extension/build/guard.mjs', import.meta.url));
let folder = '';
let script = '';

beforeAll(() => {
  folder = realpathSync(mkdtempSync(path.join(os.tmpdir(), 'turnlore-guard-')));
  script = path.join(folder, 'script.ts');
  writeFileSync(
    script,
    `import { readFileSync } from 'node:fs';
     const input: string = readFileSync(0, 'utf8');
     console.log(JSON.stringify({ input, words: process.argv.slice(2), folder: process.cwd() }));
     process.exitCode = Number(process.argv[2]);\n`,
  );
});

afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function run(words: readonly string[], environment: Readonly<Record<string, string>> = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [guard, ...words], {
    input: "R U R' U'",
    encoding: 'utf8',
    env: { ...process.env, ...environment },
  });
  return { status, stdout, stderr };
}

describe('the version guard', () => {
  test.each([0, 1, 2])('a script keeps its input, its words and its exit status %i', (status) => {
    const done = run([script, String(status), '--json', '-']);
    expect(done.status).toBe(status);
    expect(JSON.parse(done.stdout)).toEqual({
      input: "R U R' U'",
      words: [String(status), '--json', '-'],
      folder: process.cwd(),
    });
    expect(done.stderr).toBe('');
  });

  test('paths are those of the folder from which npm was called', () => {
    const done = run(['--from-caller', script, '0'], { INIT_CWD: folder });
    expect(JSON.parse(done.stdout)).toMatchObject({ words: ['0'], folder });
  });

  test('an older Node is refused in one sentence that says what to do', () => {
    const older = encodeURIComponent(
      'Object.defineProperty(process, "versions", { value: { ...process.versions, node: "20.20.2" } });',
    );
    const done = run([script, '0'], { NODE_OPTIONS: `--import=data:text/javascript,${older}` });
    expect(done.status).toBe(2);
    expect(done.stdout).toBe('');
    expect(done.stderr.trim().split('\n')).toHaveLength(1);
    expect(done.stderr).toMatch(/needs Node 24, but this is Node 20\.20\.2: .*npm ci/);
  });
});
