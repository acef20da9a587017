/**
 * The catalogue of terms that the tutor explains: reviewed sentences that hold on any cube, and what
 * to look at on the cube at hand. Sentences speak of no state; what is shown on a state is told by
 * facts of their own.
 */

/** What is shown on the learner's own cube beside the explanation. */
export type Shown = 'top-edges' | 'top-corners' | 'headlights' | 'cross' | 'nothing';

export interface Term {
  readonly name: string;
  /** In lower case; the name itself and its plural need not be listed. */
  readonly aliases: readonly string[];
  readonly meaning: string;
  readonly shown: Shown;
}

export const TERMS_EXPLAINED: readonly Term[] = [
  {
    name: 'matching sides',
    aliases: ['matched sides', 'sides that match'],
    meaning:
      'The edges of the cross must match the centres of the sides, because the centres tell where every other piece goes: on a cross that is turned against them no corner or middle edge fits its neighbours.',
    shown: 'cross',
  },
  {
    name: 'oriented edge',
    aliases: [
      'edge orientation',
      'good edge',
      'bad edge',
      'flipped edge',
      'orientation of an edge',
      'unoriented edge',
      'misoriented edge',
    ],
    meaning:
      'An edge of the last layer is oriented when it shows the top colour on top; otherwise it is flipped. Whether it is at its own place is another matter.',
    shown: 'top-edges',
  },
  {
    name: 'oriented corner',
    aliases: [
      'corner orientation',
      'twisted corner',
      'orientation of a corner',
      'unoriented corner',
    ],
    meaning:
      'A corner of the last layer is oriented when it shows the top colour on top; otherwise it is twisted. Whether it is at its own place is another matter.',
    shown: 'top-corners',
  },
  {
    name: 'orientation',
    aliases: ['orient', 'oriented'],
    meaning: 'Orientation is how a piece is turned in its slot, whatever slot that is.',
    shown: 'top-edges',
  },
  {
    name: 'permutation',
    aliases: ['permute', 'permuted'],
    meaning: 'Permutation is which piece is in which slot, however it is turned there.',
    shown: 'nothing',
  },
  {
    name: 'headlights',
    aliases: ['headlight', 'head lights', 'pair of headlights'],
    meaning: 'Headlights are two corners of the last layer that show the same colour on one side.',
    shown: 'headlights',
  },
  {
    name: 'cross',
    aliases: ['daisy cross'],
    meaning:
      'The cross is the four edges of the base colour at home: each shows the base colour on the base and its other colour beside the centre of that colour.',
    shown: 'cross',
  },
  {
    name: 'edge',
    aliases: ['edges', 'edge piece'],
    meaning: 'An edge is a piece with two colours; there are twelve.',
    shown: 'nothing',
  },
  {
    name: 'corner',
    aliases: ['corners', 'corner piece'],
    meaning: 'A corner is a piece with three colours; there are eight.',
    shown: 'nothing',
  },
  {
    name: 'centre',
    aliases: ['centres', 'centre piece'],
    meaning:
      'A centre is the middle of a face. The centres keep their places to each other, so each tells the colour of its face.',
    shown: 'nothing',
  },
  {
    name: 'slot',
    aliases: ['slots'],
    meaning:
      'A slot is a place where a piece can be, named by where it lies in the hands: DF is the bottom front slot.',
    shown: 'nothing',
  },
  {
    name: 'pair',
    aliases: ['corner edge pair'],
    meaning:
      'A pair is a corner of the base layer and the middle edge that belongs above it, put in together.',
    shown: 'nothing',
  },
  {
    name: 'trigger',
    aliases: ['triggers'],
    meaning: 'A trigger is a few turns that the hands do as one, such as the turns of an insert.',
    shown: 'nothing',
  },
  {
    name: 'setup turn',
    aliases: ['setup', 'setup move', 'set up', 'set-up'],
    meaning:
      'A setup turn brings a piece to where a sequence wants it, and is taken back after the sequence.',
    shown: 'nothing',
  },
  {
    name: 'commutator',
    aliases: ['commutators'],
    meaning: 'A commutator [A, B] is A, then B, then A undone, then B undone.',
    shown: 'nothing',
  },
  {
    name: 'conjugate',
    aliases: ['conjugates'],
    meaning: 'A conjugate [A: B] is A as a setup, then B, then A undone.',
    shown: 'nothing',
  },
  {
    name: 'parity',
    aliases: ['parity error', 'odd permutation', 'even permutation'],
    meaning:
      'Parity tells whether an even or an odd number of exchanges leads to an arrangement. Every quarter turn changes it for corners and edges alike, so two edges alone are never exchanged on a cube that was only turned.',
    shown: 'nothing',
  },
  {
    name: 'holding',
    aliases: ['grip'],
    meaning: 'The holding is which colour is up and which is in front.',
    shown: 'nothing',
  },
  {
    name: 'regrip',
    aliases: ['rotation', 'cube rotation'],
    meaning: 'A regrip turns the whole cube in the hands; no piece moves against another.',
    shown: 'nothing',
  },
  {
    name: 'base',
    aliases: ['base colour', 'base layer'],
    meaning: 'The base is the colour of the layer that is made first.',
    shown: 'nothing',
  },
  {
    name: 'wide turn',
    aliases: ['wide move', 'double layer turn'],
    meaning: 'A wide turn takes a face and the layer beside it along.',
    shown: 'nothing',
  },
  {
    name: 'slice',
    aliases: ['slice turn', 'slice move'],
    meaning: 'A slice turn takes the layer between two opposite faces, centres included.',
    shown: 'nothing',
  },
  {
    name: 'insert',
    aliases: ['insertion', 'inserting'],
    meaning:
      'An insert takes a piece from the last layer into its slot; it opens what was made before for a moment and closes it again.',
    shown: 'nothing',
  },
  {
    name: 'order of a sequence',
    aliases: ['order'],
    meaning:
      'The order of a sequence is how often it has to be done until everything is back where it was.',
    shown: 'nothing',
  },
  {
    name: 'dot, line and angle',
    aliases: ['dot', 'line shape', 'angle', 'dot case', 'angle case', 'line case'],
    meaning:
      'Dot, line and angle are the shapes of the top edges that show the top colour on top: none of them, two across from each other, or two beside each other.',
    shown: 'top-edges',
  },
  {
    name: 'finished side',
    aliases: ['solved side', 'bar'],
    meaning:
      'A side of the last layer is finished when its two corners and the edge between them show one colour.',
    shown: 'headlights',
  },
];

const BY_ALIAS = new Map<string, Term>(
  TERMS_EXPLAINED.flatMap((term) =>
    [term.name, `${term.name}s`, ...term.aliases, ...term.aliases.map((alias) => `${alias}s`)].map(
      (alias) => [alias, term] as const,
    ),
  ),
);

export function termNamed(text: string): Term | undefined {
  return BY_ALIAS.get(text);
}

/** Words of the longest alias. */
export const LONGEST_TERM = 4;

/** What the goals of the usual methods ask for, by the name of the goal. */
export const GOAL_TERMS: ReadonlyMap<string, string> = new Map([
  [
    'cross',
    'The cross is the four edges of the base colour at home, each beside the centre of its other colour.',
  ],
  ['corners', 'The first layer is the cross and the four corners of the base colour, all at home.'],
  [
    'middle',
    'The middle layer is done when the first layer and the four edges between the layers are at home.',
  ],
  [
    'top cross',
    'The top cross is made when all four top edges show the top colour on top and the layers below are done.',
  ],
  [
    'top face',
    'The top face is made when all pieces of the last layer show the top colour on top and the layers below are done.',
  ],
  [
    'top corners',
    'The top corners are arranged when they are in the right order, up to one turn of the top.',
  ],
  ['OLL', 'OLL is the orientation of the last layer: all its pieces show the top colour on top.'],
  [
    'PLL',
    'PLL is the permutation of the last layer: its pieces, turned right already, go to their places, and the cube is solved.',
  ],
  [
    'F2L',
    'F2L is the first two layers: the cross and four pairs of a corner and the edge above it.',
  ],
  [
    '4th pair',
    'The first two layers are the cross and four pairs of a corner and the edge above it.',
  ],
  ['solved', 'The cube is solved when every face shows one colour.'],
]);
