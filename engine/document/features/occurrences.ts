/**
 * Where names stand: definitions and uses of sequences, goals and methods, in one text or in those
 * that use each other. What a use means is told by the rules of the analysis: an own definition goes
 * before one of another file, of sequences the first, of goals and methods the latest.
 */
import type { Range, Span } from '../../cube/place.ts';
import type { Method } from '../../goals/methods.ts';
import { claimLabels, readStageName } from '../../goals/stage-names.ts';
import { readName } from '../../notation/letters.ts';
import { analyse, usedFiles } from '../analyse.ts';
import type { Analysis } from '../analysis.ts';
import { sequenceKey } from '../names.ts';
import {
  cutBlocks,
  readDocument,
  readGoal,
  readList,
  readMethod,
  readOpens,
  type DocumentBlocks,
  type DocumentTree,
  type Words,
} from '../read/index.ts';
import { everyNode, nodesOf, rangeIn } from './text.ts';

/** Texts by path, `/` between folders; all that may use each other. */
export type Files = Readonly<Record<string, string>>;

export const NAME_KINDS = ['sequence', 'goal', 'method'] as const;
export type NameKind = (typeof NAME_KINDS)[number];

export interface Definition {
  readonly kind: NameKind;
  /** In lower case; of a sequence as after `@`. */
  readonly key: string;
  readonly file: string;
  readonly range: Range;
  /** Index of the block for which alone it holds; undefined: for the whole file and those that use it. */
  readonly block: number | undefined;
}

export interface Occurrence {
  readonly range: Range;
  /** How the name is spelt here: after `@` with hyphens, else as it is. */
  readonly spelling: 'hyphens' | 'plain';
  readonly definition: Definition;
}

/** `dir/../other.moves` without detours. */
export function resolvePath(from: string, name: string): string {
  const parts = name.startsWith('/') ? [] : from.split('/').slice(0, -1);
  for (const part of name.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.' && part !== '') parts.push(part);
  }
  return (name.startsWith('/') ? '/' : '') + parts.join('/');
}

export class NameIndex {
  readonly files: Files;
  private readonly analyses = new Map<string, Analysis>();
  private readonly defined = new Map<string, readonly Definition[]>();

  constructor(files: Files) {
    this.files = files;
  }

  /** Paths of the files that a file uses, in order; those that are not there are left out. */
  usesOf(file: string): string[] {
    return usedFiles(this.files[file])
      .map((name) => resolvePath(file, name))
      .filter((path) => path in this.files);
  }

  analysisOf(file: string): Analysis {
    let analysis = this.analyses.get(file);
    if (analysis === undefined) {
      const imports: Record<string, string> = {};
      for (const name of usedFiles(this.files[file])) {
        const path = resolvePath(file, name);
        if (path in this.files) imports[name] = this.files[path];
      }
      analysis = analyse(this.files[file], { imports });
      this.analyses.set(file, analysis);
    }
    return analysis;
  }

  definitionsOf(file: string): readonly Definition[] {
    let found = this.defined.get(file);
    if (found === undefined) {
      const tree = readDocument(this.files[file]);
      found = definitionsIn(file, tree, cutBlocks(tree));
      this.defined.set(file, found);
    }
    return found;
  }

  /** What a name means in a block of a file; undefined if it is none of the texts' own names. */
  resolve(
    file: string,
    kind: NameKind,
    key: string,
    block: number | undefined,
  ): Definition | undefined {
    const matches = (one: Definition): boolean => one.kind === kind && one.key === key;
    const own = this.definitionsOf(file).filter(matches);
    const here =
      kind === 'sequence'
        ? own[0]
        : (own.find((one) => block !== undefined && one.block === block) ??
          own.find((one) => one.block === undefined));
    if (here !== undefined) return here;
    const others = this.usesOf(file).flatMap((path) => {
      const found = this.definitionsOf(path).find(
        (one) => matches(one) && (kind === 'sequence' || one.block === undefined),
      );
      return found === undefined ? [] : [found];
    });
    return kind === 'sequence' ? others[0] : others.at(-1);
  }

  /** All definitions and uses of names in a file, in the order of the text. */
  occurrencesIn(file: string): Occurrence[] {
    const { tree, cut, blocks } = this.analysisOf(file);
    const result: Occurrence[] = this.definitionsOf(file).map((definition) => ({
      range: definition.range,
      spelling: 'plain',
      definition,
    }));
    const blockOf = blockIndex(tree, cut);
    const add = (kind: NameKind, key: string, line: number, span: Span): void => {
      const definition = this.resolve(file, kind, key, blockOf(line));
      if (definition === undefined) return;
      const spelling = kind === 'sequence' ? 'hyphens' : 'plain';
      result.push({ range: rangeIn(line, span), spelling, definition });
    };
    tree.lines.forEach(({ text, content }, line) => {
      for (const node of everyNode(nodesOf(content))) {
        if (node.kind !== 'name') continue;
        const at = text.indexOf('@', node.span.start);
        const name = readName(text, at, text.length);
        if (name) add('sequence', name.name, line, { start: at + 1, end: name.end });
      }
      const block = blocks[blockOf(line) ?? 0];
      const scope = block?.scope;
      const addGoal = (words: Words, method: Method | undefined): void => {
        const goal = ownGoalIn(words, method);
        if (goal) add('goal', goal.key, line, goal.span);
      };
      if (content.kind === 'stage') addGoal(content.name, scope?.method);
      if (content.kind === 'key') {
        const { key, value } = content;
        if (key === 'method') {
          const method = readMethod(value);
          if (method.kind === 'method-use')
            add('method', method.name.text.toLowerCase(), line, method.name.span);
          if (method.kind === 'method')
            for (const stage of method.stages)
              add('goal', stage.text.toLowerCase(), line, stage.span);
        }
        for (const words of goalsNamed(key, value)) {
          // A name that is no stage of the method is sought among the own goals as it stands.
          const isStage = readStageName(words.text, scope ? [scope.method] : []) !== undefined;
          if (isStage) addGoal(words, scope?.method);
          else add('goal', words.text.toLowerCase(), line, words.span);
        }
      }
      const comment = 'comment' in content ? content.comment : undefined;
      if (comment && scope && claimLabels(comment.text, [scope.method]) !== undefined)
        for (const goal of ownGoalsSaid(comment, scope.method))
          add('goal', goal.key, line, goal.span);
    });
    return result.sort(
      (a, b) =>
        a.range.start.line - b.range.start.line ||
        a.range.start.character - b.range.start.character,
    );
  }
}

function goalsNamed(key: string, value: Words): Words[] {
  if (key === 'keeps' || key === 'check') {
    const list = readList(value);
    return list.kind === 'bad' ? [] : [...list.items];
  }
  if (key !== 'opens') return [];
  const opens = readOpens(value);
  return opens.kind === 'bad'
    ? []
    : opens.items.flatMap(({ goal, until }) => (until ? [goal, until] : [goal]));
}

interface Said {
  readonly key: string;
  readonly span: Span;
}

/** The own goal that a stage name means in a method, and where in the words it stands. */
function ownGoalIn(words: Words, method: Method | undefined): Said | undefined {
  const alias = method && readStageName(words.text, [method])?.alias;
  const isOwn = method?.stages.some(
    ({ name, ownPieces }) => ownPieces !== undefined && name.toLowerCase() === alias,
  );
  if (alias === undefined || isOwn !== true) return undefined;
  const at = words.text.toLowerCase().indexOf(alias);
  if (at < 0) return undefined;
  const start = words.span.start + at;
  return { key: alias, span: { start, end: start + alias.length } };
}

function ownGoalsSaid(words: Words, method: Method): Said[] {
  const text = words.text.toLowerCase();
  return method.stages.flatMap(({ name, ownPieces }) => {
    if (ownPieces === undefined) return [];
    const key = name.toLowerCase();
    const found: Said[] = [];
    for (let at = text.indexOf(key); at >= 0; at = text.indexOf(key, at + key.length)) {
      const around = text.slice(Math.max(0, at - 1), at) + text.slice(at + key.length).charAt(0);
      const start = words.span.start + at;
      if (!/[\p{L}\p{N}]/u.test(around))
        found.push({ key, span: { start, end: start + key.length } });
    }
    return found;
  });
}

function definitionsIn(file: string, tree: DocumentTree, cut: DocumentBlocks): Definition[] {
  const blockOf = blockIndex(tree, cut);
  const found: Definition[] = [];
  const add = (kind: NameKind, key: string, line: number, words: Words): void => {
    const block = kind === 'sequence' ? undefined : blockOf(line);
    // Of several the first counts; the others are findings.
    if (found.some((one) => one.kind === kind && one.key === key && one.block === block)) return;
    found.push({ kind, key, file, range: rangeIn(line, words.span), block });
  };
  for (const { kind, name } of cut.blocks)
    if (kind === 'sequence' && name !== undefined)
      add('sequence', sequenceKey(name.text), name.line, name);
  tree.lines.forEach(({ content }, line) => {
    if (content.kind !== 'key') return;
    if (content.key === 'goal') {
      const goal = readGoal(content.value);
      if (goal.kind === 'goal') add('goal', goal.name.text.toLowerCase(), line, goal.name);
    } else if (content.key === 'method') {
      const method = readMethod(content.value);
      if (method.kind === 'method')
        add('method', method.name.text.toLowerCase(), line, method.name);
    }
  });
  return found;
}

/** The block of a line; undefined for the header, whose keys hold for the whole file. */
function blockIndex(tree: DocumentTree, cut: DocumentBlocks): (line: number) => number | undefined {
  const header = new Set(cut.header);
  const of = new Map<number, number>();
  cut.blocks.forEach(({ first, end }, index) => {
    for (let line = first; line < Math.min(end, tree.lines.length); line++) of.set(line, index);
  });
  return (line) => (header.has(line) ? undefined : of.get(line));
}
