/** Tests in the real editor: one at a time, because each has a server and a browser of its own. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('../..', import.meta.url)),
    include: ['tests/editor/**/*.test.ts'],
    globalSetup: ['tests/editor/host/setup.ts'],
    fileParallelism: false,
    testTimeout: 90_000,
    hookTimeout: 120_000,
  },
});
