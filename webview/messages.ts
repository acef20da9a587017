/**
 * What the extension and its views say to each other: the only file that both sides import. Every
 * message is checked where it arrives, and carries the version of the text it speaks of, so that
 * whatever comes late is dropped.
 */
import * as v from 'valibot';

const whole = v.pipe(v.number(), v.integer(), v.minValue(0));

/** The document that a message speaks of: its address and its version. */
const about = { uri: v.string(), version: whole };

const state = v.object({
  corners: v.pipe(v.array(whole), v.length(8)),
  edges: v.pipe(v.array(whole), v.length(12)),
  holding: whole,
});

const severity = v.picklist(['error', 'warning', 'information']);

const track = v.object({
  goal: v.string(),
  parts: v.array(
    v.object({
      stretch: v.picklist(['early', 'kept', 'passing', 'carried', 'lasting', 'open', 'unknown']),
      first: whole,
      end: whole,
    }),
  ),
});

/** A block of the text, as the cube view needs it: sent once per version. */
const block = v.object({
  kind: v.picklist(['solve', 'sequence', 'aside']),
  title: v.string(),
  method: v.string(),
  base: v.string(),
  startFrom: v.picklist(['scramble', 'net', 'inverse', 'any', 'place', 'unknown']),
  solved: v.boolean(),
  /** Turns counted as OBTM; null where there are too many to count. */
  turns: v.nullable(whole),
  texts: v.array(v.string()),
  /** What people call each turn; 0 for rotations, which have no number. */
  numbers: v.array(whole),
  stages: v.array(v.object({ name: v.string(), first: whole, end: whole })),
  tracks: v.array(track),
});
export type BlockView = v.InferOutput<typeof block>;

/** A place in the course of the block sent last, with the cube as it is there. */
const place = v.object({
  place: whole,
  state: v.nullable(state),
  /** Code of the turn that comes next, where it is a single turn. */
  next: v.nullable(whole),
  /** Goals of the method, whether they hold here; null where nobody can know. */
  goals: v.array(v.object({ goal: v.string(), holds: v.nullable(v.boolean()) })),
  /** Pieces that a finding at this place speaks of, as a set. */
  marked: whole,
  findings: v.array(v.object({ severity, message: v.string() })),
  comment: v.string(),
});
export type PlaceView = v.InferOutput<typeof place>;

const looks = v.object({ palette: v.picklist(['standard', 'safe']), letters: v.boolean() });
export type Looks = v.InferOutput<typeof looks>;

/** From the extension to the cube view. */
export const toCube = v.variant('kind', [
  v.object({ kind: v.literal('block'), ...about, block, place }),
  v.object({ kind: v.literal('place'), ...about, place }),
  /** The text has changed and is being read: what is shown belongs to an earlier version. */
  v.object({ kind: v.literal('updating'), ...about }),
  /** There is no block to show; `reason` says why in a sentence. */
  v.object({ kind: v.literal('nothing'), uri: v.string(), reason: v.string() }),
  v.object({ kind: v.literal('looks'), looks }),
]);
export type ToCube = v.InferOutput<typeof toCube>;

export const fromCube = v.variant('kind', [
  v.object({ kind: v.literal('ready') }),
  v.object({ kind: v.literal('go'), ...about, place: whole }),
  v.object({ kind: v.literal('step'), by: v.picklist(['back', 'forward', 'start', 'end']) }),
  v.object({ kind: v.literal('looks'), looks }),
  v.object({ kind: v.literal('ask'), question: v.string() }),
]);
export type FromCube = v.InferOutput<typeof fromCube>;

/** What was said; `id` grows, so that a view that was away asks for nothing twice. */
export const entrySchema = v.object({
  id: whole,
  question: v.string(),
  /** Where it was asked: `after R', turn 21`. */
  where: v.string(),
  /** Undefined while the answer is being worked out. */
  answer: v.optional(
    v.object({
      text: v.string(),
      /** Turns that can be written into the text. */
      turns: v.optional(v.string()),
      followUps: v.array(v.string()),
      /** Places that the answer speaks of, as buttons. */
      places: v.array(v.object({ ...about, turn: whole, label: v.string() })),
      /** The cube that the answer speaks of, with its pieces marked. */
      picture: v.optional(v.object({ state, marked: whole, caption: v.string() })),
      failed: v.boolean(),
    }),
  ),
});
export type Entry = v.InferOutput<typeof entrySchema>;

/** From the extension to the tutor view. */
export const toTutor = v.variant('kind', [
  v.object({ kind: v.literal('transcript'), entries: v.array(entrySchema) }),
  v.object({ kind: v.literal('entry'), entry: entrySchema }),
  /** The place that a question asked now would be about. */
  v.object({ kind: v.literal('where'), where: v.string(), canAsk: v.boolean() }),
  v.object({ kind: v.literal('looks'), looks }),
  /** A command put the keyboard here. */
  v.object({ kind: v.literal('focus') }),
]);
export type ToTutor = v.InferOutput<typeof toTutor>;

export const fromTutor = v.variant('kind', [
  v.object({ kind: v.literal('ready') }),
  v.object({ kind: v.literal('ask'), question: v.pipe(v.string(), v.maxLength(4000)) }),
  v.object({ kind: v.literal('goTo'), ...about, turn: whole }),
  v.object({ kind: v.literal('insert'), id: whole }),
  v.object({ kind: v.literal('clear') }),
]);
export type FromTutor = v.InferOutput<typeof fromTutor>;

/** The message if it is one of these; undefined for anything else, which is then dropped. */
export function readMessage<T extends v.GenericSchema>(
  schema: T,
  data: unknown,
): v.InferOutput<T> | undefined {
  const result = v.safeParse(schema, data);
  return result.success ? result.output : undefined;
}
