/** `check FILE|FOLDER…`: what of the claims of these texts does not follow. */
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis, AnalysisOptions } from '../../engine/document/analysis.ts';
import type { FindingCode } from '../../engine/document/finding.ts';
import { refused, type Command } from './command.ts';
import { importsOf } from './imports.ts';
import { readSources } from './input.ts';
import type { CheckJson } from './json.ts';
import { checkText, type Checked } from './render/check.ts';
import { hasErrors, reportFile } from './report.ts';

/** Findings for which `engine/late` may find fixes. */
const SEARCHED: readonly FindingCode[] = [
  'not-solved',
  'last-turn-missing',
  'goal-broken',
  'goal-not-reached',
  'cross-not-aligned',
];
/** Solves of one file that are searched; one with more faults has others than slips. */
const MOST_SEARCHED = 20;

export const check: Command = {
  name: 'check',
  usage: ['check FILE|FOLDER… [--json]'],
  summary: 'Lists the findings, the solves with their stages and breaks, and the sequences.',
  options: {},
  run: async (args) => {
    if (args.words.length === 0) {
      return refused('A file or folder to check is missing ("-" is standard input).');
    }
    const sources = readSources(args.words);
    if (!Array.isArray(sources)) return sources;
    const checked: Checked[] = [];
    for (const source of sources) {
      const options = { imports: importsOf(source) };
      const analysis = await withLateFixes(analyse(source.text, options), options);
      checked.push({ analysis, report: reportFile(source.name, analysis) });
    }
    const json: CheckJson = { files: checked.map(({ report }) => report) };
    return {
      kind: 'done',
      json,
      text: (page) => checkText(checked, page),
      status: checked.some(({ analysis }) => hasErrors(analysis)) ? 1 : 0,
    };
  },
};

/** The fixes that need a search are waited for; the searches are loaded only where there is something to search. */
async function withLateFixes(analysis: Analysis, options: AnalysisOptions): Promise<Analysis> {
  if (!analysis.findings.some(({ code }) => SEARCHED.includes(code))) return analysis;
  const { lateBlocks, lateFindings, withLate } = await import('../../engine/late/findings.ts');
  const { complete } = await import('../../engine/search/step.ts');
  const late = lateBlocks(analysis)
    .slice(0, MOST_SEARCHED)
    .flatMap((block) => complete(lateFindings({ analysis, options }, block)));
  return { ...analysis, findings: withLate(analysis.findings, late) };
}
