/** The report of `check` as a person reads it: findings with their place in the text, then each solve and sequence. */
import type { Analysis, Block } from '../../../engine/document/analysis.ts';
import type { Range } from '../../../engine/cube/place.ts';
import type {
  BreakJson,
  CheckedFileJson,
  FindingJson,
  SequenceJson,
  SolveJson,
  StageJson,
} from '../json.ts';
import type { Page, Tone } from './page.ts';
import { stripLines } from './strip.ts';
import { columns, harmless, listed, padEnd, plural, wrap } from './words.ts';

export interface Checked {
  readonly analysis: Analysis;
  readonly report: CheckedFileJson;
}

export function checkText(checked: readonly Checked[], page: Page): string {
  const files = checked.map((one) => fileLines(one, page).join('\n'));
  const total = checked.length > 1 ? `\n${summaryOf(checked, page)}\n` : '';
  return `${files.join('\n\n')}\n${total}`;
}

function fileLines({ analysis, report }: Checked, page: Page): string[] {
  const lines = [`${page.strong(harmless(report.file))}  ${tally([report], page)}`];
  for (const finding of report.findings) lines.push('', ...findingLines(finding, analysis, page));
  if (report.more !== undefined) {
    lines.push('', page.tone('quiet', `  and ${plural(report.more, 'more finding')}`));
  }
  const solves = analysis.blocks.filter((block) => block.kind === 'solve');
  report.solves.forEach((solve, i) => lines.push('', ...solveLines(solve, solves[i], page)));
  for (const sequence of report.sequences) lines.push('', ...sequenceLines(sequence, page));
  return lines;
}

function findingLines(finding: FindingJson, analysis: Analysis, page: Page): string[] {
  const { code, severity, range } = finding;
  const place = page.tone('quiet', `line ${range.start.line + 1}`);
  const indent = ' '.repeat(9);
  const room = page.width - indent.length;
  return [
    `  ${page.tone(severity, severity)} ${page.strong(code)} ${place}`,
    ...excerpt(range, analysis, severity, page),
    ...wrap(finding.message, room).map((line) => indent + line),
    ...finding.related.flatMap((related) =>
      wrap(`↳ line ${related.range.start.line + 1}: ${related.message}`, room).map((line) =>
        page.tone('quiet', indent + line),
      ),
    ),
    ...finding.fixes.map((fix) => `${indent}${page.tone('good', 'fix:')} ${harmless(fix.title)}`),
  ];
}

/** The line with a mark below the range; a long line is cut to what surrounds it. */
function excerpt(range: Range, analysis: Analysis, tone: Tone, page: Page): string[] {
  const { start, end } = range;
  const line = analysis.lines[start.line] ?? '';
  const endCharacter = end.line === start.line ? end.character : line.length;
  const room = page.width - 12;
  // A cut must not fall between the halves of a surrogate pair; harmless() shows stray ones as they are.
  const from = start.character > room - 20 ? start.character - 10 : 0;
  const before = (from > 0 ? '…' : '') + harmless(line.slice(from, start.character));
  const marked = harmless(
    line.slice(start.character, Math.min(endCharacter, start.character + room)),
  );
  const after = harmless(line.slice(endCharacter, endCharacter + room));
  const shown = fitted(before + marked + after, room);
  const width = Math.max(1, Math.min(columns(marked), room - columns(before)));
  const number = String(start.line + 1).padStart(5);
  const gutter = page.tone('quiet', '│');
  return [
    `  ${page.tone('quiet', number)} ${gutter} ${shown}`,
    `  ${' '.repeat(5)} ${gutter} ${' '.repeat(columns(before))}${page.tone(tone, '^'.repeat(width))}`,
  ];
}

function fitted(text: string, width: number): string {
  if (columns(text) <= width) return text;
  let cut = text.slice(0, width);
  while (columns(cut) >= width) cut = cut.slice(0, -1);
  return `${cut}…`;
}

function solveLines(solve: SolveJson, block: Block, page: Page, kind = 'solve'): string[] {
  const title = solve.title === '' ? '' : ` ${page.strong(harmless(solve.title))}`;
  const place = page.tone('quiet', `line ${solve.line + 1}`);
  const { obtm, etm, stm, qtm } = solve.counts;
  const end = endOf(solve, block, page);
  const many = (count: number | null): string =>
    count === null ? 'too many to count' : String(count);
  return [
    `  ${page.tone('title', kind)}${title} ${place}`,
    `    ${harmless(solve.method)}, base ${solve.base}${end}; ` +
      `${many(obtm)} OBTM, ${many(etm)} ETM, ${many(stm)} STM, ${many(qtm)} QTM`,
    ...indent(stageTable(solve.stages, block, page)),
    ...indent(breakLines(solve.breaks, block, page)),
    ...indent(stripLines(block, page)),
    ...(solve.asides ?? []).flatMap((aside, i) => [
      '',
      ...solveLines(aside, block.asides[i], page, 'aside'),
    ]),
  ];
}

/** An aside is not meant to end solved, so only success is told of it. */
function endOf(solve: SolveJson, block: Block, page: Page): string {
  if (solve.solved) return `, ${page.tone('good', 'ends solved')}`;
  if (block.course.stateAt(block.course.length) === undefined) return ', its end is unknown';
  return block.kind === 'aside' ? '' : `, ${page.tone('warning', 'does not end solved')}`;
}

function indent(lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ['', ...lines.map((line) => (line === '' ? '' : `    ${line}`))];
}

function stageTable(stages: readonly StageJson[], block: Block, page: Page): string[] {
  const begun = stages.filter((stage) => stage.firstTurn !== null || stage.reached);
  if (begun.length === 0) return [];
  const name = Math.max(5, ...begun.map((stage) => columns(stage.name))) + 2;
  const rows = begun.map((stage) => {
    const counted = stage.firstTurn === null ? '' : String(stage.counts.obtm ?? 'many');
    const numbers = turnsOf(stage, block).padEnd(11) + counted.padStart(4);
    return `${padEnd(harmless(stage.name), name)}${numbers}  ${outcome(stage, page)}`;
  });
  const rest = stages
    .filter((stage) => !begun.includes(stage))
    .map((stage) => harmless(stage.name));
  return [
    page.tone('quiet', `${'stage'.padEnd(name)}${'turns'.padEnd(11)}OBTM`),
    ...rows,
    ...(rest.length > 0 ? [page.tone('quiet', `not begun: ${listed(rest)}`)] : []),
  ];
}

function turnsOf({ firstTurn, lastTurn }: StageJson, block: Block): string {
  if (firstTurn === null || lastTurn === null) return '';
  // A rotation has no number of its own: it is called by the turn before it.
  const first = Math.min(
    block.numberOf(firstTurn) + (isNumbered(block, firstTurn) ? 0 : 1),
    block.numberOf(lastTurn),
  );
  const last = block.numberOf(lastTurn);
  return first === last ? String(first) : `${first}–${last}`;
}

function isNumbered(block: Block, turn: number): boolean {
  return turn === 0 ? block.numberOf(0) > 0 : block.numberOf(turn) > block.numberOf(turn - 1);
}

function outcome(stage: StageJson, page: Page): string {
  if (!stage.reached) return page.tone('error', '✗ not reached');
  return stage.kept
    ? page.tone('good', '✓ reached and kept')
    : page.tone('warning', '≈ reached, not kept');
}

/** Passing breaks belong to every solve: the strip shows them, here they are only counted. */
function breakLines(breaks: readonly BreakJson[], block: Block, page: Page): string[] {
  const lines = breaks
    .filter((found) => found.kind !== 'passing')
    .map((found) => breakLine(found, block, page));
  const passing = breaks.length - lines.length;
  if (passing === 0) return lines;
  const counted = plural(passing, 'passing break');
  return [
    ...lines,
    page.tone(
      'quiet',
      `${counted}, ${passing === 1 ? 'it comes' : 'each comes'} back within its stage`,
    ),
  ];
}

function breakLine(found: BreakJson, block: Block, page: Page): string {
  const tone: Tone = found.kind === 'lasting' ? 'error' : 'warning';
  const back =
    found.restoredAt === null
      ? 'never back'
      : `back with ${harmless(block.textOf(found.restoredAt))}, turn ${block.numberOf(found.restoredAt)}`;
  const wanted = found.wanted === true ? ', as announced' : '';
  return (
    `${page.tone(tone, `${found.kind} break`)} of ${harmless(found.goal)} by ${harmless(found.turnText)}, ` +
    `turn ${found.number}, line ${found.line + 1} (${listed(found.pieces)}); ${back}${wanted}`
  );
}

function sequenceLines(sequence: SequenceJson, page: Page): string[] {
  const place = page.tone('quiet', `line ${sequence.line + 1}`);
  const kept = sequence.keeps.filter(({ holds }) => holds).map(({ goal }) => goal);
  const lost = sequence.keeps.filter(({ holds }) => !holds).map(({ goal }) => goal);
  return [
    `  ${page.tone('title', 'sequence')} ${page.strong(harmless(sequence.name))} ${place}`,
    `    order ${sequence.order ?? 'unknown'}; ${sequence.counts.obtm ?? 'too many'} OBTM`,
    ...wrap(`does ${sequence.does === '' ? 'nothing' : sequence.does}`, page.width - 4).map(
      (line) => `    ${line}`,
    ),
    `    keeps ${kept.length === 0 ? 'no goal' : listed(kept)}${lost.length === 0 ? '' : `; not ${listed(lost)}`}`,
  ];
}

function tally(reports: readonly CheckedFileJson[], page: Page): string {
  const findings = reports.flatMap((report) => report.findings);
  const more = reports.reduce((sum, report) => sum + (report.more ?? 0), 0);
  if (findings.length === 0) return page.tone('good', 'no findings');
  const parts = (['error', 'warning', 'information'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    const one = severity === 'information' ? 'note' : severity;
    return count === 0 ? [] : [page.tone(severity, plural(count, one))];
  });
  if (more > 0) parts.push(`${more} more`);
  return parts.join(', ');
}

function summaryOf(checked: readonly Checked[], page: Page): string {
  return `${page.strong(plural(checked.length, 'file'))}: ${tally(
    checked.map(({ report }) => report),
    page,
  )}`;
}
