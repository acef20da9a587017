/** The goals of methods in words of stickers; nothing of the engine is used. */
import {
  layerTurned,
  piecesBearing,
  readPieces,
  SOLVED_CUBE,
  type Cube,
  type PlacedSticker,
} from './stickers.ts';

type Demand = 'home' | 'in its slot' | 'facing' | 'flat';

export interface NaiveGoal {
  readonly name: string;
  /** Demands by piece name. */
  readonly wants: readonly {
    readonly piece: string;
    readonly demand: Demand;
    readonly colours: readonly string[];
  }[];
  readonly upTo?: string;
  /** Colour of a side: the slice beside it may be turned by these quarters. */
  readonly slice?: { readonly side: string; readonly quarters: readonly number[] };
  readonly pairs?: { readonly sets: readonly (readonly string[])[]; readonly atLeast: number };
  readonly parts: readonly (readonly string[])[];
  readonly partsUpTo?: string;
}

const OPPOSITES: Readonly<Record<string, string>> = {
  white: 'yellow',
  yellow: 'white',
  green: 'blue',
  blue: 'green',
  red: 'orange',
  orange: 'red',
};

type Wants = NaiveGoal['wants'];

function all(pieces: readonly string[], demand: Demand, ...colours: string[]): Wants {
  return pieces.map((piece) => ({ piece, demand, colours }));
}

const each = (pieces: readonly string[]): string[][] => pieces.map((piece) => [piece]);

export function layersOf(base: string): NaiveGoal[] {
  const top = OPPOSITES[base];
  const cross = piecesBearing(2, base);
  const corners = piecesBearing(3, base);
  const middle = middleEdges(base);
  const [topEdges, topCorners] = [piecesBearing(2, top), piecesBearing(3, top)];
  const lower = all([...cross, ...corners, ...middle], 'home');
  const topFace = [...lower, ...all([...topEdges, ...topCorners], 'facing', top)];
  return [
    { name: 'cross', wants: all(cross, 'home'), parts: each(cross), partsUpTo: base },
    { name: 'corners', wants: all([...cross, ...corners], 'home'), parts: each(corners) },
    { name: 'middle', wants: lower, parts: each(middle) },
    {
      name: 'top cross',
      wants: [...lower, ...all(topEdges, 'facing', top)],
      parts: each(topEdges),
    },
    { name: 'top face', wants: topFace, parts: each(topCorners) },
    {
      name: 'top corners',
      wants: [...topFace, ...all(topCorners, 'home')],
      upTo: top,
      parts: each(topCorners),
    },
    {
      name: 'solved',
      wants: [...lower, ...all([...topEdges, ...topCorners], 'home')],
      parts: each(topEdges),
    },
  ];
}

export function cornersLastOf(base: string): NaiveGoal[] {
  const top = OPPOSITES[base];
  const [topEdges, topCorners] = [piecesBearing(2, top), piecesBearing(3, top)];
  const layers = layersOf(base);
  const edgesHome = [...layers[2].wants, ...all(topEdges, 'home')];
  return [
    ...layers.slice(0, 4),
    { name: 'edges placed', wants: edgesHome, upTo: top, parts: each(topEdges) },
    {
      name: 'corners placed',
      wants: [...edgesHome, ...all(topCorners, 'in its slot')],
      upTo: top,
      parts: each(topCorners),
    },
    {
      name: 'corners turned',
      wants: [...edgesHome, ...all(topCorners, 'home')],
      parts: each(topCorners),
    },
  ];
}

export function cfopOf(base: string): NaiveGoal[] {
  const top = OPPOSITES[base];
  const [cross] = layersOf(base);
  const sets = middleEdges(base).map((edge) => [
    edge,
    ...piecesBearing(3, base, ...edge.split('-')),
  ]);
  const lower = [...cross.wants, ...all(sets.flat(), 'home')];
  const onTop = [...piecesBearing(2, top), ...piecesBearing(3, top)];
  return [
    cross,
    ...['1st', '2nd', '3rd', '4th'].map((nth, i) => ({
      name: `${nth} pair`,
      wants: cross.wants,
      pairs: { sets, atLeast: i + 1 },
      parts: sets,
    })),
    { name: 'OLL', wants: [...lower, ...all(onTop, 'facing', top)], parts: each(onTop) },
    { name: 'PLL', wants: [...lower, ...all(onTop, 'home')], parts: each(onTop) },
  ];
}

/** Blocks on the sides of `left` and its opposite. */
export function rouxOf(base: string, left: string): NaiveGoal[] {
  const top = OPPOSITES[base];
  const right = OPPOSITES[left];
  const block = (side: string): string[] => [
    ...piecesBearing(2, side).filter((name) => !name.includes(top)),
    ...piecesBearing(3, side, base),
  ];
  const blocks = [...block(left), ...block(right)];
  const topCorners = piecesBearing(3, top);
  const six = [
    ...piecesBearing(2, top),
    ...piecesBearing(2, base).filter((name) => !blocks.includes(name)),
  ];
  const sideEdges = [...piecesBearing(2, top, left), ...piecesBearing(2, top, right)];
  const corners = [...all(blocks, 'home'), ...all(topCorners, 'home')];
  const flat = [...corners, ...all(six, 'flat', top, base, left, right)];
  // The order matters where parts agree equally with several turns; the trade has no say in it.
  const any = { side: left, quarters: [0, 3, 2, 1] };
  const half = { side: left, quarters: [0, 2] };
  return [
    { name: 'first block', wants: all(block(left), 'home'), slice: any, parts: each(block(left)) },
    { name: 'second block', wants: all(blocks, 'home'), slice: any, parts: each(block(right)) },
    { name: 'CMLL', wants: corners, slice: any, upTo: top, parts: each(topCorners) },
    { name: 'EO', wants: flat, slice: half, upTo: top, parts: each(six) },
    {
      name: 'UL UR',
      wants: [...flat, ...all(sideEdges, 'home')],
      slice: half,
      upTo: top,
      parts: each(sideEdges),
    },
    {
      name: 'LSE',
      wants: [...flat, ...all([...six, ...sideEdges], 'home')],
      parts: each(six.filter((piece) => !sideEdges.includes(piece))),
    },
  ];
}

function middleEdges(base: string): string[] {
  const unwanted = [base, OPPOSITES[base]];
  return [...readPieces(SOLVED_CUBE).keys()].filter((name) => {
    const own = name.split('-');
    return own.length === 2 && !own.some((colour) => unwanted.includes(colour));
  });
}

function meets(
  stickers: readonly PlacedSticker[],
  demand: Demand,
  colours: readonly string[],
): boolean {
  switch (demand) {
    case 'home':
      return stickers.every(({ colour, on }) => colour === on);
    case 'in its slot':
      return stickers.every(({ colour }) => stickers.some(({ on }) => on === colour));
    case 'facing':
      return stickers.some(({ colour, on }) => colour === colours[0] && on === colours[0]);
    case 'flat': {
      // The sticker of top or base lies on top or base; beside these layers, on no side of the blocks.
      const [top, base, left, right] = colours;
      const isFlat = (colour: string): boolean => colour === top || colour === base;
      const sticker = stickers.find(({ colour }) => isFlat(colour));
      if (stickers.some(({ on }) => isFlat(on))) return sticker !== undefined && isFlat(sticker.on);
      return sticker !== undefined && sticker.on !== left && sticker.on !== right;
    }
  }
}

/** The cube as it may be looked at: with every turn that the goal does not mind. */
function views(
  cube: Cube,
  upTo: string | undefined,
  slice: NaiveGoal['slice'],
): Map<string, PlacedSticker[]>[] {
  const sliced = (slice?.quarters ?? [0]).map((q) =>
    slice ? layerTurned(cube, slice.side, q, true) : cube,
  );
  const turned = sliced.flatMap((one) =>
    upTo === undefined ? [one] : [0, 1, 2, 3].map((q) => layerTurned(one, upTo, q)),
  );
  return turned.map(readPieces);
}

function unmet(goal: NaiveGoal, pieces: Map<string, PlacedSticker[]>): string[] {
  const out = new Set<string>();
  for (const { piece, demand, colours } of goal.wants) {
    if (!meets(pieces.get(piece) ?? [], demand, colours)) out.add(piece);
  }
  return [...out];
}

const isHome = (pieces: Map<string, PlacedSticker[]>, piece: string): boolean =>
  meets(pieces.get(piece) ?? [], 'home', []);

export function madePairs(goal: NaiveGoal, cube: Cube): (readonly string[])[] {
  const pieces = readPieces(cube);
  return (goal.pairs?.sets ?? []).filter((set) => set.every((piece) => isHome(pieces, piece)));
}

export function holds(goal: NaiveGoal, cube: Cube): boolean {
  const isMet = views(cube, goal.upTo, goal.slice).some(
    (pieces) => unmet(goal, pieces).length === 0,
  );
  return isMet && (goal.pairs === undefined || madePairs(goal, cube).length >= goal.pairs.atLeast);
}

/** Every set of misplaced pieces that is as small as can be, for a goal without pairs to choose from. */
export function smallestMissing(goal: NaiveGoal, cube: Cube): string[] {
  const sets = views(cube, goal.upTo, goal.slice).map((pieces) => unmet(goal, pieces));
  const least = Math.min(...sets.map((set) => set.length));
  return sets.filter((set) => set.length === least).map((set) => set.sort().join(' '));
}

/** The goal as its parts are looked at: all pairs, not some. */
function forParts(goal: NaiveGoal): NaiveGoal {
  return {
    ...goal,
    wants: [...goal.wants, ...(goal.pairs ? all(goal.pairs.sets.flat(), 'home') : [])],
  };
}

function areIn(
  goal: NaiveGoal,
  pieces: Map<string, PlacedSticker[]>,
  wanted: readonly string[],
): boolean {
  return unmet(forParts(goal), pieces).every((piece) => !wanted.includes(piece));
}

/** Whether the part is in place: against the centres, or together with others as the goal's free turns allow. */
export function partInPlace(
  goal: NaiveGoal,
  cube: Cube,
  part: readonly string[],
  others: readonly string[],
): boolean {
  if (areIn(goal, readPieces(cube), part)) return true;
  return views(cube, goal.upTo ?? goal.partsUpTo, goal.slice).some((pieces) =>
    areIn(goal, pieces, [...part, ...others]),
  );
}

/** Of several turns that the goal does not mind, the one that suits most parts: these first, then the rest. */
export function mostAgreeingFirst(
  goal: NaiveGoal,
  cube: Cube,
  parts: readonly (readonly string[])[],
  others: readonly string[],
): (readonly string[])[] {
  let best: (readonly string[])[] = [];
  for (const pieces of views(cube, goal.upTo ?? goal.partsUpTo, goal.slice)) {
    const suited = parts.filter((part) => areIn(goal, pieces, [...part, ...others]));
    if (suited.length > best.length) best = suited;
  }
  return [...best, ...parts.filter((part) => !best.includes(part))];
}
