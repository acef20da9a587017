/**
 * The whole cube in two phases: first into the subgroup in which all pieces are turned right and the
 * middle edges lie in the middle layer, then home within it. The chain of subgroups is Thistlethwaite's
 * (1981), the two phases and their coordinates are Kociemba's.
 *
 * The cube is looked at along its three axes, and so is its inverse; the six views take turns, first
 * phases of n turns in all of them before n + 1. The first answer comes fast, better ones follow
 * while the budget lasts; it is proven shortest only if nothing shorter was left to try.
 */
import { sumProblems } from '../cube/possible.ts';
import { FACE_OF } from '../cube/holding.ts';
import { SOLVED, held, invertState, rename, sameArrangement, type State } from '../cube/state.ts';
import { invertTurn, type Turn } from '../cube/turn.ts';
import { coordinatesOf } from './coordinates.ts';
import { AXIS_RENAMINGS } from './exact-descent.ts';
import { FirstPhase } from './first-phase.ts';
import { turnsInHands } from './places.ts';
import { SecondPhase } from './second-phase.ts';
import { STEP_NODES, type Search, type SearchResult } from './step.ts';
import { SECOND_TURNS, twoPhaseTables } from './two-phase-tables.ts';

export interface SolveOptions {
  /** Nodes after which to stop improving; the search never stops before its first answer. */
  readonly budget?: number;
  /** Stop at an answer of at most so many turns. */
  readonly enough?: number;
}

/** No second phase longer than this is tried at first: most first phases have a shorter one soon after. */
const SECOND_AT_FIRST = 11;
const LONGEST = 31;

interface View {
  readonly renaming: number;
  readonly inverse: boolean;
  readonly first: FirstPhase;
}

/** Face turns, in the state's holding, that solve it. Progress carries the best so far. */
export function* solveCube(state: State, options: SolveOptions = {}): Search<SearchResult> {
  const { budget = 0, enough = 0 } = options;
  const problems = sumProblems(state);
  if (problems.length > 0) return { kind: 'impossible', problems };
  if (sameArrangement(state, SOLVED)) return { kind: 'found', turns: [], optimal: true, nodes: 0 };
  const tables = yield* twoPhaseTables();
  const views = makeViews(state, (renamed) => new FirstPhase(tables, coordinatesOf(renamed)));
  const second = new SecondPhase(tables);
  let best: Turn[] | undefined;
  let nodes = 0;
  let reported = 0;
  let stopped = false;
  /** Second phases were left out as too long before there was an answer: nothing is proven then. */
  let cut = false;
  for (let length = 0; ; length++) {
    // A first phase as long as the best answer cannot lead to a shorter one.
    if (best && length >= best.length) {
      return { kind: 'found', turns: best, optimal: !cut, nodes };
    }
    for (const view of views) {
      const { first } = view;
      if (first.bound() > length) continue;
      first.restart(length);
      let trying = false;
      for (;;) {
        if (best && (stopped || nodes >= budget || best.length <= enough)) {
          return { kind: 'found', turns: best, optimal: false, nodes };
        }
        if (nodes >= reported + STEP_NODES) {
          reported = nodes;
          const signal = yield { nodes, depth: length, ...(best && { best }) };
          stopped ||= signal === 'stop';
          continue;
        }
        const left = reported + STEP_NODES - nodes;
        if (trying) {
          const before = second.nodes;
          const outcome = second.advance(left);
          nodes += second.nodes - before;
          if (outcome === 'pause') continue;
          trying = false;
          cut ||= outcome === 'end' && best === undefined;
          if (outcome === 'found') {
            best = join(view, length, second, state);
            if (length >= best.length - 1) break;
          }
          continue;
        }
        const before = first.nodes;
        const outcome = first.advance(left);
        nodes += first.nodes - before;
        if (outcome === 'end') break;
        if (outcome === 'pause') continue;
        const longest = best
          ? best.length - length - 1
          : Math.min(SECOND_AT_FIRST, LONGEST - length);
        // A last turn that belongs to the second phase was tried with a shorter first phase.
        const last = length === 0 ? 18 : first.path[length - 1];
        if (SECOND_TURNS.includes(last)) continue;
        first.settle();
        trying = second.start(
          first.corners,
          first.up * 24 + (first.down % 24),
          first.middle,
          last,
          longest,
        );
        cut ||= !trying && best === undefined;
      }
    }
  }
}

function makeViews<Phase>(
  state: State,
  make: (renamed: State) => Phase,
): { renaming: number; inverse: boolean; first: Phase }[] {
  const body = held(state, 0);
  const inverse = invertState(body);
  return AXIS_RENAMINGS.flatMap((renaming) => [
    { renaming, inverse: false, first: make(rename(body, renaming)) },
    { renaming, inverse: true, first: make(rename(inverse, renaming)) },
  ]);
}

function join(view: View, length: number, second: SecondPhase, state: State): Turn[] {
  const found = [
    ...view.first.path.slice(0, length),
    ...Array.from(second.path.slice(0, second.length), (index) => SECOND_TURNS[index]),
  ];
  const { renaming } = view;
  const body = found.map((turn) => FACE_OF[renaming][(turn / 3) | 0] * 3 + (turn % 3));
  return turnsInHands(view.inverse ? body.reverse().map(invertTurn) : body, state.holding);
}
