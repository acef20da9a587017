/** `slips FILE`: likely mistakes of writing that explain why a solve does not end as it claims. */
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis, Block } from '../../engine/document/analysis.ts';
import { isUnsolved, lateBlocks } from '../../engine/late/wanted.ts';
import { solveSlips, stageSlips, type LateFix } from '../../engine/late/slips.ts';
import type { Source } from '../../engine/late/trial.ts';
import { complete, type Search } from '../../engine/search/step.ts';
import { refused, type Arguments, type Command, type Outcome } from './command.ts';
import { importsOf } from './imports.ts';
import { readSource } from './input.ts';
import type { SlipsJson } from './json-searches.ts';
import { strayOutcome } from './stray.ts';
import { slipsText } from './render/slips.ts';

export const slips: Command = {
  name: 'slips',
  usage: ['slips FILE [--json]', 'slips FILE --cube NET [--at LINE:CHAR] [--json]'],
  summary:
    'Ranks the edits after which the first solve that does not end as it claims would, or after which a stage reaches its goal. With --cube (the nine rows of a net, divided by "/"): where in the solve a cube looks so, or what was done wrong on the way there, and the way back.',
  options: { cube: { type: 'string' }, at: { type: 'string' } },
  run: (args) => Promise.resolve(run(args)),
};

function run(args: Arguments): Outcome {
  const [file, ...rest] = args.words;
  if (file === undefined) return refused('A file is missing ("-" is standard input).');
  if (rest.length > 0) return refused('Only one file can be looked through at a time.');
  if (args.value('cube') !== undefined) return strayOutcome(file, args);
  if (args.value('at') !== undefined) return refused('--at goes with --cube here.');
  const source = readSource(file);
  if (source.kind === 'refused') return source;
  const options = { imports: importsOf(source) };
  const analysis = analyse(source.text, options);
  const block = faulty(analysis);
  const found = block === undefined ? [] : complete(slipsOf({ analysis, options }, block));
  const json: SlipsJson = {
    slips: found.map(({ title, edits, score, left }) => ({
      title,
      edits: edits.map(({ range, newText }) => ({ range, newText })),
      score,
      left,
    })),
    solve: block === undefined ? null : { title: block.title, line: block.line },
  };
  return { kind: 'done', json, text: (page) => slipsText(json, page), status: 0 };
}

/** A solve that claims its end comes first, then one with a stage that misses its goal. */
function faulty(analysis: Analysis): Block | undefined {
  const unsolved = analysis.blocks.find(isUnsolved);
  return unsolved ?? lateBlocks(analysis).find((block) => firstMissed(block) >= 0);
}

/** The first stage whose goal fails at its end; −1 if there is none. */
function firstMissed({ timeline }: Block): number {
  return timeline.stages.findIndex(({ goal, end }) => timeline.held[goal][end] === 0);
}

function* slipsOf(source: Source, block: Block): Search<LateFix[]> {
  const whole = isUnsolved(block) ? yield* solveSlips(source, block) : [];
  const missed = firstMissed(block);
  return whole.length > 0 || missed < 0 ? whole : yield* stageSlips(source, block, missed);
}
