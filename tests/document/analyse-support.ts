/** Analyses as a reader of the text sees them: findings by line and underlined text, turns by number. */
import { analyse } from '../../engine/document/analyse.ts';
import type { Analysis, AnalysisOptions, Block } from '../../engine/document/analysis.ts';
import type { Finding, FindingCode, TextEdit } from '../../engine/document/finding.ts';
import { splitLines } from '../../engine/document/read/index.ts';
import type { Range } from '../../engine/cube/place.ts';

/** The text that a range of one line underlines; of several lines, the first line's part. */
export function underlined({ lines }: Analysis, { start, end }: Range): string {
  const text = lines[start.line];
  return text.slice(start.character, end.line === start.line ? end.character : text.length);
}

/** `code line|underlined`, lines from 1; what is off is left out. */
export function found(text: string, options: AnalysisOptions = {}): string[] {
  const analysis = analyse(text, options);
  return analysis.findings
    .filter(({ severity }) => severity !== 'off')
    .map(({ code, range }) => `${code} ${range.start.line + 1}|${underlined(analysis, range)}`);
}

/** Codes alone, those that are off left out. */
export function codes(text: string, options: AnalysisOptions = {}): string[] {
  return analyse(text, options)
    .findings.filter(({ severity }) => severity !== 'off')
    .map(({ code }) => code);
}

/** The only finding with this code. */
export function only(text: string, code: FindingCode, options: AnalysisOptions = {}): Finding {
  const findings = analyse(text, options).findings.filter((one) => one.code === code);
  if (findings.length !== 1)
    throw new Error(`${String(findings.length)} findings ${code} in\n${text}`);
  return findings[0];
}

/** Breaks as told: `cross lasting R 1` (goal, kind, turn and number), `back R' 3` if restored. */
export function breaks(block: Block): string[] {
  return block.timeline.breaks.map((one) => {
    const turn = (index: number): string =>
      `${block.textOf(index)} ${String(block.numberOf(index))}`;
    const back = one.restoredAt === undefined ? '' : ` back ${turn(one.restoredAt)}`;
    const part = one.part ? ' part' : '';
    return `${block.timeline.goals[one.goal].name} ${one.kind}${part} ${turn(one.turn)}${back}`;
  });
}

/** Stages as they lie in the text: `cross 0-3` (first turn, place after the last), in its order. */
export function spans(block: Block): string[] {
  return block.timeline.stages.map(
    ({ goal, first, end }) => `${block.timeline.goals[goal].name} ${first}-${end}`,
  );
}

/** Goals that are reached, in the method's order; `!` behind those that are not kept. */
export function reached(block: Block): string {
  return block.timeline.outcomes
    .filter((outcome) => outcome.reached)
    .map(({ goal, kept }) => `${block.timeline.goals[goal].name}${kept ? '' : '!'}`)
    .join(', ');
}

export function firstBlock(text: string, options: AnalysisOptions = {}): Block {
  return analyse(text, options).blocks[0];
}

/** The text with edits made, as an editor makes them. */
export function applied(text: string, edits: readonly TextEdit[]): string {
  const starts: number[] = [];
  let at = 0;
  for (const { text: line, lineEnd } of splitLines(text)) {
    starts.push(at);
    at += line.length + lineEnd.length;
  }
  return edits
    .map(({ range: { start, end }, newText }) => ({
      from: starts[start.line] + start.character,
      to: starts[end.line] + end.character,
      newText,
    }))
    .sort((a, b) => b.from - a.from)
    .reduce((done, { from, to, newText }) => done.slice(0, from) + newText + done.slice(to), text);
}

/** The net of a solved cube, white up and green in front. */
export const SOLVED_NET = `    www
    www
    www
ooo ggg rrr bbb
ooo ggg rrr bbb
ooo ggg rrr bbb
    yyy
    yyy
    yyy`;
