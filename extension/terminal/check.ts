/** `check FILE|FOLDER…`: what of the claims of these texts does not follow. */
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis, AnalysisOptions } from '../../engine/document/analysis.ts';
import { lateBlocks, withLate } from '../../engine/late/wanted.ts';
import { refused, type Command } from './command.ts';
import { importsOf } from './imports.ts';
import { readSources } from './input.ts';
import type { CheckJson } from './json.ts';
import { checkText, type Checked } from './render/check.ts';
import { hasErrors, reportFile } from './report.ts';

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
  const blocks = lateBlocks(analysis).slice(0, MOST_SEARCHED);
  if (blocks.length === 0) return analysis;
  const { lateFindings } = await import('../../engine/late/findings.ts');
  const { complete } = await import('../../engine/search/step.ts');
  const late = blocks.flatMap((block) => complete(lateFindings({ analysis, options }, block)));
  return { ...analysis, findings: withLate(analysis.findings, late) };
}
