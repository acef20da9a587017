/** Places in a text as commands name them: `--at LINE:CHAR`, both from 0, or the end of the first solve. */
import type { Position } from '../../engine/cube/place.ts';
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis, Block } from '../../engine/document/analysis.ts';
import { refused, type Arguments, type Refusal } from './command.ts';
import { importsOf } from './imports.ts';
import { readSource } from './input.ts';

export interface Place {
  readonly kind: 'place';
  readonly analysis: Analysis;
  /** Undefined where none was given: then it is the end of the first solve. */
  readonly position: Position | undefined;
  /** Undefined in a text without any turns. */
  readonly block: Block | undefined;
  /** Turns of the block done before the place. */
  readonly turns: number;
}

/** Reads the file and the place that the arguments name. */
export function readPlace(file: string, args: Arguments): Place | Refusal {
  const source = readSource(file);
  if (source.kind === 'refused') return source;
  const analysis = analyse(source.text, { imports: importsOf(source) });
  const at = args.value('at');
  if (at === undefined) return endOfFirstSolve(analysis);
  const match = /^(\d{1,9}):(\d{1,9})$/u.exec(at.trim());
  if (match === null) return refused(`--at wants LINE:CHAR, both counted from 0, not "${at}".`);
  const line = Number(match[1]);
  const lines = analysis.lines.length;
  if (line >= lines) {
    return refused(`There is no line ${line}: the text has ${lines} lines, counted from 0.`);
  }
  // Beyond the end of a line is its end, as in an editor.
  const position = { line, character: Math.min(Number(match[2]), analysis.lines[line].length) };
  const block = analysis.blockAt(position) ?? blockNear(analysis, line);
  return { kind: 'place', analysis, position, block, turns: block?.placeAt(position) ?? 0 };
}

function endOfFirstSolve(analysis: Analysis): Place {
  const block = analysis.blocks.find(({ kind }) => kind === 'solve') ?? analysis.blocks.at(0);
  return { kind: 'place', analysis, position: undefined, block, turns: block?.course.length ?? 0 };
}

/** Above all blocks one is before the first; below, after the last. */
function blockNear(analysis: Analysis, line: number): Block | undefined {
  return (
    analysis.blocks.findLast((block) => block.range.start.line <= line) ?? analysis.blocks.at(0)
  );
}
