/** Known kinds of mistakes in proposed turns: told only where the corrected turns, replayed, do what the proposed ones fail to do. */
import { applyTurns, type State } from '../cube/state.ts';
import {
  FAMILIES,
  amountOf,
  familyOf,
  invertTurn,
  makeTurn,
  turnKind,
  type Turn,
} from '../cube/turn.ts';
import { OPPOSITE, faceIndex } from '../cube/vocabulary.ts';
import { goalHolds } from '../goals/judge.ts';
import { printTurns } from '../notation/print.ts';
import { mirrorTurns } from '../notation/transform.ts';
import type { NearFact } from './facts.ts';
import { homeOf, partsOf } from './opened.ts';
import type { MeantGoal } from './referents.ts';
import { faceOf, nameGoal, namePieces, type Scene } from './scene.ts';

interface Candidate {
  readonly mistake: NearFact['mistake'];
  readonly turns: readonly Turn[];
}

/** In the order of how common the mistake is. */
function candidates(scene: Scene, turns: readonly Turn[]): Candidate[] {
  const result: Candidate[] = [];
  turns.forEach((turn, i) => {
    if (amountOf(turn) !== 2)
      result.push({ mistake: 'prime', turns: turns.with(i, invertTurn(turn)) });
  });
  result.push({ mistake: 'mirror', turns: mirrorTurns(turns, 'left-right') });
  const top = faceIndex(faceOf(scene.state, OPPOSITE[scene.base]));
  for (const amount of [1, 3, 2])
    result.push({ mistake: 'setup', turns: [makeTurn(top, amount), ...turns] });
  for (let family = 0; family < 6; family++)
    for (const amount of [1, 3, 2])
      result.push({ mistake: 'unfinished', turns: [...turns, makeTurn(family, amount)] });
  for (const amount of [1, 3, 2])
    result.push({ mistake: 'rotation', turns: [makeTurn('y', amount), ...turns] });
  turns.forEach((turn, i) => {
    const other = wideOrNarrow(turn);
    if (other !== undefined) result.push({ mistake: 'wide', turns: turns.with(i, other) });
  });
  return result;
}

function wideOrNarrow(turn: Turn): Turn | undefined {
  const name = FAMILIES[familyOf(turn)];
  if (turnKind(turn) === 'face') {
    const wide = FAMILIES.find((family) => family === `${name}w`);
    return wide && makeTurn(wide, amountOf(turn));
  }
  if (turnKind(turn) !== 'wide') return undefined;
  const face = FAMILIES.find((family) => `${family}w` === name);
  return face && makeTurn(face, amountOf(turn));
}

/** A mistake is worth telling only of turns that belong together. */
const FEWEST = 3;

export function nearFact(
  scene: Scene,
  turns: readonly Turn[],
  meant: MeantGoal,
): NearFact | undefined {
  if (turns.length < FEWEST || meant.index === undefined) return undefined;
  const { goal } = meant;
  const held = scene.goals.filter((one) => goalHolds(one, scene.state));
  const made = partsOf(goal, scene.state).made;
  const keeps = (after: State): boolean =>
    held.every((one) => goalHolds(one, after)) &&
    made.every((part) => partsOf(goal, after).made.includes(part));
  let best: NearFact | undefined;
  for (const { mistake, turns: other } of candidates(scene, turns)) {
    const after = applyTurns(scene.state, other);
    if (!keeps(after)) continue;
    const gained = partsOf(goal, after).made.filter((part) => !made.includes(part));
    const reaches = goalHolds(goal, after);
    const home = homeOf(
      gained.reduce((all, part) => all | part, 0),
      after,
    );
    if (!reaches && home === 0) continue;
    const fact: NearFact = {
      kind: 'near',
      place: scene.place,
      ...nameGoal(meant.method, goal, meant.base),
      turns: printTurns(turns),
      other: printTurns(other),
      mistake,
      effect: reaches ? 'goal' : 'home',
      pieces: namePieces(home, meant.base),
    };
    if (reaches) return fact;
    best ??= fact;
  }
  return best;
}
