/** Completion: keys, stages, pieces and slots, names, values, and the turns that are sensible here. */
import type { Position, Range } from '../../cube/place.ts';
import { COLOURS, CORNERS, EDGES, OPPOSITE } from '../../cube/vocabulary.ts';
import { pieceTitle, PIECES } from '../../cube/piece.ts';
import { printSequence } from '../../notation/print.ts';
import type { Analysis, Block } from '../analysis.ts';
import type { Key } from '../read/index.ts';
import { KEY_NOTES } from './key-notes.ts';
import { callable, continuations } from './next-turns.ts';
import { bodyOf, rangeIn } from './text.ts';

export interface Completion {
  readonly label: string;
  readonly kind:
    | 'key'
    | 'stage'
    | 'sequence'
    | 'turns'
    | 'goal'
    | 'method'
    | 'colour'
    | 'piece'
    | 'slot'
    | 'file';
  readonly insert: string;
  /** What is replaced. */
  readonly range: Range;
  readonly detail: string;
  readonly documentation?: string;
  /** Texts that sort as the items are meant to stand. */
  readonly sort: string;
}

export interface CompletionOptions {
  /** Other files of the workspace, as `use:` would name them. */
  readonly files?: readonly string[];
}

type Item = Omit<Completion, 'range' | 'sort' | 'insert'> & { readonly insert?: string };

export function completionsAt(
  analysis: Analysis,
  position: Position,
  options: CompletionOptions = {},
): Completion[] {
  const { line, character } = position;
  const { text, content } = analysis.tree.lines[line];
  const block = analysis.blockAt(position) ?? analysis.blocks.at(-1);
  const before = text.slice(0, character);
  const comment = 'comment' in content ? content.comment : undefined;
  const called = /@[\p{L}\p{N}_-]*$/u.exec(before);
  if (comment !== undefined && character > comment.mark.start) {
    const from = /\S*$/.exec(text.slice(comment.mark.end, character))?.index ?? 0;
    return placed(line, comment.mark.end + from, character, [
      ...stages(block).filter(() => text.slice(comment.mark.end, character).trim().length < 12),
      ...pieces(block),
    ]);
  }
  if (called) return placed(line, called.index, character, sequences(analysis));
  const keyed = /^\s*([\p{L}]+)\s*[:：]\s*/u.exec(before);
  if (keyed) {
    const values = valuesOf(keyed[1].toLowerCase(), before.slice(keyed[0].length), block, options);
    if (values !== undefined) {
      const from = /[^\s,;&+(]*$/.exec(before)?.index ?? character;
      return placed(line, values.whole === true ? keyed[0].length : from, character, values.items);
    }
  }
  const word = /[\p{L}\p{N}'’ ]*$/u.exec(before)?.[0] ?? '';
  const atStart = /^\s*[\p{L}\p{N}' ]*$/u.test(before) && bodyIsWord(before);
  const heads = atStart ? [...keys(), ...stages(block, ':')] : [];
  const lead = before.length - before.trimStart().length;
  const turnFrom = /\S*$/.exec(word)
    ? before.length - (/\S*$/.exec(before)?.[0].length ?? 0)
    : character;
  return [
    ...(heads.length > 0 ? placed(line, lead, character, heads, 'b') : []),
    ...turnItems(analysis, block, position, turnFrom, before),
  ];
}

/** A line so far that may become a key: one or two words, not several turns. */
function bodyIsWord(before: string): boolean {
  return before.trim().split(/\s+/).length <= 3;
}

function placed(
  line: number,
  start: number,
  end: number,
  items: readonly Item[],
  group = 'a',
): Completion[] {
  return items.map((item, index) => ({
    ...item,
    insert: item.insert ?? item.label,
    range: rangeIn(line, { start, end }),
    sort: `${group}${String(index).padStart(4, '0')}`,
  }));
}

function keys(): Item[] {
  return Object.entries(KEY_NOTES).map(([key, note]) => ({
    label: `${key}:`,
    kind: 'key',
    insert: `${key}: `,
    detail: note,
  }));
}

/** The stages of the method in force, those that are still to come first. */
function stages(block: Block | undefined, suffix = ''): Item[] {
  if (block === undefined) return [];
  const opened = new Set(block.timeline.stages.map(({ goal }) => goal));
  const items = block.scope.method.stages.map((stage, index) => ({ stage, index }));
  items.sort((a, b) => Number(opened.has(a.index)) - Number(opened.has(b.index)));
  return items.map(({ stage: { name }, index }) => ({
    label: name + suffix,
    kind: 'stage',
    detail: `stage ${String(index + 1)} of ${block.scope.method.name}${opened.has(index) ? ', already there' : ''}`,
  }));
}

function goals(block: Block | undefined): Item[] {
  const own = block?.scope.goals.map(({ name }) => name) ?? [];
  return [
    ...(block?.scope.method.stages ?? []).map(({ name }) => ({
      label: name,
      kind: 'goal' as const,
      detail: `goal of ${block?.scope.method.name ?? ''}`,
    })),
    ...own
      .filter((name) => block?.scope.method.stages.every((stage) => stage.name !== name))
      .map((label) => ({ label, kind: 'goal' as const, detail: 'own goal' })),
  ];
}

function pieces(block: Block | undefined): Item[] {
  return Array.from({ length: PIECES }, (_, piece) => ({
    label: pieceTitle(piece, block?.base ?? 0),
    kind: 'piece',
    detail: 'piece',
  }));
}

function sequences({ names, blocks }: Analysis): Item[] {
  return callable(names).map(({ name, items, line }) => {
    const facts = blocks.find(
      (block) => block.kind === 'sequence' && block.line === line,
    )?.sequence;
    return {
      label: `@${name}`,
      kind: 'sequence',
      detail: printSequence(items),
      ...(facts
        ? { documentation: `${facts.does || 'does nothing'}, order ${String(facts.order)}` }
        : {}),
    };
  });
}

interface Values {
  readonly items: readonly Item[];
  /** The whole value is replaced, not its last word. */
  readonly whole?: boolean;
}

function valuesOf(
  key: string,
  value: string,
  block: Block | undefined,
  { files = [] }: CompletionOptions,
): Values | undefined {
  switch (key as Key) {
    case 'base':
      return { items: colours() };
    case 'holding':
      return { items: holdings(), whole: true };
    case 'method':
      if (value.includes('=')) return { items: goals(block) };
      return {
        items: (block?.scope.methods ?? []).map(({ name, stages: list }) => ({
          label: name,
          kind: 'method',
          detail: list.map((stage) => stage.name).join(', '),
        })),
        whole: true,
      };
    case 'keeps':
    case 'check':
    case 'opens':
      return { items: goals(block) };
    case 'goal':
      return value.includes('=') ? { items: slots() } : { items: [] };
    case 'does':
      return { items: slots() };
    case 'use':
      return {
        items: files.map((label) => ({ label, kind: 'file', detail: 'file' })),
        whole: true,
      };
    case 'title':
    case 'solver':
    case 'date':
    case 'time':
    case 'note':
    case 'order':
      return { items: [] };
    default:
      return undefined;
  }
}

function colours(): Item[] {
  return COLOURS.map((label) => ({ label, kind: 'colour', detail: 'colour of the first layer' }));
}

function holdings(): Item[] {
  return COLOURS.flatMap((up, i) =>
    COLOURS.flatMap((front, j): Item[] =>
      i === j || OPPOSITE[i] === j
        ? []
        : [{ label: `${up} up, ${front} front`, kind: 'colour', detail: 'how the cube is held' }],
    ),
  );
}

function slots(): Item[] {
  return [...EDGES, ...CORNERS].map((label) => ({
    label,
    kind: 'slot',
    detail: label.length === 2 ? 'edge' : 'corner',
  }));
}

function turnItems(
  analysis: Analysis,
  block: Block | undefined,
  position: Position,
  from: number,
  before: string,
): Completion[] {
  const { line, character } = position;
  const { content } = analysis.tree.lines[line];
  if (block === undefined || content.kind === 'net-row') return [];
  const body = bodyOf(content);
  // Amid words there is nothing to turn.
  if (body !== undefined && body.kind !== 'turns' && body.text.includes(' ')) return [];
  const place = block.placeAt({ line, character: from });
  if (place < block.ownFrom) return [];
  const items = continuations(analysis, block, place).map(({ text, does }): Item => ({
    label: text,
    kind: text.startsWith('@') ? 'sequence' : 'turns',
    detail: does,
  }));
  const started = before.trim() !== '';
  return placed(line, from, character, items, started ? 'a' : 'c');
}
