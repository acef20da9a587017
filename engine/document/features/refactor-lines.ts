/** Refactorings of several whole lines of turns; comments stay with the turns that they speak of. */
import type { Range } from '../../cube/place.ts';
import { holdingAfter } from '../../cube/state.ts';
import { invertTurn, printTurn, type Turn } from '../../cube/turn.ts';
import { printSequence } from '../../notation/print.ts';
import { invert, mirror, PLANES, renameHolding } from '../../notation/transform.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import type { Analysis } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import { sequenceKey } from '../names.ts';
import { hasGap } from './chosen.ts';
import {
  endOfText,
  freeName,
  MIRROR_TITLES,
  REGRIPS,
  regripTitle,
  withoutSlices,
  type Refactoring,
} from './refactor.ts';
import { everyNode, rangeIn } from './text.ts';

interface TurnLine {
  readonly line: number;
  readonly nodes: readonly SequenceNode[];
  readonly start: number;
  readonly end: number;
}

/** For a selection of more than one line of nothing but turns and comments; none otherwise. */
export function lineRefactorings(analysis: Analysis, selection: Range): Refactoring[] {
  const lines = turnLinesIn(analysis, selection);
  if (lines === undefined || lines.length < 2) return [];
  const each = (
    change: (nodes: readonly SequenceNode[]) => readonly SequenceNode[] | undefined,
  ): TextEdit[] | undefined => {
    const edits: TextEdit[] = [];
    for (const { line, nodes, start, end } of lines) {
      const changed = change(nodes);
      if (changed === undefined) return undefined;
      const newText = printSequence(changed);
      if (newText !== printSequence(nodes))
        edits.push({ range: rangeIn(line, { start, end }), newText });
    }
    return edits;
  };
  const found: Refactoring[] = [];
  const add = (
    title: string,
    kind: Refactoring['kind'],
    edits: readonly TextEdit[] | undefined,
  ): void => {
    if (edits !== undefined && edits.length > 0) found.push({ title, kind, edits });
  };
  const gap = lines.some(({ nodes }) => hasGap(nodes));
  if (!gap) add('Invert', 'change', inverted(analysis, lines));
  for (const plane of PLANES)
    add(
      MIRROR_TITLES[plane],
      'change',
      each((nodes) => mirror(nodes, plane)),
    );
  add('Write slices as faces and rotations', 'rewrite', each(withoutSlices));
  if (!gap) for (const turn of REGRIPS) add(regripTitle(turn), 'rewrite', regripped(lines, turn));
  found.push(extraction(analysis, lines));
  return found;
}

function turnLinesIn({ tree }: Analysis, { start, end }: Range): TurnLine[] | undefined {
  const last = end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
  const lines: TurnLine[] = [];
  for (let line = start.line; line <= last; line++) {
    const { content } = tree.lines[line];
    if (content.kind === 'blank' || content.kind === 'comment') continue;
    if (content.kind !== 'turns' || content.ignored.length > 0) return undefined;
    if (content.turns.marks.some(({ kind }) => kind !== 'spelling')) return undefined;
    const nodes = content.turns.items;
    for (const node of everyNode(nodes)) if (node.kind === 'unknown') return undefined;
    if (nodes.length > 0)
      lines.push({ line, nodes, start: content.span.start, end: content.span.end });
  }
  return lines;
}

/** The last line first, each inverted and with its own comment. */
function inverted(analysis: Analysis, lines: readonly TurnLine[]): TextEdit[] {
  return lines.map(({ line, start }, index) => {
    const from = lines[lines.length - 1 - index];
    const behind = analysis.lines[from.line].slice(from.end);
    const end = analysis.lines[line].length;
    return {
      range: rangeIn(line, { start, end }),
      newText: printSequence(invert(from.nodes)) + behind,
    };
  });
}

/** Turned before the first line, and turned back after the last. */
function regripped(lines: readonly TurnLine[], turn: Turn): TextEdit[] | undefined {
  const edits: TextEdit[] = [];
  for (const [index, { line, nodes, start, end }] of lines.entries()) {
    const renamed = renameHolding(nodes, holdingAfter(turn, 0));
    if (renamed === undefined) return undefined;
    const before = index === 0 ? `${printTurn(turn)} ` : '';
    const after = index === lines.length - 1 ? ` ${printTurn(invertTurn(turn))}` : '';
    edits.push({
      range: rangeIn(line, { start, end }),
      newText: before + printSequence(renamed) + after,
    });
  }
  return edits;
}

function extraction(analysis: Analysis, lines: readonly TurnLine[]): Refactoring {
  const name = freeName(analysis);
  const first = lines[0];
  const last = lines[lines.length - 1];
  const body = lines.map(({ line, nodes, end }) => {
    const behind = line === last.line ? '' : analysis.lines[line].slice(end);
    return `  ${printSequence(nodes)}${behind}`;
  });
  return {
    title: 'Extract to a named sequence',
    kind: 'extract',
    named: sequenceKey(name),
    edits: [
      {
        range: {
          start: { line: first.line, character: first.start },
          end: { line: last.line, character: last.end },
        },
        newText: `@${sequenceKey(name)}`,
      },
      {
        range: endOfText(analysis),
        newText: `\n\nsequence: ${name}\n${body.join('\n')}`,
      },
    ],
  };
}
