/**
 * What a block is judged by, worked out from its keys, its stage names and its turns: the method, the
 * base colour and the stages as the timeline wants them.
 */
import { CENTRE_AT, type Holding } from '../cube/holding.ts';
import { chooseBase } from '../goals/base.ts';
import { LAYERS, type Method } from '../goals/methods.ts';
import { methodOfNames, variantFor, type StageName } from '../goals/stage-names.ts';
import type { StageSpan } from '../goals/timeline-types.ts';
import { goalNamed } from './check-claims.ts';
import type { Judged } from './judged.ts';
import { readOpens, type BlockTree } from './read/index.ts';
import type { Script } from './script.ts';
import type { Settings } from './settings.ts';
import type { TextStages } from './stages.ts';

function namesOf(script: Script): StageName[] {
  return script.events.flatMap((event) => {
    if (event.kind === 'heading') return event.name ? [event.name] : [];
    return event.kind === 'label' ? [...event.names] : [];
  });
}

export function methodFor(
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

/** Whether the last stage is opened or claimed, so that the end is taken to be solved. */
export function claimsEnd(stages: TextStages, method: Method): boolean {
  return stages.stages.some((stage) => stage.goal === method.stages.length - 1);
}

export function baseFor(
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
export function spansOf(
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
