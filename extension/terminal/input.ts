/**
 * Reads what a command is given: files, folders (every `.moves` file below, in the order of their
 * paths) and `-` for standard input. The first thing that cannot be read stops the command.
 */
import { readFileSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { refused, type Refusal } from './command.ts';

export interface Source {
  readonly kind: 'source';
  /** As it was given, or below the folder that was given; `-` for standard input. */
  readonly name: string;
  readonly text: string;
  /** Where `use:` starts from. */
  readonly folder: string;
}

/** Beyond that it is hardly something that a person wrote. */
const MOST_BYTES = 16 * 1024 * 1024;

const SKIPPED_FOLDERS = new Set(['node_modules']);

export function readSources(names: readonly string[]): Source[] | Refusal {
  const files = new Map<string, string>();
  for (const name of names) {
    const found = name === '-' ? ['-'] : filesAt(name);
    if (!Array.isArray(found)) return found;
    for (const file of found) {
      const key = file === '-' ? file : path.resolve(file);
      if (!files.has(key)) files.set(key, file);
    }
  }
  const sources: Source[] = [];
  for (const file of files.values()) {
    const source = readSource(file);
    if (source.kind === 'refused') return source;
    sources.push(source);
  }
  return sources;
}

export function readSource(name: string): Source | Refusal {
  const shown = name === '-' ? 'Standard input' : `"${name}"`;
  let bytes: Buffer;
  try {
    bytes = readFileSync(name === '-' ? 0 : name);
  } catch (error) {
    return refused(`${shown} cannot be read: ${reason(error)}.`);
  }
  if (bytes.length > MOST_BYTES) return refused(`${shown} is larger than 16 MB.`);
  const text = decode(bytes);
  if (text === undefined) return refused(`${shown} is not a text file in UTF-8.`);
  return { kind: 'source', name, text, folder: name === '-' ? '.' : path.dirname(name) };
}

/** Undefined if the bytes are no text; a byte order mark is not part of it. */
function decode(bytes: Buffer): string | undefined {
  const [first, second] = bytes;
  const encoding =
    first === 0xff && second === 0xfe
      ? 'utf-16le'
      : first === 0xfe && second === 0xff
        ? 'utf-16be'
        : 'utf-8';
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}

function filesAt(name: string): string[] | Refusal {
  let folder: boolean;
  try {
    folder = statSync(name).isDirectory();
  } catch (error) {
    return refused(`"${name}" cannot be read: ${reason(error)}.`);
  }
  if (!folder) return [name];
  const found: string[] = [];
  const waiting = [name];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    try {
      for (const entry of readdirSync(next, { withFileTypes: true })) {
        const below = path.join(next, entry.name);
        // Links to folders are not followed: they may lead around in a circle.
        if (entry.isDirectory()) {
          if (!entry.name.startsWith('.') && !SKIPPED_FOLDERS.has(entry.name)) waiting.push(below);
        } else if (/\.moves$/iu.test(entry.name)) found.push(below);
      }
    } catch (error) {
      return refused(`"${next}" cannot be read: ${reason(error)}.`);
    }
  }
  if (found.length === 0) return refused(`"${name}" holds no .moves file.`);
  return found.sort((a, b) => (a < b ? -1 : 1));
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'permission is denied',
  EPERM: 'permission is denied',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is no folder',
  ELOOP: 'its links lead around in a circle',
};

function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return REASONS[code] ?? (code === '' ? 'the system refuses' : `the system says ${code}`);
}
