/**
 * The shortest face turns with the effect of a sequence, up to six, by meeting in the middle: three
 * turns from the solved cube, kept, and three from the effect. It needs no tables, so the first answer
 * comes as fast as any other; longer ways are left to the searches that a person asks for.
 */
import { SOLVED, applyTurn, applyTurns, held, type State } from '../cube/state.ts';
import { FACE_TURNS, familyOf, invertTurn, type Turn } from '../cube/turn.ts';
import { OPPOSITE } from '../cube/vocabulary.ts';
import { asFaceTurns } from '../notation/transform.ts';
import { simplify } from '../notation/simplify.ts';
import { regrip } from '../search/person/hands.ts';

const NEAR_SOLVED = 3;
const NEAR_EFFECT = 3;
/** No way of at most so many turns escapes. */
export const PROVEN_TO = NEAR_SOLVED + NEAR_EFFECT;

interface Reached {
  readonly state: State;
  readonly turns: readonly Turn[];
}

function keyOf({ corners, edges }: State): string {
  return String.fromCharCode(...Array.from(corners), ...Array.from(edges));
}

/** Turns of one face follow no others of it, and of two opposite faces the lower one comes first. */
function follows(last: Turn | undefined, turn: Turn): boolean {
  if (last === undefined) return true;
  const [before, now] = [familyOf(last), familyOf(turn)];
  return before !== now && !(OPPOSITE[before] === now && before > now);
}

/** All states within so many face turns of one, each with a shortest way, the nearest first. */
function within(start: State, depth: number): Map<string, Reached> {
  const found = new Map<string, Reached>([[keyOf(start), { state: start, turns: [] }]]);
  let level: Reached[] = [{ state: start, turns: [] }];
  for (let length = 1; length <= depth; length++) {
    const next: Reached[] = [];
    for (const { state, turns } of level) {
      for (let turn = 0; turn < FACE_TURNS; turn++) {
        if (!follows(turns.at(-1), turn)) continue;
        const after = applyTurn(state, turn);
        const key = keyOf(after);
        if (found.has(key)) continue;
        const reached = { state: after, turns: [...turns, turn] };
        found.set(key, reached);
        next.push(reached);
      }
    }
    level = next;
  }
  return found;
}

let nearSolved: Map<string, Reached> | undefined;

/** Face turns (and the rotations that the sequence leaves) with the same effect, fewer than it has; undefined if none of at most `PROVEN_TO` has. */
function byMeeting(turns: readonly Turn[], below: number): readonly Turn[] | undefined {
  nearSolved ??= within(SOLVED, NEAR_SOLVED);
  const effect = applyTurns(SOLVED, turns);
  let best: readonly Turn[] | undefined;
  for (const [key, { turns: back }] of within(held(effect, 0), NEAR_EFFECT)) {
    const there = nearSolved.get(key)?.turns;
    if (there === undefined || there.length + back.length >= (best?.length ?? below)) continue;
    best = [...there, ...[...back].reverse().map(invertTurn)];
  }
  return best && [...best, ...regrip(0, effect.holding)];
}

export interface ShortWay {
  readonly turns: readonly Turn[] | undefined;
  /** No face turns of at most so many have this effect. */
  readonly provenTo: number;
}

export function shortWay(turns: readonly Turn[]): ShortWay {
  const given = asFaceTurns(turns).length;
  const found = byMeeting(turns, given);
  if (found !== undefined) return { turns: found, provenTo: asFaceTurns(found).length - 1 };
  const provenTo = Math.min(PROVEN_TO, given - 1);
  // What cancels makes even a long sequence shorter.
  const simpler = simplify(turns);
  return { turns: asFaceTurns(simpler).length < given ? simpler : undefined, provenTo };
}
