/** Picking facts by kind. */
import type { Fact, FactKind, FactOf } from './facts.ts';

export function all<Kind extends FactKind>(facts: readonly Fact[], kind: Kind): FactOf<Kind>[] {
  return facts.filter((fact): fact is FactOf<Kind> => fact.kind === kind);
}

export function one<Kind extends FactKind>(
  facts: readonly Fact[],
  kind: Kind,
): FactOf<Kind> | undefined {
  return all(facts, kind).at(0);
}
