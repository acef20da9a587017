/** Lenses: above a stage its turns and what became of its goal; above a sequence what it does. */
import type { Range } from '../../cube/place.ts';
import type { Analysis, Block } from '../analysis.ts';
import { sectionsOf } from './sections.ts';
import { counted } from './text.ts';

export interface Lens {
  readonly range: Range;
  readonly title: string;
  /** Whether it leads to the tutor, with a question or for one; otherwise it is a mere note. */
  readonly asks: boolean;
  readonly question?: string;
  /** Line of whose last turn the question is asked. */
  readonly line: number;
}

const MOST_GOALS = 3;

export function lenses(analysis: Analysis): Lens[] {
  return analysis.blocks.flatMap((block) =>
    block.kind === 'sequence'
      ? sequenceLenses(analysis, block)
      : [block, ...block.asides].flatMap((one) => stageLenses(analysis, one)),
  );
}

function stageLenses(analysis: Analysis, block: Block): Lens[] {
  return sectionsOf(analysis, block).flatMap((section) => {
    if (section.how === 'closing label') return [];
    const { first, end } = block.timeline.stages[section.stage];
    const { reached, kept } = block.timeline.outcomes[section.goal];
    const { obtm } = block.countsOf(first, end);
    const parts = [
      first === end ? 'skipped' : obtm === null ? undefined : counted(obtm, 'turn'),
      !reached ? 'not reached' : kept ? 'reached and kept' : 'reached, then broken',
    ];
    const title = parts.filter((part) => part !== undefined).join(' · ');
    const { range } = section;
    const ask = { range, title: 'Ask the tutor', line: section.last, asks: true };
    return [
      { range, title, line: section.last, asks: false },
      reached && kept
        ? ask
        : { ...ask, question: reached ? `Where did the ${section.name} break?` : 'What next?' },
    ];
  });
}

function sequenceLenses(analysis: Analysis, block: Block): Lens[] {
  const line = block.line;
  const range = {
    start: { line, character: 0 },
    end: { line, character: analysis.lines[line].length },
  };
  const { obtm } = block.counts;
  const facts = block.sequence;
  const kept = facts?.keeps.filter(({ holds }) => holds).map(({ goal }) => goal) ?? [];
  const parts = [
    obtm === null ? undefined : counted(obtm, 'turn'),
    facts && `order ${String(facts.order)}`,
    facts &&
      (kept.length === 0
        ? 'keeps no goal'
        : `keeps ${kept.length > MOST_GOALS ? `${kept.slice(0, MOST_GOALS).join(', ')} …` : kept.join(', ')}`),
  ];
  if (block.course.length === 0) return [];
  const last = block.rangeOf(block.course.length - 1).end.line;
  const title = parts.filter((part) => part !== undefined).join(' · ');
  return [
    { range, title, line: last, asks: false },
    { range, title: 'Ask the tutor', line: last, asks: true },
  ];
}
