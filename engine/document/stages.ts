/**
 * Where stages begin and end: from headings, comment labels and the turns between them.
 *
 * A heading opens a stage until the next one. A label after turns closes the stretch since the label
 * before it; a label alone on its line opens a stage, which its own trailing label closes, and which
 * another stage's ends before that label's line. Within a stage that a heading opened, labels of
 * other stages are checks.
 */
import type { Span } from '../cube/place.ts';
import { isRotation } from '../cube/turn.ts';
import type { Method } from '../goals/methods.ts';
import { resolveStage, type StageName } from '../goals/stage-names.ts';
import { inspectionEnd, type Script, type ScriptEvent } from './script.ts';

/** A stage of the text, or one that was skipped. */
export interface TextStage {
  /** Index among the method's stages. */
  readonly goal: number;
  readonly first: number;
  readonly end: number;
  /** Where the text names it. */
  readonly line: number;
  readonly span: Span;
  readonly how: 'heading' | 'label' | 'closing label';
  readonly count: { readonly value: number; readonly span: Span } | undefined;
}

/** A stage named within another one: a claim that its goal holds there. */
export interface StageCheck {
  readonly goal: number;
  readonly place: number;
  readonly line: number;
  readonly span: Span;
}

export interface TextStages {
  readonly stages: readonly TextStage[];
  readonly checks: readonly StageCheck[];
  /** Headings that name no stage of the method in force. */
  readonly strange: readonly { readonly line: number; readonly span: Span }[];
  /** The stage that was opened last at or above a line; an index of `stages`. */
  stageAt(line: number): number | undefined;
}

type Mode = 'none' | 'heading' | 'label';

export function findStages(script: Script, method: Method, base: number | undefined): TextStages {
  const finder = new StageFinder(script, method, base);
  for (const event of script.events) finder.take(event);
  return finder.finish();
}

class StageFinder {
  readonly script: Script;
  readonly method: Method;
  readonly base: number | undefined;
  readonly stages: TextStage[] = [];
  readonly checks: StageCheck[] = [];
  readonly strange: { line: number; span: Span }[] = [];
  /** The open stages, indices of `stages`: one, or several that are done together. */
  open: number[] = [];
  mode: Mode = 'none';
  /** Where the stretch since the last label begins. */
  stretch = 0;
  pairs = 0;
  blocks = 0;

  constructor(script: Script, method: Method, base: number | undefined) {
    this.script = script;
    this.method = method;
    this.base = base;
  }

  resolve(name: StageName | undefined): number | undefined {
    if (name === undefined) return undefined;
    const base = this.base === undefined ? {} : { base: this.base };
    return resolveStage(name, this.method, {
      ...base,
      pairsSoFar: this.pairs,
      blocksSoFar: this.blocks,
    });
  }

  take(event: ScriptEvent): void {
    if (event.kind === 'heading') {
      const goal = this.resolve(event.name);
      if (goal === undefined) {
        this.strange.push({ line: event.line, span: event.span });
        return;
      }
      const first =
        this.mode === 'none' ? this.withRotations(event.place) : this.ownLineRotations(event.place);
      this.close(first);
      this.begin(
        {
          goal,
          first,
          end: first,
          line: event.line,
          span: event.span,
          how: 'heading',
          count: event.count,
        },
        'heading',
      );
    } else if (event.kind === 'label') this.label(event);
  }

  label(event: Extract<ScriptEvent, { kind: 'label' }>): void {
    const alone = event.before === event.place;
    const named = event.names.flatMap((name) => {
      const due = this.resolve(name);
      if (due === undefined) return [];
      // Behind turns, `pair` is the pair that is open, not the one that is due.
      const isNext = !alone && name.ordinal === undefined && /pair|slot|block/.test(name.alias);
      const goal = isNext && this.isOpen(due - 1) ? due - 1 : due;
      const count = name.count === undefined ? undefined : { value: name.count, span: event.span };
      const stage = { goal, line: event.line, span: event.span, count };
      // `// pairs 1 + 2`: the second is told by the first.
      this.count(goal);
      return [stage];
    });
    if (named.length === 0) return;
    const own = named.filter(({ goal }) => this.isOpen(goal));
    const others = named.filter(({ goal }) => !this.isOpen(goal));
    if (this.mode === 'heading') {
      for (const { goal, line, span } of others)
        this.checks.push({ goal, place: event.place, line, span });
    } else if (own.length > 0 && alone && !event.done) {
      // Its own name once more on a line of its own: it goes on.
    } else if (own.length > 0) {
      // Stages done together share their turns.
      const { first } = this.stages[this.open[0]];
      this.close(event.place);
      this.mode = 'none';
      for (const said of others) this.done(said, first, event.place);
    } else if (alone && !event.done) {
      const first =
        this.mode === 'none' ? this.withRotations(event.place) : this.ownLineRotations(event.place);
      this.close(first);
      for (const said of named) this.begin({ ...said, first, end: first, how: 'label' }, 'label');
    } else {
      const inLabel = this.mode === 'label';
      if (inLabel) this.close(event.before);
      const first = inLabel ? event.before : this.stretch;
      this.mode = 'none';
      for (const said of named) this.done(said, first, event.place);
    }
  }

  /** A stage that its label closes. */
  done(
    said: Pick<TextStage, 'goal' | 'line' | 'span' | 'count'>,
    first: number,
    end: number,
  ): void {
    this.stages.push({ ...said, first, end, how: 'closing label' });
    this.count(said.goal);
    this.stretch = end;
  }

  isOpen(goal: number): boolean {
    return this.open.some((index) => this.stages[index].goal === goal);
  }

  begin(stage: TextStage, mode: Mode): void {
    this.stages.push(stage);
    this.open.push(this.stages.length - 1);
    this.mode = mode;
    this.count(stage.goal);
  }

  /** Pairs and blocks are counted, for a name may mean the next one. */
  count(goal: number): void {
    const { name } = this.method.stages[goal];
    if (name.endsWith(' pair')) this.pairs = Math.max(this.pairs, Number(name.charAt(0)));
    if (name.endsWith(' block'))
      this.blocks = name === 'first block' ? Math.max(this.blocks, 1) : 2;
  }

  close(place: number): void {
    if (this.open.length === 0) return;
    for (const index of this.open) {
      const stage = this.stages[index];
      this.stages[index] = { ...stage, end: Math.max(stage.first, place) };
    }
    this.open = [];
    this.stretch = place;
  }

  /** Rotations since the last label belong to the stage that opens now, unless turns came as well. */
  withRotations(place: number): number {
    for (let index = this.stretch; index < place; index++) if (!this.rotation(index)) return place;
    return Math.max(this.stretch, Math.min(inspectionEnd(this.script), place));
  }

  /** Rotations on lines of their own at the end of a stage belong to the next one. */
  ownLineRotations(place: number): number {
    const from = this.open.length === 0 ? this.stretch : this.stages[this.open[0]].first;
    let first = place;
    while (first > from && this.rotation(first - 1)) first--;
    if (first === from) return place;
    const { lines } = this.script;
    while (first < place && lines[first] === lines[first - 1]) first++;
    return first;
  }

  rotation(index: number): boolean {
    const code = this.script.codes[index];
    return code >= 0 && isRotation(code);
  }

  finish(): TextStages {
    this.close(this.script.codes.length);
    const inspected = inspectionEnd(this.script);
    const stages = this.stages.map((stage) => {
      const first = Math.min(Math.max(stage.first, inspected), Math.max(stage.end, stage.first));
      return { ...stage, first, end: Math.max(first, stage.end) };
    });
    const opened = stages.flatMap(({ how }, index) => (how === 'closing label' ? [] : [index]));
    const stageAt = (line: number): number | undefined => {
      let low = 0;
      let high = opened.length;
      while (low < high) {
        const middle = (low + high) >> 1;
        if (stages[opened[middle]].line <= line) low = middle + 1;
        else high = middle;
      }
      return low === 0 ? undefined : opened[low - 1];
    };
    return { stages, checks: this.checks, strange: this.strange, stageAt };
  }
}
