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
let failed = 0;
for (const { entry, out, ...options } of BUNDLES) {
  if (!existsSync(entry)) {
    process.stderr.write(`${entry} is missing, so ${out} cannot be built\n`);
    failed++;
    continue;
  }
  const built = await build({
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
  }).then(
    () => true,
    // What is wrong has been printed; the other bundles are tried all the same.
    () => false,
  );
  if (!built) {
    failed++;
    continue;
  }
  process.stdout.write(`${out} ${(statSync(out).size / 1000).toFixed(0)} kB\n`);
}
if (failed > 0) process.exitCode = 1;
