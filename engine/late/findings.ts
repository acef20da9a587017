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
import type { Block } from '../document/analysis.ts';
import type { Finding, FindingCode, Fix } from '../document/finding.ts';
import type { Search } from '../search/step.ts';
import { completion } from './completions.ts';
import { MOST_SLIPS, solveSlips, stageSlips, type LateFix } from './slips.ts';
import type { Source } from './trial.ts';
import { explainable, isUnsolved, type LateFinding } from './wanted.ts';
import { editLines } from './written.ts';

/** Findings about the goal of one stage. */
const OF_STAGES: readonly FindingCode[] = ['goal-not-reached', 'cross-not-aligned'];
/** Stages of a block that are looked at; more faults are hardly slips. */
const MOST_STAGES = 3;

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
      // Where a slip explains the whole solve, other turns would only cover it up.
      if (whole.length + fixes.length + finding.fixes.length === 0)
        fixes.push(...(yield* completion(source, block, stage)));
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
