/**
 * Slips of one block as fixes of its text: edits after which the solve ends as it claims, or after which
 * a stage reaches its goal. Each has been tried on the text, and is ranked by how people slip and by
 * how much else of what the text claims is then right.
 */
import { held, SOLVED } from '../cube/state.ts';
import { isRotation } from '../cube/turn.ts';
import type { Block } from '../document/analysis.ts';
import type { Finding, Fix, TextEdit } from '../document/finding.ts';
import { goalTitle } from '../goals/titles.ts';
import { SlipCourse } from '../search/slips/course.ts';
import { findSlips, findStageSlips, type Slip } from '../search/slips/find.ts';
import type { Search } from '../search/step.ts';
import { bracketSlips, IN_SCRAMBLE, type BracketSlip } from './bracket-slips.ts';
import { saySlip, slipAsText } from './slip-text.ts';
import { faults, tryEdits, type Source, type Trial } from './trial.ts';
import { scrambleTurns, writtenTurns, type WrittenTurn } from './written.ts';

export interface LateFix extends Fix {
  /** Between 0 and 1; only the order means anything. */
  readonly score: number;
  /** The text with the edits made. */
  readonly text: string;
  /** Findings left in the block. */
  readonly left: number;
}

/** So many are offered. */
export const MOST_SLIPS = 5;
/** So many are tried on the text. */
const MOST_TRIED = 16;
/** What each fault that remains takes off the score. */
const PER_FAULT = 0.5;
/** Slips so much less likely than the best are not worth a line. */
const WORTH = 0.1;
/** For a stage some edits hit by chance: unlikely ones are left out, even if there are no others. */
const LEAST_FOR_STAGE = 0.1;
/** With the scramble, pairs are sought in at most so many turns. */
const MOST_FOR_PAIRS = 120;

interface Candidate {
  /** Ways to write it, the likeliest first. */
  readonly ways: readonly (readonly TextEdit[])[];
  readonly title: string;
  readonly score: number;
}

/**
 * Edits after which a solve with a known start ends solved: in its turns or in its scramble. None for a
 * solve whose start is worked out from its end, or with an unknown stretch.
 */
export function* solveSlips(source: Source, block: Block): Search<LateFix[]> {
  const { lines } = source.analysis;
  const known = block.startFrom === 'scramble' || block.startFrom === 'net';
  const turns = known && block.kind === 'solve' ? writtenTurns(lines, block) : undefined;
  if (turns === undefined || block.start === undefined || block.solved) return [];
  const scramble = scrambleTurns(lines, block) ?? [];
  const written = [...scramble, ...turns];
  const codes = written.map(({ turn }) => turn);
  const solved = held(SOLVED, startHolding(block, scramble));
  const start = scramble.length > 0 ? solved : block.start;

  const candidates: Candidate[] = [];
  const simple = yield* findSlips(start, codes, { pairs: false, most: MOST_TRIED });
  candidates.push(...asCandidates(source, written, simple.slips));
  if (simple.kind !== 'too-long' && written.some(({ literal }) => !literal)) {
    const found = yield* bracketSlips(lines, written, new SlipCourse(start, codes));
    candidates.push(...found.map(asCandidate));
  }
  const fits = (trial: Trial): boolean => trial.block.solved && !isEndFalse(trial.findings);
  const ending = (): string => 'then it ends solved';
  const single = yield* tryAll(source, block, candidates, fits, ending);
  if (single.length > 0 || simple.kind === 'too-long') return single;

  // Two slips: sought in the solve first, and only then in scramble and solve together.
  for (const own of scramble.length > 0 ? [turns, written] : [turns]) {
    if (own !== turns && own.length > MOST_FOR_PAIRS) break;
    const from = own === turns ? block.start : start;
    const pairs = yield* findSlips(
      from,
      own.map(({ turn }) => turn),
      { most: MOST_TRIED },
    );
    const tried = yield* tryAll(
      source,
      block,
      asCandidates(source, own, pairs.slips),
      fits,
      ending,
    );
    if (tried.length > 0) return tried;
  }
  return [];
}

/** How the cube was held when the scramble began: rotations in it lead to the holding of the start. */
function startHolding(block: Block, scramble: readonly WrittenTurn[]): number {
  const after = block.start?.holding ?? 0;
  for (let holding = 0; holding < 24; holding++) {
    const end = new SlipCourse(
      held(SOLVED, holding),
      scramble.map(({ turn }) => turn),
    ).end;
    if (end.holding === after) return holding;
  }
  return after;
}

function isEndFalse(findings: readonly Finding[]): boolean {
  return findings.some(({ code }) => code === 'not-solved');
}

/** Edits within a stage after which its goal is reached and what was reached before still holds. */
export function* stageSlips(source: Source, block: Block, stage: number): Search<LateFix[]> {
  const { lines } = source.analysis;
  const { timeline, course } = block;
  const span = timeline.stages[stage];
  const before = writtenTurns(lines, block, 0, span.first);
  // Rotations before the first turn belong to the first stage as far as slips go.
  const first = before?.every(({ turn }) => isRotation(turn)) === true ? 0 : span.first;
  const start = course.stateAt(first);
  const written = writtenTurns(lines, block, first, span.end);
  if (written === undefined || written.length === 0 || start === undefined) return [];
  const goal = timeline.judged[span.goal];
  const kept = timeline.outcomes.flatMap(({ goal: other, guardedFrom }) =>
    other !== span.goal && guardedFrom !== undefined && guardedFrom <= span.first
      ? [timeline.judged[other]]
      : [],
  );
  const codes = written.map(({ turn }) => turn);
  const result = yield* findStageSlips(start, codes, goal, kept, { most: MOST_TRIED });
  const { name } = timeline.goals[span.goal];
  const fits = (trial: Trial): boolean =>
    trial.block.timeline.outcomes[span.goal]?.reached &&
    !trial.findings.some(
      ({ code, goal: of }) =>
        of === name && (code === 'goal-not-reached' || code === 'cross-not-aligned'),
    );
  const ending = (trial: Trial): string =>
    trial.block.solved ? 'then it ends solved' : `then ${goalTitle(name)} is reached`;
  const likely = result.slips.filter(({ score }) => score >= LEAST_FOR_STAGE);
  return yield* tryAll(source, block, asCandidates(source, written, likely), fits, ending);
}

function asCandidates(
  { analysis }: Source,
  written: readonly WrittenTurn[],
  slips: readonly Slip[],
): Candidate[] {
  return slips.flatMap((slip) => {
    const ways = straddles(written, slip) ? [] : slipAsText(analysis.lines, written, slip);
    if (ways.length === 0) return [];
    const scrambled = slip.edits.filter(({ index }) => written.at(index)?.scramble === true);
    const score = slip.score * IN_SCRAMBLE ** scrambled.length;
    return [{ ways, title: saySlip(written, slip), score }];
  });
}

/** A stretch that begins in the scramble and ends in the solve is nothing that anybody wrote. */
function straddles(written: readonly WrittenTurn[], { edits }: Slip): boolean {
  const inScramble = written.filter(({ scramble }) => scramble).length;
  const whole = edits[0].kind === 'other-holding';
  const spans = whole
    ? [{ first: edits[0].index, end: edits[edits.length - 1].index }]
    : edits.map(({ index, remove }) => ({ first: index, end: index + remove }));
  return spans.some(({ first, end }) => first < inScramble && end > inScramble);
}

function asCandidate({ edits, title, score }: BracketSlip): Candidate {
  return { ways: [edits], title, score };
}

function* tryAll(
  source: Source,
  block: Block,
  candidates: readonly Candidate[],
  fits: (trial: Trial) => boolean,
  ending: (trial: Trial) => string,
): Search<LateFix[]> {
  const found = new Map<string, LateFix>();
  const best = candidates.toSorted((a, b) => b.score - a.score).slice(0, MOST_TRIED);
  for (const [index, { ways, title, score }] of best.entries()) {
    for (const edits of ways) {
      if ((yield { nodes: index, depth: 1 }) === 'stop') break;
      const trial = tryEdits(source, block, edits);
      if (trial === undefined || !fits(trial)) continue;
      const left = faults(trial.findings);
      const fix: LateFix = {
        title: `${capital(title)}: ${ending(trial)}`,
        edits,
        score: score * PER_FAULT ** left,
        text: trial.text,
        left,
      };
      const known = found.get(trial.text);
      if (known === undefined || known.score < fix.score) found.set(trial.text, fix);
      if (left === 0) break;
    }
  }
  return bestWays([...found.values()]);
}

/** Of two places for the same insertion only the better one, as they were tried one after the other. */
function bestWays(fixes: readonly LateFix[]): LateFix[] {
  const byTitle = new Map<string, LateFix>();
  for (const fix of fixes) {
    const known = byTitle.get(fix.title);
    if (known === undefined || known.score < fix.score) byTitle.set(fix.title, fix);
  }
  const ranked = [...byTitle.values()].sort((a, b) => b.score - a.score);
  return ranked.filter(({ score }) => score >= WORTH * ranked[0].score).slice(0, MOST_SLIPS);
}

/** Turns keep their letters, as case means something in them. */
function capital(text: string): string {
  return /^(?:without|the|turns?)\b/.test(text)
    ? text.charAt(0).toUpperCase() + text.slice(1)
    : text;
}
