/**
 * Lint rules: strict typed TypeScript, and the layout of the house as import rules.
 *
 * The layout rules are data (`MAY_IMPORT`), so that the picture of the architecture stands in one
 * place; `tests/architecture.test.ts` proves that they bite.
 */
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import js from '@eslint/js';
import { createTypeScriptImportResolver } from 'eslint-import-resolver-typescript';
import importX from 'eslint-plugin-import-x';
import tseslint from 'typescript-eslint';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** Which folders of the engine each folder may import, besides itself. */
const MAY_IMPORT = {
  cube: [],
  notation: ['cube'],
  goals: ['cube', 'notation'],
  search: ['cube', 'notation', 'goals'],
  picture: ['cube', 'notation', 'goals'],
  document: ['cube', 'notation', 'goals', 'picture'],
  late: ['cube', 'notation', 'goals', 'picture', 'search', 'document'],
  tutor: ['cube', 'notation', 'goals', 'picture', 'search', 'document'],
  share: ['cube', 'notation', 'goals', 'picture', 'search', 'document'],
};

/**
 * @param {string} target
 * @param {string} from
 * @param {string[]} except
 * @param {string} message
 */
const zone = (target, from, except, message) => ({ target, from, except, message });

const ENGINE_ZONES = Object.entries(MAY_IMPORT).map(([folder, lower]) =>
  zone(
    `./engine/${folder}`,
    './engine',
    [folder, ...lower].map((name) => `./${name}`),
    `engine/${folder} may import ${['only itself', ...lower].join(', ')}.`,
  ),
);

const AREA_ZONES = [
  zone('./engine', '.', ['./engine', './node_modules'], 'The engine knows nothing of its users.'),
  zone('./webview', './extension', [], 'Both sides share webview/messages.ts and nothing else.'),
  zone('./extension', './webview', ['./messages.ts'], 'Only webview/messages.ts is shared.'),
  zone('./extension/editor', './extension/terminal', [], 'The terminal runs on Node alone.'),
  zone('./extension/worker', './extension/terminal', [], 'The terminal runs on Node alone.'),
  zone('./extension/worker', './extension/editor', [], 'The worker runs without the editor.'),
  zone('./extension/terminal', './extension/editor', [], 'The terminal runs without the editor.'),
  ...['./extension', './webview'].map((target) =>
    zone(target, './tests', [], 'Tests import the product, never the other way round.'),
  ),
];

const NO_EDITOR = {
  name: 'vscode',
  message: 'Only extension/editor talks to the editor.',
};

export default tseslint.config(
  {
    // This file lies below the root, whose paths it speaks of.
    basePath: root,
    ignores: ['dist/**', 'node_modules/**', '.cache/**', 'coverage/**', '**/*.json'],
  },
  js.configs.recommended,
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked, tseslint.configs.stylisticTypeChecked],
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: root } },
    plugins: { 'import-x': importX },
    settings: {
      // Without these two, imported files are not looked into, and no cycle is ever found.
      'import-x/extensions': ['.ts'],
      'import-x/external-module-folders': ['node_modules'],
      'import-x/ignore': ['node_modules'],
      'import-x/parsers': { '@typescript-eslint/parser': ['.ts'] },
      'import-x/resolver-next': [
        createTypeScriptImportResolver({ project: path.join(root, 'tsconfig.json') }),
      ],
    },
    rules: {
      'import-x/no-cycle': ['error', { ignoreExternal: true }],
      'import-x/no-restricted-paths': [
        'error',
        { basePath: root, zones: [...ENGINE_ZONES, ...AREA_ZONES] },
      ],
      'import-x/no-self-import': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      eqeqeq: 'error',
      // As the compiler has it: a name that begins with `_` is left out on purpose.
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_', destructuredArrayIgnorePattern: '^_' },
      ],

      // Turns, slots and counts are numbers and are meant to be written into sentences.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // Indexing gives no `undefined` in this house (tables are dense), so a check of an index that
      // may lie outside looks unnecessary to the compiler where it is not.
      '@typescript-eslint/no-unnecessary-condition': 'off',
      // `type` and `interface` say different things: unions and derived types, and shapes.
      '@typescript-eslint/consistent-type-definitions': 'off',
      // The strings spread here are names of slots and nets of initials, plain ASCII; the rule's
      // exception for strings does not cover them all.
      '@typescript-eslint/no-misused-spread': 'off',
      // Hot loops over slots need the index for more than one array.
      '@typescript-eslint/prefer-for-of': 'off',
      // `() => view.show()` as a handler is no confusion.
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
    },
  },
  {
    files: ['**/*.ts'],
    ignores: ['extension/editor/**', 'tests/editor/**'],
    rules: { 'no-restricted-imports': ['error', { paths: [NO_EDITOR] }] },
  },
  {
    // What runs in a browser, too, takes nothing from Node; the worker's Node side is `node*.ts`.
    files: [
      'engine/**/*.ts',
      'webview/**/*.ts',
      'extension/editor/**/*.ts',
      'extension/worker/**/*.ts',
    ],
    ignores: ['extension/worker/node*.ts'],
    rules: { 'import-x/no-nodejs-modules': 'error' },
  },
  {
    // Views draw states and scenes; everything else reaches them as messages, whose types they may know.
    files: ['webview/**/*.ts'],
    rules: {
      '@typescript-eslint/no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: 'engine/(?!cube/|picture/)',
              allowTypeImports: true,
              message: 'Views take only types from here.',
            },
          ],
        },
      ],
    },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      // Test data is indexed freely; a wrong index fails the test.
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
  {
    files: ['**/*.mjs'],
    languageOptions: {
      globals: {
        process: 'readonly',
        performance: 'readonly',
        console: 'readonly',
        URL: 'readonly',
        fetch: 'readonly',
        setTimeout: 'readonly',
        clearTimeout: 'readonly',
      },
    },
  },
);
