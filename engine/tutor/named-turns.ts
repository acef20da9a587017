/**
 * The file's own named sequences as a next step: each is tried with the base down, in the four ways of
 * holding it and after each turn of the top. They come before any other way, because the learner
 * knows them.
 */
import { applyTurns } from '../cube/state.ts';
import { makeTurn, type Turn } from '../cube/turn.ts';
import type { Names } from '../document/names.ts';
import { goalHolds } from '../goals/judge.ts';
import { execute } from '../notation/execute.ts';
import { printTurns } from '../notation/print.ts';
import { holdingsOn, regrip } from '../search/person/hands.ts';
import type { TurnsFact } from './facts.ts';
import { homeOf, partsOf } from './opened.ts';
import { nameGoal, namePieces, type Scene } from './scene.ts';

const LONGEST = 40;
const MOST_NAMES = 50;

/** The first, in the order of the text, that reaches the due goal; else the first that brings a piece of it home. */
export function namedTurns(scene: Scene, due: number, names: Names): TurnsFact | undefined {
  const { state, base, goals } = scene;
  const goal = goals[due];
  const before = goals.slice(0, due);
  const made = partsOf(goal, state).made;
  let best: TurnsFact | undefined;
  for (const [name, { items }] of [...names.known].slice(0, MOST_NAMES)) {
    const own = execute(items, { resolve: names.resolve, limit: LONGEST });
    if (own.jumps.size > 0 || own.unresolved.length > 0 || own.codes.length > LONGEST) continue;
    for (const holding of holdingsOn(base, state.holding)) {
      const way = regrip(state.holding, holding);
      for (let amount = 0; amount < 4; amount++) {
        const setup: readonly Turn[] = amount === 0 ? [] : [makeTurn('U', amount)];
        const turns = [...way, ...setup, ...own.codes];
        const after = applyTurns(state, turns);
        if (!before.every((one) => goalHolds(one, after))) continue;
        const now = partsOf(goal, after).made;
        const reaches = goalHolds(goal, after);
        const home = homeOf(
          now.filter((part) => !made.includes(part)).reduce((all, part) => all | part, 0),
          after,
        );
        if (!reaches && (home === 0 || !made.every((part) => now.includes(part)))) continue;
        const fact: TurnsFact = {
          kind: 'turns',
          place: scene.place,
          ...nameGoal(scene.block.method, goal, base),
          turns: printTurns(turns),
          regrip: printTurns(way),
          effect: reaches ? 'goal' : 'home',
          pieces: namePieces(home, base),
          from: 'named',
          name,
        };
        if (reaches) return fact;
        best ??= fact;
      }
    }
  }
  return best;
}
