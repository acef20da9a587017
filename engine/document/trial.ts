/**
 * What a change of the text would bring: the block is read and judged anew with the change made.
 *
 * That costs what judging the block costs, so it is done for blocks of the size of solves only, and
 * only so often in each.
 */
import { METHODS } from '../goals/methods.ts';
import { DEFAULT_SEVERITY, type FindingCode } from './finding.ts';
import type { BlockQuestion, JudgedBlock } from './judged.ts';
import type { RawFinding, RawFix } from './raw-finding.ts';
import { cutBlocks, readDocument } from './read/index.ts';
import { TURN_LIMIT } from './script.ts';
import type { Settings } from './settings.ts';

/** Lines and turns of blocks in which changes are tried, and how many are. */
const MOST_LINES = 500;
const MOST_TURNS = 2_000;
const MOST_TRIALS = 12;
export const MOST_ASIDES = 20;

/** The block with these edits made; undefined if it is too large, was tried too often or is not one block any more. */
export type Trial = (edits: RawFix['edits']) => JudgedBlock | undefined;

export function makeTrial(
  question: BlockQuestion,
  judge: (question: BlockQuestion) => JudgedBlock,
): Trial {
  const { tree, block, inherited } = question;
  let left = block.end - block.first > MOST_LINES ? 0 : MOST_TRIALS;
  return (edits) => {
    if (left <= 0) return undefined;
    left--;
    const lines = tree.lines.slice(block.first, block.end).map((line) => line.text);
    const changed = readDocument(edited(lines, edits), ownNames(inherited));
    const { blocks } = cutBlocks(changed);
    if (blocks.length !== 1 || blocks[0].kind !== block.kind) return undefined;
    const budget = { left: TURN_LIMIT, bound: false };
    return judge({ ...question, tree: changed, block: blocks[0], budget, trying: 'trial' });
  };
}

/** Whether a block is small enough for changes to be tried. */
export function canTry({ judged, asides }: JudgedBlock): boolean {
  return judged.course.length <= MOST_TURNS && asides.length <= MOST_ASIDES;
}

function ownNames({ goals, methods }: Settings): string[] {
  return [
    ...goals.map((goal) => goal.name),
    ...methods
      .filter((method) => !METHODS.includes(method))
      .flatMap((method) => method.stages.map((stage) => stage.name)),
  ];
}

/** Edits do not overlap; lines are joined by line feeds, whatever ended them. */
function edited(lines: readonly string[], edits: RawFix['edits']): string {
  const result = [...lines];
  const ordered = edits.toSorted(
    ({ range: { start: a } }, { range: { start: b } }) =>
      b.line - a.line || b.character - a.character,
  );
  for (const { range, newText } of ordered) {
    const { start, end } = range;
    const head = result[start.line].slice(0, start.character);
    const tail = result[end.line].slice(end.character);
    result.splice(start.line, end.line - start.line + 1, head + newText + tail);
  }
  return result.join('\n');
}

/** Warnings that say as much as errors: something that the text claims is not so. */
const CLAIMS: ReadonlySet<FindingCode> = new Set<FindingCode>([
  'goal-carried',
  'last-turn-missing',
  'holding-differs',
]);

export interface Faults {
  readonly errors: number;
  /** Errors, and warnings that a claim is not so; not of a stage still being written. */
  readonly all: number;
  /** What is at fault, unfinished stages included: goals by name, other claims by their kind. */
  readonly what: ReadonlySet<string>;
}

export function faultsOf(block: JudgedBlock): Faults {
  let errors = 0;
  let all = 0;
  const what = new Set<string>();
  const todo = [block];
  for (let one = todo.pop(); one !== undefined; one = todo.pop()) {
    for (const { args, severity } of one.findings) {
      const isError = (severity ?? DEFAULT_SEVERITY[args.code]) === 'error';
      if (isError) errors++;
      // Without any labels that a solve does not end solved is a warning, but a claim all the same.
      const isFault = isError || CLAIMS.has(args.code) || args.code === 'not-solved';
      if (isFault) all++;
      if (isFault || args.code === 'goal-not-reached' || args.code === 'cross-not-aligned')
        what.add('goal' in args ? args.goal : args.code === 'not-solved' ? 'solved' : args.code);
    }
    for (const aside of one.asides) todo.push(aside);
  }
  return { errors, all, what };
}

/** All findings of a block and its asides. */
export function findingsOf(block: JudgedBlock): RawFinding[] {
  return [...block.findings, ...block.asides.flatMap(findingsOf)];
}
