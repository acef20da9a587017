/**
 * Reading what people call a stage: `F2L #1 (7)`, `white cross`, `2-look OLL`, `2nd pair + 3rd pair`.
 *
 * A label is taken apart into words; counts, times, colours, ordinals and slots are set aside, and
 * what is left must be an alias as a whole. So a sentence that merely mentions a stage is none.
 */
import { COLOURS, OPPOSITE } from '../cube/vocabulary.ts';
import { METHODS, findMethod, findStage, type Method, type Stage } from './methods.ts';
import { ALIAS_ROWS, type AliasRow } from './stage-aliases.ts';

export interface StageName {
  /** As in the table, or the name of the person's own stage in lower case. */
  readonly alias: string;
  /** Name of the stage by method; `pair` and `block` stand for the one that is due. */
  readonly hints: Readonly<Record<string, string>>;
  /** Methods whose own name this is. */
  readonly native: readonly string[];
  readonly ordinal?: number;
  /** Colour index. */
  readonly colour?: number;
  /** Turns as counted by the author. */
  readonly count?: number;
  /** What is meant when the colour is the top's. */
  readonly onTop?: string;
}

const BY_ALIAS = new Map<string, AliasRow>(
  ALIAS_ROWS.flatMap((row) => row.aliases.map((alias) => [alias, row] as const)),
);

const ORDINALS = new Map<string, number>(
  ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'].flatMap((word, i) => [
    [word, i + 1] as const,
    [`${String(i + 1)}${['st', 'nd', 'rd', 'th', 'th', 'th'][i]}`, i + 1] as const,
    [`#${String(i + 1)}`, i + 1] as const,
    [`${String(i + 1)}.`, i + 1] as const,
  ]),
);

const COLOUR_WORDS = new Map<string, number>(COLOURS.map((colour, i) => [colour, i]));
const OTHER_COLOUR_WORDS = new Map<string, number>([
  ['w', 0],
  ['o', 1],
  ['g', 2],
  ['r', 3],
  ['b', 4],
  ['y', 5],
]);
const SLOT = /^(?:[fb][lr]|[lr][fb]|[ud]?[fb][lr]|front|back|left|right)$/;
const LOOKS = /\b(?:[1-4]|one|two|three|four)[- ]?looks?\b/g;
const METRIC = '(?:moves?|turns?|obtm|htm|ftm|etm|stm|qtm|hth|m)';
const BRACKETED = new RegExp(
  `[([]\\s*(\\d+)(?:\\s*/\\s*\\d+(?:\\.\\d+)?)?\\s*${METRIC}?\\s*[)\\]]`,
  'g',
);
const PLAIN_COUNT = new RegExp(`\\b(\\d+)\\s*${METRIC}(?![a-z])`, 'g');
const PER_TIME = /(?:^|\s)(\d+)\s*\/\s*\d+(?:\.\d+)?\s*(?:s|sec|seconds)?(?![\w.])/g;
const TIME = /[([]?\b\d+(?:[.,:]\d+)?\s*(?:s|sec|secs|seconds)\b\.?[)\]]?|[([]?\b\d+\.\d+\b[)\]]?/g;

interface Words {
  readonly words: readonly string[];
  readonly count: number | undefined;
}

function takeApart(text: string): Words {
  let count: number | undefined;
  const counted = (_match: string, digits: string): string => {
    count ??= Number(digits);
    return ' ';
  };
  const rest = text
    .toLowerCase()
    .replace(BRACKETED, counted)
    .replace(PER_TIME, counted)
    .replace(PLAIN_COUNT, counted)
    .replace(LOOKS, ' ')
    .replace(TIME, ' ')
    .replace(/#\s+(?=\d)/g, '#')
    .replace(/\b(f2l|pair|slot|block)[ -]?([1-6])\b/g, '$1 #$2')
    .replace(/[-–—_:=()[\]"“”*,]/g, ' ');
  return { words: rest.split(/\s+/).filter((word) => word !== ''), count };
}

/** A label is short; anything longer is prose and not worth the matching. */
const LONGEST_LABEL = 80;

/** The stage that a label names, if it is nothing but that; own methods' stages by their names. */
export function readStageName(
  text: string,
  methods: readonly Method[] = METHODS,
): StageName | undefined {
  if (text.length > LONGEST_LABEL) return undefined;
  const { words, count } = takeApart(text);
  if (words.length === 0) return undefined;
  const counted = count === undefined ? {} : { count };
  const asWritten = lookUp(words.join(' '), methods);
  if (asWritten) return { ...asWritten, ...counted };

  const colours: number[] = [];
  const uncoloured: string[] = [];
  for (const word of words) {
    const colour = COLOUR_WORDS.get(word);
    if (colour === undefined) uncoloured.push(word);
    else colours.push(colour);
  }
  const ordinals: number[] = [];
  const plain: string[] = [];
  const withoutOrdinals = uncoloured.filter((word) => {
    const ordinal = ORDINALS.get(word);
    if (ordinal !== undefined) ordinals.push(ordinal);
    return ordinal === undefined;
  });
  for (const word of withoutOrdinals) if (!SLOT.test(word)) plain.push(word);
  if (ordinals.length > 1 || colours.length > 2) return undefined;

  const coloured = lookUp(uncoloured.join(' '), methods);
  if (coloured && colours.length === 1) return { ...coloured, ...counted, colour: colours[0] };
  const numbered =
    lookUp(withoutOrdinals.join(' '), methods) ?? pairOf(withoutInitials(plain), methods);
  if (numbered === undefined) return undefined;
  const isPair = Object.values(numbered.hints).some((hint) => hint === 'pair' || hint === 'block');
  if (!isPair && (ordinals.length > 0 || colours.length !== 1)) return undefined;
  return {
    ...numbered,
    ...counted,
    ...(ordinals.length === 1 ? { ordinal: ordinals[0] } : {}),
    ...(colours.length === 1 ? { colour: colours[0] } : {}),
  };
}

/** Pairs are told by slot or colours as well: `pair FR`, `2nd pair (g r)`. */
function pairOf(words: readonly string[], methods: readonly Method[]): StageName | undefined {
  const found = lookUp(words.join(' '), methods);
  return found && Object.values(found.hints).includes('pair') ? found : undefined;
}

function withoutInitials(words: readonly string[]): string[] {
  return words.filter((word) => !OTHER_COLOUR_WORDS.has(word) && !/^[ogrb]{2}$/.test(word));
}

function lookUp(alias: string, methods: readonly Method[]): StageName | undefined {
  const own: Record<string, string> = {};
  for (const method of methods) {
    const stage = method.stages.find((other) => other.name.toLowerCase() === alias);
    if (stage) own[method.name] = stage.name;
  }
  const row = BY_ALIAS.get(alias);
  if (row === undefined) {
    const names = Object.keys(own);
    return names.length === 0 ? undefined : { alias, hints: own, native: names };
  }
  const ownMethods = Object.keys(own).filter((name) =>
    METHODS.every((method) => method.name !== name),
  );
  return {
    alias,
    hints: { ...row.also, ...row.native, ...own },
    native: [...Object.keys(row.native), ...ownMethods],
    ...(row.onTop === undefined ? {} : { onTop: row.onTop }),
  };
}

export interface StageContext {
  /** Colour index of the base, where it is known. */
  readonly base?: number;
  /** How many stages of pairs (or blocks) were opened or claimed before. */
  readonly pairsSoFar: number;
  readonly blocksSoFar?: number;
}

/** Index of the stage in a method that a name means there; undefined if the method has none such. */
export function resolveStage(
  name: StageName,
  method: Method,
  context: StageContext,
): number | undefined {
  const isTop =
    name.colour !== undefined &&
    context.base !== undefined &&
    OPPOSITE[context.base] === name.colour;
  const meant = isTop && name.onTop !== undefined ? (lookUp(name.onTop, [method]) ?? name) : name;
  const isSide =
    name.colour !== undefined &&
    context.base !== undefined &&
    !isTop &&
    name.colour !== context.base;
  const hints = hintsFor(meant, method);
  for (const hint of hints) {
    const stage = dueStage(hint, meant, context);
    const index = method.stages.findIndex((other) => other.name === stage);
    // `red cross` in a solve on white is a claim about another base: no stage of this one.
    if (index >= 0) return isSide && hint !== 'pair' && hint !== 'block' ? undefined : index;
  }
  return undefined;
}

function hintsFor(name: StageName, method: Method): string[] {
  const own = name.hints[method.name];
  if (own !== undefined) return [own];
  const family = method.variantOf === undefined ? undefined : name.hints[method.variantOf];
  if (family !== undefined) return [family];
  // A method of the person's own: whatever the name means elsewhere, if it has that stage.
  return METHODS.includes(method) ? [] : [...new Set(Object.values(name.hints))];
}

const ORDINAL_NAMES = ['1st', '2nd', '3rd', '4th'];

function dueStage(hint: string, name: StageName, context: StageContext): string | undefined {
  if (hint === 'block') {
    const due = name.ordinal ?? (context.blocksSoFar ?? 0) + 1;
    return due === 1 ? 'first block' : due === 2 ? 'second block' : undefined;
  }
  if (hint !== 'pair') return hint;
  const whole = name.alias.startsWith('f2l') || name.alias.startsWith('first');
  const isWhole = whole && name.alias !== 'f2l pair' && name.alias !== 'f2l slot';
  const due = name.ordinal ?? (isWhole ? 4 : Math.min(4, context.pairsSoFar + 1));
  return due > 4 ? undefined : `${ORDINAL_NAMES[due - 1]} pair`;
}

const CLAIM_WORDS = /\b(?:done|complete|completed|skip|skipped)\b|[✓✔!.]+(?=\s|$)/gi;

/**
 * The stages that a comment claims; undefined unless it is nothing but stage names joined by
 * `+ / & ,` with ordinals, counts, times, colours, slots, `done`, `complete`, `skip`.
 */
export function claimLabels(
  comment: string,
  methods: readonly Method[] = METHODS,
): StageName[] | undefined {
  if (comment.length > 2 * LONGEST_LABEL) return undefined;
  const whole = readStageName(comment.replace(CLAIM_WORDS, ' '), methods);
  if (whole) return [whole];
  const kept = comment.replace(CLAIM_WORDS, ' ').replace(/(\d)\s*\/\s*(?=\d)/g, '$1÷');
  const result: StageName[] = [];
  for (const part of kept.split(/[+/&,]/)) {
    const text = part.replace(/÷/g, '/');
    if (takeApart(text).words.length === 0) continue;
    const name = readStageName(text, methods) ?? furtherPair(text, result.at(-1));
    if (name === undefined) return undefined;
    result.push(name);
  }
  return result.length === 0 ? undefined : result;
}

/** `1st + 2nd pair`, `pairs 1 & 2`: not read; `F2L #1 / #2` is. */
function furtherPair(text: string, before: StageName | undefined): StageName | undefined {
  const { words } = takeApart(text);
  const ordinal = words.length === 1 ? ORDINALS.get(words[0]) : undefined;
  if (ordinal === undefined || before?.ordinal === undefined) return undefined;
  return { ...before, ordinal };
}

/** The method whose names a text uses most, `layers` on a tie; then the variant that these names tell. */
export function methodOfNames(
  names: readonly StageName[],
  methods: readonly Method[] = METHODS,
): Method {
  let best = methods[0];
  let most = -1;
  for (const method of methods) {
    if (method.variantOf !== undefined) continue;
    const uses = names.filter((name) => name.native.includes(method.name)).length;
    if (uses > most) [best, most] = [method, uses];
  }
  return variantFor(best, names, methods);
}

/** The variant of a method that has more of the names used; the method itself on a tie. */
export function variantFor(
  method: Method,
  names: readonly StageName[],
  methods: readonly Method[] = METHODS,
): Method {
  const crossColours = names.filter((name) => name.alias === 'cross').map((name) => name.colour);
  const base = crossColours.find((colour) => colour !== undefined);
  const context = { pairsSoFar: 0, ...(base === undefined ? {} : { base }) };
  const known = (candidate: Method): number =>
    names.filter((name) => resolveStage(name, candidate, context) !== undefined).length;
  let best = method;
  let most = known(method);
  for (const variant of methods) {
    if (variant.variantOf !== method.name) continue;
    const count = known(variant);
    if (count > most) [best, most] = [variant, count];
  }
  return best;
}

/** The stage that a name means in whatever method has it, its own names first: for lists of stages of an own method. */
export function stageNamed(text: string): Stage | undefined {
  const exact = findStage(text);
  const name = exact ? undefined : readStageName(text);
  if (name === undefined) return exact;
  const natives = name.native.map((method) => [method, name.hints[method]] as const);
  for (const [methodName, hint] of [...natives, ...Object.entries(name.hints)]) {
    const method = findMethod(methodName);
    const stage = method?.stages.find(
      (other) => other.name === dueStage(hint, name, { pairsSoFar: 0 }),
    );
    if (stage) return stage;
  }
  return undefined;
}
