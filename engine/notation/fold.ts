/**
 * Folds a tree of a sequence from the leaves up, with a stack of its own: nesting is limited by
 * memory only. Everything that computes something of a tree bottom-up (counts, effects, text,
 * mirror images) is an algebra for this one walk.
 */
import type { CommutatorNode, ConjugateNode, GroupNode, SequenceNode } from './tree.ts';

export type BracketNode = GroupNode | CommutatorNode | ConjugateNode;

export function isBracket(node: SequenceNode): node is BracketNode {
  return node.kind === 'group' || node.kind === 'commutator' || node.kind === 'conjugate';
}

/** The lists of nodes inside a bracket: one for a group, two for commutators and conjugates. */
export function listsOf(node: BracketNode): readonly (readonly SequenceNode[])[] {
  if (node.kind === 'group') return [node.items];
  return node.kind === 'commutator' ? [node.first, node.second] : [node.setup, node.core];
}

/** The bracket with other nodes inside, in the order of `listsOf`. */
export function withLists(
  node: BracketNode,
  lists: readonly (readonly SequenceNode[])[],
): BracketNode {
  const [first, second] = lists;
  if (node.kind === 'group') return { ...node, items: first };
  if (node.kind === 'commutator') return { ...node, first, second };
  return { ...node, setup: first, core: second };
}

export interface Algebra<T> {
  /** The value of a node at once, or the lists that have to be folded for it first. */
  open(
    node: SequenceNode,
  ): { readonly value: T } | { readonly lists: readonly (readonly SequenceNode[])[] };
  /** The value of a node whose lists have been folded. */
  close(node: SequenceNode, lists: readonly (readonly T[])[]): T;
}

interface Frame<T> {
  readonly node: SequenceNode | undefined;
  readonly lists: readonly (readonly SequenceNode[])[];
  readonly results: T[][];
  index: number;
}

/** The value of each item, in order. */
export function foldItems<T>(items: readonly SequenceNode[], algebra: Algebra<T>): T[] {
  const result: T[][] = [[]];
  const stack: Frame<T>[] = [{ node: undefined, lists: [items], results: result, index: 0 }];
  for (;;) {
    const frame = stack[stack.length - 1];
    const list = frame.lists[frame.results.length - 1];
    if (frame.index < list.length) {
      const node = list[frame.index++];
      const opened = algebra.open(node);
      if ('value' in opened) frame.results[frame.results.length - 1].push(opened.value);
      else stack.push({ node, lists: opened.lists, results: [[]], index: 0 });
    } else if (frame.results.length < frame.lists.length) {
      frame.results.push([]);
      frame.index = 0;
    } else {
      stack.pop();
      if (frame.node === undefined) return result[0];
      const value = algebra.close(frame.node, frame.results);
      const { results } = stack[stack.length - 1];
      results[results.length - 1].push(value);
    }
  }
}
