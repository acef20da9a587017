/**
 * The texts of the files that a text names with `use:`, by the name as written. What cannot be read
 * is left out; the analysis then says so at its place.
 */
import path from 'node:path';
import { readSource, type Source } from './input.ts';

const USE = /^\s*use\s*:\s*(.*?)\s*(?:\/\/.*)?$/gimu;

/** Files reached by way of other files included, each read once. */
export function importsOf(source: Source): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  const waiting = [{ text: source.text, folder: source.folder }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const [, name] of next.text.matchAll(USE)) {
      // An absolute path would lead out of what somebody shared.
      if (name === '' || path.isAbsolute(name) || Object.hasOwn(found, name)) continue;
      const used = readSource(path.join(next.folder, name));
      if (used.kind === 'refused') continue;
      found[name] = used.text;
      waiting.push({ text: used.text, folder: used.folder });
    }
  }
  return found;
}
