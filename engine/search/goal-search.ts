/**
 * Stage search: from any state to any goal, keeping the goals reached before. Iterative deepening with
 * distance tables chosen by the pieces of the goals, so the first answer found is proven shortest
 * among sequences of the allowed turns. "Kept" means that the goals hold at the end; what is
 * disturbed on the way comes back.
 */
import { CENTRE_AT } from '../cube/holding.ts';
import { sumProblems } from '../cube/possible.ts';
import type { State } from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import type { Goal } from '../goals/goal.ts';
import { comfortCost } from './comfort.ts';
import { Descent } from './descent.ts';
import { tablesFor } from './groups.ts';
import { patternsOfAll, placesFit, type Pattern } from './pattern.ts';
import { movePlaces, placesOf, turnsInHands } from './places.ts';
import { STEP_NODES, type Search, type SearchResult } from './step.ts';

export interface GoalSearchOptions {
  /** Longest sequence to look for; 20 turns reach anything (Rokicki et al. 2013), but may take for ever. */
  readonly maxTurns?: number;
  /** Faces in the hands (indices of `FACES`) that may be turned; all by default. */
  readonly faces?: readonly number[];
  /** Colour of a layer that must not be turned. */
  readonly withoutLayer?: number;
  /** Of the shortest sequences, take the most comfortable for a right-handed person, of the first 200. */
  readonly rightHanded?: boolean;
  /** Nodes after which to give up. */
  readonly budget?: number;
}

const COMPARED = 200;
const DEFAULT_MAX_TURNS = 20;
const DEFAULT_BUDGET = 50_000_000;

/** The shortest face turns, in the state's holding, after which `goal` and all of `kept` hold. */
export function searchGoal(
  state: State,
  goal: Goal,
  kept: readonly Goal[] = [],
  options: GoalSearchOptions = {},
): Search<SearchResult> {
  return searchPatterns(state, patternsOfAll([goal, ...kept]), options);
}

/** The shortest face turns after which one of the patterns is met. */
export function* searchPatterns(
  state: State,
  patterns: readonly Pattern[],
  options: GoalSearchOptions = {},
): Search<SearchResult> {
  const { maxTurns = DEFAULT_MAX_TURNS, budget = DEFAULT_BUDGET } = options;
  const problems = sumProblems(state);
  if (problems.length > 0) return { kind: 'impossible', problems };
  const compared = options.rightHanded ? COMPARED : 1;
  const places = placesOf(state);
  const allowed = allowedTurns(state, options);
  const descents: { readonly pattern: Pattern; readonly descent: Descent }[] = [];
  for (const pattern of patterns) {
    descents.push({ pattern, descent: new Descent(yield* tablesFor(pattern), places, allowed) });
  }
  const found: Turn[][] = [];
  let nodes = 0;
  let reported = 0;
  const first = Math.min(...descents.map(({ descent }) => descent.bound()));
  for (let length = first; length <= maxTurns; length++) {
    for (const { pattern, descent } of descents) {
      descent.restart(length);
      while (found.length < compared) {
        const before = descent.nodes;
        const left = Math.min(reported + STEP_NODES, budget) - nodes;
        const outcome = descent.advance(left);
        nodes += descent.nodes - before;
        if (outcome === 'end') break;
        if (outcome === 'leaf') {
          const body = descent.path.slice(0, length);
          if (reaches(places, body, pattern)) found.push(turnsInHands(body, state.holding));
          continue;
        }
        reported = nodes;
        const signal = yield { nodes, depth: length };
        if (signal === 'stop' || nodes >= budget) {
          if (found.length > 0) break;
          return { kind: 'out-of-budget', bound: length - 1, nodes };
        }
      }
    }
    // All shorter sequences have been ruled out by now.
    if (found.length > 0) return { kind: 'found', turns: easiest(found), optimal: true, nodes };
  }
  return { kind: 'exhausted', bound: maxTurns, nodes };
}

function easiest(found: readonly Turn[][]): Turn[] {
  return found.reduce((best, turns) => (comfortCost(turns) < comfortCost(best) ? turns : best));
}

/** Face turns of the body that the options allow; comfortable faces first, as ties go to the first found. */
function allowedTurns(state: State, options: GoalSearchOptions): number[] {
  const order = [3, 0, 2, 1, 5, 4];
  const result: number[] = [];
  for (const face of order) {
    const colour = CENTRE_AT[state.holding][face];
    if (options.faces && !options.faces.includes(face)) continue;
    if (colour === options.withoutLayer) continue;
    for (let amount = 0; amount < 3; amount++) result.push(colour * 3 + amount);
  }
  return result;
}

function reaches(places: Uint8Array, body: Uint8Array, pattern: Pattern): boolean {
  const moved = places.slice();
  for (const turn of body) movePlaces(moved, turn);
  return placesFit(moved, pattern);
}
