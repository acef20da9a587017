/**
 * Named sequences of a text and of the files it uses: what `@right-insert` stands for.
 */
import type { Resolve } from '../notation/execute.ts';
import { isBracket, listsOf } from '../notation/fold.ts';
import type { SequenceNode } from '../notation/tree.ts';
import type { RawFinding } from './raw-finding.ts';
import { executedBody, type BlockTree, type DocumentTree } from './read/index.ts';

export interface NamedSequence {
  /** Lower case, hyphens for spaces: as after `@`. */
  readonly name: string;
  readonly items: readonly SequenceNode[];
  /** Its lines as text, by which a change is noticed. */
  readonly text: string;
  /** Line of its heading in this text; undefined if another file defines it. */
  readonly line: number | undefined;
}

/** `Right insert` is used as `@right-insert`. */
export function sequenceKey(name: string): string {
  return name.trim().toLowerCase().replace(/\s+/g, '-');
}

/** The sequences that blocks define, in order; unnamed ones have none. */
export function namedSequences(
  tree: DocumentTree,
  blocks: readonly BlockTree[],
  imported: boolean,
): NamedSequence[] {
  return blocks.flatMap((block) => {
    if (block.kind !== 'sequence' || block.name === undefined) return [];
    const items = block.lines.flatMap((line) => {
      const body = executedBody(tree.lines[line].content);
      return body?.kind === 'turns' ? body.turns.items : [];
    });
    const text = block.lines.map((line) => tree.lines[line].text).join('\n');
    return [
      {
        name: sequenceKey(block.name.text),
        items,
        text,
        line: imported ? undefined : block.name.line,
      },
    ];
  });
}

/** All names used in `items`, each once. */
export function namesIn(items: readonly SequenceNode[]): string[] {
  const found = new Set<string>();
  const todo: (readonly SequenceNode[])[] = [items];
  for (let list = todo.pop(); list !== undefined; list = todo.pop()) {
    for (const node of list) {
      if (node.kind === 'name') found.add(node.name);
      else if (isBracket(node)) todo.push(...listsOf(node));
    }
  }
  return [...found];
}

export interface Names {
  readonly resolve: Resolve;
  readonly known: ReadonlyMap<string, NamedSequence>;
  /** Name and line of each definition that is not used because an earlier one has its name. */
  readonly twice: readonly {
    readonly name: string;
    readonly line: number;
    readonly first: number | undefined;
  }[];
  /** Names that define each other, each cycle once, beginning with the one defined first. */
  readonly cycles: readonly (readonly string[])[];
  /** All definitions as text, by which a change is noticed. */
  readonly text: string;
}

export function makeNames(
  own: readonly NamedSequence[],
  imported: readonly NamedSequence[],
): Names {
  const known = new Map<string, NamedSequence>();
  const twice: { name: string; line: number; first: number | undefined }[] = [];
  for (const sequence of own) {
    const first = known.get(sequence.name);
    if (first === undefined) known.set(sequence.name, sequence);
    else if (sequence.line !== undefined)
      twice.push({ name: sequence.name, line: sequence.line, first: first.line });
  }
  for (const sequence of imported)
    if (!known.has(sequence.name)) known.set(sequence.name, sequence);
  const uses = new Map([...known].map(([name, { items }]) => [name, namesIn(items)] as const));
  return {
    resolve: (name) => known.get(name)?.items,
    known,
    twice,
    cycles: findCycles(uses),
    text: [...known.values()].map((sequence) => sequence.text).join('\n\n'),
  };
}

/** Cycles by a walk in depth; each name is entered once, so a graph of any size takes linear time. */
function findCycles(uses: ReadonlyMap<string, readonly string[]>): string[][] {
  const cycles: string[][] = [];
  const done = new Set<string>();
  for (const root of uses.keys()) {
    const path: { name: string; next: number }[] = done.has(root) ? [] : [{ name: root, next: 0 }];
    const depth = new Map([[root, 0]]);
    for (let top = path.at(-1); top !== undefined; top = path.at(-1)) {
      const name = uses.get(top.name)?.at(top.next++) ?? undefined;
      if (name === undefined || top.next > (uses.get(top.name)?.length ?? 0)) {
        done.add(top.name);
        depth.delete(top.name);
        path.pop();
        continue;
      }
      const at = depth.get(name);
      if (at !== undefined) cycles.push(path.slice(at).map((step) => step.name));
      else if (!done.has(name) && uses.has(name)) {
        depth.set(name, path.length);
        path.push({ name, next: 0 });
      }
    }
  }
  return cycles;
}

/** Findings about the names themselves, with lines of the whole text. */
export function nameFindings(
  tree: DocumentTree,
  names: Names,
): (RawFinding & { readonly line: number })[] {
  const rangeOf = (line: number): RawFinding['range'] => {
    const { content } = tree.lines[line];
    const span = content.kind === 'key' ? content.value.span : { start: 0, end: 0 };
    return { start: { line, character: span.start }, end: { line, character: span.end } };
  };
  const doubled = names.twice.map(({ name, line, first }) => ({
    line,
    args: { code: 'name-twice' as const, name, line: first ?? line },
    range: rangeOf(line),
    related:
      first === undefined
        ? []
        : [{ range: rangeOf(first), note: { kind: 'first' as const, name } }],
  }));
  const cyclic = names.cycles.flatMap((cycle) => {
    const line = names.known.get(cycle[0])?.line;
    if (line === undefined) return [];
    return [
      {
        line,
        args: { code: 'name-cycle' as const, names: [...cycle, cycle[0]] },
        range: rangeOf(line),
      },
    ];
  });
  return [...doubled, ...cyclic];
}
