/** What is bundled into what; the one list that `bundle.mjs` works off. */
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const nodeStart = fileURLToPath(new URL('../worker/node-start.ts', import.meta.url));

/**
 * On Node the worker is a thread, started by other means than in the browser.
 *
 * @type {import('esbuild').Plugin}
 */
const startOnNode = {
  name: 'start-on-node',
  setup(build) {
    build.onResolve({ filter: /worker\/start\.ts$/ }, () => ({ path: path.normalize(nodeStart) }));
  },
};

const editor = /** @type {const} */ ({ format: 'cjs', external: ['vscode'] });
const page = /** @type {const} */ ({ format: 'iife', platform: 'browser' });

/** @type {(import('esbuild').BuildOptions & { entry: string, out: string })[]} */
export const BUNDLES = [
  {
    entry: 'extension/editor/main.ts',
    out: 'dist/extension-node.cjs',
    ...editor,
    platform: 'node',
    plugins: [startOnNode],
  },
  {
    entry: 'extension/editor/main.ts',
    out: 'dist/extension-web.cjs',
    ...editor,
    platform: 'browser',
  },
  {
    entry: 'extension/worker/node.ts',
    out: 'dist/worker-node.cjs',
    format: 'cjs',
    platform: 'node',
  },
  { entry: 'extension/worker/web.ts', out: 'dist/worker-web.js', ...page },
  { entry: 'webview/cube/main.ts', out: 'dist/webview/cube.js', ...page },
  { entry: 'webview/tutor/main.ts', out: 'dist/webview/tutor.js', ...page },
];
