/** Runs the real command as a child process, as a shell would. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';

const MAIN = fileURLToPath(new URL('../../extension/terminal/main.ts', import.meta.url));
export const SAMPLES = fileURLToPath(new URL('../../media/samples', import.meta.url));

export interface Run {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly input?: string | Buffer;
  readonly env?: Readonly<Record<string, string>>;
  readonly cwd?: string;
}

/** Colours are off unless `env` says otherwise, whatever runs the tests. */
export function turnlore(args: readonly string[], options: RunOptions = {}): Run {
  const { FORCE_COLOR: _force, NO_COLOR: _no, ...rest } = process.env;
  const child = spawnSync(process.execPath, [MAIN, ...args], {
    input: options.input ?? '',
    env: { ...rest, ...options.env },
    cwd: options.cwd,
    encoding: 'utf8',
    timeout: 60_000,
  });
  return { status: child.status, out: child.stdout, err: child.stderr };
}

/** The JSON of a command, held against its schema; throws if it does not fit. */
export function turnloreJson<Schema extends v.GenericSchema>(
  schema: Schema,
  args: readonly string[],
  options: RunOptions = {},
): { json: v.InferOutput<Schema>; status: number | null } {
  const { out, err, status } = turnlore([...args, '--json'], options);
  if (out === '') throw new Error(`no output: ${err}`);
  return { json: v.parse(schema, JSON.parse(out)), status };
}

/** A new folder with these files, names to texts; a name may contain folders. */
export function folderWith(files: Readonly<Record<string, string | Buffer>>): string {
  const folder = mkdtempSync(path.join(os.tmpdir(), 'turnlore-terminal-'));
  for (const [name, text] of Object.entries(files)) {
    const file = path.join(folder, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return folder;
}
