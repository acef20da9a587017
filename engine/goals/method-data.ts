/**
 * The methods as data. Slots are written as they lie when the base is down and the solve's front in
 * front; a stage names what it adds to the stages before it.
 */

export interface StageSpec {
  /** As headings call it; unique within its method. */
  readonly name: string;
  /** Slots whose pieces come home. */
  readonly placed?: string;
  /** Slots whose pieces come home, however turned. */
  readonly positioned?: string;
  /** Slots of the top whose pieces lie in the top, its colour up. */
  readonly facing?: string;
  /** Edges turned so that no quarter turn of front or back is needed. */
  readonly oriented?: string;
  /** Judged up to a turn of the top. */
  readonly upToTop?: true;
  /** Judged free of the slice M: any turn of it, or half turns. */
  readonly freeSlice?: 1 | 2;
  /** Of these sets so many, in any order. */
  readonly choice?: { readonly sets: readonly string[]; readonly atLeast: number };
  /** Parts may be made up to a turn of the base. */
  readonly partsUpToBase?: true;
}

export interface MethodSpec {
  readonly name: string;
  /** The method of which this is a variant, told by the stage names that a text uses. */
  readonly variantOf?: string;
  /** Whether its goals depend on which side is in front. */
  readonly sided?: true;
  readonly stages: readonly StageSpec[];
}

const BASE_EDGES = 'DF DR DB DL';
const TOP_EDGES = 'UF UR UB UL';
const TOP_CORNERS = 'UFR UFL UBL UBR';
const MIDDLE_EDGES = 'FR FL BR BL';
const BASE_CORNERS = 'DFR DFL DBL DBR';
const ALL_EDGES = `${TOP_EDGES} ${BASE_EDGES} ${MIDDLE_EDGES}`;
const PAIRS = ['DFR FR', 'DFL FL', 'DBL BL', 'DBR BR'];
const LEFT_BLOCK = 'DL FL BL DFL DBL';
const RIGHT_BLOCK = 'DR FR BR DFR DBR';

const CROSS: StageSpec = { name: 'cross', placed: BASE_EDGES, partsUpToBase: true };

const FOUR_PAIRS: readonly StageSpec[] = ['1st pair', '2nd pair', '3rd pair', '4th pair'].map(
  (name, i) => ({
    name,
    choice: { sets: PAIRS, atLeast: i + 1 },
  }),
);

const LAYERS: readonly StageSpec[] = [
  CROSS,
  { name: 'corners', placed: BASE_CORNERS },
  { name: 'middle', placed: MIDDLE_EDGES },
  { name: 'top cross', facing: TOP_EDGES },
];

export const METHOD_SPECS: readonly MethodSpec[] = [
  {
    name: 'layers',
    stages: [
      ...LAYERS,
      { name: 'top face', facing: TOP_CORNERS },
      { name: 'top corners', placed: TOP_CORNERS, upToTop: true },
      { name: 'solved', placed: TOP_EDGES },
    ],
  },
  {
    name: 'layers, corners last',
    variantOf: 'layers',
    stages: [
      ...LAYERS,
      { name: 'edges placed', placed: TOP_EDGES, upToTop: true },
      { name: 'corners placed', positioned: TOP_CORNERS, upToTop: true },
      { name: 'corners turned', placed: `${TOP_CORNERS} ${TOP_EDGES}` },
    ],
  },
  {
    name: 'CFOP',
    stages: [
      CROSS,
      ...FOUR_PAIRS,
      { name: 'OLL', facing: `${TOP_EDGES} ${TOP_CORNERS}` },
      { name: 'PLL', placed: `${TOP_EDGES} ${TOP_CORNERS}` },
    ],
  },
  {
    name: 'CFOP, two looks',
    variantOf: 'CFOP',
    stages: [
      CROSS,
      ...FOUR_PAIRS,
      { name: 'EOLL', facing: TOP_EDGES },
      { name: 'OLL', facing: TOP_CORNERS },
      { name: 'CPLL', placed: TOP_CORNERS, upToTop: true },
      { name: 'PLL', placed: TOP_EDGES },
    ],
  },
  {
    name: 'Roux',
    sided: true,
    stages: [
      { name: 'first block', placed: LEFT_BLOCK, freeSlice: 1 },
      { name: 'second block', placed: RIGHT_BLOCK, freeSlice: 1 },
      { name: 'CMLL', placed: TOP_CORNERS, upToTop: true, freeSlice: 1 },
      { name: 'EO', oriented: `${TOP_EDGES} DF DB`, upToTop: true, freeSlice: 2 },
      { name: 'UL UR', placed: 'UL UR', upToTop: true, freeSlice: 2 },
      { name: 'LSE', placed: 'UF UB DF DB' },
    ],
  },
  {
    name: 'ZZ',
    sided: true,
    stages: [
      { name: 'EOLine', oriented: ALL_EDGES, placed: 'DF DB' },
      { name: 'first block', choice: { sets: [LEFT_BLOCK, RIGHT_BLOCK], atLeast: 1 } },
      { name: 'second block', choice: { sets: [LEFT_BLOCK, RIGHT_BLOCK], atLeast: 2 } },
      { name: 'OCLL', facing: `${TOP_EDGES} ${TOP_CORNERS}` },
      { name: 'PLL', placed: `${TOP_EDGES} ${TOP_CORNERS}` },
    ],
  },
  {
    name: 'ZZ, cross',
    variantOf: 'ZZ',
    sided: true,
    stages: [
      { name: 'EOcross', oriented: ALL_EDGES, placed: BASE_EDGES },
      ...FOUR_PAIRS,
      { name: 'OCLL', facing: `${TOP_EDGES} ${TOP_CORNERS}` },
      { name: 'PLL', placed: `${TOP_EDGES} ${TOP_CORNERS}` },
    ],
  },
];
