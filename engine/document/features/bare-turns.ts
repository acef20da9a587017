/**
 * Bare turns get their stages: for a solve without headings, those headings are proposed under which
 * its goals are reached one after the other, and notes for its lines if wanted. The proposal is
 * analysed before it is offered: it stands only if every heading means and reaches what it was put
 * there for, and nothing that was executed has changed.
 */
import { isRotation } from '../../cube/turn.ts';
import { JUMP } from '../../goals/course.ts';
import type { Goal } from '../../goals/goal.ts';
import { goalHolds } from '../../goals/judge.ts';
import { goalsFor, LAYERS, type Method } from '../../goals/methods.ts';
import { analyse } from '../analyse.ts';
import type { Analysis, AnalysisOptions, Block } from '../analysis.ts';
import type { TextEdit } from '../finding.ts';
import { noteEdits, PLACING, turnLines, TURNING, type LineOfTurns } from './notes.ts';
import { edited, nodesOf, rangeIn } from './text.ts';

export interface Proposal {
  readonly method: string;
  /** Colour index. */
  readonly base: number;
  readonly stages: readonly {
    readonly name: string;
    readonly first: number;
    readonly reached: boolean;
  }[];
  readonly edits: readonly TextEdit[];
}

export interface ProposalOptions {
  readonly notes: boolean;
  /** As the text itself was analysed. */
  readonly analysis?: AnalysisOptions;
}

/** Whether there are turns without any stage; the proposal itself takes longer. */
export function hasBareTurns(block: Block): boolean {
  return block.kind === 'solve' && block.timeline.stages.length === 0 && block.course.length > 0;
}

export function proposeStages(
  analysis: Analysis,
  block: Block,
  options: ProposalOptions,
): Proposal | undefined {
  if (!hasBareTurns(block) || block.start === undefined) return undefined;
  const lines = turnLines(block);
  const from = inspection(block);
  const places = candidates(analysis, block, lines).filter((place) => place > from);
  const best = bestCuts(block, from, places);
  if (best === undefined) return undefined;
  for (const declares of [false, true]) {
    const edits = headingEdits(analysis, block, lines, best, declares);
    const found = checked(analysis, block, best, edits, options);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Place of the first turn that is no rotation. */
function inspection({ course, ownFrom }: Block): number {
  let place = ownFrom;
  while (place < course.length && course.codes[place] !== JUMP && isRotation(course.codes[place]))
    place++;
  return place;
}

/** Solves in so few lines are cut within lines, too. */
const FEW_LINES = 3;

/** Places where a stage may end: ends of lines; in a solve of few lines, ends of what stands in no bracket. */
function candidates(
  analysis: Analysis,
  block: Block,
  lines: readonly LineOfTurns[],
): readonly number[] {
  if (lines.length >= FEW_LINES) return lines.map(({ end }) => end);
  return lines.flatMap(({ line }) =>
    nodesOf(analysis.tree.lines[line].content)
      .filter(({ kind }) => kind !== 'pause')
      .map(({ span }) => block.placeAt({ line, character: span.end })),
  );
}

interface Cut {
  readonly goal: number;
  readonly first: number;
  readonly end: number;
  readonly reached: boolean;
}

interface Cuts {
  readonly method: Method;
  readonly base: number;
  readonly cuts: readonly Cut[];
}

function bestCuts(block: Block, from: number, places: readonly number[]): Cuts | undefined {
  const declared = block.scope.method;
  const methods = [
    declared,
    ...block.scope.methods.filter((method) => method !== declared && method.name !== LAYERS.name),
  ];
  const all = declared === LAYERS ? methods : [LAYERS, ...methods];
  let best: Cuts | undefined;
  let most = 1;
  for (const method of all) {
    for (let base = 0; base < 6; base++) {
      const cuts = cutBy(block, goalsFor(method, base), from, places);
      const score = scoreOf(method, cuts) + (base === block.base ? 0.5 : 0);
      if (score > most) [best, most] = [{ method, base, cuts }, score];
    }
  }
  return best && best.cuts.length > 1 ? best : undefined;
}

function cutBy(
  { course }: Block,
  goals: readonly Goal[],
  from: number,
  places: readonly number[],
): Cut[] {
  const cuts: Cut[] = [];
  let first = from;
  for (const [index, goal] of goals.entries()) {
    const holdsAt = (place: number): boolean => {
      const state = course.stateAt(place);
      return state !== undefined && goalHolds(goal, state);
    };
    if (holdsAt(first) && index < goals.length - 1) continue;
    const end = places.find((place) => place > first && holdsAt(place));
    // A sequence that does two looks at once is called by the later one.
    const next = goals[index + 1];
    if (end !== undefined && next !== undefined && ofLastLayer(goal) && ofLastLayer(next)) {
      const state = course.stateAt(end);
      if (state !== undefined && goalHolds(next, state)) continue;
    }
    if (end === undefined) {
      if (first < course.length && !holdsAt(first) && cuts.length > 0)
        cuts.push({ goal: index, first, end: course.length, reached: false });
      break;
    }
    cuts.push({ goal: index, first, end, reached: true });
    first = end;
  }
  const last = cuts.at(-1);
  // Turns after the last goal are its own.
  if (last !== undefined && last.end < course.length)
    cuts[cuts.length - 1] = { ...last, end: course.length };
  return cuts;
}

function ofLastLayer({ name }: Goal): boolean {
  return TURNING.has(name) || PLACING.has(name);
}

/** Stages reached, each with turns of its own; corners before the middle edges tell layer by layer. */
function scoreOf(method: Method, cuts: readonly Cut[]): number {
  const reached = cuts.filter((cut) => cut.reached);
  const names = reached.map(({ goal }) => method.stages[goal].name);
  const byLayers = names.includes('corners') && names.includes('middle');
  return reached.length + (byLayers ? 2 : 0);
}

function headingOf(method: Method, goal: number): string {
  const { name } = method.stages[goal];
  return name === 'solved' && method.name === LAYERS.name ? 'top edges' : name;
}

function headingEdits(
  analysis: Analysis,
  block: Block,
  lines: readonly LineOfTurns[],
  { method, cuts }: Cuts,
  declares: boolean,
): TextEdit[] {
  const edits: TextEdit[] = [];
  if (declares) {
    const { line } = lines[0];
    const newText = `method: ${method.variantOf ?? method.name}\n`;
    edits.push({ range: rangeIn(line, { start: 0, end: 0 }), newText });
  }
  for (const { goal, first } of cuts) {
    const heading = `${headingOf(method, goal)}:`;
    const range = block.rangeOf(first);
    const { line } = range.start;
    const text = analysis.lines[line];
    const own = lines.find((other) => other.line === line);
    if (own?.first === first) {
      edits.push({ range: rangeIn(line, { start: 0, end: 0 }), newText: `${heading}\n` });
      continue;
    }
    // Within a line, what comes before is left and the rest goes below the heading.
    const end = outerStart(analysis, line, range.start.character);
    const start = text.slice(0, end).trimEnd().length;
    edits.push({ range: rangeIn(line, { start, end }), newText: `\n${heading}\n` });
  }
  return edits;
}

/** Where the outermost node begins that holds an offset. */
function outerStart({ tree }: Analysis, line: number, offset: number): number {
  const node = nodesOf(tree.lines[line].content).findLast(({ span }) => span.start <= offset);
  return node?.span.start ?? offset;
}

function checked(
  analysis: Analysis,
  block: Block,
  { method, base, cuts }: Cuts,
  headings: readonly TextEdit[],
  { notes, analysis: options }: ProposalOptions,
): Proposal | undefined {
  let text = edited(analysis.lines, headings);
  let after = analyse(text, options);
  const find = (): Block | undefined => after.blocks[analysis.blocks.indexOf(block)];
  let found = find();
  const wanted = cuts.map(
    ({ goal, first, end }) => `${String(goal)} ${String(first)} ${String(end)}`,
  );
  const fits = (candidate: Block | undefined): candidate is Block => {
    if (candidate === undefined) return false;
    const stages = candidate.timeline.stages.map(
      ({ goal, first, end }) => `${String(goal)} ${String(first)} ${String(end)}`,
    );
    const sameTurns = candidate.course.length === block.course.length;
    return sameTurns && candidate.base === base && stages.join() === wanted.join();
  };
  if (!fits(found)) return undefined;
  const outcomes = found.timeline.outcomes;
  if (cuts.some(({ goal, reached }) => reached && !outcomes[goal].reached)) return undefined;
  let edits = headings;
  if (notes) {
    text = edited(after.lines, noteEdits(after, found));
    const last = after.lines.length - 1;
    after = analyse(text, options);
    found = find();
    if (!fits(found)) return undefined;
    edits = [wholeEdit(analysis, block, text, last)];
  }
  return {
    method: method.variantOf ?? method.name,
    base,
    stages: cuts.map(({ goal, first, reached }) => ({
      name: headingOf(method, goal),
      first,
      reached,
    })),
    edits,
  };
}

/** One edit of the block's lines: what stands above and below is the same in both texts. */
function wholeEdit({ lines }: Analysis, block: Block, text: string, last: number): TextEdit {
  const { start, end } = block.range;
  const below = lines.length - 1 - end.line;
  const after = text.split('\n').slice(start.line, last + 1 - below);
  return { range: { start, end }, newText: after.join('\n') };
}
