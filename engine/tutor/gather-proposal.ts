/** Facts on turns that the learner proposes: what they reach, gain, lose, and what comes back on the way. */
import { applyTurns, type State } from '../cube/state.ts';
import type { Turn } from '../cube/turn.ts';
import { printTurns } from '../notation/print.ts';
import { goalHolds } from '../goals/judge.ts';
import type { Goal } from '../goals/goal.ts';
import type { Fact, Verdict, VerdictFact } from './facts.ts';
import { crossFacts } from './gather-goals.ts';
import { goalFact } from './goal-facts.ts';
import { nearFact } from './gather-near.ts';
import { standFact } from './gather-where.ts';
import { isFacing, openedBy, partsOf } from './opened.ts';
import { dueGoal, ownGoal, type MeantGoal } from './referents.ts';
import { nameGoal, namePieces, sceneAt, type Scene } from './scene.ts';

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

const FAILED: ReadonlySet<Verdict> = new Set(['nothing', 'trades', 'loses']);

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
  const losses = openedBy(scene, turns);
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
    facing: isFacing(goal, union([...gained, ...dropped])),
    gained: namePieces(union(gained), meant.base),
    dropped: namePieces(union(dropped), meant.base),
  };
  const facts: Fact[] = [standFact(scene), verdict, ...losses];
  const near = FAILED.has(verdict.verdict) ? nearFact(scene, turns, meant) : undefined;
  if (near) facts.push(near);
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
