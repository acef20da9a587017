/**
 * The shapes of what `--json` prints, as schemas: the types that the commands fill are derived from
 * them, and the tests hold the real output against them. Others rely on every key here; keys may be
 * added, none may go or change its meaning. Lines, characters and turns count from 0, `number` from 1.
 */
import * as v from 'valibot';

const count = v.pipe(v.number(), v.integer(), v.minValue(0));

export const position = v.strictObject({ line: count, character: count });
const range = v.strictObject({ start: position, end: position });

/** Null above 2^53 − 1. */
export const counts = v.strictObject({
  obtm: v.nullable(count),
  etm: v.nullable(count),
  stm: v.nullable(count),
  qtm: v.nullable(count),
});
export type CountsJson = v.InferOutput<typeof counts>;

const goalHolds = v.strictObject({ goal: v.string(), holds: v.boolean() });
export type GoalHoldsJson = v.InferOutput<typeof goalHolds>;

export const colour = v.picklist(['white', 'orange', 'green', 'red', 'blue', 'yellow']);

const face = v.pipe(v.string(), v.regex(/^[wygbro]{9}$/u));

/** Each face row by row as it lies in an unfolded net: U above F, D below F, L F R B in a row. */
export const faces = v.strictObject({ U: face, L: face, F: face, R: face, B: face, D: face });

export const finding = v.strictObject({
  code: v.string(),
  severity: v.picklist(['error', 'warning', 'information']),
  message: v.string(),
  range,
  goal: v.optional(v.string()),
  kind: v.optional(v.string()),
  related: v.array(v.strictObject({ range, message: v.string() })),
  fixes: v.array(
    v.strictObject({
      title: v.string(),
      edits: v.array(v.strictObject({ range, newText: v.string() })),
    }),
  ),
});
export type FindingJson = v.InferOutput<typeof finding>;

export const stage = v.strictObject({
  name: v.string(),
  reached: v.boolean(),
  kept: v.boolean(),
  firstTurn: v.nullable(count),
  lastTurn: v.nullable(count),
  counts,
});
export type StageJson = v.InferOutput<typeof stage>;

export const breakSchema = v.strictObject({
  goal: v.string(),
  kind: v.picklist(['passing', 'carried', 'lasting', 'open']),
  turn: count,
  /** As people say it: from 1, without rotations and pauses. */
  number: count,
  turnText: v.string(),
  line: count,
  pieces: v.array(v.string()),
  restoredAt: v.nullable(count),
  /** Only for a part of the stage's own goal that the stage itself put back. */
  part: v.optional(v.literal(true)),
  /** Only if the author wrote `opens:` for it. */
  wanted: v.optional(v.literal(true)),
});
export type BreakJson = v.InferOutput<typeof breakSchema>;

const solveEntries = {
  title: v.string(),
  line: count,
  solved: v.boolean(),
  base: colour,
  method: v.string(),
  counts,
  turns: count,
  stages: v.array(stage),
  breaks: v.array(breakSchema),
};

const aside = v.strictObject(solveEntries);

export const solve = v.strictObject({ ...solveEntries, asides: v.optional(v.array(aside)) });
export type SolveJson = v.InferOutput<typeof solve>;

export const sequence = v.strictObject({
  name: v.string(),
  line: count,
  /** Null, with `does` "…", for a sequence with an unknown stretch. */
  order: v.nullable(count),
  keeps: v.array(goalHolds),
  does: v.string(),
  counts,
});
export type SequenceJson = v.InferOutput<typeof sequence>;

export const checkedFile = v.strictObject({
  file: v.string(),
  findings: v.array(finding),
  /** How many findings there are beyond those listed. */
  more: v.optional(count),
  solves: v.array(solve),
  sequences: v.array(sequence),
});
export type CheckedFileJson = v.InferOutput<typeof checkedFile>;

export const check = v.strictObject({ files: v.array(checkedFile) });
export type CheckJson = v.InferOutput<typeof check>;

const chance = v.pipe(v.number(), v.minValue(0), v.maxValue(1));

export const lastLayer = v.strictObject({
  edges: v.picklist(['dot', 'line', 'angle', 'cross']),
  /** Letters in general use. */
  corners: v.string(),
  cornersRight: count,
  /** Of meeting this orientation. */
  chance,
  /** Only where all pieces of the top are turned right; the letter is empty where nothing is left but a turn. */
  permutation: v.optional(
    v.strictObject({
      letter: v.string(),
      corners: v.picklist(['right', 'adjacent', 'diagonal']),
      chance,
    }),
  ),
  /** Rotations to a holding in which the pattern reads alike for every state of the case. */
  hold: v.string(),
});
export type LastLayerJson = v.InferOutput<typeof lastLayer>;

export const state = v.strictObject({
  faces,
  holding: v.strictObject({ up: colour, front: colour }),
  goals: v.array(goalHolds),
  solved: v.boolean(),
  base: colour,
  method: v.string(),
  /** How many turns were executed before this place, rotations included. */
  turns: count,
  /** Only where everything but the last layer is home. */
  lastLayer: v.optional(lastLayer),
});
export type StateJson = v.InferOutput<typeof state>;

export const ask = v.strictObject({
  answers: v.array(
    v.strictObject({
      question: v.string(),
      intent: v.string(),
      text: v.string(),
      facts: v.array(v.looseObject({ kind: v.string() })),
      turns: v.optional(v.string()),
      followUps: v.array(v.string()),
    }),
  ),
});
export type AskJson = v.InferOutput<typeof ask>;

const cycles = v.array(v.pipe(v.array(v.string()), v.minLength(2)));

export const effect = v.strictObject({
  /** With rotations taken out; everything but `order`, `counts`, `inverse`, `mirror` is told of these. */
  turns: v.string(),
  order: count,
  orderWithoutRotations: count,
  cycles: v.strictObject({ corners: cycles, edges: cycles, centres: cycles }),
  twists: v.array(
    v.strictObject({ slot: v.string(), turn: v.picklist(['clockwise', 'counter-clockwise']) }),
  ),
  flips: v.array(v.string()),
  does: v.string(),
  parity: v.picklist(['even', 'odd']),
  counts,
  base: colour,
  method: v.string(),
  keeps: v.array(goalHolds),
  inverse: v.string(),
  /** Left for right. */
  mirror: v.string(),
  /** Rotations of the whole cube, told of the pieces relative to the centres. */
  symmetry: v.strictObject({
    /** After these it does the same. */
    rotations: v.array(v.string()),
    /** After these its mirror image does the same; `""` is the plain mirror image. */
    mirrors: v.array(v.string()),
    /** Done twice it does nothing. */
    selfInverse: v.boolean(),
    /** After these it, or its mirror image, does what its inverse does. */
    inverseRotations: v.array(v.string()),
    inverseMirrors: v.array(v.string()),
  }),
  /** Same effect, holding included, in fewer face turns; null if none was found, and none of at most `provenTo` exists. */
  shorter: v.strictObject({ turns: v.nullable(v.string()), provenTo: count }),
});
export type EffectJson = v.InferOutput<typeof effect>;
