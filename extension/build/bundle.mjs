/**
 * `npm run build`: the bundles that the editor, its worker and the pages load, in `dist/`.
 *
 * The editor side is bundled twice, for the extension host on Node and for the one in the browser;
 * so is the worker. Scripts of pages are self-contained. An entry whose source does not exist is an
 * error: a package that lacks one would fail only at the person's.
 */
import { existsSync, rmSync, statSync } from 'node:fs';
import { build } from 'esbuild';
import { BUNDLES } from './bundles.mjs';

const production = !process.argv.includes('--development');

rmSync('dist', { recursive: true, force: true });
let missing = 0;
for (const { entry, out, ...options } of BUNDLES) {
  if (!existsSync(entry)) {
    process.stderr.write(`${entry} is missing, so ${out} cannot be built\n`);
    missing++;
    continue;
  }
  const result = await build({
    bundle: true,
    minify: production,
    sourcemap: !production,
    legalComments: 'none',
    charset: 'utf8',
    target: 'es2023',
    logLevel: 'warning',
    ...options,
    entryPoints: [entry],
    outfile: out,
  });
  if (result.errors.length > 0) process.exitCode = 1;
  process.stdout.write(`${out} ${(statSync(out).size / 1000).toFixed(0)} kB\n`);
}
if (missing > 0) process.exitCode = 1;
