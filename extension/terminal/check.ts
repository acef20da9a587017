/** `check FILE|FOLDER…`: what of the claims of these texts does not follow. */
import { analyse } from '../../engine/document/analyse.ts';
import { refused, type Command } from './command.ts';
import { importsOf } from './imports.ts';
import { readSources } from './input.ts';
import type { CheckJson } from './json.ts';
import { checkText, type Checked } from './render/check.ts';
import { hasErrors, reportFile } from './report.ts';

export const check: Command = {
  name: 'check',
  usage: ['check FILE|FOLDER… [--json]'],
  summary: 'Lists the findings, the solves with their stages and breaks, and the sequences.',
  options: {},
  run: (args) => {
    if (args.words.length === 0) {
      return Promise.resolve(
        refused('A file or folder to check is missing ("-" is standard input).'),
      );
    }
    const sources = readSources(args.words);
    if (!Array.isArray(sources)) return Promise.resolve(sources);
    const checked: Checked[] = sources.map((source) => {
      const analysis = analyse(source.text, { imports: importsOf(source) });
      return { analysis, report: reportFile(source.name, analysis) };
    });
    const json: CheckJson = { files: checked.map(({ report }) => report) };
    return Promise.resolve({
      kind: 'done',
      json,
      text: (page) => checkText(checked, page),
      status: checked.some(({ analysis }) => hasErrors(analysis)) ? 1 : 0,
    });
  },
};
