/** Random sequences, and ways to look at sequences without their places in the text. */
import fc from 'fast-check';
import { SOLVED, applyTurn, compose, type State } from '../../engine/cube/state.ts';
import { TURNS, printTurn } from '../../engine/cube/turn.ts';
import { execute, JUMP, type Execution } from '../../engine/notation/execute.ts';
import { readSequence } from '../../engine/notation/read.ts';
import type { SequenceNode } from '../../engine/notation/tree.ts';

const span = { start: 0, end: 0 };

export const turns = fc.array(fc.integer({ min: 0, max: TURNS - 1 }), { maxLength: 12 });

const times = fc.bigInt({ min: -4n, max: 4n });

/** Trees as the reader makes them, with small repeat counts. */
export const trees: fc.Arbitrary<SequenceNode[]> = fc.letrec<{
  node: SequenceNode;
  list: SequenceNode[];
}>((tie) => ({
  node: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    fc.integer({ min: 0, max: TURNS - 1 }).map((turn) => ({ kind: 'turn' as const, span, turn })),
    fc.constantFrom({ kind: 'pause' as const, span }, { kind: 'gap' as const, span }),
    fc.record({
      kind: fc.constant('unknown' as const),
      span: fc.constant(span),
      text: fc.constantFrom('foo', 'Q2', '8'),
    }),
    fc.record({
      kind: fc.constant('name' as const),
      span: fc.constant(span),
      name: fc.constantFrom('right-insert', 'h2'),
      times: fc.constantFrom(1n, -1n),
    }),
    fc.record({
      kind: fc.constant('group' as const),
      span: fc.constant(span),
      items: tie('list'),
      times,
    }),
    fc.record({
      kind: fc.constant('commutator' as const),
      span: fc.constant(span),
      first: tie('list'),
      second: tie('list'),
      times,
    }),
    fc.record({
      kind: fc.constant('conjugate' as const),
      span: fc.constant(span),
      setup: tie('list'),
      core: tie('list'),
      times,
    }),
  ),
  list: fc.array(tie('node'), { maxLength: 4 }),
})).list;

/** A tree as text that shows structure and counts, but no spans. */
export function outline(items: readonly SequenceNode[]): string {
  return JSON.stringify(items, (key, value: unknown) =>
    key === 'span' ? undefined : typeof value === 'bigint' ? `${String(value)}n` : value,
  );
}

/** Sequences of the tests that may be called by name. */
const NAMED: Readonly<Record<string, string>> = {
  'right-insert': "U R U' R' U' F' U F",
  h2: "(R U R' U')2",
};

export function resolveNamed(name: string): readonly SequenceNode[] | undefined {
  return name in NAMED ? readSequence(NAMED[name]).items : undefined;
}

/** The turns that a text stands for, written out; `…` for an unknown stretch. */
export function writtenOut(text: string, limit = 100_000): string {
  const { codes } = execute(readSequence(text).items, { resolve: resolveNamed, limit });
  return codes.map((code) => (code === JUMP ? '…' : printTurn(code))).join(' ');
}

/** The state after an execution on a solved cube, repeats that are one step included. */
export function outcome({ codes, jumps }: Execution): State {
  return codes.reduce((state, code, index) => {
    const jump = jumps.get(index);
    if (jump?.kind === 'power') return compose(state, jump.effect);
    return code === JUMP ? state : applyTurn(state, code);
  }, SOLVED);
}

/** The state a solved cube (white up, green in front) is brought to by a text. */
export function stateOf(text: string, limit = 10_000): State {
  return outcome(execute(readSequence(text).items, { resolve: resolveNamed, limit }));
}
