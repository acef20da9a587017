/**
 * Refactorings of the turns under the selection. Those that keep the effect say so in their kind;
 * invert and mirror make another sequence on purpose.
 */
import type { Range } from '../../cube/place.ts';
import { holdingAfter } from '../../cube/state.ts';
import { invertTurn, makeTurn, printTurn, turnKind, type Turn } from '../../cube/turn.ts';
import { execute, JUMP } from '../../notation/execute.ts';
import { foldItems, isBracket, listsOf, withLists, type BracketNode } from '../../notation/fold.ts';
import { printSequence } from '../../notation/print.ts';
import {
  invert,
  mirror,
  PLANES,
  renameHolding,
  slicesAsFaces,
  type Plane,
} from '../../notation/transform.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import type { Analysis } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import { sequenceKey } from '../names.ts';
import { chosenNodes, hasGap, writeInstead, type Chosen } from './chosen.ts';
import { findForm, turnNodes } from './commutator.ts';
import { lastWritten } from './sections.ts';
import { everyNode, rangeIn } from './text.ts';

export interface Refactoring {
  readonly title: string;
  /** `rewrite` keeps the effect; `change` makes another sequence; `extract` gives it a name. */
  readonly kind: 'rewrite' | 'change' | 'extract';
  readonly edits: readonly TextEdit[];
  /** Where a new name was written, to be changed at once. */
  readonly named?: string;
}

/** Repeats up to so many are written out. */
const MOST_WRITTEN = 8;
const MOST_TURNS = 60;

export function nodeRefactorings(analysis: Analysis, selection: Range): Refactoring[] {
  const chosen = chosenNodes(analysis, selection);
  if (chosen === undefined) return [];
  const make = (
    title: string,
    kind: Refactoring['kind'],
    nodes: readonly SequenceNode[] | undefined,
  ): Refactoring[] => {
    if (nodes === undefined || nodes.length === 0) return [];
    return printSequence(nodes) === printSequence(chosen.nodes)
      ? []
      : [{ title, kind, edits: [writeInstead(analysis, chosen, nodes)] }];
  };
  const { nodes } = chosen;
  const gap = hasGap(nodes);
  return [
    ...(gap ? [] : make('Invert', 'change', invert(nodes))),
    ...PLANES.flatMap((plane) => make(MIRROR_TITLES[plane], 'change', mirror(nodes, plane))),
    ...make('Write out the brackets', 'rewrite', expanded(nodes)),
    ...(gap ? [] : collapsed(nodes).flatMap(({ title, node }) => make(title, 'rewrite', [node]))),
    ...make('Write slices as faces and rotations', 'rewrite', withoutSlices(nodes)),
    ...(gap
      ? []
      : REGRIPS.flatMap((turn) => make(regripTitle(turn), 'rewrite', regripped(nodes, turn)))),
    ...extraction(analysis, chosen),
  ];
}

export const MIRROR_TITLES: Readonly<Record<Plane, string>> = {
  'left-right': 'Mirror left for right',
  'front-back': 'Mirror front for back',
  'up-down': 'Mirror up for down',
};

export function regripTitle(turn: Turn): string {
  return `Write it for the cube after ${printTurn(turn)}, with the same effect`;
}

/** The rotations y, y', y2, x, x', x2, z, z', z2. */
export const REGRIPS: readonly Turn[] = (['y', 'x', 'z'] as const).flatMap((family) =>
  [1, 3, 2].map((amount) => makeTurn(family, amount)),
);

/** `R` as `y F y'`: turned before, and turned back after. */
export function regripped(nodes: readonly SequenceNode[], turn: Turn): SequenceNode[] | undefined {
  const renamed = renameHolding(nodes, holdingAfter(turn, 0));
  return renamed && [...turnNodes([turn]), ...renamed, ...turnNodes([invertTurn(turn)])];
}

/** The only bracket chosen, written out; undefined if another thing is chosen, or it would be long. */
export function expanded(nodes: readonly SequenceNode[]): SequenceNode[] | undefined {
  const [node] = nodes;
  if (nodes.length !== 1 || !isBracket(node)) return undefined;
  const [first, second = []] = listsOf(node);
  const back = invert;
  const once =
    node.kind === 'group'
      ? [...first]
      : node.kind === 'commutator'
        ? [...first, ...second, ...back(first), ...back(second)]
        : [...first, ...second, ...back(first)];
  // The way back of an unknown stretch is as unknown as the way out, but another one.
  if (node.kind !== 'group' && hasGap(nodes)) return undefined;
  if (node.times === 1n) return once;
  if (node.times === 0n || hasGap(nodes)) return undefined;
  const often = Number(node.times < 0n ? -node.times : node.times);
  if (often > MOST_WRITTEN)
    return node.kind === 'group'
      ? undefined
      : [{ kind: 'group', span: node.span, items: once, times: node.times }];
  const part = node.times < 0n ? invert(once) : once;
  return Array.from({ length: often }, () => part).flat();
}

function collapsed(nodes: readonly SequenceNode[]): { title: string; node: SequenceNode }[] {
  const turns = writtenOut(nodes);
  const form = turns && findForm(turns);
  if (form === undefined || (nodes.length === 1 && isBracket(nodes[0]))) return [];
  return [{ title: `Write as a ${form.kind}: ${printSequence([form.node])}`, node: form.node }];
}

/** The turns that nodes stand for; undefined if some are names, unknown, or too many. */
export function writtenOut(nodes: readonly SequenceNode[]): readonly Turn[] | undefined {
  for (const node of everyNode(nodes))
    if (node.kind === 'name' || node.kind === 'pause' || node.kind === 'unknown') return undefined;
  const { codes, tooLong } = execute(nodes, { resolve: () => undefined, limit: MOST_TURNS });
  return tooLong || codes.includes(JUMP) ? undefined : codes;
}

export function withoutSlices(nodes: readonly SequenceNode[]): SequenceNode[] {
  return foldItems<readonly SequenceNode[]>(nodes, {
    open: (node) => {
      if (isBracket(node)) return { lists: listsOf(node) };
      const isSlice = node.kind === 'turn' && turnKind(node.turn) === 'slice';
      return { value: isSlice ? turnNodes(slicesAsFaces([node.turn])) : [node] };
    },
    close: (node, lists) => [
      withLists(
        node as BracketNode,
        lists.map((list) => list.flat()),
      ),
    ],
  }).flat();
}

function extraction(analysis: Analysis, chosen: Chosen): Refactoring[] {
  const { nodes, scramble } = chosen;
  const isName = nodes.length === 1 && nodes[0].kind === 'name';
  if (scramble || isName || nodes.every(({ kind }) => kind === 'pause')) return [];
  // Names are not looked up in scrambles, and a sequence of its own has none to stand in for.
  const name = freeName(analysis);
  const key = sequenceKey(name);
  const call: SequenceNode = { kind: 'name', span: { start: 0, end: 0 }, name: key, times: 1n };
  return [
    {
      title: 'Extract to a named sequence',
      kind: 'extract',
      named: key,
      edits: [
        writeInstead(analysis, chosen, [call]),
        {
          range: endOfText(analysis),
          newText: `\n\nsequence: ${name}\n  ${printSequence(nodes)}`,
        },
      ],
    },
  ];
}

/** Behind the last line that is not blank. */
export function endOfText(analysis: Analysis): Range {
  const last = lastWritten(analysis, 0, analysis.lines.length - 1);
  const end = analysis.lines[last].length;
  return rangeIn(last, { start: end, end });
}

/** A name that no sequence has yet. */
export function freeName({ names }: Analysis): string {
  for (let number = 1; ; number++) {
    const name = number === 1 ? 'new sequence' : `new sequence ${String(number)}`;
    if (!names.known.has(sequenceKey(name))) return name;
  }
}
