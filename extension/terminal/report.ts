/** From the one analysis to the JSON that is printed: a rewriting of shapes, nothing is computed anew. */
import type { Analysis, Block, Counts } from '../../engine/document/analysis.ts';
import { SEVERITIES, type Finding } from '../../engine/document/finding.ts';
import type { Break, StageOutcome } from '../../engine/goals/timeline-types.ts';
import { pieceName } from '../../engine/cube/piece.ts';
import { COLOURS } from '../../engine/cube/vocabulary.ts';
import type {
  BreakJson,
  CheckedFileJson,
  CountsJson,
  FindingJson,
  SequenceJson,
  SolveJson,
  StageJson,
} from './json.ts';

/** Findings listed for one file; the rest is counted. */
const MOST_SHOWN = 100;

export function reportFile(file: string, analysis: Analysis): CheckedFileJson {
  const findings = analysis.findings.flatMap((finding) => reportFinding(finding) ?? []);
  const more = findings.length - MOST_SHOWN;
  return {
    file,
    findings: gravest(findings),
    ...(more > 0 ? { more } : {}),
    solves: analysis.blocks.filter((block) => block.kind === 'solve').map(reportSolve),
    sequences: analysis.blocks.filter((block) => block.kind === 'sequence').map(reportSequence),
  };
}

/** In the order of the text; where there are too many, hints give way to warnings and these to errors. */
function gravest(findings: readonly FindingJson[]): FindingJson[] {
  if (findings.length <= MOST_SHOWN) return [...findings];
  const rank = (finding: FindingJson): number => SEVERITIES.indexOf(finding.severity);
  const kept = new Set([...findings].sort((a, b) => rank(a) - rank(b)).slice(0, MOST_SHOWN));
  return findings.filter((finding) => kept.has(finding));
}

export function hasErrors(analysis: Analysis): boolean {
  return analysis.findings.some((finding) => finding.severity === 'error');
}

/** Undefined for a finding that is off. */
function reportFinding(finding: Finding): FindingJson | undefined {
  const { code, severity, message, range, goal, kind, related, fixes } = finding;
  if (severity === 'off') return undefined;
  return {
    code,
    severity,
    message,
    range,
    ...(goal === undefined ? {} : { goal }),
    ...(kind === undefined ? {} : { kind }),
    related: related.map((place) => ({ range: place.range, message: place.message })),
    fixes: fixes.map((fix) => ({
      title: fix.title,
      edits: fix.edits.map((edit) => ({ range: edit.range, newText: edit.newText })),
    })),
  };
}

function reportSolve(block: Block): SolveJson {
  const { asides } = block;
  return {
    title: block.title,
    line: block.line,
    solved: block.solved,
    base: COLOURS[block.base],
    method: block.method,
    counts: block.counts,
    turns: block.course.length,
    stages: block.timeline.outcomes.map((outcome) => reportStage(block, outcome)),
    breaks: block.timeline.breaks.flatMap((found) => reportBreak(block, found) ?? []),
    ...(asides.length > 0 ? { asides: asides.map(reportSolve) } : {}),
  };
}

function reportStage(block: Block, outcome: StageOutcome): StageJson {
  const spans = block.timeline.stages.filter((span) => span.goal === outcome.goal);
  return {
    name: block.timeline.goals[outcome.goal].name,
    reached: outcome.reached,
    kept: outcome.kept,
    firstTurn: outcome.firstTurn ?? null,
    lastTurn: outcome.lastTurn ?? null,
    counts: spans.map((span) => block.countsOf(span.first, span.end)).reduce(add, NO_TURNS),
  };
}

const NO_TURNS: CountsJson = { obtm: 0, etm: 0, stm: 0, qtm: 0 };

function add(a: Counts, b: Counts): CountsJson {
  const sum = (one: number | null, other: number | null): number | null =>
    one === null || other === null || !Number.isSafeInteger(one + other) ? null : one + other;
  return {
    obtm: sum(a.obtm, b.obtm),
    etm: sum(a.etm, b.etm),
    stm: sum(a.stm, b.stm),
    qtm: sum(a.qtm, b.qtm),
  };
}

/** A part of a goal that never came back is told by `goal-not-reached` alone. */
function reportBreak(block: Block, found: Break): BreakJson | undefined {
  if (found.part && found.restoredAt === undefined) return undefined;
  return {
    goal: block.timeline.goals[found.goal].name,
    kind: found.kind,
    turn: found.turn,
    number: block.numberOf(found.turn),
    turnText: block.textOf(found.turn),
    line: block.rangeOf(found.turn).start.line,
    pieces: found.pieces.map((piece) => pieceName(piece, block.base)),
    restoredAt: found.restoredAt ?? null,
    ...(found.part ? { part: true } : {}),
    ...(found.wanted ? { wanted: true } : {}),
  };
}

/** A sequence with an unknown stretch has no order, and what it keeps cannot be told. */
function reportSequence(block: Block): SequenceJson {
  const { title, line, sequence, counts } = block;
  return {
    name: title,
    line,
    order: sequence?.order ?? null,
    keeps: (sequence?.keeps ?? []).map(({ goal, holds }) => ({ goal, holds })),
    does: sequence?.does ?? '…',
    counts,
  };
}
