/** What is bundled into what; the one list that `bundle.mjs` works off. */

/** @type {(import('esbuild').BuildOptions & { entry: string, out: string })[]} */
export const BUNDLES = [];
