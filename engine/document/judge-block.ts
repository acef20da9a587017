/**
 * One block from its lines to its facts and findings. Everything here counts lines from the block's
 * first line, so that the result can be kept while the block moves in the text.
 */
import { isSolved } from '../cube/state.ts';
import { goalsFor } from '../goals/methods.ts';
import { followGoals } from '../goals/timeline.ts';
import { assumptions, strangeHeadings } from './assumptions.ts';
import { checkClaims } from './check-claims.ts';
import { checkCounts } from './check-counts.ts';
import { checkGoals } from './check-goals.ts';
import { checkSequence, type SequenceResult } from './check-sequence.ts';
import { checkCancelling, checkText } from './check-text.ts';
import { baseFor, claimsEnd, methodFor, spansOf } from './frame.ts';
import { numberTurns, type BlockQuestion, type Judged, type JudgedBlock } from './judged.ts';
import type { RawFinding } from './raw-finding.ts';
import { withoutUntried, withReadings } from './readings.ts';
import { hasTurns, type BlockTree, type DocumentTree } from './read/index.ts';
import {
  emptyScript,
  placeOfLine,
  scriptUntil,
  writeScript,
  type Script,
  type ScriptContext,
} from './script.ts';
import { readSettings } from './settings.ts';
import { findStages } from './stages.ts';
import { findStart } from './start.ts';
import { MOST_ASIDES, makeTrial } from './trial.ts';

export function judgeBlock(question: BlockQuestion): JudgedBlock {
  const result = judge(question, undefined);
  switch (question.trying) {
    case 'trial':
      return result;
    case 'crowd':
      return withoutUntried(result);
    case 'try':
      return withReadings(result, makeTrial(question, judgeBlock));
  }
}

function judge(
  question: BlockQuestion,
  main: { judged: Judged; origin: number } | undefined,
): JudgedBlock {
  const { tree, block, names, budget } = question;
  const origin = main ? main.origin : block.first;
  const firstLine = block.first - origin;
  const firstTurns = block.lines.find((line) => hasTurns(tree.lines[line].content)) ?? Infinity;
  const { settings, findings: settingFindings } = readSettings(
    tree,
    block.lines,
    question.inherited,
    firstTurns,
    origin,
  );
  const context: ScriptContext = { methods: settings.methods, resolve: names.resolve, budget };
  const branch = main && branchOf(main.judged, question, firstLine);
  const script = writeScript(tree, block, context, branch?.script ?? emptyScript(), origin);
  const ownFrom = branch?.length ?? 0;
  const method = methodFor(block, settings, script, main?.judged.method);

  const textOf = (line: number): string => tree.lines[line + origin].text;
  const rough = findStages(script, method, undefined);
  const start = findStart({
    script,
    kind: block.kind,
    holding: settings.holding,
    branch: branch && main ? { course: main.judged.course, ...branch } : undefined,
    firstLine,
    textOf: ({ start: from, end }) => textOf(from.line).slice(from.character, end.character),
    endsSolved: claimsEnd(rough, method),
    context,
  });
  const { course } = start;
  const base = baseFor(block, settings, method, script, rough, course, main?.judged.base);
  const stages = findStages(script, method, base.colour);
  const goals = goalsFor(method, base.colour);
  const timeline = followGoals({
    course,
    goals,
    stages: spansOf(script, stages, method, goals, settings, base.colour),
  });
  const judged: Judged = {
    kind: block.kind,
    script,
    settings,
    method,
    base: base.colour,
    goals,
    start,
    course,
    stages,
    timeline,
    ownFrom,
    firstLine,
    textOf,
    numbers: numberTurns(script.codes),
  };

  const sequence: SequenceResult =
    block.kind === 'sequence' ? checkSequence(judged) : { facts: undefined, findings: [] };
  const findings: RawFinding[] = [
    ...settingFindings,
    ...start.findings,
    ...checkText({
      script,
      firstLine,
      textOf,
      known: names.known,
    }),
    ...strangeHeadings(judged),
    ...checkGoals(judged, question.trying === 'try'),
    ...checkClaims(judged),
    ...checkCounts(judged),
    ...sequence.findings,
    ...checkCancelling(judged),
    ...assumptions(judged, base.assumed),
  ];
  const end = course.stateAt(course.length);
  const trying = block.asides.length > MOST_ASIDES ? 'crowd' : question.trying;
  const asides = block.asides.map((aside) =>
    judge({ ...question, block: aside, inherited: settings, trying }, { judged, origin }),
  );
  return {
    judged,
    title: titleOf(tree, block),
    sequence: sequence.facts,
    solved: end !== undefined && isSolved(end),
    findings,
    asides,
    first: firstLine,
    end: block.end - origin,
  };
}

/** What an aside takes over from the line it branches off: nothing if it has a start of its own, or if that would be too much work. */
function branchOf(
  main: Judged,
  { tree, block, budget }: BlockQuestion,
  firstLine: number,
): { script: Script; length: number; at: number } | undefined {
  const own = block.lines.some((line) => {
    const { content } = tree.lines[line];
    return content.kind === 'key' && (content.key === 'scramble' || content.key === 'start');
  });
  if (own) return undefined;
  const at = placeOfLine(main.script, firstLine);
  // Where that would be too much work, the aside only begins with the cube as it is there.
  if (at > budget.left) {
    budget.bound = true;
    return { script: emptyScript(), length: 0, at };
  }
  budget.left -= at;
  return { script: scriptUntil(main.script, firstLine, at), length: at, at };
}

function titleOf(tree: DocumentTree, block: BlockTree): string {
  for (const line of block.lines) {
    const { content } = tree.lines[line];
    if (
      block.kind === 'solve' &&
      content.kind === 'key' &&
      content.key === 'title' &&
      content.value.text !== ''
    ) {
      return content.value.text;
    }
  }
  return block.name?.text ?? '';
}
