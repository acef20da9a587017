/** Definition, references and rename of named sequences, goals and methods, across files that use each other. */
import type { Position, Range } from '../../cube/place.ts';
import { METHODS, findMethod } from '../../goals/methods.ts';
import { readStageName } from '../../goals/stage-names.ts';
import { readName } from '../../notation/letters.ts';
import { looksLikeTurns } from '../../notation/read.ts';
import type { TextEdit } from '../finding.ts';
import { sequenceKey } from '../names.ts';
import { KEYS, readDocument, readGoal, readMethod } from '../read/index.ts';
import {
  NameIndex,
  type Definition,
  type Files,
  type NameKind,
  type Occurrence,
} from './occurrences.ts';
import { holds } from './text.ts';

export interface FilePlace {
  readonly file: string;
  readonly range: Range;
}

export type Rename =
  | { readonly kind: 'edits'; readonly edits: Readonly<Record<string, readonly TextEdit[]>> }
  | { readonly kind: 'refused'; readonly reason: string };

function occurrenceAt(index: NameIndex, file: string, position: Position): Occurrence | undefined {
  return index.occurrencesIn(file).find(({ range }) => holds(range, position));
}

function same(a: Definition, b: Definition): boolean {
  return a.kind === b.kind && a.file === b.file && a.key === b.key && a.block === b.block;
}

export function definitionAt(
  files: Files,
  file: string,
  position: Position,
): FilePlace | undefined {
  const found = occurrenceAt(new NameIndex(files), file, position);
  return found && { file: found.definition.file, range: found.definition.range };
}

export function referencesAt(
  files: Files,
  file: string,
  position: Position,
  withDefinition: boolean,
): FilePlace[] {
  const index = new NameIndex(files);
  const meant = occurrenceAt(index, file, position)?.definition;
  if (meant === undefined) return [];
  return occurrencesOf(index, meant).flatMap(({ file: path, found }) =>
    withDefinition || path !== meant.file || found.range !== meant.range
      ? [{ file: path, range: found.range }]
      : [],
  );
}

function occurrencesOf(
  index: NameIndex,
  meant: Definition,
): { readonly file: string; readonly found: Occurrence }[] {
  const word = meant.key.split(/[\s-]/)[0];
  return Object.keys(index.files)
    .filter((file) => file === meant.file || index.usesOf(file).includes(meant.file))
    .filter((file) => index.files[file].toLowerCase().includes(word))
    .flatMap((file) =>
      index
        .occurrencesIn(file)
        .filter(({ definition }) => same(definition, meant))
        .map((found) => ({ file, found })),
    );
}

/** The name at a position that can be renamed, as it stands there. */
export function renameRange(
  files: Files,
  file: string,
  position: Position,
): { readonly range: Range; readonly name: string } | undefined {
  const index = new NameIndex(files);
  const found = occurrenceAt(index, file, position);
  if (found === undefined) return undefined;
  const { start, end } = found.range;
  const name = index.analysisOf(file).lines[start.line].slice(start.character, end.character);
  return { range: found.range, name };
}

export function rename(files: Files, file: string, position: Position, newName: string): Rename {
  const index = new NameIndex(files);
  const meant = occurrenceAt(index, file, position)?.definition;
  if (meant === undefined) return { kind: 'refused', reason: 'There is no name of your own here.' };
  const name = newName.trim();
  const key = meant.kind === 'sequence' ? sequenceKey(name) : name.toLowerCase();
  const fault = faultOf(meant.kind, name, key);
  if (fault !== undefined) return { kind: 'refused', reason: fault };
  const edits: Record<string, TextEdit[]> = {};
  if (key !== meant.key) {
    const readers = Object.keys(files).filter(
      (path) => path === meant.file || index.usesOf(path).includes(meant.file),
    );
    const taken = readers.find((path) => isTaken(index, path, meant, key));
    if (taken !== undefined)
      return { kind: 'refused', reason: `“${name}” is the name of another ${meant.kind} already.` };
  }
  for (const { file: path, found } of occurrencesOf(index, meant)) {
    const newText = found.spelling === 'hyphens' ? key : name;
    (edits[path] ??= []).push({ range: found.range, newText });
  }
  return { kind: 'edits', edits };
}

function isTaken(
  index: NameIndex,
  file: string,
  { kind, block }: Definition,
  key: string,
): boolean {
  const inBlocks = index
    .definitionsOf(file)
    .some((one) => one.kind === kind && one.key === key && one.block !== undefined);
  return inBlocks || index.resolve(file, kind, key, block) !== undefined;
}

/** Why a name would be read as something else; undefined if it would not. */
function faultOf(kind: NameKind, name: string, key: string): string | undefined {
  if (name === '') return 'A name needs at least one letter.';
  const line = kind === 'sequence' ? `sequence: ${name}` : `${kind}: ${name} = UF`;
  const { content } = readDocument(line).lines[0];
  const unreadable = `“${name}” would not be read as a name; letters, digits and blanks are safe.`;
  if (content.kind !== 'key' || content.body !== undefined || content.comment !== undefined)
    return unreadable;
  if (kind === 'sequence') {
    const read = readName(`@${key}`, 0, key.length + 1);
    const fits = content.value.text === name && read?.name === key && read.end === key.length + 1;
    return fits ? undefined : unreadable;
  }
  if (kind === 'method') {
    const method = readMethod(content.value);
    if (method.kind !== 'method' || method.name.text !== name) return unreadable;
    return findMethod(name) === undefined
      ? undefined
      : `“${name}” is a method that everybody knows.`;
  }
  const goal = readGoal(content.value);
  if (
    goal.kind !== 'goal' ||
    goal.name.text !== name ||
    /[,;+&/#:]|\band\b|\buntil\b|\btill\b/i.test(name)
  )
    return unreadable;
  if (
    readStageName(name) !== undefined ||
    METHODS.some((method) => method.name.toLowerCase() === key)
  )
    return `“${name}” is a stage that everybody knows.`;
  if (looksLikeTurns(name) || KEYS.some((other) => other === key)) return unreadable;
  const own = { name: 'own', sided: false, stages: [{ name, demands: [], ownPieces: 1 }] };
  return readStageName(name, [own])?.alias === key ? undefined : unreadable;
}
