/** Facts on turns that the learner proposes: what they reach, gain, lose, and what comes back on the way. */
import { applyTurn, applyTurns, type State } from '../cube/state.ts';
import { printTurn, type Turn } from '../cube/turn.ts';
import { printTurns } from '../notation/print.ts';
import { goalHolds, goalMissing } from '../goals/judge.ts';
import type { Goal } from '../goals/goal.ts';
import type { Fact, LostInFact, Verdict, VerdictFact } from './facts.ts';
import { crossFacts, goalFact } from './gather-goals.ts';
import { partsOf } from './gather-next.ts';
import { standFact } from './gather-where.ts';
import { dueGoal, ownGoal, type MeantGoal } from './referents.ts';
import { nameGoal, namePieces, sceneAt, type Scene } from './scene.ts';

function lostIn(scene: Scene, index: number, turns: readonly Turn[]): LostInFact | undefined {
  const goal = scene.goals[index];
  let { state } = scene;
  let at: number | undefined;
  let back: number | undefined;
  turns.forEach((turn, i) => {
    state = applyTurn(state, turn);
    const holds = goalHolds(goal, state);
    if (!holds && at === undefined) at = i + 1;
    // What is lost once more counts as lost until it comes back for good.
    if (!holds) back = undefined;
    else if (at !== undefined) back ??= i + 1;
  });
  if (at === undefined) return undefined;
  return {
    kind: 'lost-in',
    place: scene.place,
    ...nameGoal(scene.block.method, goal, scene.base),
    turns: printTurns(turns),
    at,
    atText: printTurn(turns[at - 1]),
    back,
    backText: back === undefined ? undefined : printTurn(turns[back - 1]),
    missing: back === undefined ? namePieces(goalMissing(goal, state), scene.base) : [],
  };
}

function judge(
  before: State,
  after: State,
  goal: Goal,
  lost: boolean,
  counts: readonly [number, number],
): Verdict {
  const [gained, dropped] = counts;
  if (goalHolds(goal, before) && goalHolds(goal, after) && !lost) return 'keeps';
  if (lost) return gained > 0 && goalHolds(goal, after) ? 'trades' : 'loses';
  if (goalHolds(goal, after)) return 'reaches';
  if (gained > 0 && dropped > 0) return 'trades';
  if (dropped > 0) return 'loses';
  return gained > 0 ? 'gains' : 'nothing';
}

/** `asked`: the goal that the question names; else the one that is due. */
export function gatherProposal(
  scene: Scene,
  turns: readonly Turn[],
  asked: MeantGoal | undefined,
): Fact[] {
  const due = dueGoal(scene);
  const meant = asked ?? ownGoal(scene, due ?? scene.goals.length - 1);
  const { goal } = meant;
  const after = applyTurns(scene.state, turns);
  const heldBefore = scene.goals.flatMap((one, index) =>
    goalHolds(one, scene.state) ? [index] : [],
  );
  const losses = heldBefore.flatMap((index) => lostIn(scene, index, turns) ?? []);
  const lost =
    losses.some(({ back }) => back === undefined) ||
    (goalHolds(goal, scene.state) && !goalHolds(goal, after));
  const [partsBefore, partsAfter] = [partsOf(goal, scene.state), partsOf(goal, after)];
  const gained = partsAfter.made.filter((part) => !partsBefore.made.includes(part));
  const dropped = partsBefore.made.filter((part) => !partsAfter.made.includes(part));
  const union = (sets: readonly number[]): number => sets.reduce((all, set) => all | set, 0);
  const verdict: VerdictFact = {
    kind: 'verdict',
    place: scene.place,
    ...nameGoal(meant.method, goal, meant.base),
    turns: printTurns(turns),
    verdict: judge(scene.state, after, goal, lost, [gained.length, dropped.length]),
    gained: namePieces(union(gained), meant.base),
    dropped: namePieces(union(dropped), meant.base),
  };
  const facts: Fact[] = [standFact(scene), verdict, ...told(losses)];
  const there = sceneAt(scene.block, scene.at, [...scene.then, ...turns]);
  if (there.kind === 'scene') {
    const reachedOthers = scene.goals.flatMap((one, index) =>
      one !== goal && !goalHolds(one, scene.state) && goalHolds(one, after) ? [index] : [],
    );
    for (const index of reachedOthers.slice(0, 2))
      facts.push(goalFact(there.scene, ownGoal(there.scene, index)));
    facts.push(goalFact(there.scene, meant));
    if (goal.name === 'cross' && !goalHolds(goal, after))
      facts.push(...crossFacts(there.scene, meant.base));
  }
  return facts;
}

/** Of goals that fared the same the most basic one is told. */
function told(losses: readonly LostInFact[]): LostInFact[] {
  return losses.filter(
    (loss, i) =>
      !losses.slice(0, i).some((other) => other.at === loss.at && other.back === loss.back),
  );
}
