/**
 * Cutting a document into blocks. `solve:` and `sequence:` open one, and so does a `scramble:` after
 * turns, for people paste one solve below the other; an aside lies inside its block and lets it go
 * on behind it.
 */
import { hasTurns } from './executed.ts';
import type { BlockTree, DocumentBlocks, DocumentTree, Key, KeyLine, LineContent } from './tree.ts';

/** Keys of a title that stand above a pasted `scramble:` and go with it. */
const TITLE_KEYS: ReadonlySet<Key> = new Set(['title', 'solver', 'date']);

export function cutBlocks(tree: DocumentTree): DocumentBlocks {
  const contents = tree.lines.map((line) => line.content);
  const cuts = findCuts(contents);
  const opening = contents.findIndex(opensBlock);
  const firstKey = opening === -1 ? contents.length : opening;
  const action = contents.findIndex((content) => isAction(content) || isKey(content, 'aside'));
  const headerEnd = action === -1 ? firstKey : Math.min(firstKey, action);
  const blocks: BlockTree[] = [];
  for (let i = 0; i < cuts.length; i++) {
    const end = i + 1 < cuts.length ? cuts[i + 1].line : contents.length;
    blocks.push(makeBlock(contents, cuts[i], end));
  }
  return { header: numbers(0, headerEnd), blocks };
}

/** The lines of a block (or of the header) that give a key, in order. */
export function keyLines(
  tree: DocumentTree,
  lines: readonly number[],
  key: Key,
): { readonly line: number; readonly content: KeyLine }[] {
  return lines.flatMap((line) => {
    const { content } = tree.lines[line];
    return content.kind === 'key' && content.key === key ? [{ line, content }] : [];
  });
}

/** What ends the keys of a header: turns, spoken ones included, and headings of stages. */
function isAction(content: LineContent): boolean {
  return hasTurns(content) || content.kind === 'stage' || content.kind === 'spoken';
}

interface Cut {
  readonly line: number;
  readonly kind: 'solve' | 'sequence';
  readonly heading: number | undefined;
}

function findCuts(contents: readonly LineContent[]): Cut[] {
  const cuts: Cut[] = [];
  let open: Cut = { line: 0, kind: 'solve', heading: undefined };
  let started = false;
  let acted = false;
  let aside = false;
  const close = (next: Cut): void => {
    if (started) cuts.push(open);
    open = next;
    started = true;
    acted = false;
    aside = false;
  };
  contents.forEach((content, line) => {
    if (opensBlock(content)) {
      const { key } = content;
      const heading: Cut = { line, kind: key, heading: line };
      if (cuts.length === 0 && open.heading === undefined && !acted) {
        // Nothing but keys above: they are the first solve's, unless a sequence comes first.
        if (key === 'solve') {
          open = { ...heading, line: 0 };
          started = true;
          acted = hasTurns(content);
          return;
        }
        started = started && contents.slice(0, line).some(setsStart);
      }
      close(heading);
      acted = hasTurns(content);
      return;
    }
    if (isKey(content, 'scramble') && acted && !aside) {
      close({ line: titleAbove(contents, line, open.line), kind: 'solve', heading: undefined });
      return;
    }
    if (isKey(content, 'aside')) aside = true;
    else if (isKey(content, 'end')) aside = false;
    started ||= content.kind !== 'blank';
    if (!aside && isAction(content)) acted = true;
    else if (isKey(content, 'aside')) acted = true;
  });
  cuts.push(open);
  return cuts;
}

/** The first of the title lines directly above a scramble, if a title is among them. */
function titleAbove(contents: readonly LineContent[], scramble: number, first: number): number {
  let line = scramble;
  let titled = scramble;
  for (let at = scramble - 1; at > first; at--) {
    const content = contents[at];
    if (content.kind === 'key' && TITLE_KEYS.has(content.key)) {
      line = at;
      if (content.key === 'title') titled = at;
    } else if (content.kind !== 'blank' && content.kind !== 'comment') break;
  }
  return titled === scramble ? scramble : line;
}

function makeBlock(contents: readonly LineContent[], cut: Cut, end: number): BlockTree {
  const lines: number[] = [];
  const asides: BlockTree[] = [];
  let at = cut.line;
  while (at < end) {
    const content = contents[at];
    if (!isKey(content, 'aside')) {
      lines.push(at++);
      continue;
    }
    const first = at++;
    while (at < end && !isKey(contents[at], 'aside') && !isKey(contents[at], 'end')) at++;
    asides.push({
      kind: 'aside',
      heading: first,
      name: nameOf(content, first),
      first,
      end: at,
      lines: numbers(first, at),
      asides: [],
    });
    // `end:` itself belongs to the block that goes on: turns may follow it on its line.
  }
  const heading = cut.heading === undefined ? undefined : contents[cut.heading];
  const name =
    heading?.kind === 'key' && cut.heading !== undefined ? nameOf(heading, cut.heading) : undefined;
  return { kind: cut.kind, heading: cut.heading, name, first: cut.line, end, lines, asides };
}

function nameOf(content: KeyLine, line: number): BlockTree['name'] {
  if (content.body !== undefined || content.value.text === '') return undefined;
  return { text: content.value.text, line, span: content.value.span };
}

function isKey(content: LineContent, key: Key): content is KeyLine {
  return content.kind === 'key' && content.key === key;
}

function opensBlock(
  content: LineContent,
): content is KeyLine & { readonly key: 'solve' | 'sequence' } {
  return isKey(content, 'solve') || isKey(content, 'sequence');
}

function setsStart(content: LineContent): boolean {
  return isKey(content, 'scramble') || isKey(content, 'start');
}

function numbers(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from) }, (_, i) => from + i);
}
