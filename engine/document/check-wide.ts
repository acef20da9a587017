/**
 * Lower-case letters are wide turns, but some people write faces so. A passage of nothing but lower
 * case is doubted where the text claims something that is not so, or claims nothing at all.
 */
import { isRotation } from '../cube/turn.ts';
import { isBracket, listsOf } from '../notation/fold.ts';
import type { SequenceNode, SequenceTree } from '../notation/tree.ts';
import type { Judged } from './judged.ts';
import type { RawFinding, RawFix } from './raw-finding.ts';
import { faultsOf, type Trial } from './trial.ts';

/** Fewer turns than that are no passage. */
const FEWEST = 3;
const MOST = 1_000;
const MOST_PASSAGES = 4;

interface Passage {
  readonly edits: RawFix['edits'][number][];
  readonly letters: Set<string>;
}

/** `faults`: of the block as it is written. */
export function checkWide(
  judged: Judged,
  faults: number,
  hasClaims: boolean,
  trial: Trial,
): RawFinding[] {
  if (hasClaims && faults === 0) return [];
  const passages = findPassages(judged);
  if (passages.length === 0 || passages.length > MOST_PASSAGES) return [];
  const fitting = (edits: RawFix['edits']): boolean => {
    const after = hasClaims ? trial(edits) : undefined;
    return after !== undefined && faultsOf(after).all === 0;
  };
  const all = passages.flatMap((passage) => passage.edits);
  const together = passages.length > 1 && fitting(all);
  return passages.map(({ edits }): RawFinding => {
    const range = { start: edits[0].range.start, end: edits[edits.length - 1].range.end };
    const alone = !together && fitting(edits);
    const text = judged.textOf(range.start.line).trim();
    const newText = facesOf(judged, edits);
    const fix = { title: together ? 'Read all of them as faces' : 'Write faces' };
    return {
      args: { code: 'wide-or-face', text, newText, facesFit: alone || together },
      range,
      ...(alone ? { fixes: [{ ...fix, edits }] } : {}),
      ...(together ? { fixes: [{ ...fix, edits: all }] } : {}),
    };
  });
}

/** The first line of the passage with the letters as faces. */
function facesOf(judged: Judged, edits: RawFix['edits']): string {
  const { line, character } = edits[0].range.start;
  const own = edits.filter((edit) => edit.range.start.line === line);
  const last = own[own.length - 1].range.end.character;
  const text = [...judged.textOf(line).slice(character, last + 1)];
  for (const { range, newText } of own) text[range.start.character - character] = newText;
  return text.join('').trim() + (own.length < edits.length ? ' …' : '');
}

/** Runs of lines of turns, each with nothing but lower-case layer turns. */
function findPassages({ script, textOf, firstLine }: Judged): Passage[] {
  const passages: Passage[] = [];
  let open: Passage = { edits: [], letters: new Set() };
  const close = (): void => {
    const { edits, letters } = open;
    if (edits.length >= FEWEST && edits.length <= MOST && letters.size > 1) passages.push(open);
    open = { edits: [], letters: new Set() };
  };
  for (const [line, tree] of script.trees) {
    if (line < firstLine) continue;
    const found = lowerCaseOf(tree, textOf(line), line);
    if (found === undefined) close();
    else {
      for (const edit of found.edits) open.edits.push(edit);
      for (const letter of found.letters) open.letters.add(letter);
    }
  }
  close();
  return passages;
}

/** Undefined if there are layer turns that are not lower case. */
function lowerCaseOf(tree: SequenceTree, text: string, line: number): Passage | undefined {
  const passage: Passage = { edits: [], letters: new Set() };
  const todo: (readonly SequenceNode[])[] = [tree.items];
  for (let list = todo.pop(); list !== undefined; list = todo.pop()) {
    for (const node of list) {
      if (isBracket(node)) todo.push(...listsOf(node));
      if (node.kind !== 'turn' || isRotation(node.turn)) continue;
      const { start, end } = node.span;
      if (!/^[udlrfb](?!w)/.test(text.slice(start, end))) return undefined;
      const range = { start: { line, character: start }, end: { line, character: start + 1 } };
      passage.edits.push({ range, newText: text[start].toUpperCase() });
      passage.letters.add(text[start]);
    }
  }
  passage.edits.sort((a, b) => a.range.start.character - b.range.start.character);
  return passage;
}
