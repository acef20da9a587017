/**
 * Edits of the text tried out: the edited text is analysed, and what it then claims and keeps decides
 * whether the edits are offered. Nothing is offered that was not tried.
 */
import { analyse } from '../document/analyse.ts';
import type { Analysis, AnalysisOptions, Block } from '../document/analysis.ts';
import type { Finding, TextEdit } from '../document/finding.ts';
import { findingsOf } from './wanted.ts';
import { editLines } from './written.ts';

/** A text with its analysis, as the searches for one of its blocks need them. */
export interface Source {
  readonly options: AnalysisOptions;
  readonly analysis: Analysis;
}

export interface Trial {
  readonly text: string;
  readonly analysis: Analysis;
  readonly block: Block;
  readonly findings: readonly Finding[];
}

/** Undefined if the edits change how the text is cut into blocks. */
export function tryEdits(
  { analysis, options }: Source,
  block: Block,
  edits: readonly TextEdit[],
): Trial | undefined {
  const text = editLines(analysis.lines, edits);
  const next = analyse(text, options, analysis);
  const found = sameBlock(analysis, block, next);
  if (found === undefined) return undefined;
  return { text, analysis: next, block: found, findings: findingsOf(next, found) };
}

function sameBlock(analysis: Analysis, block: Block, next: Analysis): Block | undefined {
  for (const [i, own] of analysis.blocks.entries()) {
    if (own === block) return next.blocks.at(i);
    const j = own.asides.indexOf(block);
    if (j >= 0) return next.blocks.at(i)?.asides.at(j);
  }
  return undefined;
}

/** How much is still wrong: errors count whole, warnings half. */
export function faults(findings: readonly Finding[]): number {
  return findings.reduce((sum, { severity }) => {
    if (severity === 'error') return sum + 1;
    return severity === 'warning' ? sum + 0.5 : sum;
  }, 0);
}
