/** Which flaws turns can make, by example. */
import type { Fact } from '../../engine/tutor/facts.ts';
import { tokens } from './hands.ts';
import { SLOT, targets } from './motion.ts';

/** Turns that make just this flaw, each confirmed by `flawOf` whenever it is used; recalled and computed. */
const FLIP = "M' U M' U M' U2 M U M U M U2";
const TWIST = "R' D' R D R' D' R D U D' R' D R D' R' D R U'";
const EXAMPLES: readonly string[] = [
  FLIP,
  `${FLIP} U ${FLIP} U'`,
  `${FLIP} U2 ${FLIP} U2`,
  TWIST,
  `${TWIST} U2 ${TWIST} U2`,
  "R' D' R D R' D' R D U R' D' R D R' D' R D U R' D' R D R' D' R D U2",
  "F2 U L R' F2 L' R U F2",
  "R' F R' B2 R F' R' B2 R2",
  'M2 U M2 U2 M2 U M2',
  "R U R' U' R U R' U' R U R' U'",
];

/** What a sequence leaves wrong on the solved cube, if it is one kind of flaw on one kind of piece. */
function flawOf(turns: readonly string[]): string | undefined {
  const goes = targets(turns);
  const moved = new Set<string>();
  const turnedHere = new Set<string>();
  goes.forEach((to, from) => {
    if (SLOT[from] !== SLOT[to]) moved.add(SLOT[from]);
    else if (from !== to) turnedHere.add(SLOT[from]);
  });
  const wrong = [...moved, ...turnedHere];
  const size = wrong[0]?.length;
  if (wrong.length === 0 || wrong.some((slot) => slot.length !== size)) return undefined;
  const pieces = size === 3 ? 'corners' : 'edges';
  if (moved.size === 0) return `${pieces} ${size === 3 ? 'twisted' : 'flipped'} ${turnedHere.size}`;
  return turnedHere.size === 0 ? `${pieces} swapped ${moved.size}` : undefined;
}

const MADE: ReadonlySet<string | undefined> = new Set(
  EXAMPLES.map((turns) => flawOf(tokens(turns))),
);

/** A flaw is possible if some turns make just this one. */
export function flawIsPossible({ pieces, what, count }: Extract<Fact, { kind: 'flaw' }>): boolean {
  return MADE.has(`${pieces} ${what} ${count}`);
}

/** For the tests of the witness itself. */
export function flawsMade(): string[] {
  return [...MADE].map(String);
}
