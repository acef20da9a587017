/** The layout is kept by lint rules; here each is shown to bite, on a file that breaks it. */
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

// Rules on imports need no types, and a file that is not on the disk belongs to no TypeScript project.
const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: path.join(root, 'extension/build/eslint.config.mjs'),
  overrideConfig: [
    {
      files: ['**/*.ts'],
      languageOptions: { parserOptions: { projectService: false, project: false } },
    },
  ],
  ruleFilter: ({ ruleId }) => /^import-x\/|no-restricted-imports$/.test(ruleId),
});

async function complaints(file: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath: path.join(root, file) });
  for (const message of result.messages) if (message.fatal) throw new Error(message.message);
  return result.messages.map((message) => message.ruleId ?? 'none');
}

const FORBIDDEN: readonly (readonly [file: string, imported: string, rule: string])[] = [
  ['engine/cube/bad.ts', '../notation/tree.ts', 'import-x/no-restricted-paths'],
  ['engine/cube/bad.ts', '../document/finding.ts', 'import-x/no-restricted-paths'],
  ['engine/notation/bad.ts', '../goals/goal.ts', 'import-x/no-restricted-paths'],
  ['engine/goals/bad.ts', '../document/analysis.ts', 'import-x/no-restricted-paths'],
  ['engine/picture/bad.ts', '../document/analysis.ts', 'import-x/no-restricted-paths'],
  ['engine/search/bad.ts', '../document/analysis.ts', 'import-x/no-restricted-paths'],
  ['engine/cube/bad.ts', '../../extension/build/bundles.mjs', 'import-x/no-restricted-paths'],
  ['engine/cube/bad.ts', '../../tests/vitest.config.ts', 'import-x/no-restricted-paths'],
  ['engine/cube/bad.ts', 'node:fs', 'import-x/no-nodejs-modules'],
  ['engine/document/bad.ts', 'path', 'import-x/no-nodejs-modules'],
  ['engine/cube/bad.ts', 'vscode', 'no-restricted-imports'],
  ['webview/cube/bad.ts', 'node:fs', 'import-x/no-nodejs-modules'],
  ['webview/cube/bad.ts', 'vscode', 'no-restricted-imports'],
  [
    'webview/cube/bad.ts',
    '../../engine/document/finding.ts',
    '@typescript-eslint/no-restricted-imports',
  ],
  ['webview/cube/bad.ts', '../../extension/build/bundles.mjs', 'import-x/no-restricted-paths'],
  ['extension/editor/bad.ts', 'node:fs', 'import-x/no-nodejs-modules'],
  ['extension/worker/bad.ts', 'node:worker_threads', 'import-x/no-nodejs-modules'],
  ['extension/worker/node.ts', 'vscode', 'no-restricted-imports'],
  ['extension/terminal/bad.ts', 'vscode', 'no-restricted-imports'],
  ['extension/terminal/bad.ts', '../../tests/vitest.config.ts', 'import-x/no-restricted-paths'],
];

const ALLOWED: readonly (readonly [file: string, imported: string])[] = [
  ['engine/notation/good.ts', '../cube/turn.ts'],
  ['engine/document/good.ts', '../goals/goal.ts'],
  ['engine/tutor/good.ts', '../document/finding.ts'],
  ['engine/share/good.ts', '../document/finding.ts'],
  ['engine/share/good.ts', 'fflate'],
  ['webview/cube/good.ts', '../../engine/cube/state.ts'],
  ['extension/editor/good.ts', 'vscode'],
  ['extension/editor/good.ts', '../../engine/document/finding.ts'],
  ['extension/worker/node.ts', 'node:worker_threads'],
  ['extension/terminal/good.ts', 'node:fs'],
];

describe('imports go one way', () => {
  test.each(FORBIDDEN)('%s may not import %s', async (file, imported, rule) => {
    const code = `import { thing } from '${imported}';\nexport const other = thing;\n`;
    expect(await complaints(file, code)).toEqual([rule]);
  });

  test.each(ALLOWED)('%s may import %s', async (file, imported) => {
    const code = `import { thing } from '${imported}';\nexport const other = thing;\n`;
    expect(await complaints(file, code)).toEqual([]);
  });

  test('a view may know the types of what it is sent', async () => {
    const code = `import type { Finding } from '../../engine/document/finding.ts';\nexport type Sent = Finding;\n`;
    expect(await complaints('webview/cube/good.ts', code)).toEqual([]);
  });

  test('a file may not import what imports it, however far around', async () => {
    // The words of the cube are below the turns, which are below the states.
    const code = `import { SOLVED } from './state.ts';\nexport const other = SOLVED;\n`;
    expect(await complaints('engine/cube/vocabulary.ts', code)).toEqual(['import-x/no-cycle']);
  });
});
