/**
 * One block from its lines to its facts and findings. Everything here counts lines from the block's
 * first line, so that the result can be kept while the block moves in the text.
 */
import type { Holding } from '../cube/holding.ts';
import type { Range } from '../cube/place.ts';
import { isSolved } from '../cube/state.ts';
import { CENTRE_AT } from '../cube/holding.ts';
import { COLOURS } from '../cube/vocabulary.ts';
import { chooseBase } from '../goals/base.ts';
import { LAYERS, goalsFor, type Method } from '../goals/methods.ts';
import { methodOfNames, variantFor, type StageName } from '../goals/stage-names.ts';
import { followGoals } from '../goals/timeline.ts';
import type { StageSpan } from '../goals/timeline-types.ts';
import { checkClaims, goalNamed, rangeIn } from './check-claims.ts';
import { checkGoals } from './check-goals.ts';
import { checkSequence, type SequenceResult } from './check-sequence.ts';
import { checkCancelling, checkText } from './check-text.ts';
import { numberTurns, type Judged } from './judged.ts';
import type { Names } from './names.ts';
import type { RawFinding } from './raw-finding.ts';
import { readOpens, type BlockTree, type DocumentTree } from './read/index.ts';
import {
  emptyScript,
  placeOfLine,
  scriptUntil,
  writeScript,
  type Script,
  type ScriptContext,
} from './script.ts';
import { readSettings, type Settings } from './settings.ts';
import { findStages, type TextStages } from './stages.ts';
import { findStart } from './start.ts';

export interface JudgedBlock {
  readonly judged: Judged;
  readonly title: string;
  readonly sequence: SequenceResult['facts'];
  readonly solved: boolean;
  readonly findings: readonly RawFinding[];
  readonly asides: readonly JudgedBlock[];
  /** First and last line of the block, counted from the first line of the outermost one. */
  readonly first: number;
  readonly end: number;
}

export interface BlockQuestion {
  readonly tree: DocumentTree;
  readonly block: BlockTree;
  readonly inherited: Settings;
  readonly names: Names;
  readonly budget: { left: number };
}

export function judgeBlock(question: BlockQuestion): JudgedBlock {
  return judge(question, undefined);
}

function judge(
  question: BlockQuestion,
  main: { judged: Judged; origin: number } | undefined,
): JudgedBlock {
  const { tree, block, names, budget } = question;
  const origin = main ? main.origin : block.first;
  const firstLine = block.first - origin;
  const firstTurns =
    block.lines.find(
      (line) =>
        tree.lines[line].content.kind === 'turns' || tree.lines[line].content.kind === 'stage',
    ) ?? Infinity;
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
    ...checkGoals(judged),
    ...checkClaims(judged),
    ...sequence.findings,
    ...checkCancelling(judged),
    ...assumptions(judged, base.assumed),
  ];
  const end = course.stateAt(course.length);
  const asides = block.asides.map((aside) =>
    judge({ ...question, block: aside, inherited: settings }, { judged, origin }),
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
  if (at > budget.left) return { script: emptyScript(), length: 0, at };
  budget.left -= at;
  return { script: scriptUntil(main.script, firstLine, at), length: at, at };
}

function namesOf(script: Script): StageName[] {
  return script.events.flatMap((event) => {
    if (event.kind === 'heading') return event.name ? [event.name] : [];
    return event.kind === 'label' ? [...event.names] : [];
  });
}

function methodFor(
  block: BlockTree,
  settings: Settings,
  script: Script,
  main: Method | undefined,
): Method {
  const used = namesOf(script);
  if (settings.method) return variantFor(settings.method, used, settings.methods);
  if (main) return main;
  return block.kind === 'sequence' && used.length === 0
    ? LAYERS
    : methodOfNames(used, settings.methods);
}

function claimsEnd(stages: TextStages, method: Method): boolean {
  return stages.stages.some((stage) => stage.goal === method.stages.length - 1);
}

function baseFor(
  block: BlockTree,
  settings: Settings,
  method: Method,
  script: Script,
  stages: TextStages,
  course: Judged['course'],
  main: number | undefined,
): { colour: number; assumed: boolean } {
  if (block.kind === 'sequence') return { colour: CENTRE_AT[settings.holding][5], assumed: false };
  if (settings.base !== undefined) return { colour: settings.base, assumed: false };
  if (main !== undefined) return { colour: main, assumed: false };
  const first = stages.stages.find((stage) => stage.goal === 0) ?? stages.stages.at(0);
  const named = script.events.flatMap((event) => {
    const said =
      event.kind === 'heading' ? [event.name] : event.kind === 'label' ? event.names : [];
    return said.flatMap((name) =>
      name?.colour !== undefined && name.alias === 'cross' ? [name.colour] : [],
    );
  });
  const place = first?.end ?? course.length;
  const { base, assumed } = chooseBase({
    method,
    state: course.stateAt(place),
    holding: holdingAt(course, place, settings.holding),
    named: first?.goal === 0 ? named[0] : undefined,
  });
  return { colour: base, assumed };
}

function holdingAt(course: Judged['course'], place: number, fallback: Holding): Holding {
  return course.stateAt(place)?.holding ?? fallback;
}

/** The stages as the timeline wants them. */
function spansOf(
  script: Script,
  stages: TextStages,
  method: Method,
  goals: Judged['goals'],
  settings: Settings,
  base: number,
): StageSpan[] {
  const indexOf = (text: string): number => {
    const goal = goalNamed(text, method, goals, settings.goals, base);
    return goal ? goals.indexOf(goal) : -1;
  };
  const opens = new Map<number, { goal: number; until: number | undefined }[]>();
  for (const event of script.events) {
    if (event.kind !== 'key' || event.content.key !== 'opens') continue;
    const value = readOpens(event.content.value);
    const stage = stages.stageAt(event.line);
    if (value.kind === 'bad' || stage === undefined) continue;
    const list = opens.get(stage) ?? [];
    opens.set(stage, list);
    for (const item of value.items) {
      const goal = indexOf(item.goal.text);
      const until = item.until ? indexOf(item.until.text) : -1;
      if (goal >= 0) list.push({ goal, until: until < 0 ? undefined : until });
    }
  }
  const ends = script.events.flatMap((event) => (event.kind === 'turns' ? [event.end] : []));
  let from = 0;
  return stages.stages.map((stage, index) => {
    while (from < ends.length && ends[from] <= stage.first) from++;
    const stepEnds: number[] = [];
    for (let i = from; i < ends.length && ends[i] <= stage.end; i++) stepEnds.push(ends[i]);
    return {
      goal: stage.goal,
      first: stage.first,
      end: stage.end,
      stepEnds,
      opens: opens.get(index) ?? [],
    };
  });
}

/** Headings of another method's stages. */
function strangeHeadings({ stages, firstLine, textOf }: Judged): RawFinding[] {
  return stages.strange
    .filter(({ line }) => line >= firstLine)
    .map(({ line, span }) => ({
      args: {
        code: 'unknown-key',
        key: textOf(line).slice(span.start, span.end),
        suggestion: undefined,
      },
      range: rangeIn(line, span),
    }));
}

function assumptions(judged: Judged, baseAssumed: boolean): RawFinding[] {
  if (judged.kind !== 'solve' || judged.course.length === judged.ownFrom) return [];
  const { script, start, base } = judged;
  const turn = script.lines[0];
  const range: Range = {
    start: { line: turn, character: script.starts[0] },
    end: { line: turn, character: script.ends[0] },
  };
  const findings: RawFinding[] = [];
  if (start.from === 'inverse') findings.push({ args: { code: 'start-assumed' }, range });
  if (baseAssumed && start.from !== 'unknown') {
    const colour = COLOURS[base];
    const top = { line: judged.firstLine, character: 0 };
    const atKey = /^\s*(solve|sequence)\s*:/i.exec(judged.textOf(judged.firstLine)) !== null;
    const place = atKey ? { line: judged.firstLine + 1, character: 0 } : top;
    findings.push({
      args: { code: 'base-assumed', colour },
      range,
      fixes: [
        {
          title: `Write base: ${colour}`,
          edits: [{ range: { start: place, end: place }, newText: `base: ${colour}\n` }],
        },
      ],
    });
  }
  return findings;
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
