/**
 * Prints sequences in canonical spelling, one space between turns: the inverse of `readSequence`,
 * up to spans. Pieces are put on a stack and joined once, so that deep nesting stays linear.
 */
import { printTurn, type Turn } from '../cube/turn.ts';
import { isBracket, listsOf } from './fold.ts';
import { printTimes } from './read-parts.ts';
import type { SequenceNode } from './tree.ts';

const BRACKETS = {
  group: ['(', '', ')'],
  commutator: ['[', ', ', ']'],
  conjugate: ['[', ': ', ']'],
} as const;

export function printTurns(turns: Iterable<Turn>): string {
  return Array.from(turns, printTurn).join(' ');
}

export function printSequence(items: readonly SequenceNode[]): string {
  const pieces: string[] = [];
  const stack: (string | SequenceNode)[] = [];
  const putList = (list: readonly SequenceNode[]): void => {
    for (let i = list.length - 1; i >= 0; i--) {
      stack.push(list[i]);
      if (i > 0) stack.push(' ');
    }
  };
  putList(items);
  for (let next = stack.pop(); next !== undefined; next = stack.pop()) {
    if (typeof next === 'string') pieces.push(next);
    else if (isBracket(next)) {
      const [open, separator, close] = BRACKETS[next.kind];
      const [first, second] = listsOf(next);
      stack.push(close + printTimes(next.times));
      if (second !== undefined) {
        putList(second);
        stack.push(separator);
      }
      putList(first);
      stack.push(open);
    } else pieces.push(printLeaf(next));
  }
  return pieces.join('');
}

function printLeaf(
  node: Exclude<SequenceNode, { readonly kind: 'group' | 'commutator' | 'conjugate' }>,
): string {
  switch (node.kind) {
    case 'turn':
      return printTurn(node.turn);
    case 'pause':
      return '~';
    case 'gap':
      return '…';
    case 'unknown':
      return node.text;
    case 'name': {
      // Digits belong to the name, so a count needs brackets.
      const once = node.times === 1n || node.times === -1n;
      const name = `@${node.name}`;
      return (once ? name : `(${name})`) + printTimes(node.times);
    }
  }
}
