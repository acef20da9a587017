/**
 * Runs a script of this project under the Node it was written for, or says in one sentence why not.
 *
 *     node extension/build/guard.mjs [--from-caller] SCRIPT [ARGUMENTS…]
 *
 * The project brings its own Node as a dev dependency, which npm puts first on the path of its
 * scripts. After `npm ci --ignore-scripts` that binary is missing and the machine's Node runs
 * instead, without a word; hence this check. It is plain JavaScript that runs on Node 18, too.
 * SCRIPT runs in this very process, so that input, output and exit status are its own and the guard
 * costs next to nothing. `--from-caller` goes to the folder from which npm was called first, so
 * that paths mean what they mean to the person who typed them.
 */
import module from 'node:module';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const WANTED = 24;

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../..');
const words = process.argv.slice(2);
const fromCaller = words[0] === '--from-caller';
if (fromCaller) words.shift();
const [script, ...rest] = words;

const major = Number(process.versions.node.split('.')[0]);
if (major < WANTED) {
  process.stderr.write(
    `Turnlore needs Node ${WANTED}, but this is Node ${process.versions.node}: ` +
      'run "npm ci" (without --ignore-scripts), which brings the right one along, and then this through "npm run".\n',
  );
  process.exit(2);
}
if (script === undefined) {
  process.stderr.write(
    'usage: node extension/build/guard.mjs [--from-caller] SCRIPT [ARGUMENTS…]\n',
  );
  process.exit(2);
}

// Types are stripped and code is compiled once and not at every start.
module.enableCompileCache(path.join(root, '.cache/compiled'));
const target = path.resolve(root, script);
process.argv = [process.argv[0], target, ...rest];
if (fromCaller && process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
await import(pathToFileURL(target).href);
