/**
 * Which findings a search may mend, and how its fixes join them. Apart from the searches, so that
 * whoever only asks for them does not load them.
 */
import type { Range } from '../cube/place.ts';
import type { Analysis, Block } from '../document/analysis.ts';
import type { Finding, FindingCode, Fix } from '../document/finding.ts';

/** Fixes for the finding of this code at this place. */
export interface LateFinding {
  readonly code: FindingCode;
  readonly range: Range;
  readonly fixes: readonly Fix[];
}

/** Findings that a slip may explain. */
const EXPLAINED: readonly FindingCode[] = [
  'not-solved',
  'last-turn-missing',
  'goal-broken',
  'goal-not-reached',
  'cross-not-aligned',
];

/** The findings of a block, those of its asides left out. */
export function findingsOf(analysis: Analysis, block: Block): Finding[] {
  const inside = ({ range }: Block, line: number): boolean =>
    line >= range.start.line && line <= range.end.line;
  return analysis.findings.filter(
    ({ range: { start } }) =>
      inside(block, start.line) && !block.asides.some((aside) => inside(aside, start.line)),
  );
}

/** What a slip may explain; nothing where turns are missing because a name stands for nothing. */
export function explainable(analysis: Analysis, block: Block): Finding[] {
  const findings = findingsOf(analysis, block);
  if (findings.some(({ code }) => code === 'name-unknown' || code === 'name-cycle')) return [];
  return findings.filter(
    ({ code, fixes }) =>
      EXPLAINED.includes(code) && !(code === 'last-turn-missing' && fixes.length > 0),
  );
}

/** The blocks of a text, asides included, for which there is something to search. */
export function lateBlocks(analysis: Analysis): Block[] {
  if (!analysis.findings.some(({ code }) => EXPLAINED.includes(code))) return [];
  return analysis.blocks
    .flatMap((block) => [block, ...block.asides])
    .filter((block) => explainable(analysis, block).length > 0);
}

/** Whether a solve says that it ends solved, and does not. */
export function isUnsolved(block: Block): boolean {
  const { stages, goals } = block.timeline;
  const claimed = stages.length === 0 || stages.some(({ goal }) => goal === goals.length - 1);
  const known = block.startFrom === 'scramble' || block.startFrom === 'net';
  return block.kind === 'solve' && known && block.course.length > 0 && claimed && !block.solved;
}

/** The findings with the fixes that were found for them. */
export function withLate(findings: readonly Finding[], late: readonly LateFinding[]): Finding[] {
  const keyOf = ({ code, range: { start, end } }: Pick<Finding, 'code' | 'range'>): string =>
    [code, start.line, start.character, end.line, end.character].join(' ');
  const fixes = new Map(late.map((one) => [keyOf(one), one.fixes]));
  return findings.map((finding) => {
    const more = fixes.get(keyOf(finding));
    return more === undefined ? finding : { ...finding, fixes: [...finding.fixes, ...more] };
  });
}
