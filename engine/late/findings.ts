/**
 * Late findings: the fixes that need a search, for one block of one version of a text. The analysis
 * never searches; whoever shows its findings asks for these afterwards and adds them when they are
 * there.
 *
 * ```ts
 * const late = complete(lateFindings({ analysis, options }, block));
 * const findings = withLate(analysis.findings, late);
 * ```
 */
import type { Range } from '../cube/place.ts';
import type { Analysis, Block } from '../document/analysis.ts';
import type { Finding, FindingCode, Fix } from '../document/finding.ts';
import type { Search } from '../search/step.ts';
import { MOST_SLIPS, solveSlips, stageSlips, type LateFix } from './slips.ts';
import { findingsOf, type Source } from './trial.ts';
import { editLines } from './written.ts';

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
const OF_STAGES: readonly FindingCode[] = ['goal-not-reached', 'cross-not-aligned'];
/** Stages of a block that are looked at; more faults are hardly slips. */
const MOST_STAGES = 3;

/** The blocks of a text, asides included, for which there is something to search. */
export function lateBlocks(analysis: Analysis): Block[] {
  return analysis.blocks
    .flatMap((block) => [block, ...block.asides])
    .filter((block) => findingsOf(analysis, block).some(({ code }) => EXPLAINED.includes(code)));
}

/** What a slip may explain; nothing where turns are missing because a name stands for nothing. */
function explainable(analysis: Analysis, block: Block): Finding[] {
  const findings = findingsOf(analysis, block);
  if (findings.some(({ code }) => code === 'name-unknown' || code === 'name-cycle')) return [];
  return findings.filter(
    ({ code, fixes }) =>
      EXPLAINED.includes(code) && !(code === 'last-turn-missing' && fixes.length > 0),
  );
}

/** Whether a solve says that it ends solved, and does not. */
export function isUnsolved(block: Block): boolean {
  const { stages, goals } = block.timeline;
  const claimed = stages.length === 0 || stages.some(({ goal }) => goal === goals.length - 1);
  const known = block.startFrom === 'scramble' || block.startFrom === 'net';
  return block.kind === 'solve' && known && block.course.length > 0 && claimed && !block.solved;
}

export function* lateFindings(source: Source, block: Block): Search<LateFinding[]> {
  const findings = explainable(source.analysis, block);
  const result: LateFinding[] = [];
  if (findings.length === 0) return result;
  const whole = isUnsolved(block) ? yield* solveSlips(source, block) : [];
  // The end's own finding, or else the first fault, of which the end is a consequence.
  const end =
    findings.find(({ code }) => code === 'not-solved' || code === 'last-turn-missing') ??
    findings[0];
  let stages = 0;
  for (const finding of findings) {
    const fixes: LateFix[] = finding === end ? [...whole] : [];
    const stage = OF_STAGES.includes(finding.code) ? stageOf(block, finding) : -1;
    if (stage >= 0 && stages < MOST_STAGES) {
      stages++;
      fixes.push(...(yield* stageSlips(source, block, stage)));
    }
    const offered = besides(source, finding, fixes);
    if (offered.length > 0)
      result.push({ code: finding.code, range: finding.range, fixes: offered });
  }
  return result;
}

/** Index of the stage that a finding speaks of; −1 if it is none whose goal fails at its end. */
function stageOf({ timeline }: Block, finding: Finding): number {
  return timeline.stages.findIndex(
    ({ goal, end }) => timeline.goals[goal].name === finding.goal && timeline.held[goal][end] !== 1,
  );
}

/** The best of them whose result no fix that is there already has. */
function besides({ analysis }: Source, finding: Finding, fixes: readonly LateFix[]): Fix[] {
  const seen = new Set(finding.fixes.map((fix) => editLines(analysis.lines, fix.edits)));
  const ranked = fixes.toSorted((a, b) => b.score - a.score);
  const result: Fix[] = [];
  for (const { title, edits, text } of ranked) {
    if (seen.has(text) || result.length === MOST_SLIPS) continue;
    seen.add(text);
    result.push({ title, edits });
  }
  return result;
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
