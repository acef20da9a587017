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
  /** For each event of the script, by its index: the stage it lies in. */
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
  /** The open stage, an index of `stages`. */
  open: number | undefined;
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
    for (const [index, name] of event.names.entries()) {
      const goal = this.resolve(name);
      if (goal === undefined) continue;
      const isOpen = this.open !== undefined && this.stages[this.open].goal === goal;
      const count = name.count === undefined ? undefined : { value: name.count, span: event.span };
      const said = { goal, line: event.line, span: event.span, count };
      if (this.mode === 'heading') {
        if (!isOpen)
          this.checks.push({ goal, place: event.place, line: event.line, span: event.span });
      } else if (alone && index === 0 && !(isOpen && this.mode === 'label')) {
        const first = this.mode === 'none' ? this.withRotations(event.place) : event.place;
        this.close(first);
        this.begin({ ...said, first, end: first, how: 'label' }, 'label');
      } else if (this.mode === 'label' && isOpen) {
        this.close(event.place);
        this.mode = 'none';
      } else {
        if (this.mode === 'label' && !alone) this.close(event.before);
        const last = this.stages.at(-1);
        // Stages done together share their turns.
        const together = index > 0 && last?.line === event.line ? last.first : undefined;
        this.begin(
          {
            ...said,
            first: together ?? (this.mode === 'label' ? event.before : this.stretch),
            end: event.place,
            how: 'closing label',
          },
          'none',
        );
        this.stretch = event.place;
        this.open = undefined;
      }
    }
  }

  begin(stage: TextStage, mode: Mode): void {
    this.stages.push(stage);
    this.open = this.stages.length - 1;
    this.mode = mode;
    const { name } = this.method.stages[stage.goal];
    if (name.endsWith(' pair')) this.pairs = Math.max(this.pairs, Number(name.charAt(0)));
    if (name.endsWith(' block'))
      this.blocks = name === 'first block' ? Math.max(this.blocks, 1) : 2;
  }

  close(place: number): void {
    if (this.open === undefined) return;
    const stage = this.stages[this.open];
    this.stages[this.open] = { ...stage, end: Math.max(stage.first, place) };
    this.open = undefined;
    this.stretch = place;
  }

  /** Rotations since the last label belong to the stage that opens now, unless turns came as well. */
  withRotations(place: number): number {
    for (let index = this.stretch; index < place; index++) if (!this.rotation(index)) return place;
    return Math.max(this.stretch, Math.min(inspectionEnd(this.script), place));
  }

  /** Rotations on lines of their own at the end of a stage belong to the next one. */
  ownLineRotations(place: number): number {
    const from = this.open === undefined ? this.stretch : this.stages[this.open].first;
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
    const stageAt = (line: number): number | undefined => {
      let found: number | undefined;
      stages.forEach((stage, index) => {
        if (stage.how !== 'closing label' && stage.line <= line) found = index;
      });
      return found;
    };
    return { stages, checks: this.checks, strange: this.strange, stageAt };
  }
}
