/**
 * Commutators and conjugates in turns that are written out, also in disguise: with neighbours merged
 * (`R2 D … R'` begins `R R`), begun in the middle, or with a common end taken out.
 *
 * In a group where turns of one layer merge and nothing else cancels, a sequence is a commutator if,
 * begun at the right place, it reads a b c a' b' c' (c may be empty); then it is [a b, c a'] (Wicks,
 * Commutators in free groups, 1962). What commutes beyond that is not looked for.
 */
import { amountOf, familyOf, invertTurn, makeTurn, type Turn } from '../../cube/turn.ts';
import { sameState } from '../../cube/state.ts';
import { Measures } from '../../notation/measure.ts';
import { simplify } from '../../notation/simplify.ts';
import { invertTurns } from '../../notation/transform.ts';
import type { SequenceNode } from '../../notation/tree.ts';

/** Longer sequences are not taken apart: the work grows with the fourth power. */
const LONGEST = 28;
const NOWHERE = { start: 0, end: 0 };

export interface Form {
  readonly kind: 'commutator' | 'conjugate';
  readonly node: SequenceNode;
  /** Not to be seen from the turns as they stand: merged, begun elsewhere, or with a common end. */
  readonly disguised: boolean;
}

export function turnNodes(turns: readonly Turn[]): SequenceNode[] {
  return turns.map((turn) => ({ kind: 'turn', span: NOWHERE, turn }));
}

/** The turns as a commutator (perhaps within a conjugate), else as a conjugate; undefined if neither. */
export function findForm(turns: readonly Turn[]): Form | undefined {
  if (turns.length < 3 || turns.length > LONGEST) return undefined;
  for (const { setup, core, merged } of peelings(turns)) {
    const found = commutatorIn(core);
    if (found === undefined) continue;
    const around = simplify([...setup, ...core.slice(0, found.from)]);
    const form = wrap(around, commutator(found.first, found.second));
    if (sameEffect(turns, form))
      return { kind: 'commutator', node: form, disguised: merged || found.disguised };
  }
  const plain = peelings(turns).find(({ setup, core }) => setup.length > 0 && core.length > 0);
  if (plain === undefined) return undefined;
  const form: SequenceNode = {
    kind: 'conjugate',
    span: NOWHERE,
    setup: turnNodes(plain.setup),
    core: turnNodes(plain.core),
    times: 1n,
  };
  return sameEffect(turns, form)
    ? { kind: 'conjugate', node: form, disguised: plain.merged }
    : undefined;
}

function sameEffect(turns: readonly Turn[], form: SequenceNode): boolean {
  const measures = new Measures(() => undefined);
  return sameState(measures.effectOf(turnNodes(turns)), measures.effectOf([form]));
}

function commutator(first: readonly Turn[], second: readonly Turn[]): SequenceNode {
  return {
    kind: 'commutator',
    span: NOWHERE,
    first: turnNodes(first),
    second: turnNodes(second),
    times: 1n,
  };
}

function wrap(setup: readonly Turn[], core: SequenceNode): SequenceNode {
  if (setup.length === 0) return core;
  return { kind: 'conjugate', span: NOWHERE, setup: turnNodes(setup), core: [core], times: 1n };
}

interface Peeling {
  readonly setup: readonly Turn[];
  readonly core: readonly Turn[];
  readonly merged: boolean;
}

/** Ways of writing the turns as setup, core, setup undone: as they stand first, then with ends taken off. */
function peelings(turns: readonly Turn[]): Peeling[] {
  const found: Peeling[] = [{ setup: [], core: turns, merged: false }];
  const setup: Turn[] = [];
  let core = turns;
  while (core.length > 2 && core[0] === invertTurn(core[core.length - 1])) {
    setup.push(core[0]);
    core = core.slice(1, -1);
  }
  if (setup.length > 0) found.push({ setup: [...setup], core, merged: false });
  const first = core[0];
  const last = core[core.length - 1];
  if (core.length > 2 && familyOf(first) === familyOf(last)) {
    const sum = (amountOf(first) + amountOf(last)) % 4;
    // X^a … X^b = X^-b (X^(a+b) …) X^b = X^a (… X^(a+b)) X^-a.
    if (sum !== 0) {
      const whole = makeTurn(familyOf(first), sum);
      const middle = core.slice(1, -1);
      found.push(
        { setup: [...setup, first], core: [...middle, whole], merged: true },
        { setup: [...setup, invertTurn(last)], core: [whole, ...middle], merged: true },
      );
    }
  }
  return found;
}

interface Found {
  /** Where the reading begins; what is before it comes at the end. */
  readonly from: number;
  readonly first: readonly Turn[];
  readonly second: readonly Turn[];
  readonly disguised: boolean;
}

function commutatorIn(turns: readonly Turn[]): Found | undefined {
  const half = turns.length / 2;
  if (!Number.isInteger(half) || half < 2) return undefined;
  for (let from = 0; from < turns.length; from++) {
    const read = [...turns.slice(from), ...turns.slice(0, from)];
    for (let third = 0; third <= half - 2; third++) {
      for (let first = 1; first < half - third; first++) {
        const second = half - third - first;
        if (!fits(read, first, second, third)) continue;
        const a = read.slice(0, first);
        const b = read.slice(first, first + second);
        const c = read.slice(first + second, half);
        return {
          from,
          first: [...a, ...b].slice(0, third === 0 ? first : undefined),
          second: third === 0 ? b : [...c, ...invertTurns(a)],
          disguised: from > 0 || third > 0,
        };
      }
    }
  }
  return undefined;
}

/** Whether the second half is a' b' c' to the first half's a b c. */
function fits(read: readonly Turn[], a: number, b: number, c: number): boolean {
  const half = a + b + c;
  const undoes = (start: number, length: number, at: number): boolean => {
    for (let i = 0; i < length; i++)
      if (read[at + i] !== invertTurn(read[start + length - 1 - i])) return false;
    return true;
  };
  return undoes(0, a, half) && undoes(a, b, half + a) && undoes(a + b, c, half + a + b);
}
