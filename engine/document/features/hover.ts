/**
 * Hovers: what turns, groups, stages, pieces, names and keys are and do, as Markdown. Where a cube
 * belongs beside it, the hover names the place of the course and the pieces to mark; drawing is the
 * view's affair.
 */
import type { Position, Range } from '../../cube/place.ts';
import {
  pieceOf,
  pieceTitle,
  slotAt,
  slotName,
  whereIs,
  type Piece,
  type PieceSet,
} from '../../cube/piece.ts';
import { COLOURS } from '../../cube/vocabulary.ts';
import { readWhere } from '../../goals/judge.ts';
import { goalTitle } from '../../goals/titles.ts';
import { isBracket } from '../../notation/fold.ts';
import { printSequence } from '../../notation/print.ts';
import type { SequenceNode } from '../../notation/tree.ts';
import type { Analysis, Block } from '../analysis.ts';
import { readGoal, readList } from '../read/index.ts';
import { KEY_NOTES } from './key-notes.ts';
import { sayProgress } from './live.ts';
import { code, escaped, paragraphs, shortened } from './markdown.ts';
import { partsInPlace, progressAt } from './progress.ts';
import { writtenOut } from './refactor.ts';
import { sayReport } from './say-report.ts';
import { counted, inSpan, listed, nodesOf, pathAt, rangeIn } from './text.ts';
import { reportOn } from './workbench.ts';

export interface Hover {
  readonly range: Range;
  readonly kind: 'turn' | 'group' | 'stage' | 'piece' | 'name' | 'key' | 'sequence';
  readonly markdown: string;
  readonly picture?: { readonly block: Block; readonly place: number; readonly marked: PieceSet };
}

export function hoverAt(analysis: Analysis, position: Position): Hover | undefined {
  const { line, character } = position;
  const content = analysis.tree.lines[line]?.content;
  if (content === undefined) return undefined;
  const block = analysis.blockAt(position) ?? analysis.blocks.at(0);
  const comment = 'comment' in content ? content.comment : undefined;
  if (block === undefined) return undefined;
  const stage = block.stages.findIndex(
    ({ range }) =>
      range.start.line === line &&
      inSpan({ start: range.start.character, end: range.end.character }, character),
  );
  if (comment !== undefined && character >= comment.mark.start)
    return (
      pieceHover(analysis, block, position) ?? (stage >= 0 ? stageHover(block, stage) : undefined)
    );
  if (stage >= 0) return stageHover(block, stage);
  if (content.kind === 'key') {
    const { key, name, value } = content;
    if (inSpan(name.span, character)) {
      if (key === 'sequence' && block.kind === 'sequence') return sequenceHover(analysis, block);
      return {
        range: rangeIn(line, name.span),
        kind: 'key',
        markdown: `**${key}:** ${KEY_NOTES[key]}`,
      };
    }
    if (
      key === 'sequence' &&
      block.kind === 'sequence' &&
      inSpan(value.span, character) &&
      !content.body
    )
      return sequenceHover(analysis, block);
    if (key === 'goal') return slotHover(block, position, readGoal(value));
    if (!content.body) return pieceHover(analysis, block, position);
  }
  return nodeHover(analysis, block, position, nodesOf(content));
}

/** A longer bracket is not looked into on every move of the mouse. */
const LONGEST = 5_000;

function nodeHover(
  analysis: Analysis,
  block: Block,
  { line, character }: Position,
  items: readonly SequenceNode[],
): Hover | undefined {
  const node = pathAt(items, character).at(-1);
  if (node === undefined) return undefined;
  const range = rangeIn(line, node.span);
  if (node.span.end - node.span.start > LONGEST) return undefined;
  if (node.kind === 'turn') return turnHover(block, { line, character }, range);
  if (node.kind !== 'name' && !isBracket(node)) return undefined;
  const said: string[] = [`**${escaped(shortened(printSequence([node])))}**`];
  if (node.kind === 'name') {
    const known = analysis.names.known.get(node.name);
    if (known === undefined) return undefined;
    said.push(code(printSequence(known.items)));
  } else {
    const turns = writtenOut([node]);
    if (turns !== undefined)
      said.push(
        code(printSequence(turns.map((turn) => ({ kind: 'turn', span: node.span, turn })))),
      );
  }
  const report = reportOn(question(analysis, block, [node]));
  if (report !== undefined) said.push(...sayReport(report, block.scope.holding, block.base));
  return { range, kind: node.kind === 'name' ? 'name' : 'group', markdown: paragraphs(said) };
}

function question(
  analysis: Analysis,
  block: Block,
  items: readonly SequenceNode[],
): Parameters<typeof reportOn>[0] {
  return {
    items,
    resolve: analysis.names.resolve,
    goals: block.timeline.goals,
    holding: block.scope.holding,
    base: block.base,
  };
}

/** What a sequence block does, for its heading. */
export function sequenceHover(analysis: Analysis, block: Block): Hover | undefined {
  const tree = analysis.cut.blocks.find(({ first }) => first === block.line);
  if (tree === undefined) return undefined;
  const lines = tree.lines.map((line) => analysis.tree.lines[line].content);
  const report = reportOn(
    question(
      analysis,
      block,
      lines.flatMap((content) => [...nodesOf(content)]),
    ),
  );
  if (report === undefined) return undefined;
  const claimed = lines.flatMap((content) => {
    if (content.kind !== 'key' || content.key !== 'keeps') return [];
    const list = readList(content.value);
    return list.kind === 'bad' ? [] : list.items.map(({ text }) => text);
  });
  const title = block.title === '' ? 'Sequence' : block.title;
  return {
    range: rangeIn(block.line, { start: 0, end: analysis.lines[block.line].length }),
    kind: 'sequence',
    markdown: paragraphs([
      `**${escaped(title)}**`,
      ...sayReport(report, block.scope.holding, block.base, claimed),
    ]),
    picture: { block, place: block.course.length, marked: 0 },
  };
}

function stageHover(block: Block, index: number): Hover {
  const { timeline } = block;
  const written = block.stages[index];
  const { first, end, goal } = timeline.stages[index];
  const { reached, kept } = timeline.outcomes[goal];
  const progress = progressAt(block, index, end);
  const { obtm } = block.countsOf(first, end);
  const name = timeline.goals[goal].name;
  const said = [
    `**${escaped(name)}**: ${escaped(goalTitle(name))}, on ${COLOURS[block.base]}`,
    [
      first === end ? 'skipped' : obtm === null ? 'very long' : counted(obtm, 'turn'),
      reached ? (kept ? 'reached and kept' : 'reached, but broken later') : 'not reached',
    ].join(', '),
  ];
  if (progress && !progress.reached) said.push(escaped(sayProgress(block, name, progress)));
  const breaks = timeline.breaks.filter(({ turn }) => first <= turn && turn < end);
  const lent = breaks.filter(({ kind }) => kind === 'passing').length;
  if (lent > 0)
    said.push(`${counted(lent, 'time')} something is lent and comes back in this stage`);
  return {
    range: written.range,
    kind: 'stage',
    markdown: paragraphs(said),
    picture: { block, place: end, marked: 0 },
  };
}

function turnHover(block: Block, position: Position, range: Range): Hover | undefined {
  const place = block.placeAt({ line: position.line, character: range.end.character });
  const before = place > block.ownFrom ? block.course.stateAt(place - 1) : undefined;
  const after = before && block.course.stateAt(place);
  const stage = block.timeline.stages.find(({ first, end }) => first < place && place <= end);
  if (before === undefined || after === undefined || stage === undefined) return undefined;
  if (block.rangeOf(place - 1).start.line !== position.line) return undefined;
  const goal = block.timeline.goals[stage.goal];
  const { done, unit } = partsInPlace(goal, readWhere(after));
  const more = done - partsInPlace(goal, readWhere(before)).done;
  if (more === 0) return undefined;
  const what = counted(Math.abs(more), unit);
  return {
    range,
    kind: 'turn',
    markdown: escaped(
      more > 0
        ? `Brings ${what} of ${goal.name} into place`
        : `Takes ${what} of ${goal.name} out of place`,
    ),
  };
}

const COLOUR = COLOURS.join('|');
const PIECE = new RegExp(
  `\\b(?:${COLOUR})(?:[-/ ](?:${COLOUR})){1,2}\\b(?: (?:edge|corner)s?)?`,
  'gi',
);

/** The piece that words on a line name by its colours, where the turns of that line leave it. */
function pieceHover(analysis: Analysis, block: Block, position: Position): Hover | undefined {
  const { line, character } = position;
  for (const match of analysis.lines[line].matchAll(PIECE)) {
    const span = { start: match.index, end: match.index + match[0].length };
    if (!inSpan(span, character)) continue;
    const colours = match[0].toLowerCase().match(new RegExp(COLOUR, 'g')) ?? [];
    const piece = pieceOf(colours.map((colour) => COLOURS.findIndex((other) => other === colour)));
    if (piece !== undefined) return sayPiece(block, piece, rangeIn(line, span), line);
  }
  return undefined;
}

function slotHover(
  block: Block,
  { line, character }: Position,
  goal: ReturnType<typeof readGoal>,
): Hover | undefined {
  if (goal.kind === 'bad') return undefined;
  const slot = goal.slots.find(({ span }) => inSpan(span, character));
  if (slot === undefined) return undefined;
  const piece = slotAt(slot.faces, block.scope.holding);
  return piece === undefined
    ? undefined
    : {
        range: rangeIn(line, slot.span),
        kind: 'piece',
        markdown: `${slot.text}: home of the ${pieceTitle(piece, block.base)}`,
      };
}

function sayPiece(block: Block, piece: Piece, range: Range, line: number): Hover {
  const place = block.placeAt({ line, character: Infinity });
  const state = block.course.stateAt(place);
  const said = [`**${pieceTitle(piece, block.base)}**`];
  if (state !== undefined) {
    const { slot, turned } = whereIs(state, piece);
    const at = slotName(slot, state.holding);
    const home = slotName(piece, state.holding);
    said.push(
      slot !== piece
        ? `Lies in ${at} here; its home is ${home}`
        : turned === 0
          ? `At home in ${home} here`
          : `In its home ${home} here, but turned`,
    );
  }
  const goals = block.timeline.breaks.filter(({ pieces }) => pieces.includes(piece)).slice(0, 3);
  if (goals.length > 0)
    said.push(
      `Taken out at ${listed(goals.map(({ turn }) => `${block.textOf(turn)}, turn ${String(block.numberOf(turn))}`))}`,
    );
  return {
    range,
    kind: 'piece',
    markdown: paragraphs(said),
    picture: { block, place, marked: 1 << piece },
  };
}
