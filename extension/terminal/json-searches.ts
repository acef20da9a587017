/** The shapes of what the searching commands print with `--json`; as in `json.ts`, keys may be added only. */
import * as v from 'valibot';
import { colour, counts, faces, position } from './json.ts';

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const range = v.strictObject({ start: position, end: position });

const wayStage = v.strictObject({
  name: v.string(),
  turns: v.string(),
  counts,
  steps: v.array(v.strictObject({ turns: v.string(), why: v.string() })),
});
export type WayStageJson = v.InferOutput<typeof wayStage>;

export const solve = v.strictObject({
  turns: v.string(),
  counts,
  goal: v.string(),
  /** Only with a proof that no fewer face turns do it. */
  optimal: v.boolean(),
  way: v.picklist(['short', 'person']),
  base: colour,
  method: v.string(),
  /** Face turns of which it is proven that no fewer do it; of the short way, where it is known. */
  atLeast: v.optional(count),
  /** Goals before it that held already and hold at the end. */
  keeps: v.optional(v.array(v.string())),
  /** Of the person's way: stage by stage, each step with its reason. */
  stages: v.optional(v.array(wayStage)),
  /** Of the person's way: all of it as a text to be saved as a `.moves` file. */
  text: v.optional(v.string()),
});
export type WayJson = v.InferOutput<typeof solve>;

export const slips = v.strictObject({
  slips: v.array(
    v.strictObject({
      title: v.string(),
      edits: v.array(v.strictObject({ range, newText: v.string() })),
      /** Between 0 and 1; only the order means anything. */
      score: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
      /** Errors and (half) warnings that the text still has in this solve with the edits made. */
      left: v.pipe(v.number(), v.minValue(0)),
    }),
  ),
  /** Title and line of the solve that was looked at; null if none of the text is at fault. */
  solve: v.nullable(v.strictObject({ title: v.string(), line: count })),
});
export type SlipsJson = v.InferOutput<typeof slips>;

export const practice = v.strictObject({
  states: v.array(v.strictObject({ scramble: v.string(), faces })),
  goal: v.string(),
  method: v.string(),
  base: colour,
  /** With the same seed the same states come again. */
  seed: count,
});
export type PracticeJson = v.InferOutput<typeof practice>;

/** `slips FILE --cube NET` */
export const stray = v.strictObject({
  slips: v.array(v.never()),
  stray: v.strictObject({
    /** Where the solve looks just so: turns done, and the number of the last one. */
    places: v.array(v.strictObject({ turns: count, number: count })),
    /** What may have been done instead of what is written. */
    slips: v.array(v.string()),
    back: v.nullable(v.strictObject({ turns: v.string(), optimal: v.boolean() })),
  }),
});
export type StrayJson = v.InferOutput<typeof stray>;
