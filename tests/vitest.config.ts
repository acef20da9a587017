/** Everything that runs without an editor; `tests/editor` has a configuration of its own. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/editor/**'],
    setupFiles: ['tests/support/seed.ts'],
    testTimeout: 60_000,
  },
});
