/** The outline: blocks, in them their stages, and in these the asides that branch off there. */
import type { Range, Span } from '../../cube/place.ts';
import type { Analysis, Block } from '../analysis.ts';
import { readGoal, readMethod, type LineContent } from '../read/index.ts';
import { headingLine, lastWritten, linesRange, sectionsOf, type Section } from './sections.ts';
import { counted, rangeIn } from './text.ts';

export interface OutlineSymbol {
  readonly name: string;
  readonly detail: string;
  readonly kind: 'solve' | 'sequence' | 'aside' | 'stage' | 'goal' | 'method';
  readonly range: Range;
  /** Within `range`: what is named. */
  readonly selection: Range;
  readonly children: readonly OutlineSymbol[];
}

export function documentSymbols(analysis: Analysis): OutlineSymbol[] {
  const header = definitions(analysis, analysis.cut.header);
  const inHeader = new Set(analysis.cut.header);
  const blocks = analysis.blocks.flatMap((block, index) => {
    const own = analysis.cut.blocks[index]?.lines.filter((line) => !inHeader.has(line)) ?? [];
    const symbol = blockSymbol(analysis, block, definitions(analysis, own));
    const empty = block.course.length === 0 && symbol.children.length === 0;
    return empty && block.kind === 'solve' && !isHeaded(analysis, block) ? [] : [symbol];
  });
  return [...header, ...blocks];
}

function isHeaded(analysis: Analysis, block: Block): boolean {
  const { content } = analysis.tree.lines[headingLine(analysis, block)];
  return content.kind === 'key' && content.key === block.kind;
}

const UNNAMED = { solve: 'Solve', sequence: 'Sequence', aside: 'Aside' } as const;

function blockSymbol(
  analysis: Analysis,
  block: Block,
  defined: readonly OutlineSymbol[] = [],
): OutlineSymbol {
  const first = headingLine(analysis, block);
  const range = linesRange(analysis, first, lastWritten(analysis, first, block.range.end.line));
  const heading = analysis.lines[first];
  const turns = block.counts.obtm;
  const state =
    block.kind === 'sequence' || block.course.length === 0 ? '' : block.solved ? ', solved' : '';
  return {
    name: block.title === '' ? UNNAMED[block.kind] : block.title,
    detail: turns === null ? '' : counted(turns, 'turn') + state,
    kind: block.kind,
    range,
    selection: rangeIn(first, { start: 0, end: heading.length }),
    children: [...defined, ...stageSymbols(analysis, block)],
  };
}

function stageSymbols(analysis: Analysis, block: Block): OutlineSymbol[] {
  const asides = block.asides.map((aside) => blockSymbol(analysis, aside));
  const sections = sectionsOf(analysis, block);
  const isIn = (aside: OutlineSymbol, { first, last }: Section): boolean =>
    first <= aside.range.start.line && aside.range.end.line <= last;
  const stages = sections.map((section): OutlineSymbol => {
    const { stage, name, first, last, range } = section;
    const outcome = block.timeline.outcomes[section.goal];
    const span = block.timeline.stages[stage];
    const { obtm } = block.countsOf(span.first, span.end);
    const count = span.first === span.end ? 'skipped' : obtm === null ? '' : counted(obtm, 'turn');
    return {
      name,
      detail: outcome.reached ? count : `${count}, not reached`,
      kind: 'stage',
      range: linesRange(analysis, first, Math.max(last, range.end.line)),
      selection: range,
      children: asides.filter((aside) => isIn(aside, section)),
    };
  });
  const outside = asides.filter((aside) => !sections.some((section) => isIn(aside, section)));
  return [...stages, ...outside];
}

function definitions(analysis: Analysis, lines: readonly number[]): OutlineSymbol[] {
  return lines.flatMap((line) => {
    const found = definitionIn(analysis.tree.lines[line].content);
    if (found === undefined) return [];
    const range = linesRange(analysis, line, line);
    const { name, detail, kind } = found;
    return [{ name, detail, kind, range, selection: rangeIn(line, found.span), children: [] }];
  });
}

interface Definition extends Pick<OutlineSymbol, 'name' | 'detail' | 'kind'> {
  readonly span: Span;
}

function definitionIn(content: LineContent): Definition | undefined {
  if (content.kind !== 'key') return undefined;
  if (content.key === 'goal') {
    const goal = readGoal(content.value);
    if (goal.kind === 'bad') return undefined;
    const detail = goal.slots.map((slot) => slot.text).join(' ');
    return { name: goal.name.text, detail, kind: 'goal', span: goal.name.span };
  }
  if (content.key !== 'method') return undefined;
  const method = readMethod(content.value);
  if (method.kind !== 'method') return undefined;
  const detail = method.stages.map((stage) => stage.text).join(', ');
  return { name: method.name.text, detail, kind: 'method', span: method.name.span };
}
