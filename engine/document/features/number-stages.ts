/** Numbers before the headings of a solve's stages; a pair without ordinal gets the one that it has. */
import { readStageName } from '../../goals/stage-names.ts';
import { analyse } from '../analyse.ts';
import type { Analysis, AnalysisOptions, Block } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import { edited, rangeIn } from './text.ts';

/** Undefined if there are no headings, all are numbered, or a numbered one would be read as something else. */
export function numberStages(
  analysis: Analysis,
  block: Block,
  options: AnalysisOptions = {},
): readonly TextEdit[] | undefined {
  let number = 0;
  const edits = block.stages.flatMap(({ how, range, goal }): TextEdit[] => {
    if (how !== 'heading') return [];
    number++;
    const { line } = range.start;
    const { text, content } = analysis.tree.lines[line];
    if (content.kind !== 'stage') return [];
    const indent = /^\s*/.exec(text)?.[0] ?? '';
    const name = readStageName(content.name.text, block.scope.methods);
    const isPair =
      name !== undefined &&
      name.ordinal === undefined &&
      Object.values(name.hints).some((hint) => hint === 'pair' || hint === 'block');
    const written = isPair
      ? block.timeline.goals[goal].name +
        text.slice(content.name.span.end, content.heading.span.end)
      : content.heading.text;
    const newText = `${indent}${String(number)}. ${written}`;
    const span = { start: 0, end: content.heading.span.end };
    return text.slice(0, span.end) === newText ? [] : [{ range: rangeIn(line, span), newText }];
  });
  if (edits.length === 0) return undefined;
  const after = analyse(edited(analysis.lines, edits), options);
  const same = after.blocks[analysis.blocks.indexOf(block)];
  const goals = ({ timeline }: Block): string => timeline.stages.map(({ goal }) => goal).join();
  return same && goals(same) === goals(block) ? edits : undefined;
}
