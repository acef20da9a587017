/**
 * How long sequences are and what they do, worked out without executing their repeats: lengths are
 * multiplied, effects are raised to powers by squaring.
 */
import { applyTurn, compose, invertState, power, SOLVED, type State } from '../cube/state.ts';
import {
  addTallies,
  multiply,
  multiplyTally,
  NO_TURNS,
  safe,
  tallyTurn,
  type Tally,
} from './count.ts';
import { foldItems, listsOf, type BracketNode } from './fold.ts';
import type { NameNode, SequenceNode } from './tree.ts';

/** The turns of a named sequence; undefined if there is none (or it would contain itself). */
export type Resolve = (name: string) => readonly SequenceNode[] | undefined;

export interface Measure {
  /** Steps as executed, gaps included; infinite above 2^53 − 1. */
  readonly steps: number;
  readonly tally: Tally;
  /** Contains an unknown stretch, so that its effect is unknown. */
  readonly gap: boolean;
}

const NOTHING: Measure = { steps: 0, tally: NO_TURNS, gap: false };
const GAP: Measure = { steps: 1, tally: NO_TURNS, gap: true };

/**
 * The order of every element of the cube's group divides lcm(1…12) · 6, and with the holding (a
 * rotation: order 1 to 4) this times 12; so a repeat count matters only up to this number.
 */
const PERIOD = 27720n * 6n * 12n;

/** `effect` as often as `times` says, its inverse if negative. */
export function repeated(effect: State, times: bigint): State {
  const rest = times % PERIOD;
  return rest < 0n ? power(invertState(effect), -rest) : power(effect, rest);
}

export function magnitudeOf(times: bigint): number {
  return safe(Number(times < 0n ? -times : times));
}

/** Measures of the brackets and names of a text; each is worked out once. */
export class Measures {
  readonly resolve: Resolve;
  readonly contents = new Map<string, readonly SequenceNode[] | undefined>();
  readonly names = new Map<string, Measure>();
  /** Names that contain themselves: nothing is executed for them. */
  readonly cyclic = new Set<string>();
  readonly effects = new Map<string, State>();
  readonly brackets = new Map<SequenceNode, Measure>();

  constructor(resolve: Resolve) {
    this.resolve = resolve;
  }

  /** The same nodes each time, so that what is known of them is found again. */
  contentOf(name: string): readonly SequenceNode[] | undefined {
    if (!this.contents.has(name)) this.contents.set(name, this.resolve(name));
    return this.contents.get(name);
  }

  /** Of one node, its count included. */
  of(node: SequenceNode): Measure {
    switch (node.kind) {
      case 'turn':
        return { steps: 1, tally: tallyTurn(node.turn), gap: false };
      case 'gap':
        return GAP;
      case 'name':
        return repeatMeasure(this.names.get(node.name) ?? NOTHING, node.times);
      case 'group':
      case 'commutator':
      case 'conjugate':
        return this.brackets.get(node) ?? NOTHING;
      default:
        return NOTHING;
    }
  }

  /** Works out the measures of everything in `items`. */
  measure(items: readonly SequenceNode[]): void {
    const underWay = new Set<string>();
    foldItems<Measure>(items, {
      open: (node) => {
        if (node.kind === 'name') {
          if (underWay.has(node.name)) this.cyclic.add(node.name);
          const content = this.names.has(node.name) ? undefined : this.contentOf(node.name);
          if (content === undefined) return { value: this.of(node) };
          // Until it is known it counts as nothing: names that contain themselves end here.
          this.names.set(node.name, NOTHING);
          underWay.add(node.name);
          return { lists: [content] };
        }
        const known = 'times' in node ? this.brackets.get(node) : this.of(node);
        return known === undefined ? { lists: listsOf(node as BracketNode) } : { value: known };
      },
      close: (node, lists) => {
        const [first, second = NOTHING] = lists.map(sumMeasures);
        if (node.kind === 'name') {
          underWay.delete(node.name);
          if (!this.cyclic.has(node.name)) this.names.set(node.name, first);
          return this.of(node);
        }
        const bracket = node as BracketNode;
        const once =
          bracket.kind === 'group'
            ? first
            : sumMeasures(
                bracket.kind === 'commutator'
                  ? [first, second, first, second]
                  : [first, second, first],
              );
        const measure = repeatMeasure(once, bracket.times);
        this.brackets.set(node, measure);
        return measure;
      },
    });
  }

  /** What the nodes do, done on a cube in the reference holding; gaps and unknown tokens do nothing. */
  effectOf(items: readonly SequenceNode[]): State {
    const effects = foldItems<State>(items, {
      open: (node) => {
        if (node.kind === 'turn') return { value: applyTurn(SOLVED, node.turn) };
        if (node.kind === 'name') {
          const known = this.effects.get(node.name);
          if (known !== undefined) return { value: repeated(known, node.times) };
          const content = this.cyclic.has(node.name) ? undefined : this.contentOf(node.name);
          if (content === undefined) return { value: SOLVED };
          return { lists: [content] };
        }
        return 'times' in node ? { lists: listsOf(node) } : { value: SOLVED };
      },
      close: (node, lists) => {
        const [first, second = SOLVED] = lists.map(composeAll);
        const { times } = node as BracketNode | NameNode;
        if (node.kind === 'name') this.effects.set(node.name, first);
        if (node.kind !== 'commutator' && node.kind !== 'conjugate') return repeated(first, times);
        const end =
          node.kind === 'commutator'
            ? [invertState(first), invertState(second)]
            : [invertState(first)];
        return repeated(composeAll([first, second, ...end]), times);
      },
    });
    return composeAll(effects);
  }
}

function composeAll(effects: readonly State[]): State {
  return effects.reduce(compose, SOLVED);
}

function sumMeasures(measures: readonly Measure[]): Measure {
  let { steps, tally, gap } = NOTHING;
  for (const part of measures) {
    steps = safe(steps + part.steps);
    tally = addTallies(tally, part.tally);
    gap ||= part.gap;
  }
  return { steps, tally, gap };
}

function repeatMeasure(once: Measure, times: bigint): Measure {
  const often = magnitudeOf(times);
  return {
    steps: multiply(once.steps, often),
    tally: multiplyTally(once.tally, often),
    gap: once.gap && often > 0,
  };
}
