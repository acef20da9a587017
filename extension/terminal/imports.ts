/**
 * The texts of the files that a text names with `use:`, by the name as written. What cannot be read
 * is left out; the analysis then says so at its place.
 */
import path from 'node:path';
import { usedFiles } from '../../engine/document/analyse.ts';
import { readSource, type Source } from './input.ts';

export function importsOf(source: Source): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  for (const name of usedFiles(source.text)) {
    // An absolute path would lead out of what somebody shared.
    if (path.isAbsolute(name)) continue;
    const used = readSource(path.join(source.folder, name));
    if (used.kind === 'source') found[name] = used.text;
  }
  return found;
}
