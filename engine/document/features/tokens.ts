/**
 * Semantic tokens: turns tinted by what became of their stage, and what the grammar cannot know:
 * which words are own names, which tokens execute nothing.
 */
import type { Span } from '../../cube/place.ts';
import { turnKind, type TurnKind } from '../../cube/turn.ts';
import { isBracket } from '../../notation/fold.ts';
import type { Analysis, Block } from '../analysis.ts';
import { allBlocks, sectionsOf, type Section } from './sections.ts';
import { bodyOf, everyNode } from './text.ts';

export const TOKEN_TYPES = [
  'turn',
  'wideTurn',
  'sliceTurn',
  'rotation',
  'pause',
  'gap',
  'calledSequence',
  'notATurn',
  'stage',
] as const;
export type TokenType = (typeof TOKEN_TYPES)[number];

/** `done`: the stage is reached and kept; `lost`: reached, and broken later; `open`: not reached. */
export const TOKEN_MODIFIERS = ['done', 'lost', 'open'] as const;
export type TokenModifier = (typeof TOKEN_MODIFIERS)[number];

export interface Token {
  readonly line: number;
  readonly start: number;
  readonly length: number;
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

const TYPE_OF: Readonly<Record<TurnKind, TokenType>> = {
  face: 'turn',
  wide: 'wideTurn',
  slice: 'sliceTurn',
  rotation: 'rotation',
};

/** In the order of the text, disjoint. */
export function semanticTokens(analysis: Analysis): Token[] {
  const stageOf = stageLookup(analysis);
  const tokens: Token[] = [];
  analysis.tree.lines.forEach(({ content }, line) => {
    const add = (
      { start, end }: Span,
      type: TokenType,
      modifiers: readonly TokenModifier[],
    ): void => {
      if (end > start) tokens.push({ line, start, length: end - start, type, modifiers });
    };
    const place = stageOf(line);
    const modifiers = place === undefined ? [] : [outcomeOf(place.block, place.section)];
    if (content.kind === 'stage') add(content.name.span, 'stage', modifiers);
    const body = bodyOf(content);
    if (body?.kind !== 'turns') return;
    const executed =
      content.kind !== 'scramble' && !(content.kind === 'key' && content.key === 'scramble');
    const own = executed ? modifiers : [];
    for (const node of everyNode(body.turns.items)) {
      if (isBracket(node)) continue;
      switch (node.kind) {
        case 'turn':
          add(node.span, TYPE_OF[turnKind(node.turn)], own);
          break;
        case 'pause':
          add(node.span, 'pause', []);
          break;
        case 'gap':
          add(node.span, 'gap', []);
          break;
        case 'name':
          add(node.span, 'calledSequence', own);
          break;
        case 'unknown':
          add(node.span, 'notATurn', []);
      }
    }
  });
  return tokens.sort((a, b) => a.line - b.line || a.start - b.start);
}

function outcomeOf(block: Block, section: Section): TokenModifier {
  const { reached, kept } = block.timeline.outcomes[section.goal];
  return !reached ? 'open' : kept ? 'done' : 'lost';
}

interface StagePlace {
  readonly block: Block;
  readonly section: Section;
}

/** By line; asides come after their block and take their lines from it. */
function stageLookup(analysis: Analysis): (line: number) => StagePlace | undefined {
  const byLine = new Map<number, StagePlace | undefined>();
  for (const block of allBlocks(analysis)) {
    const { start, end } = block.range;
    if (block.kind === 'aside')
      for (let line = start.line; line <= end.line; line++) byLine.set(line, undefined);
    for (const section of sectionsOf(analysis, block))
      for (let line = section.first; line <= section.last; line++)
        byLine.set(line, { block, section });
  }
  return (line) => byLine.get(line);
}
